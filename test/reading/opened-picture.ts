import { expect } from 'vitest';
import type { PictureLimits } from '../../src/reading/limits.js';
import { openImage } from '../../src/reading/open-image.js';
import type { Picture, SourceDocument } from '../../src/reading/source.js';
import type { Grey } from '../faults/inputs/pictures.js';

/** Opens a picture that must open. */
export async function opened(bytes: Uint8Array, limits?: PictureLimits): Promise<SourceDocument> {
  const result = await openImage(bytes, limits);
  if ('refused' in result) throw new Error(`refused: ${result.refused.code}`);
  return result;
}

export function pictureOf(document: SourceDocument, page = 1): Picture {
  const source = document.pressSource(page);
  if (source.kind !== 'picture') throw new Error('must be a picture');
  return source.picture;
}

/** The picture is grey, of two levels, and has exactly these samples. */
export const expectPixels = (picture: Picture, expected: Grey): void => {
  expect([picture.width, picture.height, picture.channels, picture.bilevel]).toEqual([expected.width, expected.height, 1, true]);
  expect(Buffer.compare(picture.data, expected.data)).toBe(0);
};
