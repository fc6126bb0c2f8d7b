import { describe, expect, it } from 'vitest';
import { dotsPerPt, gridOf } from '../../src/geometry/grid.js';
import { mmToPt, ptToIn, ptToMm } from '../../src/geometry/length.js';
import { isMediaSize, MEDIA_NAMES, parseMedia } from '../../src/geometry/media.js';

/**
 * Handbook section 1.1: mm and in are ISO 216 and ANSI/ASME Y14.1 via cups/pwg-media.c (VERIFIED-S); pt and dots COMPUTED.
 * Section 1.2: names of PWG 5101.1-2013 (VERIFIED-S, the same file); 4x8in has none.
 */
const ROWS = [
  ['4x6in', [101.6, 152.4], [4, 6], [288, 432], [812.8, 1219.2], [1200, 1800], 'na_index-4x6_4x6in'],
  ['4x6.75in', [101.6, 171.45], [4, 6.75], [288, 486], [812.8, 1371.6], [1200, 2025], undefined],
  ['4x8in', [101.6, 203.2], [4, 8], [288, 576], [812.8, 1625.6], [1200, 2400], undefined],
  ['100x150mm', [100, 150], [3.937, 5.906], [283.465, 425.197], [800, 1200], [1181.1, 1771.7], 'om_small-photo_100x150mm'],
  ['a6', [105, 148], [4.134, 5.827], [297.638, 419.528], [840, 1184], [1240.2, 1748.0], 'iso_a6_105x148mm'],
  ['a5', [148, 210], [5.827, 8.268], [419.528, 595.276], [1184, 1680], [1748.0, 2480.3], 'iso_a5_148x210mm'],
  ['a4', [210, 297], [8.268, 11.693], [595.276, 841.89], [1680, 2376], [2480.3, 3507.9], 'iso_a4_210x297mm'],
  ['letter', [215.9, 279.4], [8.5, 11], [612, 792], [1727.2, 2235.2], [2550, 3300], 'na_letter_8.5x11in'],
  ['half-letter', [139.7, 215.9], [5.5, 8.5], [396, 612], [1117.6, 1727.2], [1650, 2550], 'na_invoice_5.5x8.5in'],
  ['legal', [215.9, 355.6], [8.5, 14], [612, 1008], [1727.2, 2844.8], [2550, 4200], 'na_legal_8.5x14in'],
] as const;

const near = (actual: number, expected: number, digits: number): void => {
  expect(Math.abs(actual - expected)).toBeLessThanOrEqual(0.5001 * 10 ** -digits);
};

describe('media sizes (handbook section 1.1)', () => {
  it.each(ROWS)('%s in mm, in, pt and dots', (name, mm, inches, pt, dots8, dots300) => {
    const media = parseMedia(name);
    if (!media) throw new Error(`${name} is unknown`);
    [media.width, media.height].forEach((side, i) => {
      near(ptToMm(side), mm[i] ?? 0, 6);
      near(ptToIn(side), inches[i] ?? 0, 3);
      near(side, pt[i] ?? 0, 3);
      near(side * dotsPerPt(gridOf('8dpmm')), dots8[i] ?? 0, 1);
      near(side * dotsPerPt(gridOf('300dpi')), dots300[i] ?? 0, 1);
    });
  });

  it('every size of the table is checked here', () => {
    expect(MEDIA_NAMES).toEqual(ROWS.map(([name]) => name));
  });

  it.each(ROWS.filter((row) => row[6] !== undefined))(
    '%s has its PWG 5101.1 name (handbook section 1.2)',
    (name, _mm, _in, _pt, _8, _300, pwg) => {
      const [byName, byPwg] = [parseMedia(name), parseMedia(pwg)];
      expect(byPwg && [byPwg.width, byPwg.height]).toEqual(byName && [byName.width, byName.height]);
    },
  );

  // Grammar class_name_WIDTHxLENGTHunit: VERIFIED-S (pwgFormatSizeName); these names: VERIFIED-S.
  it.each([
    ['na_index-3x5_3x5in', 3 * 72, 5 * 72],
    ['na_index-4x6-ext_6x8in', 6 * 72, 8 * 72],
    ['om_wide-photo_100x200mm', mmToPt(100), mmToPt(200)],
    ['custom_4x8in_4x8in', 4 * 72, 8 * 72],
    ['oe_4x8-label_4x8in', 4 * 72, 8 * 72],
    ['roll_min_0.25x0.25in', 18, 18],
  ])('%s is read by the rule of the names', (name, width, height) => {
    expect(parseMedia(name)).toMatchObject({ width, height });
  });

  it('whole-point files of A4 and A6 are still A4 and A6 (COMPUTED)', () => {
    for (const [name, width, height] of [
      ['a4', 595, 842],
      ['a6', 298, 420],
    ] as const) {
      const media = parseMedia(name);
      expect(media && isMediaSize(media, width, height)).toBe(true);
      expect(media && isMediaSize(media, height, width)).toBe(true);
      expect(media && isMediaSize(media, width + 2, height)).toBe(false);
    }
  });
});
