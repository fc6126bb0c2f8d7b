import type { LabelContent } from './content.js';
import type { Drawing } from './drawing.js';
import type { QuarterTurn } from './pdf.js';

/** `bilevel`: 1 bit a pixel at 203 dpi; `grey`: 8 bit at 300 dpi. Both draw the label as a picture. */
export const KINDS = ['vector', 'bilevel', 'grey'] as const;
export type Kind = (typeof KINDS)[number];
export const DPI: Readonly<Record<'bilevel' | 'grey', number>> = { bilevel: 203, grey: 300 };

export type RegionRole = 'label' | 'return-label' | 'slip' | 'other';

/** A drawing on a page; `x`, `y` is the top-left corner of its turned bounds, pt from the top-left corner of the page. */
export interface Region {
  readonly role: RegionRole;
  readonly drawing: Drawing;
  readonly x: number;
  readonly y: number;
  readonly turn: QuarterTurn;
  readonly scale: number;
}

export interface LayoutPage {
  readonly width: number;
  readonly height: number;
  readonly regions: readonly Region[];
}

/** What makes a layout hard; the issue asks for a number of each. */
export type Trait =
  | 'frameless'
  | 'ruled-cells'
  | 'touches-edge'
  | 'main-code-outside-frame'
  | 'ninety-percent'
  | 'landscape'
  | 'full-bleed'
  | 'label-size-page'
  | 'cut-line'
  | 'two-labels'
  | 'slip-same-page'
  | 'slip-next-page'
  | 'return-label'
  | 'other-code'
  | 'whole-page-picture'
  | 'picture-file'
  | 'no-label';

export interface Layout {
  readonly name: string;
  readonly about: string;
  readonly traits: readonly Trait[];
  /** Which kinds make sense: a picture file is never vector. */
  readonly kinds: readonly Kind[];
  /** Where the visible page's lower left corner lies in user space, and how far the MediaBox sticks out of the CropBox (pt). */
  readonly origin: readonly [number, number];
  readonly bleed: number;
  pages(): readonly LayoutPage[];
}

export const LETTER = { width: 612, height: 792 };
export const A4 = { width: 595.28, height: 841.89 };

export const label = (drawing: Drawing, x: number, y: number, turn: QuarterTurn = 0, scale = 1): Region => ({
  role: 'label',
  drawing,
  x,
  y,
  turn,
  scale,
});
export const other = (drawing: Drawing, x: number, y: number, turn: QuarterTurn = 0): Region => ({
  ...label(drawing, x, y, turn),
  role: 'other',
});
export const slip = (drawing: Drawing, x: number, y: number, turn: QuarterTurn = 0): Region => ({
  ...label(drawing, x, y, turn),
  role: 'slip',
});

type Declared = Partial<Layout> & Pick<Layout, 'name' | 'about' | 'traits' | 'pages'>;
/** A layout whose drawings are made once, when first asked for. */
export function layout(declared: Declared): Layout {
  let made: readonly LayoutPage[] | undefined;
  return { kinds: KINDS, origin: [0, 0], bleed: 0, ...declared, pages: () => (made ??= declared.pages()) };
}

export type LabelArt = (content: LabelContent) => Drawing;
