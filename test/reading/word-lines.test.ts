import { describe, expect, it } from 'vitest';
import type { Turn } from '../../src/geometry/placement.js';
import type { Word } from '../../src/reading/source.js';
import { gapBefore, phrasesOf, wordLines } from '../../src/reading/word-lines.js';
import { drawnPage } from './drawn-page.js';
import { Drawing } from '../samples/drawing.js';

const word = (text: string, x: number, y: number, fontSize = 10, turn: Word['turn'] = 0): Word => ({
  text,
  box: { x, y, width: text.length * fontSize * 0.5, height: fontSize },
  turn,
  fontSize,
});
const texts = (words: readonly Word[]): string[] => wordLines(words).map((line) => line.words.map(({ text }) => text).join(' '));

/** Words turned about the page's corner, as a turned page has them. */
function turned({ box: { x, y, width, height }, ...rest }: Word, turn: Turn): Word {
  const box = {
    0: { x, y, width, height },
    90: { x: 800 - y - height, y: x, width: height, height: width },
    180: { x: 800 - x - width, y: 800 - y - height, width, height },
    270: { x: y, y: 800 - x - width, width: height, height: width },
  }[turn];
  return { ...rest, box, turn };
}

describe('wordLines', () => {
  const words = [word('below', 10, 30), word('second', 60, 10), word('first', 10, 10), word('third', 120, 11)];

  it('puts words on one baseline into reading order, lines from the top', () => {
    expect(texts(words)).toEqual(['first second third', 'below']);
    expect(texts([])).toEqual([]);
  });

  it('keeps lines of one column apart where lines of other type beside them stand between', () => {
    const small = [word('street', 10, 12.2, 8), word('town', 10, 20, 8)];
    // In two steps of less than half a line each: a letter that hangs below its line, then the next column.
    expect(texts([...small, word('yard', 100, 13.5), word('lane', 130, 15)])).toEqual(['street yard lane', 'town']);
    // A line printed twice to make it bold stays one.
    expect(texts([word('bold', 10, 10), word('bold', 10.3, 10.3)])).toEqual(['bold bold']);
  });

  it.each([90, 180, 270] as const)('reads the same on a page turned by %i°', (turn) => {
    const lines = wordLines(words.map((each) => turned(each, turn)));
    expect(lines.map((line) => line.words.map(({ text }) => text).join(' '))).toEqual(['first second third', 'below']);
    expect(lines.every((line) => line.turn === turn)).toBe(true);
  });

  it('keeps directions of writing apart, and leaves slanted words out', () => {
    expect(texts([word('level', 10, 10), word('ladder', 60, 10, 10, 90), { ...word('slanted', 110, 10), turn: undefined }])).toEqual([
      'level',
      'ladder',
    ]);
  });

  it('takes type of two sizes on one baseline for one line, and close lines for two', () => {
    expect(texts([word('LARGE', 10, 10, 20), word('small', 120, 20, 10)])).toEqual(['LARGE small']);
    expect(texts([word('one', 10, 10), word('two', 10, 15.5)])).toEqual(['one', 'two']);
  });
});

describe('phrasesOf', () => {
  it('parts a line at gaps wider than 1.2 times the type', () => {
    const phrases = phrasesOf([word('Ship', 10, 10), word('to', 34, 10), word('Tracking', 57, 10)]);
    expect(phrases.map(({ text }) => text)).toEqual(['Ship to', 'Tracking']);
    expect(phrases[0]).toEqual({ text: 'Ship to', box: { x: 10, y: 10, width: 34, height: 10 }, turn: 0, fontSize: 10 });
    expect(phrasesOf([word('Ship', 10, 10), word('to', 41, 10)]).map(({ text }) => text)).toEqual(['Ship to']);
  });

  it('names the largest type of a phrase', () => {
    expect(phrasesOf([word('No', 10, 20, 8), word('17', 20, 10, 18)])).toMatchObject([{ text: 'No 17', fontSize: 18 }]);
  });

  it('closes up a word that is set with blanks between its letters', () => {
    const letters = (text: string) => text.split('').map((letter, at) => word(letter, 10 + at * 12, 10));
    expect(phrasesOf(letters('RETURN')).map(({ text }) => text)).toEqual(['RETURN']);
    expect(phrasesOf(letters('A1B2')).map(({ text }) => text)).toEqual(['A 1 B 2']);
  });

  it('has every word once, whatever the order', () => {
    const many = Array.from({ length: 60 }, (_, index) => word(`w${index}`, 10 + (index % 6) * 45, 10 + Math.floor(index / 6) * 14));
    const all = (words: readonly Word[]): string[] => phrasesOf(words).flatMap(({ text }) => text.split(' '));
    expect(all(many)).toEqual(many.map(({ text }) => text));
    expect(all(many.toReversed())).toEqual(all(many));
  });

  it('reads headings and cells off a page', async () => {
    const d = new Drawing(400, 200);
    d.text(20, 30, 'Packing slip', { size: 18 })
      .text(380, 30, 'Order 4711', { size: 10, align: 'right' })
      .text(20, 60, 'Ship to', { size: 8 });
    const phrases = phrasesOf((await drawnPage(d, 90)).words());
    expect(phrases.map(({ text, turn }) => `${text} ${turn}`)).toEqual(['Packing slip 90', 'Order 4711 90', 'Ship to 90']);
    expect(phrases[0]?.fontSize).toBeCloseTo(18, 0);
  });
});

describe('gapBefore', () => {
  it.each([0, 90, 180, 270] as const)('is in times the type, along the line, at %i°', (turn) => {
    const [a, b] = [turned(word('ab', 10, 10), turn), turned(word('cd', 35, 10), turn)];
    expect(gapBefore(b, a, turn)).toBeCloseTo(1.5, 6);
  });
});
