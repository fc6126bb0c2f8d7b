import { formatSize, PT_PER_IN, ptToIn } from '../geometry/length.js';
import { MEDIA_NAMES, parseMedia } from '../geometry/media.js';

/** What is known of a picture's true size. */
export interface PictureSize {
  /** Pixels per inch of the page. */
  readonly dpi: number;
  /** What was put right or assumed, as one sentence; undefined when the file's own data were taken. */
  readonly note: string | undefined;
}

/**
 * Resolutions that labels are drawn at, the likelier first: heads of 8 and 12 dots/mm and the drivers' grids beside them
 * (handbook section 1.3), office printers and scanners, screens and twice screens. Not exhaustive: only used to explain a
 * picture whose own data make no sense.
 */
const RESOLUTIONS = [203.2, 203, 300, 304.8, 600, 609.6, 200, 150, 192, 144, 96, 72, 400, 240];

/** Pixels are whole and writers round differently: 4 in at 8 dots/mm is 812.8 dots (handbook section 1.1). */
const MEDIA_MATCH = 0.006;

/** Up to here a resolution may be a program's filler that nobody chose: 72 and 96 are. */
const FILLER = 100;

/** The longest and shortest sides of a page that a studio meets (in): up to tabloid and A3, down to a small label. */
const LONGEST = { long: 17.1, short: 11.8 };
const SHORTEST = 0.5;

/**
 * The resolution at which a picture of `width` × `height` pixels has its true size. `given` (dots per inch) is what the file
 * says, undefined when it says nothing. It is believed when the size that it gives is a page's; when it contradicts the
 * picture, the resolution at which the picture has exactly the size of a known medium is taken instead.
 */
export function pictureSize(width: number, height: number, given: number | undefined): PictureSize {
  const size = (dpi: number): string => formatSize((width / dpi) * PT_PER_IN, (height / dpi) * PT_PER_IN);
  const said = given === undefined ? 'the file names no resolution' : `the file says ${given} dpi, which makes ${size(given)}`;

  if (given !== undefined && mediaError(width, height, given) <= MEDIA_MATCH) return { dpi: exact(width, height, given), note: undefined };
  if (given !== undefined && given > FILLER && isPlausible(width, height, given))
    return { dpi: exact(width, height, given), note: undefined };

  const known = bestKnown(width, height);
  if (known !== undefined) return { dpi: known, note: `${said}; taken as ${known} dpi, ${size(known)}` };
  if (given !== undefined && isPlausible(width, height, given))
    return { dpi: given, note: `${said}; that fits no known paper and may be wrong` };
  const assumed = RESOLUTIONS.slice(1).find((dpi) => isPlausible(width, height, dpi)) ?? given ?? 203;
  return { dpi: assumed, note: `${said}; ${assumed === given ? 'kept' : `${assumed} dpi assumed, ${size(assumed)}`}, which may be wrong` };
}

/**
 * The resolution at which a picture has exactly the size of a known medium, where the one that is given is a program's filler and
 * makes no known medium; undefined where the given one may stand. `note` says what was put right.
 */
export function knownResolution(width: number, height: number, given: number): { readonly dpi: number; readonly note: string } | undefined {
  if (given > FILLER || mediaError(width, height, given) <= MEDIA_MATCH) return undefined;
  const dpi = bestKnown(width, height);
  const size = (at: number): string => formatSize((width / at) * PT_PER_IN, (height / at) * PT_PER_IN);
  return dpi === undefined
    ? undefined
    : { dpi, note: `its picture of ${given.toFixed(0)} dpi makes ${size(given)}; taken as ${dpi} dpi, ${size(dpi)}` };
}

/** Files round 203.2 to 203 and 304.8 to 305: the media that the picture fits tells which was meant. */
function exact(width: number, height: number, given: number): number {
  const metric = given === 203 ? 203.2 : given === 305 ? 304.8 : given;
  return mediaError(width, height, metric) < mediaError(width, height, given) ? metric : given;
}

function bestKnown(width: number, height: number): number | undefined {
  let best: number | undefined;
  let bestError = MEDIA_MATCH;
  for (const dpi of RESOLUTIONS) {
    const error = mediaError(width, height, dpi);
    if (error < bestError) {
      best = dpi;
      bestError = error;
    }
  }
  return best;
}

/** How far the picture is at best from a known medium, in either direction, as a share of the side that is farther off. */
function mediaError(width: number, height: number, dpi: number): number {
  const w = (width / dpi) * PT_PER_IN;
  const h = (height / dpi) * PT_PER_IN;
  let best = Infinity;
  for (const name of MEDIA_NAMES) {
    const media = parseMedia(name);
    if (!media) continue;
    const upright = Math.max(Math.abs(w / media.width - 1), Math.abs(h / media.height - 1));
    const sideways = Math.max(Math.abs(w / media.height - 1), Math.abs(h / media.width - 1));
    best = Math.min(best, upright, sideways);
  }
  return best;
}

function isPlausible(width: number, height: number, dpi: number): boolean {
  const long = ptToIn((Math.max(width, height) / dpi) * PT_PER_IN);
  const short = ptToIn((Math.min(width, height) / dpi) * PT_PER_IN);
  return long <= LONGEST.long && short <= LONGEST.short && short >= SHORTEST;
}
