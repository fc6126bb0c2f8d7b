import { expect, it } from 'vitest';
import { putRight } from '../../src/locating/misread.js';
import { word } from './judged.js';

const somewhere = { x: 0, y: 0, width: 40, height: 10 };
const read = (...texts: string[]): readonly string[] => putRight(texts.map((text) => word(text, somewhere))).map(({ text }) => text);

it('puts right one misread letter of a word that papers call themselves by', () => {
  expect(read('dépét', 'Racipient:', 'Invaice')).toEqual(['depot', 'recipient:', 'invoice']);
});

it('leaves every other word, and those that are right', () => {
  const texts = ['Invoice', 'RECIPIENT', 'Larchgate', 'Invxxce', 'ta', '5550142', '—', 'Rue'];
  expect(read(...texts)).toEqual(texts);
});
