import { describe, expect, it } from 'vitest';
import { isRunningText } from '../../src/locating/running-text.js';
import type { Code } from '../../src/reading/source.js';
import { phrasesOf } from '../../src/reading/word-lines.js';
import { drawnPage } from '../reading/drawn-page.js';
import { Drawing } from '../samples/drawing.js';
import { barsAt } from './judged.js';

const BOX = { x: 36, y: 36, width: 290, height: 270 };
const BARS = barsAt({ x: 40, y: 210, width: 150, height: 40 });
const code = (text: string): Code => ({ bytes: Buffer.from(text).toString('hex'), symbology: 'Code 128' }) as Code;
const LINES = [
  'Collect from',
  'Slip Studio',
  '4 Sample Lane',
  'Larch Halt EX 00187',
  'Deliver to',
  'Ada Example',
  '12 Sample Street',
  'Larch Halt EX 00188',
];

/** A booking: a title, lines of one size, one code. */
const booking = (title = 18, page = new Drawing(612, 792)): Drawing => {
  page.text(40, 50, 'Your booking', { size: title });
  page.block(40, 90, LINES, { size: 10 }, 1.3);
  return page;
};

async function isText(
  d: Drawing,
  {
    edge = 'ink',
    codes = [BARS],
    read = [code('COL555014277')],
    box = BOX,
  }: Partial<{ edge: 'ink' | 'frame' | 'picture'; codes: readonly (typeof BARS)[]; read: readonly Code[]; box: typeof BOX }> = {},
): Promise<boolean> {
  const page = await drawnPage(d);
  return isRunningText({ box, edge, codes, score: 1, evidence: [] }, read, page, phrasesOf(page.words()));
}

describe('isRunningText', () => {
  it('is a booking with one code, all of it but its title in one size, in a frame or not', async () => {
    expect(await isText(booking())).toBe(true);
    expect(await isText(booking(10))).toBe(true);
    const framed = (): Drawing => booking().frame(BOX.x, BOX.y, BOX.width, BOX.height, 1);
    expect(await isText(framed(), { edge: 'frame' })).toBe(true);
  });

  it('has what its matrix code says below it in type as large as there is room, and nothing else as large', async () => {
    const shown = { read: [{ ...code('RES-5550142;77'), symbology: 'QR' } as const] };
    expect(await isText(booking().text(40, 280, 'RES-5550142', { size: 24 }), shown)).toBe(true);
    expect(await isText(booking().text(40, 280, 'RES-5550999', { size: 24 }), shown)).toBe(false);
    expect(await isText(booking().text(40, 280, 'RES-5550142', { size: 24 }), { read: [code('RES-5550142')] })).toBe(false);
  });

  it.each<[string, () => Drawing, Parameters<typeof isText>[1]]>([
    ['type of a sort code', () => booking().text(220, 120, 'KIN', { size: 30 }), {}],
    ['lines of three sizes', () => booking().text(40, 260, 'QX2 44', { size: 14 }).text(40, 285, 'Zone 4', { size: 14 }), {}],
    ['a second code', () => booking(), { codes: [BARS, BARS] }],
    ['two numbers that were read', () => booking(), { read: [code('COL555014277'), code('EX00188')] }],
    ['a picture', () => booking(), { edge: 'picture' }],
    ["paper of a label's size", () => booking(18, new Drawing(288, 432)), {}],
    ['rules inside its frame', () => booking().frame(36, 36, 290, 270, 1).line(36, 140, 326, 140, 1), { edge: 'frame' }],
    ["a frame of a label's size", () => booking(), { edge: 'frame', box: { x: 36, y: 36, width: 288, height: 432 } }],
  ])('is not %s', async (_, draw, more) => {
    expect(await isText(draw(), more)).toBe(false);
  });
});
