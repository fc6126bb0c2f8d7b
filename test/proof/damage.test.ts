import { degrees, PDFDocument, rgb } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { dotsPerPt, gridOf } from '../../src/geometry/grid.js';
import { dotsDocument } from '../../src/press/dots-document.js';
import type { Placement } from '../../src/press/place.js';
import { pressDocument } from '../../src/press/press-document.js';
import { printedDots } from '../../src/press/printed-dots.js';
import { proveDocument, type Proof } from '../../src/proof/prove.js';
import { openPdf } from '../../src/reading/open-pdf.js';
import type { GreyRaster, SourceDocument } from '../../src/reading/source.js';
import type { Sheet } from '../../src/sheet/sheet.js';
import { LAYOUTS } from '../samples/layouts.js';
import { sample, type Sample } from '../samples/sample.js';
import { media4x6, onWholeDots, openSource, perfectSheets, verdictOf } from './prove-sample.js';

const GRID = '203dpi';
const grid = gridOf(GRID);

async function sampleOf(name: string): Promise<Sample> {
  const layout = LAYOUTS.find((each) => each.name === name);
  if (!layout) throw new Error(`no layout ${name}`);
  return sample(layout, 'vector', 0);
}

interface Good {
  readonly source: SourceDocument;
  readonly sheets: readonly Sheet[];
  readonly placements: readonly Placement[];
  readonly bytes: Uint8Array;
  readonly proof: Proof;
}

/** A label as it should be, and proved. */
async function good(name: string): Promise<Good> {
  const each = await sampleOf(name);
  const source = await openSource(each.bytes);
  const sheets = (await onWholeDots(perfectSheets(each, source, GRID), source, GRID)).slice(0, 1);
  const { bytes, placements } = await pressDocument(source, sheets, media4x6, grid);
  if (!bytes) throw new Error('nothing pressed');
  const [proof] = await proveDocument(source, bytes, sheets, placements, media4x6, grid);
  if (!proof) throw new Error('no proof');
  return { source, sheets, placements, bytes, proof };
}

const judged = async ({ source, sheets, placements }: Good, bytes: Uint8Array, asDots = false): Promise<string> =>
  verdictOf((await proveDocument(source, bytes, sheets, placements, media4x6, grid, { asDots }))[0]);

/** The pressed page laid on a new one by another map, about the page's middle. */
async function relaid(bytes: Uint8Array, across: number, down: number, turn = 0): Promise<Uint8Array> {
  const from = await PDFDocument.load(bytes);
  const to = await PDFDocument.create();
  const [page] = await to.embedPdf(from, [0]);
  if (!page) throw new Error('no page');
  const shift = { x: turn === 0 ? 144 - 144 * across : 288, y: turn === 0 ? 216 - 216 * down : 432 };
  to.addPage([288, 432]).drawPage(page, { ...shift, xScale: across, yScale: down, rotate: degrees(turn) });
  return to.save();
}

async function dotsOf(bytes: Uint8Array): Promise<GreyRaster> {
  const document = await openPdf(bytes, { as: 'output' });
  if ('refused' in document) throw new Error(document.refused.message);
  const dots = printedDots(document.page(1).render({ x: 0, y: 0, width: 288, height: 432 }, dotsPerPt(grid))).raster;
  document.close();
  return dots;
}

const NAMES = ['letter-upper-sideways', 'page-4x6', 'letter-return-label'];

describe.each(NAMES)('%s, damaged on the way to the printer', (name) => {
  it('is proved as it is', async () => {
    const made = await good(name);
    expect(verdictOf(made.proof)).toBe('proved');
    expect(await judged(made, await relaid(made.bytes, 1, 1))).toBe('proved');
    made.source.close();
  });

  it('at 94 %, as a driver fits it into margins of 3 mm (handbook section 7.3, computed), is held for its size or its bars', async () => {
    const made = await good(name);
    expect(['verify/size', 'verify/uneven-bars', 'verify/decodability', 'verify/code-moved']).toContain(
      await judged(made, await relaid(made.bytes, 0.941, 0.941)),
    );
    made.source.close();
  });

  it('stretched by 1.5 % across the bars is held for its size', async () => {
    const made = await good(name);
    const [across, down] = made.proof.codes.some(({ code }) => code.turn === 0 && code.symbology === 'Code 128') ? [1.015, 1] : [1, 1.015];
    expect(['verify/size', 'verify/uneven-bars']).toContain(await judged(made, await relaid(made.bytes, across, down)));
    made.source.close();
  });

  it('upside down is held', async () => {
    const made = await good(name);
    expect(await judged(made, await relaid(made.bytes, 1, 1, 180))).toMatch(/^verify\/(?:code-moved|code-changed|code-lost)$/);
    made.source.close();
  });

  it('with a number stamped into the quiet zone of its longest code is held for that', async () => {
    const made = await good(name);
    const longest = made.proof.codes
      .flatMap(({ code, measure }) => (measure ? [{ code, measure }] : []))
      .sort((a, b) => b.measure.modules.length - a.measure.modules.length)[0];
    if (!longest) throw new Error('no bars');
    const pdf = await PDFDocument.load(made.bytes);
    const { box, turn } = longest.code;
    const module = (longest.measure.moduleDots / 203) * 72;
    const at =
      turn === 0 || turn === 180
        ? { x: box.x - 8 * module, y: 432 - box.y - box.height / 2 }
        : { x: box.x + box.width / 2, y: 432 - box.y + 4 * module };
    pdf.getPage(0).drawText('7', { ...at, size: 7, color: rgb(0, 0, 0) });
    expect(await judged(made, await pdf.save())).toBe('verify/quiet-zone');
    made.source.close();
  });

  it('with a column of dots gone, where the rest moves up, is held; as dots, the only damage is that column', async () => {
    const made = await good(name);
    const bars = made.proof.codes.find(({ measure, code }) => measure && (code.turn === 0 || code.turn === 180));
    const { box } = bars?.code ?? { box: { x: 100, y: 100, width: 60, height: 60 } };
    const whole = await dotsOf(made.bytes);
    expect(await judged(made, await dotsDocument([whole], media4x6, grid), true)).toBe('proved');
    const verdicts = new Set<string>();
    for (const share of [0.1, 0.37, 0.62, 0.9]) {
      const gone = Math.round((box.x + share * box.width) * dotsPerPt(grid));
      const data = Uint8Array.from(whole.data);
      for (let y = 0; y < whole.height; y++) data.copyWithin(y * whole.width + gone, y * whole.width + gone + 1, (y + 1) * whole.width);
      verdicts.add(await judged(made, await dotsDocument([{ ...whole, data }], media4x6, grid), true));
    }
    expect(
      [...verdicts].every((verdict) => /^verify\/(?:uneven-bars|decodability|code-lost|size)$/.test(verdict)),
      [...verdicts].join(),
    ).toBe(bars !== undefined);
    made.source.close();
  });

  it('another label in its place is held', async () => {
    const made = await good(name);
    const other = await good(name === 'page-4x6' ? 'letter-cut-line' : 'page-4x6');
    expect(await judged(made, other.bytes)).toMatch(/^verify\/(?:code-changed|code-lost|code-moved)$/);
    made.source.close();
    other.source.close();
  });
});
