import { describe, expect, it } from 'vitest';
import { CodesMemo } from '../../src/reading/codes-memo.js';
import type { Code } from '../../src/reading/source.js';

const at = (x: number): Code => {
  const box = { x, y: 10, width: 20, height: 10 };
  const corner = { x, y: 10 };
  return { symbology: 'QR', identifier: ']Q1', bytes: '53', corners: [corner, corner, corner, corner], box, turn: 0 };
};
const page = { x: 0, y: 0, width: 200, height: 100 };

function counted(codes: readonly Code[]): { read: () => Promise<readonly Code[]>; times: () => number } {
  let times = 0;
  return {
    times: () => times,
    read: () => {
      times += 1;
      return Promise.resolve(codes);
    },
  };
}

describe('CodesMemo', () => {
  it('answers a part of what was read, with the codes that lie in it whole', async () => {
    const memo = new CodesMemo();
    const { read, times } = counted([at(10), at(100), at(150)]);
    expect(await memo.get(page, 4, read)).toHaveLength(3);
    expect(await memo.get({ x: 90, y: 0, width: 70, height: 50 }, 4, read)).toEqual([at(100)]);
    expect(await memo.get({ x: 90, y: 0, width: 70, height: 50 }, 3, read)).toEqual([at(100)]);
    expect(times()).toBe(1);
  });

  it('reads anew what is finer or lies outside', async () => {
    const memo = new CodesMemo();
    const { read, times } = counted([at(10)]);
    await memo.get({ x: 0, y: 0, width: 100, height: 100 }, 4, read);
    await memo.get({ x: 0, y: 0, width: 100, height: 100 }, 8, read);
    await memo.get(page, 4, read);
    expect(times()).toBe(3);
  });

  it('reads once for two who ask at the same time', async () => {
    const memo = new CodesMemo();
    const { read, times } = counted([at(10)]);
    const both = await Promise.all([memo.get(page, 4, read), memo.get(page, 4, read)]);
    expect(both).toEqual([[at(10)], [at(10)]]);
    expect(times()).toBe(1);
  });
});
