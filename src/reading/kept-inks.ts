/** An ink raster and what is derived from it take about 1.8 MB a letter page: so many pages are 120 MB. */
const MOST_KEPT = 64;

/** A page that can draw its ink again when it is asked for it. */
export interface InkKeeper {
  forgetInk(): void;
}

/** Lets pages keep their ink rasters while they are in use, and a document of any length only so many of them. */
export class KeptInks {
  readonly #recent = new Set<InkKeeper>();

  /** To be told of each use of a page; the page longest unused forgets its ink when there are too many. */
  used(page: InkKeeper): void {
    this.#recent.delete(page);
    this.#recent.add(page);
    if (this.#recent.size <= MOST_KEPT) return;
    const [oldest] = this.#recent;
    if (!oldest) return;
    this.#recent.delete(oldest);
    oldest.forgetInk();
  }
}
