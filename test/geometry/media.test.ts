import { expect, it } from 'vitest';
import { MEDIA_NAMES, mediaNamed, parseMedia, pwgName } from '../../src/geometry/media.js';

it.each([
  ['half-letter', 'na_invoice_5.5x8.5in'],
  ['na_index-4x6_4x6in', 'na_index-4x6_4x6in'],
  ['4x6.75in', 'custom_4x6.75in_4x6.75in'],
  ['101.6x152.4mm', 'custom_4x6in_4x6in'],
  ['57.5x32mm', 'custom_57.5x32mm_57.5x32mm'],
  ['4.1x6in', 'custom_104.14x152.4mm_104.14x152.4mm'],
])('%s is %s by PWG 5101.1', (name, pwg) => {
  expect(pwgName(mediaNamed(name))).toBe(pwg);
});

it('a name too long for its field is made from the size', () => {
  const name = `om_${'x'.repeat(60)}_100x150mm`;
  expect(pwgName(mediaNamed(name))).toBe('custom_100x150mm_100x150mm');
});

it.each(MEDIA_NAMES)('the name made for %s means the same size', (name) => {
  const media = mediaNamed(name);
  const again = parseMedia(pwgName(media));
  expect(again?.width).toBeCloseTo(media.width, 1);
  expect(again?.height).toBeCloseTo(media.height, 1);
});
