import { grow, intersection, type Box } from '../geometry/box.js';
import { compose, type Matrix } from '../geometry/placement.js';
import type { Reason } from '../sheet/sheet.js';
import { CodesMemo } from './codes-memo.js';
import { count, type Counted } from './counters.js';
import { evenLight } from './even-light.js';
import { fullBlack } from './full-black.js';
import { measureSlant } from './measure-slant.js';
import { pageGeometry, type PdfPageGeometry } from './pdf-geometry.js';
import { readObjects, type PdfObjects } from './pdf-objects.js';
import { LEVEL, readWords } from './pdf-words.js';
import { allocate, free, withMemory, type Pdfium } from './pdfium.js';
import { mostPixelsPerPt, readPageCodes, type PageCodesOptions } from './page-codes.js';
import { pictureUnder } from './picture-under.js';
import { correctionOf, STRAIGHT, straightening } from './skew.js';
import {
  INK_PIXELS_PER_PT,
  MOST_PIXELS,
  type Code,
  type GreyRaster,
  type PictureUnder,
  type PlacedImage,
  type Slant,
  type SourcePage,
  type Word,
} from './source.js';
import { unfitSize } from './unfit-page.js';

/** A ruled line's box may have no width (pt). */
const THIN = 0.01;
const GREY = 1;
const NO_SMOOTHING = 0x1000 | 0x2000 | 0x4000;

/** One page of an open PDF. Its facts are gathered when first asked for. */
export class PdfPage implements SourcePage {
  readonly number: number;
  readonly #engine: Pdfium;
  readonly #handle: number;
  readonly #geometry: PdfPageGeometry;
  readonly #counted: Counted;
  readonly #codes = new CodesMemo();
  readonly #damage: Reason | undefined;
  /** The page as given → the page straightened, both visible and in pt. */
  readonly #straight: Matrix;
  readonly #toVisible: Matrix;
  readonly skew: number;
  #slant: Slant;
  #words: readonly Word[] | undefined;
  #objects: PdfObjects | undefined;
  #coarse: GreyRaster | undefined;
  #ink: GreyRaster | undefined;

  /**
   * @param damage what is wrong with the page in the file, if anything
   * @param slant how the page lies; it is straightened by as much as is proper
   */
  constructor(
    engine: Pdfium,
    handle: number,
    number: number,
    userUnit: number,
    counted: Counted,
    damage?: Reason,
    slant: Slant = STRAIGHT,
  ) {
    this.#engine = engine;
    this.#handle = handle;
    this.number = number;
    this.#geometry = pageGeometry(engine, handle, userUnit);
    this.#counted = counted;
    this.#damage = damage;
    this.#slant = slant;
    this.skew = correctionOf(slant);
    this.#straight = straightening(this);
    this.#toVisible = compose(this.#geometry.toVisible, this.#straight);
  }

  get slant(): Slant {
    return this.#slant;
  }

  /** This page as it lies straight: itself for all but crooked scans. Only the page returned is to be used and closed. */
  straightened(): PdfPage {
    if (!this.#facts().onlyPictures) return this;
    this.#slant = measureSlant(this.ink());
    if (correctionOf(this.#slant) === 0) return this;
    return new PdfPage(this.#engine, this.#handle, this.number, this.#geometry.userUnit, this.#counted, this.#damage, this.#slant);
  }

  get unfit(): Reason | undefined {
    return this.#damage ?? unfitSize(this.width, this.height);
  }

  get width(): number {
    return this.#geometry.width;
  }

  get height(): number {
    return this.#geometry.height;
  }

  words(): readonly Word[] {
    return (this.#words ??= this.#readWords());
  }

  /** A scanner's program may have set its words level although the page was not. */
  #readWords(): readonly Word[] {
    const slack = LEVEL + Math.abs(this.skew);
    return readWords(this.#engine, this.#handle, this.#toVisible, slack).filter((word) => this.#shows(word.box));
  }

  images(): readonly PlacedImage[] {
    return this.#facts().images;
  }

  coarse(): GreyRaster {
    return (this.#coarse ??= this.render({ x: 0, y: 0, width: this.width, height: this.height }, INK_PIXELS_PER_PT));
  }

  ink(): GreyRaster {
    return (this.#ink ??= this.#facts().onlyPictures ? fullBlack(evenLight(this.coarse())) : this.coarse());
  }

  forgetInk(): void {
    this.#coarse = undefined;
    this.#ink = undefined;
  }

  pictureUnder(region: Box): PictureUnder | undefined {
    // Pixels of a straightened page lie on no grid of dots.
    return this.skew === 0 ? pictureUnder(this.images(), region) : undefined;
  }

  codes(region: Box, pixelsPerPt: number, options: PageCodesOptions = {}): Promise<readonly Code[]> {
    const at = (area: Box): number | 'own' =>
      this.#isPicture(area) ? 'own' : Math.min(pixelsPerPt, this.#mostTold(), mostPixelsPerPt(area));
    return this.#codes.get(region, options.thorough === true ? 2 * pixelsPerPt : pixelsPerPt, () =>
      readPageCodes(this, region, at, options),
    );
  }

  /** Whether an area shows a picture and nothing else, and a raster at its own pixels is not too large: bars drawn over a picture are finer. */
  #isPicture(area: Box): boolean {
    const picture = this.pictureUnder(area);
    if (!picture || picture.pixelsPerPt > mostPixelsPerPt(grow(area, 1 / picture.pixelsPerPt))) return false;
    return !this.#facts().others.some((box) => intersection(grow(box, THIN), area) !== undefined);
  }

  render(region: Box, pixelsPerPt: number | 'own', smooth = true): GreyRaster {
    const picture = pixelsPerPt === 'own' ? this.pictureUnder(region) : undefined;
    if (picture) return this.#draw(snapOutward(region, picture, this), picture.pixelsPerPt, false);
    return this.#draw(region, pixelsPerPt === 'own' ? INK_PIXELS_PER_PT * 2 : pixelsPerPt, smooth);
  }

  close(): void {
    this.#engine.FPDF_ClosePage(this.#handle);
  }

  /** Whether any of a box, be it of no width, lies on the visible page: what is cut away says nothing. */
  #shows({ x, y, width, height }: Box): boolean {
    return x <= this.width && y <= this.height && x + width >= 0 && y + height >= 0;
  }

  #facts(): PdfObjects {
    return (this.#objects ??= readObjects(this.#engine, this.#handle, this.#toVisible));
  }

  /** Drawn much finer than it was scanned, a straightened page shows the seams of its pixels and no more of its codes. */
  #mostTold(): number {
    if (this.skew === 0) return Infinity;
    const perPt = this.images().map(
      ({ box, pixelWidth, pixelHeight }) => Math.max(pixelWidth, pixelHeight) / Math.max(box.width, box.height),
    );
    return 2 * Math.max(...perPt);
  }

  #draw(region: Box, pixelsPerPt: number, smooth: boolean): GreyRaster {
    const engine = this.#engine;
    const width = Math.max(1, Math.floor(region.width * pixelsPerPt + 1e-6));
    const height = Math.max(1, Math.floor(region.height * pixelsPerPt + 1e-6));
    if (width * height > MOST_PIXELS) throw new RangeError(`a raster of ${width}×${height} pixels is too large`);
    count(this.#counted);
    const stride = (width + 3) & ~3;
    const pixels = allocate(engine, stride * height);
    try {
      const bitmap = engine.FPDFBitmap_CreateEx(width, height, GREY, pixels, stride);
      engine.FPDFBitmap_FillRect(bitmap, 0, 0, width, height, 0xffffffff);
      const unit = this.#geometry.userUnit;
      const toPixels: Matrix = [pixelsPerPt, 0, 0, pixelsPerPt, -region.x * pixelsPerPt, -region.y * pixelsPerPt];
      const matrix = compose(compose([unit, 0, 0, unit, 0, 0], this.#straight), toPixels);
      withMemory(engine, 40, (pointer) => {
        const memory = engine.pdfium.HEAPF32;
        memory.set(matrix, pointer >> 2);
        memory.set([0, 0, width, height], (pointer >> 2) + 6);
        engine.FPDF_RenderPageBitmapWithMatrix(bitmap, this.#handle, pointer, pointer + 24, smooth ? 0 : NO_SMOOTHING);
      });
      engine.FPDFBitmap_Destroy(bitmap);
      const data = new Uint8Array(width * height);
      const heap = engine.pdfium.HEAPU8;
      for (let row = 0; row < height; row++) data.set(heap.subarray(pixels + row * stride, pixels + row * stride + width), row * width);
      return { width, height, data, pixelsPerPt, origin: { x: region.x, y: region.y } };
    } finally {
      free(engine, pixels);
    }
  }
}

function snapOutward(region: Box, { pixelsPerPt: k, origin }: PictureUnder, page: { width: number; height: number }): Box {
  const inside = intersection(region, { x: 0, y: 0, width: page.width, height: page.height }) ?? region;
  const x0 = origin.x + Math.floor((inside.x - origin.x) * k + 1e-3) / k;
  const y0 = origin.y + Math.floor((inside.y - origin.y) * k + 1e-3) / k;
  const x1 = origin.x + Math.ceil((inside.x + inside.width - origin.x) * k - 1e-3) / k;
  const y1 = origin.y + Math.ceil((inside.y + inside.height - origin.y) * k - 1e-3) / k;
  return { x: x0, y: y0, width: x1 - x0, height: y1 - y0 };
}
