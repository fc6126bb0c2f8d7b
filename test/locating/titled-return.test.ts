import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import { itemRows } from '../../src/locating/item-rows.js';
import { said } from '../../src/locating/kind-of-words.js';
import { pageReturn, titledReturn } from '../../src/locating/titled-return.js';
import { phrasesOf } from '../../src/reading/word-lines.js';
import { drawnPage } from '../reading/drawn-page.js';
import { Drawing } from '../samples/drawing.js';

describe('the title of a page with one label', () => {
  const label: Box = { x: 40, y: 100, width: 288, height: 432 };
  const returned = async (draw: (page: Drawing) => unknown): Promise<string | undefined> => {
    const page = new Drawing(612, 792);
    draw(page);
    page.block(360, 300, ['Wrap the mugs in paper', 'and close the box well.', 'Give it to the driver.'], { size: 9 });
    const phrases = phrasesOf((await drawnPage(page)).words());
    return pageReturn([label], phrases, said(phrases).names, itemRows(phrases)?.box);
  };

  it.each(['RETOUR', 'Retoure', 'BON DE RETOUR', 'Return label', 'Etichetta di reso', 'ZWROT', 'Palautus', 'Devolução', 'Vrácení'])(
    'makes it a return label: %s',
    async (title) => {
      expect(await returned((d) => d.text(40, 40, title, { size: 16 }))).toBeDefined();
    },
  );

  it.each([
    'Return address',
    'If undelivered return to',
    'Rücksendeadresse',
    'Retour à l’expéditeur',
    'Return policy',
    'Return label enclosed',
  ])('makes it none: %s', async (title) => {
    expect(await returned((d) => d.text(40, 40, title, { size: 16 }))).toBeUndefined();
  });

  it('says nothing as a section of a slip, below its title or its items', async () => {
    const section = (d: Drawing): Drawing => d.text(40, 740, 'Rücksendung', { size: 14 });
    expect(await returned(section)).toBe('rucksendung');
    expect(await returned((d) => section(d).text(40, 570, 'Lieferschein', { size: 14 }))).toBeUndefined();
    const items = (d: Drawing): Drawing =>
      section(d).text(40, 600, '2').text(90, 600, 'Becher, blau').text(40, 620, '1').text(90, 620, 'Schale, weiß');
    expect(await returned(items)).toBeUndefined();
  });

  it('counts beside a slip where it stands close to the label', async () => {
    const both = (y: number): Promise<string | undefined> =>
      returned((d) => d.text(40, 40, 'Packing slip', { size: 22 }).text(40, y, 'Return label', { size: 12 }));
    expect(await both(92)).toBe('return label');
    expect(await both(700)).toBeUndefined();
  });
});

describe('the title of one of several labels', () => {
  const first: Box = { x: 40, y: 40, width: 432, height: 288 };
  const second: Box = { x: 40, y: 440, width: 432, height: 288 };
  const titled = async (x: number, y: number, words = 'Return label'): Promise<readonly (string | undefined)[]> => {
    const page = await drawnPage(new Drawing(612, 792).text(x, y, words, { size: 14 }));
    const phrases = phrasesOf(page.words());
    return [titledReturn(first, [second], phrases), titledReturn(second, [first], phrases)];
  };

  it('makes the label next to it a return label, and no other', async () => {
    expect(await titled(40, 430)).toEqual([undefined, 'return label']);
    expect(await titled(40, 345)).toEqual(['return label', undefined]);
    expect(await titled(40, 430, 'Label for the parcel')).toEqual([undefined, undefined]);
    expect(await titled(40, 430, 'Retour / Retoure')).toEqual([undefined, 'Retour / Retoure']);
    expect(await titled(40, 430, 'Return label for whoever bought it')).toEqual([undefined, 'Return label for whoever bought it']);
    expect(await titled(40, 430, 'Return label for thirty days, free of charge.')).toEqual([undefined, undefined]);
    expect(await titled(40, 430, 'Retour innerhalb von 14 Tagen')).toEqual([undefined, undefined]);
  });

  it('says nothing far from both, in the middle, or on one of them', async () => {
    expect(await titled(40, 780)).toEqual([undefined, undefined]);
    expect(await titled(40, 390)).toEqual([undefined, undefined]);
    expect(await titled(60, 500)).toEqual([undefined, undefined]);
  });
});
