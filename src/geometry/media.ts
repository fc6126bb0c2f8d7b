import { inToPt, mmToPt, parseLength, ptToIn, ptToMm } from './length.js';

/** A page to print on; `width` × `height` in pt as it leaves the printer, portrait or not. */
export interface Media {
  readonly name: string;
  readonly width: number;
  readonly height: number;
}

interface Row {
  readonly pwg?: string;
  readonly width: number;
  readonly height: number;
}

/**
 * Sizes and PWG 5101.1 names: handbook section 1.1 and 1.2 (VERIFIED-S, cups/pwg-media.c). 4x6.75in (a 4x6 label with a tear-off strip, common practice) and 4x8in have
 * no predefined PWG name.
 */
const TABLE: Readonly<Record<string, Row>> = {
  '4x6in': { pwg: 'na_index-4x6_4x6in', width: inToPt(4), height: inToPt(6) },
  '4x6.75in': { width: inToPt(4), height: inToPt(6.75) },
  '4x8in': { width: inToPt(4), height: inToPt(8) },
  '100x150mm': { pwg: 'om_small-photo_100x150mm', width: mmToPt(100), height: mmToPt(150) },
  a6: { pwg: 'iso_a6_105x148mm', width: mmToPt(105), height: mmToPt(148) },
  a5: { pwg: 'iso_a5_148x210mm', width: mmToPt(148), height: mmToPt(210) },
  a4: { pwg: 'iso_a4_210x297mm', width: mmToPt(210), height: mmToPt(297) },
  letter: { pwg: 'na_letter_8.5x11in', width: inToPt(8.5), height: inToPt(11) },
  'half-letter': { pwg: 'na_invoice_5.5x8.5in', width: inToPt(5.5), height: inToPt(8.5) },
  legal: { pwg: 'na_legal_8.5x14in', width: inToPt(8.5), height: inToPt(14) },
};

export const MEDIA_NAMES: readonly string[] = Object.keys(TABLE);

/** Page sizes match within this (pt): whole-point PDFs round A4 to 595×842 (handbook section 1.1). */
export const SIZE_TOLERANCE = 1.5;

/** Reads a name of the table, a PWG media name, or any `WxHin` / `WxHmm`; undefined for anything else. */
export function parseMedia(text: string): Media | undefined {
  const row = (Object.hasOwn(TABLE, text) ? TABLE[text] : undefined) ?? Object.values(TABLE).find((each) => each.pwg === text);
  if (row) return { name: text, width: row.width, height: row.height };
  const match = /^(?:[a-z]+_[a-z0-9.-]+_)?(\d+(?:\.\d+)?)x(\d+(?:\.\d+)?)(in|mm)$/.exec(text);
  if (!match) return undefined;
  const unit = match[3] ?? '';
  const width = parseLength(`${match[1]}${unit}`);
  const height = parseLength(`${match[2]}${unit}`);
  if (!width || !height || width.value <= 0 || height.value <= 0) return undefined;
  const toPt = unit === 'in' ? inToPt : mmToPt;
  return { name: text, width: toPt(width.value), height: toPt(height.value) };
}

/** A media name that was checked before. Throws for any other. */
export function mediaNamed(name: string): Media {
  const media = parseMedia(name);
  if (!media) throw new Error(`media: there is no ${name}`);
  return media;
}

/** A name as PWG 5101.1 makes them, `class_name_size`, that a text field of 63 characters takes. */
const SELF_DESCRIBING = /^(?=.{1,63}$)[a-z]+_[a-z0-9.-]+_\d+(?:\.\d+)?x\d+(?:\.\d+)?(?:in|mm)$/;

/**
 * The media's self-describing name of PWG 5101.1: its own, the table's, or one made by the standard's rule from its size, in inches where both sides are whole
 * quarters of one (handbook section 1.2, VERIFIED-S, cups/pwg-media.c).
 */
export function pwgName(media: Media): string {
  if (SELF_DESCRIBING.test(media.name)) return media.name;
  const named = Object.hasOwn(TABLE, media.name) ? TABLE[media.name]?.pwg : undefined;
  if (named !== undefined) return named;
  const quarters = [media.width, media.height].every((side) => Math.abs(side / 18 - Math.round(side / 18)) < 1e-6);
  const side = (pt: number): string => String(Number((quarters ? ptToIn(pt) : ptToMm(pt)).toFixed(2)));
  const size = `${side(media.width)}x${side(media.height)}${quarters ? 'in' : 'mm'}`;
  return `custom_${size}_${size}`;
}

/** Pages with a side (pt) outside these are a slip of the pen: half an inch, and four feet. */
const SMALLEST_SIDE = 36;
const LARGEST_SIDE = 3456;

/** Whether a page of this size is one that people print. */
export const isPage = ({ width, height }: Media): boolean =>
  Math.min(width, height) >= SMALLEST_SIDE && Math.max(width, height) <= LARGEST_SIDE;
/** What `isPage` asks, in words. */
export const PAGE_RANGE = 'a page of 0.5 to 48 in a side';

/** Whether a `width` × `height` page (pt) is this media, in either direction, within `tolerance` pt. */
export function isMediaSize(media: Media, width: number, height: number, tolerance = SIZE_TOLERANCE): boolean {
  const same = (w: number, h: number): boolean => Math.abs(media.width - w) <= tolerance && Math.abs(media.height - h) <= tolerance;
  return same(width, height) || same(height, width);
}

/** The factor by which `width` × `height` (pt) fits whole into a `toWidth` × `toHeight` area: min of both ratios. */
export function fitFactor(width: number, height: number, toWidth: number, toHeight: number): number {
  return Math.min(toWidth / width, toHeight / height);
}
