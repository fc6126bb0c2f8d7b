import { createHash } from 'node:crypto';
import { PDFName, PDFString, type PDFContext, type PDFRef } from '../../reading/pdf-library.js';
import type { Cluster } from './face.js';
import { EMPTY, outlineOf } from './outline.js';
import { PER_EM, writeTrueType, type FontGlyph } from './truetype.js';

/**
 * One font for all that a document says, whatever the scripts and weights: the outlines of just the glyphs in use. A font for each file would be dozens, most of
 * them with a glyph or two.
 */
export class PageFont {
  private readonly codes = new Map<string, number>();
  private readonly glyphs: FontGlyph[] = [{ outline: EMPTY, advance: PER_EM / 2 }];
  private readonly texts: string[] = [''];

  /** The code of a cluster in this font, from 1: the same shape for other characters is another code, so that text can be taken out again as it was. */
  code(cluster: Cluster): number {
    const known = this.codes.get(cluster.key);
    if (known !== undefined) return known;
    const code = this.glyphs.length;
    this.codes.set(cluster.key, code);
    this.glyphs.push({ outline: outlineOf(cluster), advance: cluster.advance });
    this.texts.push(cluster.text);
    return code;
  }

  /** How far the pen moves after a code, 1/1000 em. */
  advance(code: number): number {
    return this.glyphs[code]?.advance ?? 0;
  }

  /** Writes the font into a document: Type0, Identity-H, CIDFontType2 (ISO 32000-2 9.7; from memory). Call it last. */
  embed(context: PDFContext): PDFRef {
    const outlines = this.glyphs.map(({ outline }) => outline);
    const up = outlines.reduce((most, { y1 }) => Math.max(most, y1), 0);
    const down = outlines.reduce((most, { y0 }) => Math.max(most, -y0), 0);
    const box = [outlines.reduce((a, b) => Math.min(a, b.x0), 0), -down, outlines.reduce((a, b) => Math.max(a, b.x1), 0), up];
    const bytes = writeTrueType(this.glyphs, { up, down });
    // Programs keep fonts by name: slips of one stack must not share one.
    const tag = Array.from(createHash('sha256').update(bytes).digest().subarray(0, 6), (byte) =>
      String.fromCharCode(65 + (byte % 26)),
    ).join('');
    const name = `${tag}+Text`;
    const file = context.register(context.flateStream(bytes, { Length1: bytes.length }));
    const descriptor = context.obj({
      Type: 'FontDescriptor',
      FontName: name,
      Flags: 4,
      FontBBox: box,
      ItalicAngle: 0,
      Ascent: up,
      Descent: -down,
      CapHeight: 714,
      StemV: 80,
      FontFile2: file,
    });
    const descendant = context.obj({
      Type: 'Font',
      Subtype: 'CIDFontType2',
      BaseFont: name,
      CIDToGIDMap: 'Identity',
      DW: 1000,
      W: [0, this.glyphs.map(({ advance }) => advance)],
      FontDescriptor: context.register(descriptor),
    });
    descendant.set(
      PDFName.of('CIDSystemInfo'),
      context.obj({ Registry: PDFString.of('Adobe'), Ordering: PDFString.of('Identity'), Supplement: 0 }),
    );
    const font = context.obj({
      Type: 'Font',
      Subtype: 'Type0',
      BaseFont: name,
      Encoding: 'Identity-H',
      DescendantFonts: [context.register(descendant)],
      ToUnicode: context.register(context.flateStream(this.toUnicode())),
    });
    return context.register(font);
  }

  private toUnicode(): string {
    const rows = this.texts.flatMap((text, code) => (text === '' ? [] : [`<${hex4(code)}> <${utf16(text)}>`]));
    const blocks: string[] = [];
    // No more than 100 rows a block (Adobe Technical Note 5014; from memory).
    for (let at = 0; at < rows.length; at += 100) {
      const block = rows.slice(at, at + 100);
      blocks.push(`${block.length} beginbfchar`, ...block, 'endbfchar');
    }
    return [
      '/CIDInit /ProcSet findresource begin',
      '12 dict begin',
      'begincmap',
      '/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def',
      '/CMapName /Adobe-Identity-UCS def',
      '/CMapType 2 def',
      '1 begincodespacerange',
      '<0000> <FFFF>',
      'endcodespacerange',
      ...blocks,
      'endcmap',
      'CMapName currentdict /CMap defineresource pop',
      'end',
      'end',
    ].join('\n');
  }
}

export const hex4 = (code: number): string => code.toString(16).toUpperCase().padStart(4, '0');
const utf16 = (text: string): string => Array.from({ length: text.length }, (_, at) => hex4(text.charCodeAt(at))).join('');
