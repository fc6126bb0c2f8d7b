import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runDraftOrders } from '../../src/commands/draft-orders.js';
import { capture } from './capture.js';

describe('draft --orders', () => {
  let folder: string;
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'slipyard-draft-orders-'));
    writeFileSync(join(folder, 'orders.csv'), 'Order number,Recipient\nA-1,Ada Example\n');
    writeFileSync(join(folder, 'broken.csv'), 'Order number,Recipient\nA-1,Ada Example\nA-2\n');
    writeFileSync(join(folder, 'stock.csv'), 'Colour,Shelf\nblue,left\n');
    mkdirSync(join(folder, 'inbox'));
  });
  afterAll(() => {
    rmSync(folder, { recursive: true });
  });
  const draft = (orders: string) => capture((io) => Promise.resolve(runDraftOrders({ orders }, { ...io, folder })));

  it('prints the lines to the standard output, and nothing else there', async () => {
    const { exitCode, out, err } = await draft('orders.csv');
    expect(exitCode).toBe(0);
    expect(out).toMatch(/^# Drafted from orders\.csv\./);
    expect(out).toContain('\norders:\n  columns:\n    order: Order number\n    buyer: Recipient\n');
    expect(err).toContain('slipyard check RECIPE');
  });

  it('ends with 1 where the file has errors, with the lines all the same', async () => {
    const { exitCode, out, err } = await draft('broken.csv');
    expect(exitCode).toBe(1);
    expect(out).toContain('orders:\n');
    expect(err).toMatch(/^broken\.csv:3:1: error: .*\[orders\/cell-count\]\n {2}do: /);
  });

  it('ends with 1 and no lines where nothing looks like an order', async () => {
    const { exitCode, out, err } = await draft('stock.csv');
    expect([exitCode, out]).toEqual([1, '']);
    expect(err).toContain('[draft/no-order-column]');
  });

  it('ends with 3 where there is no such file, or no file', async () => {
    expect(await draft('nothing.csv')).toMatchObject({ exitCode: 3, out: '', err: expect.stringContaining('[intake/no-file]') as string });
    expect(await draft('inbox')).toMatchObject({ exitCode: 3, out: '', err: expect.stringContaining('[intake/not-a-file]') as string });
  });
});
