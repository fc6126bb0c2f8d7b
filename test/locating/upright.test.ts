import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import type { Turn } from '../../src/geometry/placement.js';
import { uprightTurn } from '../../src/locating/upright.js';
import type { Code, Symbology, Word } from '../../src/reading/source.js';
import { blankPages } from '../steps/on-sample.js';
import { word } from './judged.js';

const lying: Box = { x: 0, y: 0, width: 432, height: 288 };
const standing: Box = { x: 0, y: 0, width: 288, height: 432 };
const somewhere: Box = { x: 50, y: 50, width: 80, height: 12 };

const code = (symbology: Symbology, turn: Turn | undefined): Code => {
  const corner = { x: 0, y: 0 };
  return { symbology, identifier: ']X0', bytes: '53', corners: [corner, corner, corner, corner], box: somewhere, turn };
};

async function upright(box: Box, words: readonly Word[], codes: readonly Code[] = []): Promise<string> {
  const page = { ...blankPages(612, 792).page(1), words: () => words };
  const result = await uprightTurn(page, box, async () => codes);
  return result.kind === 'sure' ? `${result.turn}: ${result.evidence}` : result.why;
}

describe('uprightTurn', () => {
  it.each([
    [0, '0: words run upright'],
    [90, '270: words run 90° clockwise'],
    [180, '180: words run upside down'],
    [270, '90: words run 90° anticlockwise'],
  ] as const)('undoes the direction of the words: %d°', async (turn, answer) => {
    expect(await upright(lying, [word('twelve letters', somewhere, turn)])).toBe(answer);
  });

  it('goes by the larger part of the writing, its size counted, and not by words outside', async () => {
    const small = word('some small remarks', somewhere, 90);
    const large = { ...word('A LARGE ADDRESS', somewhere, 0), fontSize: 40 };
    expect(await upright(standing, [small, large])).toBe('0: words run upright');
    const outside = { ...word('a long text beside the label', { ...somewhere, x: 500 }, 180), fontSize: 90 };
    expect(await upright(standing, [large, outside])).toBe('0: words run upright');
  });

  it('asks the codes only when words are few or disagree', async () => {
    const page = { ...blankPages(612, 792).page(1), words: () => [word('twelve letters', somewhere, 0)] };
    const asked = async (): Promise<never> => Promise.reject(new Error('asked'));
    expect((await uprightTurn(page, standing, asked)).kind).toBe('sure');
    const few = { ...page, words: () => [word('few', somewhere, 90)] };
    await expect(uprightTurn(few, standing, asked)).rejects.toThrow('asked');
    const both = [word('twelve letters', somewhere, 0), word('twelve letters', somewhere, 90)];
    expect(await upright(standing, both, [code('QR', 180)])).toBe('180: QR runs upside down');
  });

  it.each<[string, Box, readonly Code[], string]>([
    ['bars across a standing label', standing, [code('Code 128', 180)], '180: Code 128 runs upside down'],
    ['bars across a lying label', lying, [code('Code 128', 90)], '270: Code 128 runs 90° clockwise'],
    [
      'bars along a lying label: a ladder',
      lying,
      [code('Code 128', 0)],
      "a ladder code alone doesn't say which end is up, and no words could be read in its picture",
    ],
    ['a matrix code', lying, [code('Data Matrix', 270)], '90: Data Matrix runs 90° anticlockwise'],
    ['a ladder beside a matrix code', standing, [code('Code 128', 90), code('QR', 0)], '0: QR runs upright'],
    ['bars across beat a turned matrix code', standing, [code('Code 128', 0), code('QR', 90)], '0: the linear codes run upright'],
    [
      'bars both ways up',
      standing,
      [code('ITF', 0), code('Code 128', 180)],
      'its codes run different ways and there are no words, and no words could be read in its picture',
    ],
    ['nothing at all', standing, [], 'there is no text and no code could be read, and no words could be read in its picture'],
    [
      'a slanted code',
      standing,
      [code('QR', undefined)],
      "a ladder code alone doesn't say which end is up, and no words could be read in its picture",
    ],
  ])('%s', async (_, box, codes, answer) => {
    expect(await upright(box, [], codes)).toBe(answer);
  });
});
