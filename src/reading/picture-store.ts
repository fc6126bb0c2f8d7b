import { deflateSync, inflateSync } from 'node:zlib';
import type { PictureLimits } from './limits.js';
import { turnedPixels } from './picture-raster.js';
import type { Picture } from './source.js';

interface Stored {
  readonly picture: Omit<Picture, 'data'>;
  readonly kept: Uint8Array | undefined;
  readonly packed: Uint8Array | undefined;
}

/**
 * The decoded pages of one document. Drawing asks for pixels without waiting, so all pages are decoded on opening; a long
 * scan would fill the memory, so pages beyond `keptBytes` are kept compressed and one of them at a time is unpacked.
 */
export class PictureStore {
  readonly #limits: PictureLimits;
  readonly #pages: Stored[] = [];
  #kept = 0;
  #stored = 0;
  #unpacked: { page: number; picture: Picture } | undefined;
  #grey: { page: number; data: Uint8Array } | undefined;
  #straight: { page: number; data: Uint8Array } | undefined;

  constructor(limits: PictureLimits) {
    this.#limits = limits;
  }

  /** Adds the next page; false when the document has become too large to hold. */
  add(picture: Picture): boolean {
    const { data, ...rest } = picture;
    const keep = this.#kept + data.length <= this.#limits.keptBytes || this.#pages.length === 0;
    if (keep) this.#kept += data.length;
    const packed = keep ? undefined : deflateSync(data, { level: 1 });
    this.#stored += (packed ?? data).length;
    this.#pages.push({ picture: rest, kept: keep ? data : undefined, packed });
    return this.#stored <= this.#limits.storedBytes;
  }

  /** @param page from 0. The picture may be dropped again by the store: hold it no longer than needed. */
  get(page: number): Picture {
    if (this.#unpacked?.page === page) return this.#unpacked.picture;
    const stored = this.#pages[page];
    if (!stored) throw new RangeError(`no picture ${page}: the document is closed or has fewer pages`);
    if (stored.kept) return { ...stored.picture, data: stored.kept };
    const picture = { ...stored.picture, data: inflateSync(stored.packed ?? new Uint8Array()) };
    this.#unpacked = { page, picture };
    return picture;
  }

  /** The page (from 0) in grey, 8 bits a pixel, row by row from the top. Colours weigh as in ITU-R BT.601. */
  grey(page: number): Uint8Array {
    const { channels, data, width, height } = this.get(page);
    if (channels === 1) return data;
    if (this.#grey?.page === page) return this.#grey.data;
    const grey = new Uint8Array(width * height);
    for (let i = 0, from = 0; i < grey.length; i++, from += 3)
      grey[i] = (77 * (data[from] ?? 0) + 150 * (data[from + 1] ?? 0) + 29 * (data[from + 2] ?? 0)) >> 8;
    this.#grey = { page, data: grey };
    return grey;
  }

  /** The page (from 0) in grey, turned back about its centre by `degrees`, always the same for one page; beyond it there is paper. */
  straightened(page: number, degrees: number): Uint8Array {
    if (this.#straight?.page === page) return this.#straight.data;
    const { width, height } = this.get(page);
    const data = turnedPixels({ width, height, data: this.grey(page) }, -degrees);
    this.#straight = { page, data };
    return data;
  }

  close(): void {
    this.#pages.length = 0;
    this.#unpacked = undefined;
    this.#grey = undefined;
    this.#straight = undefined;
  }
}
