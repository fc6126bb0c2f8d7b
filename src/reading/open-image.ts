import type { Reason } from '../sheet/sheet.js';
import { count } from './counters.js';
import { decodePicture, readHeader, type PictureHeader } from './decode-picture.js';
import { KeptInks } from './kept-inks.js';
import { PICTURE_LIMITS, type PictureLimits } from './limits.js';
import { pixelShape } from './pixel-shape.js';
import { PicturePage } from './picture-page.js';
import { pictureSize } from './picture-size.js';
import { PictureStore } from './picture-store.js';
import type { PressSource, SourceDocument, SourcePage } from './source.js';

type Refused = { readonly refused: Reason };

const FORMATS: ReadonlySet<string> = new Set(['png', 'jpeg', 'gif', 'webp', 'tiff']);

/**
 * Opens a PNG, JPEG, GIF, WebP or TIFF (each of its pages is a page; of an animation the first picture). Pages stand upright
 * as the file's orientation says, transparent parts on white, in their true size as far as it can be known: `notes` says
 * what was put right. Never throws for bad bytes: `refused` says what is wrong and what to do.
 */
export async function openImage(bytes: Uint8Array, limits: PictureLimits = PICTURE_LIMITS): Promise<SourceDocument | Refused> {
  count('documentsOpened');
  const first = await tryDecoder(() => readHeader(bytes, 0));
  if (first === undefined) return refuse(damaged(undefined));
  if (!FORMATS.has(first.format)) return refuse(KIND);
  const pageCount = first.format === 'tiff' ? (first.pages ?? 1) : 1;
  if (pageCount > limits.pages) return refuse(tooManyPages(pageCount, limits.pages));

  const store = new PictureStore(limits);
  const pages: PicturePage[] = [];
  const notes: string[] = [];
  if (pageCount === 1 && (first.pages ?? 1) > 1)
    notes.push(`the picture is an animation of ${first.pages ?? 1}; its first picture was taken`);
  for (let index = 0; index < pageCount; index++) {
    const where = pageCount > 1 ? index + 1 : undefined;
    const header = index === 0 ? first : await tryDecoder(() => readHeader(bytes, index));
    if (header === undefined) return refuse(damaged(where));
    if (Math.abs(pixelShape(bytes, index) - 1) > NOT_SQUARE) return refuse(notSquare(where));
    if (header.width * header.height > limits.pixels) return refuse(tooLarge(header, where));
    const picture = await tryDecoder(() => decodePicture(bytes, index, header, limits.pixels));
    if (picture === undefined) return refuse(damaged(where));
    if (!store.add(picture)) return refuse(tooMuch(index + 1, pageCount));
    const { dpi, note } = pictureSize(picture.width, picture.height, header.density);
    if (note !== undefined) notes.push(where === undefined ? note : `page ${where}: ${note}`);
    pages.push(new PicturePage(store, index + 1, dpi));
  }
  return new OpenImage(store, pages, notes);
}

class OpenImage implements SourceDocument {
  readonly #store: PictureStore;
  readonly #pages: readonly PicturePage[];
  readonly #inks = new KeptInks();
  readonly #straight = new Map<number, PicturePage>();
  readonly notes: readonly string[];

  constructor(store: PictureStore, pages: readonly PicturePage[], notes: readonly string[]) {
    this.#store = store;
    this.#pages = pages;
    this.notes = notes;
  }

  get pageCount(): number {
    return this.#pages.length;
  }

  page(number: number): SourcePage {
    const page = this.#pages[number - 1];
    if (!page) throw new RangeError(`no page ${number} of ${this.pageCount}`);
    const straight = this.#straight.get(number) ?? page.straightened();
    if (straight !== page) page.forgetInk();
    this.#straight.set(number, straight);
    this.#inks.used(straight);
    return straight;
  }

  pressSource(page: number): PressSource {
    if (page < 1 || page > this.pageCount) throw new RangeError(`no page ${page} of ${this.pageCount}`);
    return { kind: 'picture', picture: this.#store.get(page - 1) };
  }

  close(): void {
    this.#store.close();
  }
}

/** The decoder tells bad bytes only by throwing, and with words of its own that change from version to version. */
async function tryDecoder<T>(decode: () => Promise<T>): Promise<T | undefined> {
  try {
    return await decode();
  } catch (error) {
    if (error instanceof TypeError || error instanceof RangeError || error instanceof ReferenceError) throw error;
    return undefined;
  }
}

const refuse = (refused: Reason): Refused => ({ refused });
const of = (page: number | undefined): string => (page === undefined ? 'the picture' : `page ${page} of the picture`);

const damaged = (page: number | undefined): Reason => ({
  code: 'reading/picture-damaged',
  message: `${of(page)} is cut off or damaged`,
  remedy: 'Download it again from the sales channel; if it opens in a viewer, save it there as PNG.',
});

const KIND: Reason = {
  code: 'reading/picture-kind',
  message: 'the picture is of a kind that is not read',
  remedy: 'Save it as PNG, JPEG or PDF.',
};

/** Resolutions are rounded to whole numbers: up to here both are the same. */
const NOT_SQUARE = 0.015;

const notSquare = (page: number | undefined): Reason => ({
  code: 'reading/picture-not-square',
  message: `${of(page)} says that it has more pixels to the inch one way than the other, as a fax has`,
  remedy: 'Open it in a viewer, print it to a PDF there, and use that one.',
});

const tooLarge = (header: PictureHeader, page: number | undefined): Reason => ({
  code: 'reading/picture-too-large',
  message: `${of(page)} has ${header.width}×${header.height} pixels, more than any label or page needs`,
  remedy: 'Download it again, or save it smaller: a 4×6 in label at 300 dpi has 1200×1800 pixels.',
});

const tooMuch = (page: number, pageCount: number): Reason => ({
  code: 'reading/picture-too-large',
  message: `the first ${page} of ${pageCount} pages already fill the memory that one document may use`,
  remedy: 'Split the file into several, or scan in black and white at 300 dpi.',
});

const tooManyPages = (pages: number, limit: number): Reason => ({
  code: 'reading/picture-too-many-pages',
  message: `the picture has ${pages} pages, more than ${limit}`,
  remedy: 'Split the file into several.',
});
