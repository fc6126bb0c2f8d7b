import { describe, expect, it } from 'vitest';
import { embedFace } from '../../src/press/text-face.js';
import { newDocument } from '../../src/press/output.js';
import { stampOperators, stampSize } from '../../src/press/stamp.js';

const face = await embedFace(await newDocument());

/** The size of the type, and the text that was set. */
function set(width: number, more?: string): readonly [size: number, text: string] {
  const box = { x: 10, y: 10, width, height: 12.8 };
  const operators = stampOperators({ text: '7/41', ...(more === undefined ? {} : { more }), fontSize: 9, box }, 432, face, 'N');
  const said = ['7/41', `7/41${more ?? ''}`].filter((text) => operators.includes(face.encodeText(text).toString()));
  return [Number(/\/N ([\d.]+) Tf/.exec(operators)?.[1]), said.at(-1) ?? ''];
}

describe('what is stamped', () => {
  const [alone, both] = [stampSize('7/41', 9).width, stampSize('7/41 ·1234', 9).width];

  it('is the number with what is said beside it, where there is room for both', () => {
    expect(set(both, ' ·1234')).toEqual([9, '7/41 ·1234']);
    expect(set(both)).toEqual([9, '7/41']);
  });

  it('shrinks a little for what is said beside it, and never below what can be read', () => {
    const [size, text] = set(both * 0.8, ' ·1234');
    expect(text).toBe('7/41 ·1234');
    expect(size).toBeCloseTo(7.2, 3);
    expect(set(both * 0.7, ' ·1234')).toEqual([9, '7/41']);
    expect(set(alone, ' ·1234')).toEqual([9, '7/41']);
  });
});
