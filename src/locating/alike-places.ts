import { bottom, contains, right, union, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import type { CodeLikeArea } from '../reading/code-like.js';
import type { Phrase } from '../reading/word-lines.js';
import { distance } from './judge.js';
import { isLabelSized } from './label-sizes.js';
import { addressesOn, FROM_TO } from './address-block.js';
import { NEXT_LINE } from './white.js';

/** Bars of labels of one sheet are of one size and stand at the same place of each, to this much, pt (3 mm). */
const SAME = mmToPt(3);
/** … the ink of whole labels is so to this much, pt (8 mm): lines of an address are more or fewer, longer or shorter. */
const ALIKE = mmToPt(8);
/** Bars, and so the distance of two places, are known to this much, pt. */
const SLACK = 4;
/** A sheet has no more labels across or along. */
const MOST = 4;

/**
 * The labels of a sheet that holds nothing else: rows of bars of one size stand at equal distances on it, and so does all other ink. The first label begins
 * with the first ink, each further one as far from it as its bars are from those of the first: so white inside a label is told from white between two. Pt;
 * empty where some ink fits into no place, or there is only one.
 * @param blobs ink without lines to cut or fold along
 */
export function alikePlaces(blobs: readonly Box[], codes: readonly CodeLikeArea[]): readonly Box[] {
  const all = union(blobs);
  const bars = codes.filter(({ kind }) => kind === 'linear').map(({ box }) => box);
  if (!all) return [];
  for (const first of bars) {
    const alike = bars.filter((each) => Math.abs(each.width - first.width) <= ALIKE && Math.abs(each.height - first.height) <= SAME);
    const [xs, ys] = [steps(alike.map(({ x }) => x)), steps(alike.map(({ y }) => y))];
    if (!xs || !ys || xs.count * ys.count < 2 || xs.count * ys.count < alike.length) continue;
    const places = placesOf(all, blobs, xs, ys);
    const labels = places.filter((place) => alike.some((each) => contains(place, each, SAME)));
    if (labels.length >= 2 && labels.length === places.length && labels.length === alike.length && areAlike(labels)) return labels;
  }
  return [];
}

/** What is on a page around the labels of a sheet. */
interface Around {
  readonly frames: readonly Box[];
  readonly blobs: readonly Box[];
  readonly codes: readonly CodeLikeArea[];
  readonly phrases: readonly Phrase[];
}

/** Whether each place holds a frame with all of its codes and addresses, apart from all else there by more than a line's white: then the frames are the labels, and a line of the page stands beside each. */
export function haveFrames(places: readonly Box[], { frames, blobs, codes, phrases }: Around): boolean {
  const isLabelOf = (frame: Box, place: Box): boolean =>
    contains(place, frame, SLACK) &&
    codes.every(({ box }) => !contains(place, box, SLACK) || contains(frame, box, SLACK)) &&
    addressesOn(frame, phrases) >= Math.min(FROM_TO, addressesOn(place, phrases)) &&
    blobs.every((blob) => !contains(place, blob, 1) || contains(frame, blob, SLACK) || distance(frame, blob) > NEXT_LINE);
  return places.length > 0 && places.every((place) => frames.some((frame) => isLabelOf(frame, place)));
}

interface Steps {
  readonly count: number;
  /** Pt from one place to the next; infinite where there is only one. */
  readonly pitch: number;
}

/** Values at equal distances; undefined where they are not. */
function steps(values: readonly number[]): Steps | undefined {
  const places: number[] = [];
  for (const value of [...values].sort((a, b) => a - b)) if (value - (places.at(-1) ?? -Infinity) > SAME) places.push(value);
  const [start = 0, next = Infinity] = places;
  const pitch = next - start;
  if (places.length > MOST || places.some((place, index) => index > 0 && Math.abs(place - start - index * pitch) > SAME)) return undefined;
  return { count: places.length, pitch };
}

/** The ink of each place that has some; none at all where ink reaches from one place into the next. */
function placesOf(all: Box, blobs: readonly Box[], xs: Steps, ys: Steps): readonly Box[] {
  const placeOf = (from: number, to: number, { pitch, count }: Steps): number | undefined => {
    if (count === 1) return 0;
    const at = Math.floor((from + SLACK) / pitch);
    return to - SLACK <= (at + 1) * pitch && at < count ? at : undefined;
  };
  const cells = new Map<number, Box[]>();
  for (const blob of blobs) {
    const across = placeOf(blob.x - all.x, right(blob) - all.x, xs);
    const along = placeOf(blob.y - all.y, bottom(blob) - all.y, ys);
    if (across === undefined || along === undefined) return [];
    const at = along * MOST + across;
    cells.set(at, [...(cells.get(at) ?? []), blob]);
  }
  return [...cells.values()].flatMap((ink) => union(ink) ?? []);
}

function areAlike(labels: readonly Box[]): boolean {
  const [first] = labels;
  return labels.every(
    (each) =>
      isLabelSized(each) && Math.abs(each.width - (first?.width ?? 0)) <= ALIKE && Math.abs(each.height - (first?.height ?? 0)) <= ALIKE,
  );
}
