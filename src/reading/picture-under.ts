import { area, contains, intersection, type Box } from '../geometry/box.js';
import type { PictureUnder, PlacedImage } from './source.js';

/** A picture must cover this much of a region to be what the region shows: a margin of paper around it may be missing. */
const COVER = 0.8;
/** Both directions must have the same resolution within this share, or pixels are not square on the page. */
const SQUARE = 0.01;

/** The one picture that a region shows, or undefined when it shows none, several, or one that isn't straight. */
export function pictureUnder(images: readonly PlacedImage[], region: Box): PictureUnder | undefined {
  const shown = images.filter((image) => {
    const shared = intersection(image.box, region);
    return shared !== undefined && area(shared) > 0.02 * area(region);
  });
  const [image] = shown;
  if (!image || shown.length > 1 || image.turn === undefined) return undefined;
  const shared = intersection(image.box, region);
  if (!shared || (area(shared) < COVER * area(region) && !contains(image.box, region))) return undefined;
  const sideways = image.turn % 180 === 90;
  const across = (sideways ? image.pixelHeight : image.pixelWidth) / image.box.width;
  const down = (sideways ? image.pixelWidth : image.pixelHeight) / image.box.height;
  if (!(across > 0) || Math.abs(across / down - 1) > SQUARE) return undefined;
  return { pixelsPerPt: across, origin: { x: image.box.x, y: image.box.y } };
}
