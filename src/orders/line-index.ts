import type { Spot } from './findings.js';

const CR = 13;
const LF = 10;

/** Where lines begin in UTF-8 bytes: finds line and column of a place. */
export class LineIndex {
  private readonly starts: number[] = [0];

  constructor(private readonly bytes: Buffer) {
    for (let at = 0; at < bytes.length; at++) {
      const byte = bytes[at];
      if (byte === LF || (byte === CR && bytes[at + 1] !== LF)) this.starts.push(at + 1);
    }
  }

  /** Index of the line that holds a byte, from 0. */
  private lineAt(offset: number): number {
    let low = 0;
    let high = this.starts.length - 1;
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if ((this.starts[middle] ?? 0) <= offset) low = middle;
      else high = middle - 1;
    }
    return low;
  }

  /** Line of a byte, from 1. */
  line(offset: number): number {
    return this.lineAt(offset) + 1;
  }

  spot(offset: number): Spot {
    const index = this.lineAt(offset);
    return { line: index + 1, col: this.bytes.toString('utf8', this.starts[index], offset).length + 1 };
  }

  /** Where the line after the one that holds a byte begins; the end of the text for the last. */
  nextLine(offset: number): number {
    return this.starts[this.lineAt(offset) + 1] ?? this.bytes.length;
  }
}
