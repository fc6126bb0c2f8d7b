import { contains, grow, intersection } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { plainText, textOf } from '../reading/code-text.js';
import type { Code } from '../reading/source.js';
import { addressBlocks } from './address-block.js';
import { itemRows } from './item-rows.js';
import type { SaidName } from './kind-of-words.js';
import { isLabelSized } from './label-sizes.js';
import type { PageFacts, SaidCandidate } from './page-facts.js';

/** Papers that list items, and may have a number of their own in bars. */
const BILLS: readonly SaidName['kind'][] = ['invoice', 'packing-slip', 'list'];
/** What bars say stands this near to them in figures, pt (6 mm). */
const CAPTION = mmToPt(6);

/**
 * Whether a candidate is the table of a page that calls itself a bill, with the bill's own number in bars below it: only ink, nobody's address and no word of a label on
 * it, and its one code's number written at the bars. What stands there as a picture, or has a code that nobody wrote out, may be a label all the same.
 */
export function isPartOfBill(label: SaidCandidate, codes: readonly Code[] | undefined, page: SaidName, facts: PageFacts): boolean {
  const { box, edge, said } = label;
  const [area, ...areas] = label.codes;
  const [code, ...others] = codes ?? [];
  if (!BILLS.includes(page.kind) || edge !== 'ink' || said.labelWords > 0 || !area || !code || areas.length + others.length > 0)
    return false;
  const inside = facts.phrases.filter((phrase) => contains(box, phrase.box, 2));
  const number = plainText(textOf(code));
  return (
    itemRows(inside) !== undefined &&
    addressBlocks(inside).length === 0 &&
    inside.some(({ text, box: at }) => plainText(text).includes(number) && intersection(grow(area.box, CAPTION), at) !== undefined) &&
    !facts.page.images().some((image) => isLabelSized(image.box) && contains(image.box, area.box, 6))
  );
}
