import { contentFor, type LabelContent } from '../samples/content.js';
import { bramblerun } from '../samples/labels/bramblerun.js';
import { kestomar } from '../samples/labels/kestomar.js';
import { norrvane } from '../samples/labels/norrvane.js';
import { overmoor } from '../samples/labels/overmoor.js';
import { quillhaul } from '../samples/labels/quillhaul.js';
import { tidewick } from '../samples/labels/tidewick.js';
import { zunderpost } from '../samples/labels/zunderpost.js';
import { A4, label, LETTER, other, slip, type LayoutPage } from '../samples/layout.js';
import { declaration, declarationNumber } from '../samples/declaration.js';
import { instructions, packingSlip, receipt } from '../samples/other-pages.js';
import { CHANNELS } from '../samples/names.js';
import type { QuarterTurn } from '../samples/sample.js';
import { document, file, withForms, zipped, type DemoFile } from './demo-file.js';

/** Folder and channel names. */
export const [SHEETS, PAIRS, SHEETS_OF_TWO, PICTURES, PAGES, RETURNS] = CHANNELS.map((name) => name.toLowerCase()) as [
  string,
  string,
  string,
  string,
  string,
  string,
];

const contents = (channel: string, count: number): LabelContent[] =>
  Array.from({ length: count }, (_, index) => contentFor(`${channel} order ${index + 1}`, index + channel.length));

/** The orders of the channel with letter pages, as its export gives them, and some that have no label: one that waits for it, one cancelled. */
export function orderFile(): DemoFile {
  const heads = 'Order;Status;Ordered;Ship by;Buyer;Street;Unit;Town;Postcode;Country;SKU;Item;Pieces;Bin;Gift message';
  const rows = contents(SHEETS, 12).flatMap((content, index) => {
    const [name = '', street = '', ...rest] = content.to;
    const [town = '', unit = ''] = rest.toReversed();
    const status = index === 11 ? 'Cancelled' : 'Paid';
    const message = index === 2 ? 'Alles Gute! С днём рождения! お誕生日おめでとう' : '';
    return content.items.map((item) => {
      const [pieces = '1', ...words] = item.split(' x ');
      const goods = words.join(' x ');
      const shelf = goods.charCodeAt(0) % 9;
      const cells = [
        content.order,
        status,
        `2026-11-${String(20 + (index % 5))}`,
        `2026-11-${String(26 + (index % 3))}`,
        name,
        street,
        unit,
        town.replace(/ \S+$/, ''),
        content.postcode,
        'US',
        `${goods.slice(0, 2).toUpperCase()}-${String(goods.length)}`,
        `"${goods.replaceAll('"', '""')}"`,
        pieces,
        `${'ABC'[shelf % 3] ?? 'A'}${String(shelf)}`,
        message,
      ];
      return cells.join(';');
    });
  });
  // As a spreadsheet saves it: a mark in front, and lines that end as on other systems.
  const text = `\ufeff${[heads, ...rows].join('\r\n')}\r\n`;
  return { path: `${SHEETS}/orders.csv`, bytes: Buffer.from(text), documents: [] };
}

/** Ten orders: a letter page each, label sideways on the upper half, receipt below. */
export function letterSheets(): Promise<DemoFile[]> {
  return Promise.all(
    contents(SHEETS, 10).map((content, index) => {
      const art = index % 2 === 0 ? tidewick(content) : norrvane(content);
      const page = { ...LETTER, regions: [label(art, 90, 50, index % 3 === 0 ? 270 : 90), other(receipt(540, 300, content), 36, 420)] };
      return file(
        `${SHEETS}/order-${content.order}-${index + 1}`,
        document(`sheet ${index + 1}`, () => [page]),
        index === 4 ? 'grey' : 'vector',
      );
    }),
  );
}

/** Eight orders in one document: a label page, then its slip page. */
export async function labelsAndSlips(): Promise<DemoFile[]> {
  const pages = contents(PAIRS, 8).flatMap((content): LayoutPage[] => [
    { width: 288, height: 432, regions: [label(quillhaul(content), 0, 0)] },
    { ...LETTER, regions: [slip(packingSlip(540, 400, content), 36, 36)] },
  ]);
  return [
    await file(
      `${PAIRS}/all-orders`,
      document('all orders', () => pages),
    ),
  ];
}

/** Eight orders, two labels on an A4 page. */
export function twoOnAPage(): Promise<DemoFile[]> {
  const all = contents(SHEETS_OF_TWO, 8);
  return Promise.all(
    [0, 1, 2, 3].map((sheet) => {
      const regions = [0, 1].map((half) => label(tidewick(all[2 * sheet + half] as LabelContent), 82, half === 0 ? 66 : 488, 90));
      return file(
        `${SHEETS_OF_TWO}/labels-${sheet + 1}`,
        document(`two ${sheet + 1}`, () => [{ ...A4, regions }]),
        sheet === 2 ? 'bilevel' : 'vector',
      );
    }),
  );
}

/** Six orders as pictures; the turns make some of their resolution data wrong or missing. */
export function pictures(): Promise<DemoFile[]> {
  const turns: readonly QuarterTurn[] = [0, 90, 180, 0, 270, 180];
  return Promise.all(
    contents(PICTURES, 6).map((content, index) => {
      const page = { width: 288, height: 432, regions: [label(overmoor(content), 0, 0)] };
      const made = document(`picture ${index + 1}`, () => [page], ['picture-file']);
      return file(`${PICTURES}/label-${index + 1}`, made, index % 3 === 2 ? 'grey' : 'bilevel', turns[index]);
    }),
  );
}

/** Copies of the customs declaration behind a plain label, by the label's index: two parcels go abroad. */
const DECLARATIONS: readonly number[] = [2, 0, 1];

/** Six orders: three with label and slip on one page, three plain 4×6 pages in one ZIP, one of them designed lying, two with customs declarations. */
export async function mixedPages(): Promise<DemoFile[]> {
  const all = contents(PAGES, 6);
  const shared = all.slice(0, 3).map((content, index) => {
    const regions = [label(bramblerun(content), 90, 50, 90), slip(packingSlip(540, 360, content), 36, 414)];
    return file(
      `${PAGES}/with-slip-${index + 1}`,
      document(`shared ${index}`, () => [{ ...LETTER, regions }]),
    );
  });
  const plain = all.slice(3).map(async (content, index) => {
    const page: LayoutPage =
      index === 2
        ? { width: 432, height: 288, regions: [label(zunderpost(content), 0, 0)] }
        : { width: 288, height: 432, regions: [label(kestomar(content), 0, 0)] };
    const copies = DECLARATIONS[index] ?? 0;
    const forms = Array.from({ length: copies }, (_, copy): LayoutPage => ({
      ...LETTER,
      regions: [other(declaration(540, 660, content, `${copy + 1}/${copies}`), 36, 50)],
    }));
    const made = await file(
      `plain-${index + 4}`,
      document(`plain ${index}`, () => [page, ...forms]),
    );
    return withForms(made, copies, declarationNumber(content));
  });
  return [...(await Promise.all(shared)), zipped(`${PAGES}/all-labels.zip`, await Promise.all(plain))];
}

/** Two return labels, each on a letter page. */
export function returnLabels(): Promise<DemoFile[]> {
  return Promise.all(
    contents(RETURNS, 2).map((content, index) => {
      const art = { ...label(quillhaul(content, { cutLine: true }), 162, 40), role: 'return-label' as const };
      return file(
        `${RETURNS}/return-${index + 1}`,
        document(`return ${index}`, () => [{ ...LETTER, regions: [art, other(instructions(540, 240), 36, 510)] }]),
      );
    }),
  );
}

/** The forty orders that come in whole. */
export async function goodFiles(): Promise<readonly DemoFile[]> {
  const channels = [letterSheets(), labelsAndSlips(), twoOnAPage(), pictures(), mixedPages(), returnLabels()];
  return [...(await Promise.all(channels)).flat(), orderFile()];
}
