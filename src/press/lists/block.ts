import { num } from '../operators.js';
import type { SetLine } from '../type/paragraph.js';
import type { ListFace } from './face.js';

/** Something drawn, by pt from the top left corner of its block, y down. */
export type Mark =
  | { readonly kind: 'text'; readonly line: SetLine; readonly x: number; readonly baseline: number }
  | { readonly kind: 'rule'; readonly x: number; readonly width: number; readonly y: number; readonly weight: number }
  | { readonly kind: 'square'; readonly x: number; readonly y: number; readonly side: number };

/** A part of a page that stays whole. */
export interface Block {
  /** pt */
  readonly height: number;
  readonly marks: readonly Mark[];
}

/** A page: its blocks, by pt from its top left corner. */
export interface ListPage {
  readonly placed: readonly { readonly block: Block; readonly x: number; readonly y: number }[];
}

/** The operators of a page. */
export function pageOperators(page: ListPage, pageHeight: number, face: ListFace): string {
  const placed = page.placed.flatMap(({ block, x, y }) => block.marks.map((mark) => ({ mark, x, y })));
  const type = placed.flatMap(({ mark, x, y }) =>
    mark.kind === 'text' ? face.operators(mark.line, x + mark.x, y + mark.baseline, pageHeight) : [],
  );
  const strokes = placed.flatMap(({ mark, x, y }) => (mark.kind === 'text' ? [] : strokeOperators(mark, x, y, pageHeight)));
  return ['0 g 0 G 0.8 w', ...strokes, ...(type.length > 0 ? ['BT', ...type, 'ET'] : [])].join('\n');
}

function strokeOperators(mark: Exclude<Mark, { kind: 'text' }>, x: number, y: number, pageHeight: number): string {
  const [left, up] = [num(x + mark.x), (down: number): string => num(pageHeight - y - down)];
  if (mark.kind === 'rule') return `${left} ${up(mark.y + mark.weight)} ${num(mark.width)} ${num(mark.weight)} re f`;
  return `${left} ${up(mark.y + mark.side)} ${num(mark.side)} ${num(mark.side)} re S`;
}

/** A block with another one below it. */
export const stacked = (blocks: readonly Block[]): Block =>
  blocks.reduce<Block>((all, block) => ({ height: all.height + block.height, marks: [...all.marks, ...lowered(block, all.height)] }), {
    height: 0,
    marks: [],
  });

const lowered = ({ marks }: Block, by: number): readonly Mark[] =>
  marks.map((mark) => (mark.kind === 'text' ? { ...mark, baseline: mark.baseline + by } : { ...mark, y: mark.y + by }));
