import { openSource } from '../../src/batch/open-source.js';
import { loadRecipe } from '../../src/config/load-recipe.js';
import type { CompiledRecipe } from '../../src/config/recipe.js';
import { contentFor } from '../samples/content.js';
import { Drawing } from '../samples/drawing.js';
import { quillhaul } from '../samples/labels/quillhaul.js';
import { tidewick } from '../samples/labels/tidewick.js';
import { gs1Code128 } from '../samples/code-art.js';
import { label, layout, LETTER, other, slip, type LayoutPage } from '../samples/layout.js';
import { instructions, packingSlip } from '../samples/other-pages.js';
import { sample } from '../samples/sample.js';
import { ROOT } from '../house/tree.js';
import type { SourceDocument } from '../../src/reading/source.js';

const contentOf = (order: number) => contentFor(`order ${order}`, order, 'line');

/** A letter page with the label of an order, sideways on its upper half. */
export const labelPage = (order: number): LayoutPage => ({ ...LETTER, regions: [label(tidewick(contentOf(order)), 90, 54, 90)] });

/** The same with nothing that looks like a code: what a page is that no step recognises. */
export function labelPageWithoutCode(order: number): LayoutPage {
  const whole = quillhaul(contentOf(order));
  const art = new Drawing(whole.width, whole.height);
  art.items.push(...whole.items.filter((item) => item.kind !== 'code'));
  return { ...LETTER, regions: [label(art, 24, 24)] };
}

export const slipPage = (order: number): LayoutPage => ({
  ...LETTER,
  regions: [slip(packingSlip(540, 500, contentOf(order)), 36, 36)],
});

/** A slip with the order's number as bars in its corner, as packers scan it. */
export function slipPageWithBars(order: number): LayoutPage {
  const drawing = packingSlip(540, 500, contentOf(order));
  drawing.bars(gs1Code128(['92', contentOf(order).serial]), 400, 420, 1.1, 40);
  return { ...LETTER, regions: [slip(drawing, 36, 36)] };
}

/** Label above, slip below, on one page. */
export const sharedPage = (order: number): LayoutPage => ({
  ...LETTER,
  regions: [label(tidewick(contentOf(order)), 90, 40, 90), slip(packingSlip(540, 360, contentOf(order)), 36, 414)],
});

/** An A3 page with two upright labels beside each other on its upper half. */
export const twoLabelsAbove = (): LayoutPage => ({
  width: 842,
  height: 1191,
  regions: [label(tidewick(contentOf(1)), 60, 60), label(tidewick(contentOf(2)), 480, 60)],
});

export const instructionsPage = (): LayoutPage => ({ ...LETTER, regions: [other(instructions(540, 600), 36, 60)] });

/** A PDF of these pages. */
export async function documentOf(pages: readonly LayoutPage[]): Promise<Uint8Array> {
  const made = layout({ name: 'made', about: 'Pages put together by a test.', traits: [], pages: () => pages });
  return (await sample(made, 'vector', 0)).bytes;
}

export async function openedPages(pages: readonly LayoutPage[]): Promise<SourceDocument> {
  const document = await openSource(await documentOf(pages));
  if ('refused' in document) throw new Error(document.refused.message);
  return document;
}

/** A shipped recipe. */
export function recipeNamed(name: string): CompiledRecipe {
  const { value } = loadRecipe(name, ROOT);
  if (!value) throw new Error(`${name} has mistakes`);
  return value;
}
