import { intersection, type Box } from '../geometry/box.js';
import { boundsOf } from '../geometry/placement.js';
import { CodesMemo } from './codes-memo.js';
import { count } from './counters.js';
import { evenLight } from './even-light.js';
import { fullBlack } from './full-black.js';
import { measureSlant } from './measure-slant.js';
import { readPageCodes, type PageCodesOptions } from './page-codes.js';
import { averagePixels, cropPixels, samplePixels, type GreyPixels, type PixelBox } from './picture-raster.js';
import type { PictureStore } from './picture-store.js';
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

/** A pixel's edge counts as met within this (pixels): sums of fractions of a pt are never exact. */
const EDGE = 1e-3;

/** A page that is one picture and nothing else: no words, no lines; everything is in its pixels. */
export class PicturePage implements SourcePage {
  readonly number: number;
  readonly width: number;
  readonly height: number;
  readonly #store: PictureStore;
  readonly #pixelsPerPt: number;
  readonly #codes = new CodesMemo();
  readonly skew: number;
  #slant: Slant;
  #coarse: GreyRaster | undefined;
  #ink: GreyRaster | undefined;

  /** @param number from 1. @param dpi pixels per inch at true size. @param slant how the page lies */
  constructor(store: PictureStore, number: number, dpi: number, slant: Slant = STRAIGHT) {
    const { width, height } = store.get(number - 1);
    this.number = number;
    this.#store = store;
    this.#pixelsPerPt = dpi / 72;
    this.width = width / this.#pixelsPerPt;
    this.height = height / this.#pixelsPerPt;
    this.#slant = slant;
    this.skew = correctionOf(slant);
  }

  get slant(): Slant {
    return this.#slant;
  }

  /** This page as it lies straight: itself for all but crooked scans. Only the page returned is to be used. */
  straightened(): PicturePage {
    this.#slant = measureSlant(this.ink());
    return correctionOf(this.#slant) === 0 ? this : new PicturePage(this.#store, this.number, this.#pixelsPerPt * 72, this.#slant);
  }

  words(): readonly Word[] {
    return [];
  }

  images(): readonly PlacedImage[] {
    const { width, height } = this.#store.get(this.number - 1);
    const box = boundsOf(straightening(this), this.#box());
    return [{ box, pixelWidth: width, pixelHeight: height, turn: this.skew === 0 ? 0 : undefined }];
  }

  coarse(): GreyRaster {
    return (this.#coarse ??= this.render(this.#box(), Math.min(INK_PIXELS_PER_PT, this.#pixelsPerPt)));
  }

  ink(): GreyRaster {
    return (this.#ink ??= fullBlack(evenLight(this.coarse())));
  }

  forgetInk(): void {
    this.#coarse = undefined;
    this.#ink = undefined;
  }

  pictureUnder(region: Box): PictureUnder | undefined {
    return this.skew === 0 && intersection(region, this.#box()) ? { pixelsPerPt: this.#pixelsPerPt, origin: { x: 0, y: 0 } } : undefined;
  }

  /** Always at the picture's own pixels: nothing can be read from more than there are. */
  codes(region: Box, _pixelsPerPt: number, options: PageCodesOptions = {}): Promise<readonly Code[]> {
    const fineness = options.thorough === true ? 2 : 1;
    return this.#codes.get(region, fineness, () => readPageCodes(this, region, () => 'own', options));
  }

  render(region: Box, pixelsPerPt: number | 'own', smooth = true): GreyRaster {
    const source = this.#pixels();
    count('sourceRasters');
    if (pixelsPerPt === 'own') return this.#crop(source, region);
    const width = Math.max(1, Math.floor(region.width * pixelsPerPt + 1e-6));
    const height = Math.max(1, Math.floor(region.height * pixelsPerPt + 1e-6));
    checkSize(width, height);
    const k = this.#pixelsPerPt;
    const box = { x: region.x * k, y: region.y * k, width: (width / pixelsPerPt) * k, height: (height / pixelsPerPt) * k };
    const draw = smooth ? averagePixels : samplePixels;
    return { width, height, data: draw(source, box, width, height), pixelsPerPt, origin: { x: region.x, y: region.y } };
  }

  #crop(source: GreyPixels, region: Box): GreyRaster {
    const k = this.#pixelsPerPt;
    const box = wholePixels(intersection(region, this.#box()) ?? region, k);
    checkSize(box.width, box.height);
    const { width, height } = box;
    return { width, height, data: cropPixels(source, box), pixelsPerPt: k, origin: { x: box.x / k, y: box.y / k } };
  }

  #pixels(): GreyPixels {
    const { width, height } = this.#store.get(this.number - 1);
    const index = this.number - 1;
    return { width, height, data: this.skew === 0 ? this.#store.grey(index) : this.#store.straightened(index, this.skew) };
  }

  #box(): Box {
    return { x: 0, y: 0, width: this.width, height: this.height };
  }
}

function checkSize(width: number, height: number): void {
  if (width * height > MOST_PIXELS) throw new RangeError(`a raster of ${width}×${height} pixels is too large`);
}

/** The region grown to whole pixels, at least one. */
function wholePixels(region: Box, k: number): PixelBox {
  const x = Math.floor(region.x * k + EDGE);
  const y = Math.floor(region.y * k + EDGE);
  return {
    x,
    y,
    width: Math.max(1, Math.ceil((region.x + region.width) * k - EDGE) - x),
    height: Math.max(1, Math.ceil((region.y + region.height) * k - EDGE) - y),
  };
}
