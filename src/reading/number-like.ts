import { textOf } from './code-text.js';
import type { Code } from './source.js';

/** At least so many characters, and so many of them digits; tickets, vouchers and most order numbers have fewer (common practice, no source). */
const LEAST = { characters: 8, digits: 6 };

/** Whether what a code says looks like a parcel's number: long, mostly digits, no address of a web page. Which number it is, is for others to say. */
export function isNumberLike(code: Pick<Code, 'bytes'>, { characters, digits } = LEAST): boolean {
  const text = textOf(code);
  return text.length >= characters && text.replaceAll(/\D/g, '').length >= digits && !/https?:|www\./i.test(text);
}
