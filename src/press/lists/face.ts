import { cleanText } from '../type/clean.js';
import { lineOperators } from '../type/draw-line.js';
import { ANY_HAN, hanOrder, type Han } from '../type/han.js';
import { PageFont } from '../type/page-font.js';
import { apart, lineWidth, setParagraph, type SetLine, type Style } from '../type/paragraph.js';

/** A text as it can be set, with the regional forms of its Han characters. */
interface Clean {
  readonly text: string;
  readonly han: readonly Han[];
}

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** All that lists ask of type: in any script, shaped, in the right direction. A typeface is opened when a text has a character of it. */
export class ListFace {
  readonly font = new PageFont();
  private readonly said = new Set<string>();
  private readonly known = new Map<string, Clean>();

  /** @param han regional forms of Han characters where a text itself tells nothing */
  constructor(private readonly han: readonly Han[] = ANY_HAN) {}

  /** What was not printed as it was given, each once. Never the text around it. */
  get warnings(): readonly string[] {
    return [...this.said];
  }

  /** A text as lines no wider than `width` (pt): broken between words, inside one only where it is wider by itself. None for a text without ink. */
  lines(text: string, style: Style, width: number): readonly SetLine[] {
    const clean = this.clean(text);
    return setParagraph(clean.text, style, width, clean.han, 'ltr', 'words');
  }

  /** As `lines`, no more than `most`, beginning at the left: what is too long for them loses its end, not `end`, and says so by `…`. */
  linesAtMost(most: number, text: string, end: string, style: Style, width: number): readonly SetLine[] {
    const whole = this.lines(`${apart(text)}${end}`, style, width);
    if (whole.length <= most) return whole;
    const parts = Array.from(graphemes.segment(text), ({ segment }) => segment);
    const cut = (kept: number): readonly SetLine[] =>
      this.lines(`${apart(`${parts.slice(0, kept).join('').trimEnd()}…`)}${end}`, style, width);
    let [fits, over] = [0, parts.length];
    while (over - fits > 1) {
      const middle = Math.floor((fits + over) / 2);
      if (cut(middle).length <= most) fits = middle;
      else over = middle;
    }
    return cut(fits);
  }

  /** Width of a text in one line, pt. */
  width(text: string, style: Style): number {
    const clean = this.clean(text);
    return lineWidth(clean.text, style, clean.han);
  }

  /** The operators of a line, between `BT` and `ET`; `x` and `baseline` in pt from the page's top left corner, y down. */
  operators(line: SetLine, x: number, baseline: number, pageHeight: number): string {
    return lineOperators(line, x, baseline, pageHeight, this.font);
  }

  private clean(text: string): Clean {
    let clean = this.known.get(text);
    if (!clean) {
      const han = hanOrder(text, this.han);
      clean = { text: cleanText(text, han, (warning) => this.said.add(warning)), han };
      this.known.set(text, clean);
    }
    return clean;
  }
}
