import type { LabelContent } from '../content.js';
import { textItem, type Drawing } from '../drawing.js';

/** Where a label's art leaves room for the mark's line, and for one along its side. */
export interface MarkRoom {
  readonly line: { readonly x: number; readonly y: number; readonly width: number; readonly size?: number };
  readonly side: { readonly x: number; readonly y: number; readonly height: number };
  readonly watermark: { readonly x: number; readonly y: number; readonly width: number };
}

/** Puts the mark on a label: a line of type, a line up its side, or a light grey watermark under everything. */
export function addMark(drawing: Drawing, content: LabelContent, room: MarkRoom): void {
  switch (content.markPlace) {
    case 'line': {
      const { x, y, width, size = 9 } = room.line;
      drawing.mark.push(textItem(x, y, content.mark, { size, bold: true, align: 'center', maxWidth: width }));
      break;
    }
    case 'side': {
      const { x, y, height } = room.side;
      drawing.mark.push(textItem(x, y, content.mark, { size: 6, turn: 270, align: 'center', maxWidth: height }));
      break;
    }
    case 'watermark': {
      const { x, y, width } = room.watermark;
      drawing.markUnder = true;
      drawing.mark.push(textItem(x, y, content.mark, { size: 30, bold: true, grey: 0.85, turn: -32, align: 'center', maxWidth: width }));
      break;
    }
  }
}

/** Groups of four, as people read long numbers. */
export const inFours = (digits: string): string => digits.replace(/(.{4})(?=.)/g, '$1 ');
