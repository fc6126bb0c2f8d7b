import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { faceFor } from '../../../src/press/type/faces.js';
import { ANY_HAN } from '../../../src/press/type/han.js';
import { outlineOf } from '../../../src/press/type/outline.js';
import { PageFont } from '../../../src/press/type/page-font.js';
import { writeTrueType } from '../../../src/press/type/truetype.js';

const require = createRequire(import.meta.url);
const { create } = require('@cantoo/fontkit') as typeof import('@cantoo/fontkit');

const clusters = (text: string, rtl = false) => faceFor(Array.from(text)[0] ?? '', 'regular', ANY_HAN)?.shape(text, rtl) ?? [];

describe('a written font', () => {
  it('draws the same outlines as the faces that they are from', () => {
    const shown = [...clusters('ÅgÇé'), ...clusters('ที่'), ...clusters('تبت', true), ...clusters('紙')];
    const bytes = writeTrueType([...shown.map((cluster) => ({ outline: outlineOf(cluster), advance: cluster.advance }))], {
      up: 1000,
      down: 300,
    });
    const font = create(bytes);
    if (!('numGlyphs' in font)) throw new Error('not a single font');
    expect([font.numGlyphs, font.unitsPerEm, font.ascent, font.descent]).toEqual([shown.length, 1000, 1000, -300]);
    shown.forEach((cluster, at) => {
      const glyph = font.getGlyph(at);
      expect(glyph?.advanceWidth).toBe(cluster.advance);
      const { x0, y0, x1, y1 } = outlineOf(cluster);
      const { minX, minY, maxX, maxY } = glyph?.cbox ?? {};
      expect([minX, minY, maxX, maxY]).toEqual([x0, y0, x1, y1]);
      const drawn = cluster.parts.reduce((sum, { id }) => sum + cluster.face.contours(id).flat().length, 0);
      expect(outlineOf(cluster).points).toBe(drawn);
    });
  });

  it('has sums as OpenType wants them: the whole file adds up to 0xB1B0AFBA', () => {
    const bytes = writeTrueType([...clusters('Abc').map((cluster) => ({ outline: outlineOf(cluster), advance: cluster.advance }))], {
      up: 1000,
      down: 300,
    });
    const view = new DataView(bytes.buffer);
    let sum = 0;
    for (let at = 0; at < bytes.length; at += 4) sum = (sum + view.getUint32(at)) >>> 0;
    expect(sum).toBe(0xb1b0afba);
  });
});

describe('the codes of a page font', () => {
  it('are one for the same shape and characters, from 1', () => {
    const font = new PageFont();
    const [a, b, again] = [clusters('a')[0], clusters('b')[0], clusters('aa')[0]];
    if (!a || !b || !again) throw new Error('nothing was shaped');
    expect([font.code(a), font.code(b), font.code(again)]).toEqual([1, 2, 1]);
    expect(font.advance(1)).toBe(a.advance);
  });

  it('are two for the same shape of other characters', () => {
    const font = new PageFont();
    const [a] = clusters('a');
    if (!a) throw new Error('nothing was shaped');
    expect(font.code({ ...a, key: `${a.key} other`, text: 'b' })).not.toBe(font.code(a));
  });
});
