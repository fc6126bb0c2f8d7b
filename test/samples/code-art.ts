import bwipjs from 'bwip-js';

/** What a reader must give back, in the words of `reading/source.ts`. */
export interface ExpectedCode {
  readonly symbology: 'Code 128' | 'ITF' | 'Code 39' | 'PDF417' | 'Data Matrix' | 'QR' | 'Aztec' | 'MaxiCode';
  /** ISO/IEC 15424. */
  readonly identifier: string;
  /** As transmitted, lower-case hex; FNC1 in later places as GS (1d). */
  readonly bytes: string;
}

/** A code in modules: black rectangles on a grid of `columns` × `rows`. MaxiCode has hexagons instead (`cells`). */
export interface CodeArt {
  readonly expected: ExpectedCode;
  readonly columns: number;
  readonly rows: number;
  /** x, y, width, height in modules and rows. */
  readonly rects: readonly (readonly [number, number, number, number])[];
  /** Height of a row in modules; a linear code has one row of any height. */
  readonly modulesPerRow: number;
}

const GS = '\x1d';
const hex = (text: string): string => Buffer.from(text, 'latin1').toString('hex');
const art = new Map<string, CodeArt>();

function once(key: string, make: () => CodeArt): CodeArt {
  let found = art.get(key);
  if (!found) art.set(key, (found = make()));
  return found;
}

type Raw = readonly {
  readonly sbs?: readonly number[];
  readonly pixs?: readonly number[];
  readonly pixx?: number;
}[];
function raw(options: { bcid: string; text: string } & Record<string, unknown>): Raw[number] {
  const [first] = bwipjs.raw(options) as unknown as Raw;
  if (!first) throw new Error(`nothing drawn for ${options.bcid}`);
  return first;
}

function linear(bcid: string, text: string, expected: ExpectedCode, more: Record<string, unknown> = {}): CodeArt {
  return once(`${bcid} ${text}`, () => {
    const rects: [number, number, number, number][] = [];
    let x = 0;
    for (const [index, width] of (raw({ bcid, text, ...more }).sbs ?? []).entries()) {
      if (index % 2 === 0) rects.push([x, 0, width, 1]);
      x += width;
    }
    const last = rects.at(-1);
    return { expected, columns: last ? last[0] + last[2] : 0, rows: 1, rects, modulesPerRow: 1 };
  });
}

function matrix(bcid: string, text: string, expected: ExpectedCode, modulesPerRow = 1, more: Record<string, unknown> = {}): CodeArt {
  return once(`${bcid} ${text}`, () => {
    const { pixs = [], pixx = 0 } = raw({ bcid, text, ...more });
    // `pixy` counts the height that rows should have; the pixels hold each row once.
    const pixy = pixs.length / pixx;
    const rects: [number, number, number, number][] = [];
    for (let y = 0; y < pixy; y++) {
      let from = -1;
      for (let x = 0; x <= pixx; x++) {
        const black = x < pixx && pixs[y * pixx + x] === 1;
        if (black && from < 0) from = x;
        if (!black && from >= 0) {
          rects.push([from, y, x - from, 1]);
          from = -1;
        }
      }
    }
    return { expected, columns: pixx, rows: pixy, rects, modulesPerRow };
  });
}

/** Element strings `[ai, value]` as transmitted: GS behind each that is not of predefined length, but for the last. */
function gs1Bytes(elements: readonly (readonly [string, string])[]): string {
  // The AIs of predefined length that the samples use (GS1 General Specifications, fig. "element strings with predefined length").
  const predefined = new Set(['00', '01', '02', '11', '13', '15', '17', '20', '41']);
  return elements
    .map(([ai, value], index) => ai + value + (index < elements.length - 1 && !predefined.has(ai.slice(0, 2)) ? GS : ''))
    .join('');
}
const gs1Text = (elements: readonly (readonly [string, string])[]): string => elements.map(([ai, value]) => `(${ai})${value}`).join('');

export const code128 = (text: string): CodeArt => linear('code128', text, { symbology: 'Code 128', identifier: ']C0', bytes: hex(text) });
export const gs1Code128 = (...elements: readonly (readonly [string, string])[]): CodeArt =>
  linear('gs1-128', gs1Text(elements), { symbology: 'Code 128', identifier: ']C1', bytes: hex(gs1Bytes(elements)) }, { dontlint: true });
export const itf = (digits: string): CodeArt =>
  linear('interleaved2of5', digits, { symbology: 'ITF', identifier: ']I0', bytes: hex(digits) });
export const code39 = (text: string): CodeArt => linear('code39', text, { symbology: 'Code 39', identifier: ']A0', bytes: hex(text) });
export const dataMatrix = (text: string): CodeArt =>
  matrix('datamatrix', text, { symbology: 'Data Matrix', identifier: ']d1', bytes: hex(text) });
export const gs1DataMatrix = (...elements: readonly (readonly [string, string])[]): CodeArt =>
  matrix('gs1datamatrix', gs1Text(elements), { symbology: 'Data Matrix', identifier: ']d2', bytes: hex(gs1Bytes(elements)) }, 1, {
    dontlint: true,
  });
export const qr = (text: string): CodeArt =>
  matrix('qrcode', text, { symbology: 'QR', identifier: ']Q1', bytes: hex(text) }, 1, { eclevel: 'M' });
export const aztec = (text: string): CodeArt => matrix('azteccode', text, { symbology: 'Aztec', identifier: ']z0', bytes: hex(text) });
/** Rows three modules high (ISO/IEC 15438 asks for at least three). */
export const pdf417 = (text: string, columns: number): CodeArt =>
  matrix('pdf417', text, { symbology: 'PDF417', identifier: ']L2', bytes: hex(text) }, 3, { columns, eclevel: 4 });

/** The black modules of a MaxiCode symbol (mode 4) as [column 0-29, row 0-32]; odd rows are half a module to the right. */
export function maxiCode(text: string): { readonly expected: ExpectedCode; readonly cells: readonly (readonly [number, number])[] } {
  const { pixs = [] } = raw({ bcid: 'maxicode', text, mode: 4 });
  return {
    expected: { symbology: 'MaxiCode', identifier: ']U0', bytes: hex(text) },
    cells: pixs.map((index) => [index % 30, Math.floor(index / 30)] as const),
  };
}

/** The mod-10 check digit of GS1 keys: weights 3, 1 from the right (GS1 General Specifications 7.9). */
export function gs1CheckDigit(digits: string): string {
  const sum = Array.from(digits)
    .reverse()
    .reduce((total, digit, index) => total + Number(digit) * (index % 2 === 0 ? 3 : 1), 0);
  return String((10 - (sum % 10)) % 10);
}
