import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import { isPartOfBill } from '../../src/locating/bill-part.js';
import type { SaidName } from '../../src/locating/kind-of-words.js';
import { saidIn } from '../../src/locating/kind-of-words.js';
import type { PageFacts, SaidCandidate } from '../../src/locating/page-facts.js';
import { survey } from '../../src/locating/survey.js';
import type { Code, SourcePage } from '../../src/reading/source.js';
import type { Phrase } from '../../src/reading/word-lines.js';
import { drawnPage } from '../reading/drawn-page.js';
import { code128 } from '../samples/code-art.js';
import { Drawing } from '../samples/drawing.js';
import { mediaNamed } from '../steps/on-sample.js';

const BOX: Box = { x: 40, y: 100, width: 500, height: 260 };
const BARS: Box = { x: 60, y: 300, width: 160, height: 36 };
const at = (x: number, y: number, text: string): Phrase => ({
  text,
  box: { x, y, width: text.length * 5, height: 10 },
  turn: 0,
  fontSize: 10,
});
const ROWS = [at(60, 120, '2'), at(100, 120, 'Bud vase'), at(60, 140, '1'), at(100, 140, 'Ramen bowl')];
const NUMBER = at(80, 340, '978-8980 039');
const code = (text: string): Code => ({ bytes: Buffer.from(text).toString('hex'), symbology: 'Code 128' }) as Code;

interface Differs {
  readonly phrases?: readonly Phrase[];
  readonly codes?: readonly Code[];
  readonly kind?: SaidName['kind'];
  readonly edge?: SaidCandidate['edge'];
  readonly images?: readonly Box[];
}

function isBill({
  phrases = [...ROWS, NUMBER],
  codes = [code('978-8980039')],
  kind = 'invoice',
  edge = 'ink',
  images = [],
}: Differs = {}): boolean {
  const page = { images: () => images.map((box) => ({ box })) } as unknown as SourcePage;
  const facts: PageFacts = { page, blobs: [], phrases, readCodes: () => Promise.resolve([]) };
  const candidate: SaidCandidate = {
    box: BOX,
    edge,
    codes: [{ kind: 'linear', box: BARS, run: 'level' }],
    score: 0.8,
    evidence: [],
    said: saidIn(phrases, BOX),
  };
  return isPartOfBill(candidate, codes, { kind, words: 'invoice', heading: true }, facts);
}

describe('a part of a bill', () => {
  it('is its table with its number in bars, written out below them', () => {
    expect(isBill()).toBe(true);
    expect(isBill({ images: [{ x: 58, y: 298, width: 164, height: 40 }] })).toBe(true);
  });

  it.each<[string, Differs]>([
    ['on a page of instructions', { kind: 'instructions' }],
    ['in a frame of its own', { edge: 'frame' }],
    ['with two codes', { codes: [code('978-8980039'), code('420')] }],
    ['with a code that could not be read', { codes: [] }],
    ['with a number that is not written at its bars', { phrases: [...ROWS, at(80, 200, '978-8980 039')] }],
    ['without items', { phrases: [NUMBER] }],
    ['with a word of a label', { phrases: [...ROWS, NUMBER, at(300, 300, 'Ship to')] }],
    ['with an address', { phrases: [...ROWS, NUMBER, at(300, 300, '14 Sample Lane'), at(300, 313, 'Larch Halt EX 00187')] }],
    ['with bars in a picture as large as a label', { images: [{ x: 50, y: 150, width: 200, height: 300 }] }],
  ])('is none %s', (_, differs) => {
    expect(isBill(differs)).toBe(false);
  });

  it('does not hold the page that calls itself a bill', async () => {
    const d = new Drawing(612, 792).text(60, 100, 'Invoice', { size: 24 });
    d.block(60, 240, ['2', '1', '4'], { size: 11 }, 2.4);
    d.block(120, 240, ['Bud vase, celadon', 'Ramen bowl, tenmoku', 'Salt pig'], { size: 11 }, 2.4);
    d.block(500, 240, ['54.00', '31.50', '28.00'], { size: 11 }, 2.4);
    for (const y of [220, 248, 274, 300]) d.line(60, y, 550, y, 1);
    d.bars(code128('978-8980039'), 160, 345, 1.2, 36).text(130, 376, '978-8980039', { size: 9 });
    const page = await drawnPage(d);
    const seen = await survey(page, mediaNamed('4x6in'), (box) => page.codes(box, 203 / 72));
    expect(seen).toMatchObject({ kind: 'named', name: { kind: 'invoice' } });
  });
});
