/**
 * Makes the stored pages again: `npx tsx test/samples/foreign/make.ts [part of a layout's name …]`. Needs the Debian
 * packages named in README.md. Without names all parts are made anew.
 */
import { join } from 'node:path';
import { TUNING, UNSEEN } from './designs/content.js';
import { build } from './kit/build.js';
import { SIZES } from './kit/page.js';
import { FIFTH_A } from './layouts/fifth-a.js';
import { FIFTH_B } from './layouts/fifth-b.js';
import { FIFTH_E } from './layouts/fifth-e.js';
import { FIFTH_D } from './layouts/fifth-d.js';
import { FIFTH_C } from './layouts/fifth-c.js';
import { fifthNone } from './layouts/fifth-none.js';
import { FOURTH_A } from './layouts/fourth-a.js';
import { FOURTH_B } from './layouts/fourth-b.js';
import { FOURTH_C } from './layouts/fourth-c.js';
import { FOURTH_D } from './layouts/fourth-d.js';
import { FOURTH_E } from './layouts/fourth-e.js';
import { fourthNone } from './layouts/fourth-none.js';
import { FRESH_A } from './layouts/fresh-a.js';
import { FRESH_B } from './layouts/fresh-b.js';
import { FRESH_C } from './layouts/fresh-c.js';
import { freshNone } from './layouts/fresh-none.js';
import { noLabels } from './layouts/no-label.js';
import { SECOND_A } from './layouts/second-a.js';
import { SECOND_B } from './layouts/second-b.js';
import { THIRD_A } from './layouts/third-a.js';
import { THIRD_B } from './layouts/third-b.js';
import { thirdNone } from './layouts/third-none.js';
import { TUNING_A } from './layouts/tuning-a.js';
import { TUNING_B } from './layouts/tuning-b.js';
import { TUNING_C } from './layouts/tuning-c.js';
import { UNSEEN_A } from './layouts/unseen-a.js';
import { UNSEEN_B } from './layouts/unseen-b.js';
import { UNSEEN_C } from './layouts/unseen-c.js';

const tuningNone = noLabels({
  prefix: 't11',
  words: TUNING,
  seed: 2000,
  paper: SIZES.letter,
  other: SIZES['4x6'],
  producers: ['chromium', 'libreoffice', 'cairo', 'ghostscript', 'img2pdf'],
  odd: 0,
});
const unseenNone = noLabels({
  prefix: 'u11',
  words: UNSEEN,
  seed: 5000,
  paper: SIZES.a4,
  other: SIZES.a6,
  producers: ['weasyprint', 'cairo', 'ghostscript', 'chromium', 'tiff2pdf'],
  odd: 1,
});
const HALVES = {
  tuning: [...TUNING_A, ...TUNING_B, ...TUNING_C, tuningNone],
  unseen: [...UNSEEN_A, ...UNSEEN_B, ...UNSEEN_C, unseenNone],
  fresh: [...FRESH_A, ...FRESH_B, ...FRESH_C, freshNone],
  'second-sight': [...SECOND_A, ...SECOND_B],
  'third-sight': [...THIRD_A, ...THIRD_B, thirdNone],
  'fourth-sight': [...FOURTH_A, ...FOURTH_B, ...FOURTH_C, fourthNone, ...FOURTH_D, ...FOURTH_E],
  'fifth-sight': [...FIFTH_A, ...FIFTH_B, ...FIFTH_C, fifthNone, ...FIFTH_D, ...FIFTH_E],
} as const;
const wanted = process.argv.slice(2);

for (const half of ['tuning', 'unseen', 'fresh', 'second-sight', 'third-sight', 'fourth-sight', 'fifth-sight'] as const) {
  for (const layout of HALVES[half]) {
    if (wanted.length > 0 && !wanted.some((each) => layout.name.includes(each))) continue;
    const began = performance.now();
    const names = await build(layout, half, join(import.meta.dirname, half));
    console.log(`${half}/${layout.name}: ${names.length} files, ${Math.round((performance.now() - began) / 1000)} s`);
  }
}
