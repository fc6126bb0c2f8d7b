import { fileFailure } from '../files/failure.js';
import type { Scratch } from '../files/scratch.js';
import { encodePng } from '../reading/png.js';
import type { GreyRaster } from '../reading/source.js';
import type { ItemResult } from '../recipe/outcome.js';
import type { Reason } from '../sheet/sheet.js';
import { drawnPage, sideBySide, underCaption } from './captioned.js';
import type { WithoutDuplicates } from './duplicates.js';
import type { RunLabel } from './same-label.js';
import { pressedFor, type EndedDocument } from './work-through.js';

/** Fine enough to read an address: 100 dpi. */
const PIXELS_PER_PT = 100 / 72;
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
      const put = await drawnAndPut(() => pictureOf({ document: index, item }, others.get(`${index} ${item.id}`), pages), scratch);
      if (!put.ok) return { reason: put.reason };
      pictures.set(item.id, put.kept);
    }
    result.push({ ...document, items: items[index] ?? [], pictures });
  }
  return { documents: result };
}

/** Pressed pages may lie on the disk, which may fail when they are wanted back. */
async function drawnAndPut(draw: () => Promise<Uint8Array>, scratch: Scratch): ReturnType<Scratch['put']> {
  try {
    return await scratch.put(await draw());
  } catch (error) {
    return fileFailure(error, 'cannot read back the pages that were put away in the output folder');
  }
}

async function pictureOf(label: RunLabel, other: RunLabel | undefined, pages: PressedPages): Promise<Uint8Array> {
  if (!other) return encodePng(await pages.draw(label));
  return encodePng(sideBySide(await pages.drawNamed(label), await pages.drawNamed(other)));
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
    const pressed = pressedFor(this.#documents[document], item.output);
    if (!pressed || item.pressedPage === undefined) throw new Error(`pair-pictures: ${item.id} of document ${document} was not pressed`);
    return drawnPage(await this.#scratch.get(pressed), item.pressedPage, PIXELS_PER_PT);
  }

  async drawNamed(label: RunLabel): Promise<GreyRaster> {
    const known = this.#named.get(label.item);
    if (known) return known;
    const page = await this.draw(label);
    const named = await underCaption(`${this.#documents[label.document]?.work.shownName ?? ''}, page ${label.item.page}`, page);
    if (this.#named.size >= MOST_KEPT) this.#named.clear();
    this.#named.set(label.item, named);
    return named;
  }
}
