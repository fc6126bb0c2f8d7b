import { execFileSync } from 'node:child_process';
import type { Disc, Poly, Rect, Shape } from './shapes.js';

/** Names of symbologies in the truth, and zint's options for each. */
const OPTIONS = {
  code128: ['-b', '20', '--notext'],
  'gs1-128': ['-b', '16', '--notext'],
  itf: ['-b', '3', '--notext'],
  'itf-14': ['-b', '89', '--notext'],
  code39: ['-b', '8', '--notext'],
  ean13: ['-b', '13', '--notext'],
  datamatrix: ['-b', '71', '--square'],
  'gs1-datamatrix': ['-b', '71', '--square', '--gs1'],
  qr: ['-b', '58', '--secure=2'],
  pdf417: ['-b', '55', '--cols=6'],
  maxicode: ['-b', '57', '--mode=4'],
  aztec: ['-b', '92'],
} as const;
export type Symbology = keyof typeof OPTIONS;
export interface Symbol {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
}

const number = (text: string, name: string): number => Number(new RegExp(`\\b${name}="([-\\d.]+)"`).exec(text)?.[1] ?? Number.NaN);
const INK = '#000000';
const known = new Map<string, Symbol>();

/** A symbol in zint's own units, as it draws it to SVG. `data` of the GS1 kinds has its identifiers in square brackets. */
export function symbol(symbology: Symbology, data: string): Symbol {
  const key = `${symbology} ${data}`;
  const before = known.get(key);
  if (before) return before;
  const svg = execFileSync('zint', [...OPTIONS[symbology], '-d', data, '--filetype=SVG', '--direct', '--werror'], { encoding: 'utf8' });
  const shapes: Shape[] = [];
  for (const [tag] of svg.matchAll(/<(?:rect|path|circle)\b[^>]*>/g)) {
    if (tag.startsWith('<rect')) {
      if (tag.includes('#FFFFFF')) continue;
      const rect: Rect = {
        kind: 'rect',
        x: number(tag, 'x'),
        y: number(tag, 'y'),
        width: number(tag, 'width'),
        height: number(tag, 'height'),
        fill: INK,
        line: 0,
        stroke: INK,
      };
      shapes.push(rect);
    } else if (tag.startsWith('<path')) {
      const points = [...tag.matchAll(/([-\d.]+) ([-\d.]+)/g)].map((pair): [number, number] => [Number(pair[1]), Number(pair[2])]);
      const poly: Poly = { kind: 'poly', points, fill: INK };
      shapes.push(poly);
    } else {
      // A ring: white laid on black. They come from the outermost inwards.
      const at: Disc['at'] = [number(tag, 'cx'), number(tag, 'cy')];
      const [radius, half] = [number(tag, 'r'), number(tag, 'stroke-width') / 2];
      const discs: Disc[] = [
        { kind: 'disc', at, radius: radius + half, fill: INK },
        { kind: 'disc', at, radius: radius - half, fill: '#ffffff' },
      ];
      shapes.push(...discs);
    }
  }
  const made = { width: number(svg, 'width'), height: number(svg, 'height'), shapes };
  known.set(key, made);
  return made;
}

/** Identifiers whose values have a length known beforehand: no separator follows them (GS1 General Specifications). */
const FIXED = /^(?:0[0-4]|1[1-9]|20|3[1-6]|41)/;

/** What a reader of the symbol gives: a GS1 string without brackets, a separator (29) behind values of free length. */
export function readText(symbology: Symbology, data: string): string {
  if (symbology === 'itf-14' || symbology === 'ean13') return data + checkDigit(data);
  if (!symbology.startsWith('gs1-')) return data;
  const fields = [...data.matchAll(/\[(\d+)\]([^[]*)/g)].map((match) => [match[1] ?? '', match[2] ?? ''] as const);
  return fields.map(([ai, value], index) => ai + value + (index < fields.length - 1 && !FIXED.test(ai) ? '\u001d' : '')).join('');
}

/** The modulo 10 check digit of GS1 numbers. */
export function checkDigit(digits: string): string {
  let sum = 0;
  for (const [index, digit] of Array.from(digits).reverse().entries()) sum += Number(digit) * (index % 2 === 0 ? 3 : 1);
  return String((10 - (sum % 10)) % 10);
}
