import { PDFArray, PDFDict, PDFName, PDFNumber, PDFStream, type PDFObject } from './pdf-library.js';
import { inherited } from './page-tree.js';
import type { PressSource } from './source.js';

/** Why two engines may draw a page differently. */
export const DRAW_RISKS = [
  'blend mode',
  'CCITT picture',
  'font not embedded',
  'JBIG2 picture',
  'JPEG 2000 picture',
  'pattern',
  'shading',
  'soft mask',
  'transparency',
  'transparency group',
  'Type 3 font',
] as const;
export type DrawRisk = (typeof DRAW_RISKS)[number];

/** Forms and patterns nested deeper are not looked into. */
const DEEPEST = 12;

const FILTERS: Readonly<Record<string, DrawRisk>> = {
  JPXDecode: 'JPEG 2000 picture',
  JBIG2Decode: 'JBIG2 picture',
  CCITTFaxDecode: 'CCITT picture',
  CCF: 'CCITT picture',
};

/**
 * What a page's resources hold that engines draw differently, in a fixed order; nothing for a source that is a picture. A resource that
 * the page doesn't use counts, too; pictures inside content streams are not looked at, nor is the group that many writers give every
 * page. The standard fonts of Latin letters are no risk in their own encodings: every reader must have them or their like (ISO 32000-1
 * 9.6.2.2, from memory), and they differ in the cut of their letters only. Never throws.
 * @param page from 1
 */
export function drawRisks(source: PressSource, page: number): readonly DrawRisk[] {
  if (source.kind === 'picture') return [];
  const found = new Set<DrawRisk>();
  const resources = inherited(source.pdf.getPage(page - 1).node, 'Resources');
  if (resources instanceof PDFDict) new Resources(found).look(resources, 0);
  return DRAW_RISKS.filter((risk) => found.has(risk));
}

class Resources {
  readonly #found: Set<DrawRisk>;
  readonly #seen = new Set<PDFDict>();

  constructor(found: Set<DrawRisk>) {
    this.#found = found;
  }

  look(resources: PDFDict, depth: number): void {
    if (this.#seen.has(resources) || depth > DEEPEST) return;
    this.#seen.add(resources);
    for (const font of entries(resources, 'Font')) if (font instanceof PDFDict) this.#font(font, depth);
    for (const object of entries(resources, 'XObject')) if (object instanceof PDFStream) this.#object(object, depth);
    for (const state of entries(resources, 'ExtGState')) if (state instanceof PDFDict) this.#state(state);
    for (const pattern of entries(resources, 'Pattern')) {
      this.#found.add('pattern');
      if (pattern instanceof PDFStream) this.#inside(pattern.dict, depth);
    }
    if (entries(resources, 'Shading').length > 0) this.#found.add('shading');
  }

  #inside(holder: PDFDict, depth: number): void {
    const resources = entry(holder, 'Resources');
    if (resources instanceof PDFDict) this.look(resources, depth + 1);
  }

  #font(font: PDFDict, depth: number): void {
    const subtype = nameOf(entry(font, 'Subtype'));
    if (subtype === 'Type3') {
      this.#found.add('Type 3 font');
      this.#inside(font, depth);
      return;
    }
    const descendants = entry(font, 'DescendantFonts');
    const descendant = descendants instanceof PDFArray && descendants.size() > 0 ? descendants.lookup(0) : undefined;
    const descriptor = entry(descendant instanceof PDFDict ? descendant : font, 'FontDescriptor');
    const isEmbedded =
      descriptor instanceof PDFDict && ['FontFile', 'FontFile2', 'FontFile3'].some((key) => entry(descriptor, key) instanceof PDFStream);
    if (!isEmbedded && !isStandard(font)) this.#found.add('font not embedded');
  }

  #object({ dict }: PDFStream, depth: number): void {
    if (nameOf(entry(dict, 'Subtype')) === 'Form') {
      const group = entry(dict, 'Group');
      if (group instanceof PDFDict && nameOf(entry(group, 'S')) === 'Transparency') this.#found.add('transparency group');
      this.#inside(dict, depth);
      return;
    }
    const filter = entry(dict, 'Filter');
    for (const each of filter instanceof PDFArray ? filter.asArray() : [filter]) {
      const risk = FILTERS[nameOf(each instanceof PDFName ? each : undefined) ?? ''];
      if (risk) this.#found.add(risk);
    }
    if (entry(dict, 'SMask') instanceof PDFStream) this.#found.add('soft mask');
  }

  #state(state: PDFDict): void {
    if (entry(state, 'SMask') instanceof PDFDict) this.#found.add('soft mask');
    const blend = entry(state, 'BM');
    const modes = blend instanceof PDFArray ? blend.asArray() : [blend];
    if (modes.some((mode) => !['Normal', 'Compatible', undefined].includes(nameOf(mode)))) this.#found.add('blend mode');
    for (const key of ['CA', 'ca']) {
      const opacity = entry(state, key);
      if (opacity instanceof PDFNumber && opacity.asNumber() < 1) this.#found.add('transparency');
    }
  }
}

/** The standard fonts of Latin letters; the two of symbols are drawn differently enough to be a risk. */
const STANDARD_FONT =
  /^(?:Helvetica(?:-(?:Bold)?(?:Oblique)?)?|Times-(?:Roman|Bold|Italic|BoldItalic)|Courier(?:-(?:Bold)?(?:Oblique)?)?)$/;
/** Which letters these name is fixed; an encoding with differences may name any. */
const STANDARD_ENCODINGS: readonly (string | undefined)[] = [undefined, 'StandardEncoding', 'WinAnsiEncoding', 'MacRomanEncoding'];

/** Whether a font that is not embedded is a standard one with the letters that every reader has for it. */
function isStandard(font: PDFDict): boolean {
  const encoding = entry(font, 'Encoding');
  if (encoding !== undefined && !(encoding instanceof PDFName)) return false;
  const name = nameOf(entry(font, 'BaseFont')) ?? '';
  return nameOf(entry(font, 'Subtype')) === 'Type1' && STANDARD_FONT.test(name) && STANDARD_ENCODINGS.includes(nameOf(encoding));
}

/** What a key of a dictionary leads to; undefined for what is not there. A reference that leads nowhere is not there either. */
const entry = (dict: PDFDict, key: string): PDFObject | undefined => dict.lookup(PDFName.of(key)) ?? undefined;

const nameOf = (object: PDFObject | undefined): string | undefined => (object instanceof PDFName ? object.decodeText() : undefined);

/** What the names of one kind of resource lead to. */
function entries(resources: PDFDict, kind: string): readonly PDFObject[] {
  const named = entry(resources, kind);
  return named instanceof PDFDict ? named.keys().flatMap((key) => named.lookup(key) ?? []) : [];
}
