import type { Code, Symbology } from '../../src/reading/source.js';

/** A code that says `text`, anywhere. */
export function codeOf(text: string, identifier = ']C0', symbology: Symbology = 'Code 128'): Code {
  const corner = { x: 0, y: 0 };
  return {
    symbology,
    identifier,
    bytes: Buffer.from(text, 'latin1').toString('hex'),
    corners: [corner, corner, corner, corner],
    box: { x: 0, y: 0, width: 100, height: 20 },
    turn: 0,
  };
}

/** GS1-128 data; `~` stands for a separator. */
export const gs1Of = (text: string): Code => codeOf(text.replaceAll('~', '\x1d'), ']C1');
