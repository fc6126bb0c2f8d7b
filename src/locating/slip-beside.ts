import { bottom, contains, grow, near, right, union, type Box } from '../geometry/box.js';
import type { SourcePage } from '../reading/source.js';
import type { Phrase } from '../reading/word-lines.js';
import { itemRows } from './item-rows.js';
import { said } from './kind-of-words.js';

/** Ink that reaches this far into a label's box (pt) still lies beside it. */
export const BESIDE = 3;
/** A shop's sign stands at most this far from its name, pt. */
const LOGO = 40;
/** Letters' ink stands out of the boxes of their words by less than this, pt. */
const STROKE = 4;
/** Lines of one block of writing are this near, in times their type. */
const NEXT_LINE = 1.8;
/** Type under this (pt) is small print: terms, not a message to the buyer. */
const SMALL_PRINT = 7.6;

/** What stands beside a label. */
export interface AroundLabel {
  readonly page: SourcePage;
  readonly label: Box;
  /** Ink and writing outside the label. */
  readonly ink: readonly Box[];
  readonly phrases: readonly Phrase[];
  /** What stands for itself: `closedUnits`. */
  readonly units: readonly Box[];
}

/**
 * The ink on that side of a label where all of `anchors` (a slip's heading, its table) stand, when nothing of the slip can be elsewhere: there stand at most a
 * shop's name, and what explains itself: coupons and adverts in a frame of their own, steps to follow, small print. Undefined otherwise.
 */
export function sideOf({ page, label, ink, phrases, units }: AroundLabel, anchors: readonly Box[]): Box | undefined {
  const sides: readonly Box[] = [
    { x: 0, y: bottom(label), width: page.width, height: page.height - bottom(label) },
    { x: 0, y: 0, width: page.width, height: label.y },
    { x: right(label), y: 0, width: page.width - right(label), height: page.height },
    { x: 0, y: 0, width: label.x, height: page.height },
  ];
  const side = sides.find((each) => anchors.length > 0 && anchors.every((box) => contains(each, box, BESIDE)));
  if (!side) return undefined;
  const away = phrases.filter((phrase) => !contains(side, phrase.box, BESIDE));
  const apart = units.filter((unit) => !contains(side, unit, BESIDE) && !anchors.some((box) => contains(unit, box, BESIDE)));
  const loose = blocksOf(away.filter(({ box }) => !apart.some((unit) => contains(unit, box, BESIDE)))).filter(
    (block) => !explainsItself(block),
  );
  const [shop, ...more] = loose.flat();
  if (more.length > 0 || /\d/.test(shop?.text ?? '') || itemRows(away)) return undefined;
  const written = blocksOf(away).flatMap((block) => grow(union(block.map(({ box }) => box)) ?? block[0]?.box ?? label, STROKE));
  const isExplained = (blob: Box): boolean =>
    (shop !== undefined && contains(grow(shop.box, LOGO), blob)) ||
    apart.some((unit) => contains(unit, blob, BESIDE)) ||
    written.some((box) => contains(box, blob));
  if (ink.some((blob) => !contains(side, blob, BESIDE) && !isExplained(blob))) return undefined;
  return union(ink.filter((blob) => contains(side, blob, BESIDE)));
}

/** Phrases that stand close together. */
function blocksOf(phrases: readonly Phrase[]): readonly (readonly Phrase[])[] {
  const blocks: Phrase[][] = [];
  for (const phrase of phrases) {
    const touching = blocks.filter((block) =>
      block.some((each) => near(each.box, phrase.box, NEXT_LINE * Math.min(each.fontSize, phrase.fontSize))),
    );
    for (const block of touching) blocks.splice(blocks.indexOf(block), 1);
    blocks.push([...touching.flat(), phrase]);
  }
  return blocks;
}

/** Whether a block of writing can be of no slip: steps to follow, small print, what calls itself something else. */
function explainsItself(block: readonly Phrase[]): boolean {
  const steps = block.filter(({ text }) => /^\d[.)]\s/.test(text)).length;
  return (
    steps >= 2 ||
    block.every(({ fontSize }) => fontSize < SMALL_PRINT) ||
    said(block).names.some(({ kind }) => kind === 'instructions' || kind === 'advert' || kind === 'receipt')
  );
}
