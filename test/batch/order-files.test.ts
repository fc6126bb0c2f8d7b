import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Pipeline } from '../../src/config/pipeline.js';
import { orderMap } from '../../src/orders/order-map.js';
import { NUMBER, pipelineOf, run, tell, temporaryFolder, write } from './inbox.js';

const HEAD = 'Order,Name,ZIP,Item,Pieces\n';
const ROWS = ['A-1001,Odile Samplewright,10115,Mug,1\n', 'A-1002,Bertil Trialby,20095,Bowl,2\n'];

const MAP = orderMap({ order: ['Order'], buyer: ['Name'], postcode: ['ZIP'], description: ['Item'], quantity: ['Pieces'] });

/** Two channels: one with orders and labels A-1001 and A-1002, one without orders and two labels. */
function studio(orders: readonly string[] = ['north/orders.csv']): { folder: string; pipeline: Pipeline; file: string } {
  const folder = temporaryFolder();
  for (const n of [1, 2]) {
    tell(join(folder, `north/label ${n}.pdf`), [{ role: 'label', parcel: 1, lines: [`Order A-100${n}`] }], { mark: `n${n}` });
    tell(join(folder, `south/label ${n}.pdf`), [{ role: 'label' }], { mark: `s${n}` });
  }
  const pipeline = pipelineOf(folder, { north: [NUMBER], south: [NUMBER] });
  const [north, ...others] = pipeline.channels;
  if (!north) throw new Error('no channel');
  const withOrders = { ...north, orders, recipe: { ...north.recipe, orders: MAP } };
  return { folder, pipeline: { ...pipeline, channels: [withOrders, ...others] }, file: join(folder, 'north/orders.csv') };
}

/** What a run tells of its order files, and how many labels it made of each channel. */
async function ran(pipeline: Pipeline) {
  const { end } = await run(pipeline);
  if (end.kind !== 'finished') throw new Error(`the run ended otherwise: ${JSON.stringify(end)}`);
  const { diagnostics, documents, orders, account } = end.record;
  const ready = (channel: string): number =>
    documents.filter((each) => each.channel === channel).flatMap(({ items }) => items.filter(({ state }) => state === 'ready')).length;
  return {
    told: diagnostics.map(({ code, severity, place }) => [
      code,
      severity,
      'file' in place ? place.file : place.kind,
      'line' in place ? place.line : 0,
    ]),
    remedies: diagnostics.map(({ remedy = '' }) => remedy),
    made: [ready('north'), ready('south')],
    held: documents.flatMap(({ items }) => items.flatMap(({ state, reason }) => (state === 'held' ? [reason?.code] : []))),
    sums: orders?.sums,
    account,
  };
}

describe('an order file that is no good costs its own channel the match, and nothing else', () => {
  it('all is made where the file is good', async () => {
    const { pipeline, file } = studio();
    write(file, HEAD + ROWS.join(''));
    expect(await ran(pipeline)).toMatchObject({ told: [], made: [2, 2], held: [], sums: { orders: 2, packed: 2 } });
  });

  const utf16WithoutMark = Buffer.from(HEAD + ROWS.join(''), 'utf16le');
  const cases: readonly (readonly [what: string, content: string | Uint8Array, told: readonly (readonly [string, string, number])[]])[] = [
    ['is empty', '', [['orders/empty', 'error', 1]]],
    ['holds white space', ' \r\n\r\n', [['orders/empty', 'error', 1]]],
    ['has a header and nothing below it', HEAD, [['orders/no-rows', 'note', 1]]],
    ['has no such columns', 'Invoice;Total\n1;2\n', [['orders/missing-column', 'error', 1]]],
    ['is cut short within its header', HEAD.slice(0, 8), Array.from({ length: 4 }, () => ['orders/missing-column', 'warning', 1])],
    [
      'is a spreadsheet by another name',
      Buffer.from([0x50, 0x4b, 3, 4, 20, 0, 0, 0, 8, 0, 1, 2, 3, 0, 0, 255, 254]),
      [['orders/binary', 'error', 1]],
    ],
    ['is a picture', Buffer.from([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13]), [['orders/binary', 'error', 1]]],
    [
      'is JSON that stops',
      '[{"Order": "A-1001", ',
      [
        ['orders/json', 'error', 1],
        ['orders/json', 'error', 1],
      ],
    ],
    ['is an empty list', '[]', [['orders/no-rows', 'note', 1]]],
    ['is a web page', '<!DOCTYPE html>\n<html><body>Sign in</body></html>\n', [['orders/web-page', 'error', 1]]],
  ];
  it.each(cases)('%s', async (_, content, told) => {
    const { pipeline, file } = studio();
    write(file, content);
    const { made, held, remedies, ...end } = await ran(pipeline);
    expect(end.told).toEqual(told.map(([code, severity, line]) => [code, severity, 'north/orders.csv', line]));
    for (const remedy of remedies) expect(remedy).toMatch(/^[A-Z].*\.$/);
    expect(made).toEqual([0, 2]);
    expect(held).toEqual(['orders/no-order', 'orders/no-order']);
  });

  it('in an encoding that nothing states is read, where that can be told', async () => {
    for (const content of [
      utf16WithoutMark,
      Buffer.concat([Buffer.from([0xff, 0xfe]), utf16WithoutMark]),
      Buffer.from(HEAD + ROWS.join('').replace('Odile', 'Zo\xeb'), 'latin1'),
    ]) {
      const { pipeline, file } = studio();
      write(file, content);
      const { made, sums } = await ran(pipeline);
      expect([made, sums]).toEqual([[2, 2], { orders: 2, packed: 2, held: 0, 'no-label': 0, 'not-expected': 0 }]);
    }
  });

  it('that is not there is named', async () => {
    for (const named of ['north/orders.csv', 'north/*.csv', 'nowhere/orders.csv']) {
      const { told, made, held, remedies } = await ran(studio([named]).pipeline);
      expect([told.length, made, held.length]).toEqual([1, [0, 2], 2]);
      expect(JSON.stringify(told)).toContain('intake/');
      expect(remedies[0]).toMatch(/^[A-Z].*\.$/);
    }
  });

  it('that is a folder is named', async () => {
    const { pipeline, file } = studio();
    mkdirSync(file, { recursive: true });
    const { told, made, held, remedies } = await ran(pipeline);
    expect([told.length, made, held.length]).toEqual([1, [0, 2], 2]);
    expect(remedies[0]).toMatch(/^[A-Z].*\.$/);
  });

  it('beside a good one leaves that one its orders', async () => {
    const { folder, pipeline, file } = studio(['north/*.csv']);
    write(file, HEAD + ROWS.join(''));
    write(join(folder, 'north/broken.csv'), '');
    expect(await ran(pipeline)).toMatchObject({ told: [['orders/empty', 'error', 'north/broken.csv', 1]], made: [2, 2], held: [] });
  });

  it('of 50,000 rows is read, each order in one place', async () => {
    const { pipeline, file } = studio();
    const rows = Array.from({ length: 49_998 }, (_, n) => `B-${100_000 + n},Maro Proberton,${10_000 + (n % 90_000)},Mug,1\n`);
    write(file, HEAD + ROWS.join('') + rows.join(''));
    const { told, made, sums } = await ran(pipeline);
    expect([told, made, sums]).toEqual([[], [2, 2], { orders: 50_000, packed: 2, held: 0, 'no-label': 49_998, 'not-expected': 0 }]);
  });

  it('of 50,000 bad rows tells the first of them and counts the others', async () => {
    const { pipeline, file } = studio();
    write(file, HEAD + ROWS.join('') + 'B-1,Maro Proberton,10115,Mug,many\n'.repeat(25_000) + 'x\n'.repeat(25_000));
    const { told, made } = await ran(pipeline);
    expect(told.length).toBeLessThan(40);
    expect(made).toEqual([2, 2]);
  });
});
