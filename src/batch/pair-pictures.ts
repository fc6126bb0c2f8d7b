import type { Scratch } from '../files/scratch.js';
import { encodePng } from '../reading/png.js';
import type { GreyRaster } from '../reading/source.js';
import type { ItemResult } from '../recipe/outcome.js';
import type { Reason } from '../sheet/sheet.js';
import type { WithoutDuplicates } from './duplicates.js';
import type { RunLabel } from './same-label.js';
import type { EndedDocument } from './work-through.js';

/** Fine enough to read an address: 100 dpi. */
const PIXELS_PER_PT = 100 / 72;
/** Grey between the two pages, pixels. */
const BETWEEN = 24;
const GREY = 160;
/** pt. */
const CAPTION = { height: 18, fontSize: 9 };
/** Drawn pages in memory. */
const MOST_KEPT = 16;

/**
 * The documents with their items as `withoutDuplicates` left them, and a picture of each that is held now: of a label whose code is
 * on another one both, side by side, under their names; of any other its page. All as they would have been printed.
 */
export async function withPairPictures(
  documents: readonly EndedDocument[],
  { items, pairs }: WithoutDuplicates,
  scratch: Scratch,
): Promise<{ readonly documents: readonly EndedDocument[] } | { readonly reason: Reason }> {
  const pages = new PressedPages(documents, scratch);
  const others = new Map(pairs.map(({ document, item, other }) => [`${document} ${item.id}`, other]));
  const result: EndedDocument[] = [];
  for (const [index, document] of documents.entries()) {
    const pictures = new Map(document.pictures);
    for (const [at, item] of document.items.entries()) {
      if (item.state.kind !== 'ready' || items[index]?.[at]?.state.kind !== 'held') continue;
      const png = await pictureOf({ document: index, item }, others.get(`${index} ${item.id}`), pages);
      const put = await scratch.put(png);
      if (!put.ok) return { reason: put.reason };
      pictures.set(item.id, put.kept);
    }
    result.push({ ...document, items: items[index] ?? [], pictures });
  }
  return { documents: result };
}

async function pictureOf(label: RunLabel, other: RunLabel | undefined, pages: PressedPages): Promise<Uint8Array> {
  if (!other) return encodePng(await pages.draw(label));
  return encodePng(joined([await pages.drawNamed(label), await pages.drawNamed(other)], 'side by side', BETWEEN));
}

class PressedPages {
  readonly #documents: readonly EndedDocument[];
  readonly #scratch: Scratch;
  /** Labels are mostly held in pairs, so each is wanted twice, soon after each other. */
  readonly #named = new Map<ItemResult, GreyRaster>();

  constructor(documents: readonly EndedDocument[], scratch: Scratch) {
    this.#documents = documents;
    this.#scratch = scratch;
  }

  async draw({ document, item }: RunLabel): Promise<GreyRaster> {
    const pressed = this.#documents[document]?.pressed;
    if (!pressed || item.pressedPage === undefined) throw new Error(`pair-pictures: ${item.id} of document ${document} was not pressed`);
    return drawnPage(await this.#scratch.get(pressed), item.pressedPage);
  }

  async drawNamed(label: RunLabel): Promise<GreyRaster> {
    const known = this.#named.get(label.item);
    if (known) return known;
    const page = await this.draw(label);
    const { pressCaptions } = await import('../press/caption.js');
    const strip = { name: 'caption', width: page.width / PIXELS_PER_PT, height: CAPTION.height };
    const caption = `${this.#documents[label.document]?.work.shownName ?? ''}, page ${label.item.page}`;
    const named = joined([await drawnPage(await pressCaptions([caption], strip, CAPTION.fontSize), 1), page], 'under each other', 0);
    if (this.#named.size >= MOST_KEPT) this.#named.clear();
    this.#named.set(label.item, named);
    return named;
  }
}

/** @param number from 1 */
async function drawnPage(pdf: Uint8Array, number: number): Promise<GreyRaster> {
  // Takes a while to load, and most runs hold no such pair.
  const { openPdf } = await import('../reading/open-pdf.js');
  const opened = await openPdf(pdf, { as: 'output' });
  if ('refused' in opened) throw new Error(`pair-pictures: the press's own document does not open (${opened.refused.code})`);
  try {
    const page = opened.page(number);
    const drawn = page.render({ x: 0, y: 0, width: page.width, height: page.height }, PIXELS_PER_PT);
    return { ...drawn, data: drawn.data.slice() };
  } finally {
    opened.close();
  }
}

function joined(rasters: readonly [GreyRaster, GreyRaster], how: 'side by side' | 'under each other', between: number): GreyRaster {
  const [first, second] = rasters;
  const beside = how === 'side by side';
  const at = beside ? { x: first.width + between, y: 0 } : { x: 0, y: first.height + between };
  const width = Math.max(first.width, at.x + second.width);
  const height = Math.max(first.height, at.y + second.height);
  const data = new Uint8Array(width * height).fill(GREY);
  const paste = (from: GreyRaster, x: number, y: number): void => {
    for (let row = 0; row < from.height; row++) {
      data.set(from.data.subarray(row * from.width, (row + 1) * from.width), (y + row) * width + x);
    }
  };
  paste(first, 0, 0);
  paste(second, at.x, at.y);
  return { ...first, width, height, data };
}
