import { contentFor, seeded, type LabelContent } from '../samples/content.js';
import { bramblerun } from '../samples/labels/bramblerun.js';
import { kestomar } from '../samples/labels/kestomar.js';
import { norrvane } from '../samples/labels/norrvane.js';
import { overmoor } from '../samples/labels/overmoor.js';
import { quillhaul } from '../samples/labels/quillhaul.js';
import { tidewick } from '../samples/labels/tidewick.js';
import { zunderpost } from '../samples/labels/zunderpost.js';
import { A4, label, layout, LETTER, other, slip, type Layout, type LayoutPage } from '../samples/layout.js';
import { instructions, invoice, packingSlip, receipt } from '../samples/other-pages.js';
import { CHANNELS } from '../samples/names.js';
import { sample, type Kind, type QuarterTurn } from '../samples/sample.js';

/** A document as a channel hands it over. */
export interface DemoFile {
  /** `channel/file`. */
  readonly path: string;
  readonly bytes: Uint8Array;
}

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

const document = (name: string, pages: () => readonly LayoutPage[], traits: Layout['traits'] = []): Layout =>
  layout({ name, about: name, traits, pages });

async function file(path: string, made: Layout, kind: Kind = 'vector', turn: QuarterTurn = 0): Promise<DemoFile> {
  const { bytes, fileName } = await sample(made, kind, turn);
  return { path: `${path}${fileName.slice(fileName.lastIndexOf('.'))}`, bytes };
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

/** Six orders: three with label and slip on one page, three plain 4×6 pages, one of them designed lying. */
export function mixedPages(): Promise<DemoFile[]> {
  return Promise.all(
    contents(PAGES, 6).map((content, index) => {
      const path = `${PAGES}/${index < 3 ? 'with-slip' : 'plain'}-${index + 1}`;
      if (index < 3) {
        const regions = [label(bramblerun(content), 90, 50, 90), slip(packingSlip(540, 360, content), 36, 414)];
        return file(
          path,
          document(`shared ${index}`, () => [{ ...LETTER, regions }]),
        );
      }
      const page: LayoutPage =
        index === 5
          ? { width: 432, height: 288, regions: [label(zunderpost(content), 0, 0)] }
          : { width: 288, height: 432, regions: [label(kestomar(content), 0, 0)] };
      return file(
        path,
        document(`plain ${index}`, () => [page]),
      );
    }),
  );
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

/** What goes wrong on any day. */
export async function faults(good: readonly DemoFile[]): Promise<DemoFile[]> {
  const [first] = good;
  if (!first) throw new Error('the demo has no documents');
  const content = contentFor('too fine', 3);
  const draw = seeded('noise');
  const small = document('too fine', () => [
    { ...LETTER, regions: [label(bramblerun(content), 110, 60, 90, 0.9), other(receipt(540, 300, content), 36, 420)] },
  ]);
  const lone = document('lone slip', () => [{ ...LETTER, regions: [slip(packingSlip(540, 400, contentFor('lone slip')), 36, 36)] }]);
  const bill = document('bill', () => [{ ...A4, regions: [other(invoice(A4.width, A4.height, contentFor('bill')), 0, 0)] }], ['no-label']);
  return [
    { path: `${SHEETS}/again (1).pdf`, bytes: first.bytes },
    await file(`${SHEETS}/drawn-too-small`, small),
    { path: `${SHEETS}/cut-off.pdf`, bytes: first.bytes.slice(0, Math.floor(first.bytes.length * 0.6)) },
    { path: `${SHEETS}/nothing.pdf`, bytes: new Uint8Array() },
    { path: `${SHEETS}/sign-in.pdf`, bytes: Buffer.from('<!DOCTYPE html><html><body>Please sign in</body></html>') },
    await file(`${PAGES}/lone-slip`, lone),
    await file(`${PAGES}/invoice`, bill),
    { path: `${PAGES}/noise.pdf`, bytes: Uint8Array.from({ length: 900 }, () => draw(256)) },
  ];
}
