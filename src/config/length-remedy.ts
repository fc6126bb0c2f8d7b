import { parseLength } from '../geometry/length.js';
import { quote } from './words.js';

/** How people write units, and what is meant; `cm` is turned into mm. */
const SPELLINGS: Readonly<Record<string, { readonly unit: string; readonly factor: number }>> = {
  '"': { unit: 'in', factor: 1 },
  '”': { unit: 'in', factor: 1 },
  inch: { unit: 'in', factor: 1 },
  inches: { unit: 'in', factor: 1 },
  cm: { unit: 'mm', factor: 10 },
  centimeters: { unit: 'mm', factor: 10 },
  millimeter: { unit: 'mm', factor: 1 },
  millimeters: { unit: 'mm', factor: 1 },
  millimetres: { unit: 'mm', factor: 1 },
  point: { unit: 'pt', factor: 1 },
  points: { unit: 'pt', factor: 1 },
  dot: { unit: 'dots', factor: 1 },
  px: { unit: 'dots', factor: 1 },
  pixel: { unit: 'dots', factor: 1 },
  pixels: { unit: 'dots', factor: 1 },
};

/** What to write instead of a text that is no length: the same number with the unit that was meant, else with each unit. */
export function lengthRemedy(text: string): string {
  const match = /^(-?(?:\d+(?:[.,]\d+)?|[.,]\d+))\s*(\D*)$/.exec(text.trim());
  if (!match) return 'Write a number and its unit: `10mm`, `4in`, `12pt` or `24dots`.';
  const number = (match[1] ?? '').replace(',', '.');
  const unit = (match[2] ?? '').trim().toLowerCase();
  const spelling = Object.hasOwn(SPELLINGS, unit) ? SPELLINGS[unit] : undefined;
  if (spelling) return `Write ${quote(`${+(Number(number) * spelling.factor).toFixed(4)}${spelling.unit}`)}.`;
  const same = `${number}${unit}`;
  if (unit !== '' && parseLength(same)) return `Write ${quote(same)}.`;
  return `Write it with its unit: ${['mm', 'in', 'pt'].map((each) => quote(`${number}${each}`)).join(', ')} or ${quote(`${number}dots`)}.`;
}
