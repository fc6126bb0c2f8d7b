import { expect, it } from 'vitest';
import { withoutWholePictures } from '../../src/locating/whole-picture.js';
import { barsIn, inches, judged } from './judged.js';

const page = { width: 288, height: 576 };
const picture = judged(inches(0, 0, 4, 8), 0.9, { edge: 'picture' });
const frame = judged(inches(0.1, 0.1, 3.8, 5.8), 0.8);

it('a picture that is the whole page gives way to the frame of a label in it', () => {
  expect(withoutWholePictures([picture, frame], page)).toEqual([frame]);
});

it.each([
  ['a picture on a larger page', [picture, frame], { width: 612, height: 792 }],
  ['a frame smaller than labels are', [picture, judged(inches(0.1, 0.1, 3.8, 3), 0.8)], page],
  ['a frame that is no label by its score', [picture, judged(frame.box, 0.5)], page],
  ['codes outside the frame', [{ ...picture, codes: [...picture.codes, barsIn(inches(0, 6, 4, 2))] }, frame], page],
  ['ink instead of a frame', [picture, { ...frame, edge: 'ink' as const }], page],
])('but not for %s', (_, all, size) => {
  expect(withoutWholePictures(all, size)).toEqual(all);
});
