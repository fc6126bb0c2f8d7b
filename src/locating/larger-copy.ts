import { area, contains, grow, type Box } from '../geometry/box.js';
import { codeLikeAreas, type CodeLikeArea } from '../reading/code-like.js';
import type { SourcePage } from '../reading/source.js';
import type { ReadCodes } from './page-facts.js';
import { hasMainBars, isTrackingLike } from './strength.js';

/** Bars are larger than others from this many times their area (common practice, no source). */
const LARGER = 1.3;

/**
 * The first of the labels of a page whose own number stands outside all of them in larger bars: labels carry their number larger than receipts repeat it, so what was
 * found may be the receipt. Undefined where there is none. Codes are read only where bars outside are larger.
 */
export async function outdoneLabel<T extends { readonly box: Box }>(
  labels: readonly T[],
  page: SourcePage,
  readCodes: ReadCodes,
): Promise<T | undefined> {
  const bars = barsOn(page).map(({ box }) => box);
  const outside = bars.filter((each) => !labels.some(({ box }) => contains(box, each, AROUND)));
  for (const label of labels) {
    const own = Math.max(0, ...bars.filter((each) => contains(label.box, each, AROUND)).map(area));
    const larger = own === 0 ? [] : outside.filter((each) => area(each) > LARGER * own);
    if (larger.length === 0) continue;
    const numbers = (await readCodes(label.box)).filter(isTrackingLike).map(({ bytes }) => bytes);
    for (const each of larger) if ((await readCodes(grow(each, AROUND))).some(({ bytes }) => numbers.includes(bytes))) return label;
  }
  return undefined;
}

/**
 * The largest bars of a page whose number stands on it once more, as that of a label and its receipt does; undefined where no bars as large as a label's leading ones have a
 * second. Codes are read only where a page has such bars and others.
 */
export async function repeatedNumber(page: SourcePage, readCodes: ReadCodes): Promise<Box | undefined> {
  const bars = barsOn(page).sort((a, b) => area(b.box) - area(a.box));
  if (bars.length < 2 || !hasMainBars({ codes: bars })) return undefined;
  const seen: { readonly one: CodeLikeArea; readonly numbers: readonly string[] }[] = [];
  for (const one of bars) {
    const numbers = (await readCodes(grow(one.box, AROUND))).filter(isTrackingLike).map(({ bytes }) => bytes);
    const first = seen.find((each) => each.numbers.some((number) => numbers.includes(number)));
    if (first && hasMainBars({ codes: [first.one] })) return first.one.box;
    seen.push({ one, numbers });
  }
  return undefined;
}

const barsOn = (page: SourcePage): CodeLikeArea[] => codeLikeAreas(page).filter(({ kind }) => kind === 'linear');

/** Bars are looked for within this much of where their texture ends, pt. */
const AROUND = 6;
