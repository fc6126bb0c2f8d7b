import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Art } from './art.js';
import type { Page } from './page.js';
import { run } from './run.js';
import type { Family, Picture, Shape, Turn } from './shapes.js';
import { place } from './shapes.js';
import { svgPage } from './svg.js';

export type Ink = 'bilevel' | 'grey' | 'jpeg';

/** Drawings as pixels. `bilevel` is 1 bit, `grey` a PNG of 16 levels, `jpeg` a grey JPEG. */
export function rasterise(
  size: { readonly width: number; readonly height: number },
  shapes: readonly Shape[],
  to: string,
  options: { readonly dpi: number; readonly ink: Ink; readonly fonts?: Partial<Record<Family, string>>; readonly bare?: boolean },
): string {
  const { dpi, ink, bare = false } = options;
  writeFileSync(`${to}.svg`, svgPage(size, shapes, options.fonts));
  const [w, h] = [size.width, size.height].map((each) => String(Math.round((each / 72) * dpi)));
  run('rsvg-convert', ['--background-color=white', '-w', w ?? '', '-h', h ?? '', '-o', `${to}.raw.png`, `${to}.svg`]);
  const resolution = ['-units', 'PixelsPerInch', '-density', String(dpi)];
  const kinds: Record<Ink, readonly string[]> = {
    bilevel: ['-colorspace', 'Gray', '-threshold', '55%', '-type', 'bilevel', '-define', 'png:bit-depth=1'],
    grey: ['-colorspace', 'Gray', '-depth', '4', '-define', 'png:bit-depth=4', '-define', 'png:color-type=0'],
    jpeg: ['-colorspace', 'Gray', '-quality', '42'],
  };
  const file = `${to}.${ink === 'jpeg' ? 'jpg' : 'png'}`;
  run('/usr/bin/convert', [
    `${to}.raw.png`,
    ...resolution,
    ...kinds[ink],
    '-strip',
    ...(bare ? [] : resolution),
    '-define',
    bare ? 'png:exclude-chunks=date,time,phys' : 'png:exclude-chunks=date,time',
    file,
  ]);
  return file;
}

let count = 0;
/** A label as a picture on a page, `stored` telling how far it lies turned in its own pixels. */
export function picture(
  art: Art,
  folder: string,
  at: { readonly x: number; readonly y: number; readonly turn?: Turn; readonly stored?: boolean; readonly scale?: number },
  options: { readonly dpi: number; readonly ink: Ink; readonly fonts?: Partial<Record<Family, string>> },
): Picture {
  const { x, y, turn = 0, stored = false, scale = 1 } = at;
  const inside: Turn = stored ? turn : 0;
  const size = art.bounds(inside);
  const file = rasterise(size, place(art.shapes, art, { x: 0, y: 0, turn: inside }), join(folder, `picture${count++}`), options);
  return { kind: 'picture', x, y, ...art.bounds(turn, scale), file, turn: stored ? 0 : turn };
}

/** A page as an office scanner gives it: askew about its centre, blurred, noisy. The noise is the same every time. */
export function scanPage(
  page: Page,
  shapes: readonly Shape[],
  to: string,
  options: {
    readonly dpi: number;
    readonly g4: boolean;
    readonly shade?: boolean;
    readonly colour?: boolean;
    readonly clean?: boolean;
    readonly seed: number;
  },
): string {
  const { dpi, g4, seed, shade = false, colour = false, clean: flat = false } = options;
  const clean = rasterise(page, shapes, to, { dpi, ink: 'grey' });
  const askew = ['-virtual-pixel', 'white', '-distort', 'SRT', String(page.skew ?? 0)];
  const noise = ['-seed', String(seed), '-attenuate', g4 ? '0.5' : flat ? '0.012' : '0.16', '+noise', 'Gaussian'];
  // Uneven light, as a telephone's camera or an open lid gives it: darker towards one corner.
  const light = shade
    ? ['(', '+clone', '-sparse-color', 'Bilinear', '0,0 white %[w],%[h] gray72', ')', '-compose', 'Multiply', '-composite']
    : [];
  const look = ['-colorspace', 'Gray', '-depth', '8', ...askew, '-blur', '0x0.6', ...light, '+level', '8%,97%', ...noise];
  const resolution = ['-units', 'PixelsPerInch', '-density', String(dpi)];
  const file = `${to}.scan.${g4 ? 'tif' : 'jpg'}`;
  // Paper that is a little yellow, ink that is a little blue: a photograph by an app that straightens pages.
  const tint = ['-colorspace', 'sRGB', '+level-colors', '#1d2230,#f7f3e8'];
  if (colour) {
    run('/usr/bin/convert', [
      clean,
      ...look.filter((each) => each !== 'Gray' && each !== '-colorspace'),
      ...tint,
      '-sampling-factor',
      '4:2:0',
      '-quality',
      '18',
      '-strip',
      ...resolution,
      file,
    ]);
    return file;
  }
  const end = g4 ? ['-threshold', '58%', '-type', 'bilevel', '-compress', 'Group4'] : ['-quality', flat ? '24' : '28'];
  run('/usr/bin/convert', [clean, ...look, ...end, '-strip', ...resolution, file]);
  return file;
}
