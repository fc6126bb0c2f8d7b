import { num } from '../operators.js';
import type { ListFace } from './face.js';

/** Something drawn, by pt from the top left corner of its block, y down. */
export type Mark =
  | {
      readonly kind: 'text';
      readonly text: string;
      readonly size: number;
      readonly strong: boolean;
      readonly x: number;
      readonly top: number;
    }
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
  return page.placed.flatMap(({ block, x, y }) => block.marks.map((mark) => operatorsOf(mark, x, y, pageHeight, face))).join('\n');
}

function operatorsOf(mark: Mark, x: number, y: number, pageHeight: number, face: ListFace): string {
  const [left, up] = [num(x + mark.x), (down: number): string => num(pageHeight - y - down)];
  if (mark.kind === 'text') return face.set(mark.text, mark.size, mark.strong, x + mark.x, y + mark.top);
  if (mark.kind === 'rule') return `q 0 g ${left} ${up(mark.y + mark.weight)} ${num(mark.width)} ${num(mark.weight)} re f Q`;
  return `q 0 G 0.8 w ${left} ${up(mark.y + mark.side)} ${num(mark.side)} ${num(mark.side)} re S Q`;
}

/** A block with another one below it. */
export const stacked = (blocks: readonly Block[]): Block =>
  blocks.reduce<Block>((all, block) => ({ height: all.height + block.height, marks: [...all.marks, ...lowered(block, all.height)] }), {
    height: 0,
    marks: [],
  });

const lowered = ({ marks }: Block, by: number): readonly Mark[] =>
  marks.map((mark) => (mark.kind === 'text' ? { ...mark, top: mark.top + by } : { ...mark, y: mark.y + by }));
