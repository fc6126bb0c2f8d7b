import { PDFArray, PDFDict, PDFName, PDFNumber, PDFStream, type PDFObject } from './pdf-library.js';
import { fontsNamed } from './fonts-named.js';
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
 * the page doesn't use counts, too, but for fonts that no content sets: some writers list all standard fonts. Pictures inside content streams are not looked at, nor is the group that many writers give every
 * page. The standard fonts of Latin letters are no risk in their own encodings: every reader must have them or their like (ISO 32000-1
 * 9.6.2.2, from memory), and they differ in the cut of their letters only. Never throws.
 * @param page from 1
 */
export function drawRisks(source: PressSource, page: number): readonly DrawRisk[] {
  if (source.kind === 'picture') return [];
  const found = new Set<DrawRisk>();
  const { node } = source.pdf.getPage(page - 1);
  const resources = inherited(node, 'Resources');
  if (resources instanceof PDFDict) new Resources(found).look(resources, 0, entry(node, 'Contents'));
  return DRAW_RISKS.filter((risk) => found.has(risk));
}

class Resources {
  readonly #found: Set<DrawRisk>;
  readonly #seen = new Set<PDFDict>();

  constructor(found: Set<DrawRisk>) {
    this.#found = found;
  }

  /** @param contents what is drawn with the resources; undefined where that is not one stream */
  look(resources: PDFDict, depth: number, contents?: PDFObject): void {
    if (depth > DEEPEST) return;
    // Before what was seen: forms may draw with the page's own resources.
    this.#absentFonts(resources, contents);
    if (this.#seen.has(resources)) return;
    this.#seen.add(resources);
    for (const [, font] of named(resources, 'Font')) if (font instanceof PDFDict) this.#font(font, depth);
    for (const object of entries(resources, 'XObject')) if (object instanceof PDFStream) this.#object(object, resources, depth);
    for (const state of entries(resources, 'ExtGState')) if (state instanceof PDFDict) this.#state(state);
    for (const pattern of entries(resources, 'Pattern')) {
      this.#found.add('pattern');
      if (pattern instanceof PDFStream) this.#inside(pattern.dict, depth);
    }
    if (entries(resources, 'Shading').length > 0) this.#found.add('shading');
  }

  #inside(holder: PDFDict, depth: number, contents?: PDFObject): void {
    const resources = entry(holder, 'Resources');
    if (resources instanceof PDFDict) this.look(resources, depth + 1, contents);
  }

  #font(font: PDFDict, depth: number): void {
    if (nameOf(entry(font, 'Subtype')) !== 'Type3') return;
    this.#found.add('Type 3 font');
    this.#inside(font, depth);
  }

  #absentFonts(resources: PDFDict, contents: PDFObject | undefined): void {
    const absent = named(resources, 'Font').filter(([, font]) => font instanceof PDFDict && isAbsent(font));
    if (absent.length === 0) return;
    const set = fontsNamed(contents);
    if (absent.some(([name]) => set?.has(name) ?? true)) this.#found.add('font not embedded');
  }

  #object(object: PDFStream, around: PDFDict, depth: number): void {
    const { dict } = object;
    if (nameOf(entry(dict, 'Subtype')) === 'Form') {
      const group = entry(dict, 'Group');
      if (group instanceof PDFDict && nameOf(entry(group, 'S')) === 'Transparency') this.#found.add('transparency group');
      this.#inside(dict, depth, object);
      // Old writers' forms draw with what the page names.
      if (entry(dict, 'Resources') === undefined) this.#absentFonts(around, object);
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

/** Whether a reader must find letters of its own for a font, and may choose others than the writer meant. */
function isAbsent(font: PDFDict): boolean {
  if (nameOf(entry(font, 'Subtype')) === 'Type3') return false;
  const descendants = entry(font, 'DescendantFonts');
  const descendant = descendants instanceof PDFArray && descendants.size() > 0 ? descendants.lookup(0) : undefined;
  const descriptor = entry(descendant instanceof PDFDict ? descendant : font, 'FontDescriptor');
  const isEmbedded =
    descriptor instanceof PDFDict && ['FontFile', 'FontFile2', 'FontFile3'].some((key) => entry(descriptor, key) instanceof PDFStream);
  return !isEmbedded && !isStandard(font);
}

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

/** The names of one kind of resource, as they are written, and what they lead to. */
function named(resources: PDFDict, kind: string): readonly (readonly [string, PDFObject])[] {
  const names = entry(resources, kind);
  if (!(names instanceof PDFDict)) return [];
  return names.keys().flatMap((key) => {
    const object = names.lookup(key);
    return object ? [[key.asString().slice(1), object] as const] : [];
  });
}

/** What the names of one kind of resource lead to. */
const entries = (resources: PDFDict, kind: string): readonly PDFObject[] => named(resources, kind).map(([, object]) => object);
