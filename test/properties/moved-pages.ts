import { degrees, PDFDocument, StandardFonts } from 'pdf-lib';
import type { Box } from '../../src/geometry/box.js';
import type { Turn } from '../../src/geometry/placement.js';
import type { ForeignFile, PageTruth } from '../samples/foreign/load.js';

/** What is done to a page as it was handed over. Pt, down and right positive; the scale is about its middle. */
export interface Move {
  readonly scale: number;
  readonly right: number;
  readonly down: number;
  /** Quarters that a viewer turns the page by besides, clockwise. */
  readonly turn: Turn;
  readonly footer: boolean;
}

const MARGIN = 4;

/** The one page of a document, moved, with the truth of its labels; undefined where its box does not begin at 0, or a label would leave it. */
export async function movedPage({ file, bytes, truth }: ForeignFile, page: PageTruth, move: Move): Promise<ForeignFile | undefined> {
  const made = await PDFDocument.create();
  const [copy] = await made.copyPages(await PDFDocument.load(bytes), [page.page - 1]);
  if (!copy) return undefined;
  made.addPage(copy);
  const { x, y, width, height } = copy.getMediaBox();
  const crop = copy.getCropBox();
  if (x !== 0 || y !== 0 || crop.x !== 0 || crop.y !== 0 || crop.width !== width || crop.height !== height) return undefined;
  const given = copy.getRotation().angle as Turn;
  const paper = { width, height };
  const boxes = page.labels.map(({ box }) => moved(turned(box, turnBy(360 - given), shown(paper, given)), move, paper));
  if (!boxes.every((box) => isOnPage(box, paper))) return undefined;
  const { scale, right, down } = move;
  copy.scaleContent(scale, scale);
  copy.translateContent(((1 - scale) * width) / 2 + right, ((1 - scale) * height) / 2 - down);
  if (move.footer && boxes.every((box) => box.y + box.height < height - 50)) {
    const font = await made.embedFont(StandardFonts.Helvetica);
    copy.drawText('Page 1 of 1. Printed by the shop on the hill. Sample.', { x: 60, y: 18, size: 7, font });
  }
  const turn = turnBy(given + move.turn);
  copy.setRotation(degrees(turn));
  const labels = page.labels.map((label, index) => ({
    ...label,
    box: turned(boxes[index] ?? label.box, turn, paper),
    turn: turnBy(label.turn + 360 - move.turn),
  }));
  const as: PageTruth = { ...page, ...shown(paper, turn), page: 1, labels };
  return { file, bytes: await made.save(), truth: { ...truth, pages: [as] } };
}

const turnBy = (angle: number): Turn => (angle % 360) as Turn;

const shown = ({ width, height }: { width: number; height: number }, turn: Turn): { width: number; height: number } =>
  turn % 180 === 0 ? { width, height } : { width: height, height: width };

/** Where a box on paper lies after the paper was turned clockwise. */
function turned(box: Box, turn: Turn, paper: { width: number; height: number }): Box {
  const { x, y, width, height } = box;
  if (turn === 90) return { x: paper.height - y - height, y: x, width: height, height: width };
  if (turn === 180) return { x: paper.width - x - width, y: paper.height - y - height, width, height };
  if (turn === 270) return { x: y, y: paper.width - x - width, width: height, height: width };
  return box;
}

const moved = ({ x, y, width, height }: Box, { scale, right, down }: Move, paper: { width: number; height: number }): Box => ({
  x: paper.width / 2 + scale * (x - paper.width / 2) + right,
  y: paper.height / 2 + scale * (y - paper.height / 2) + down,
  width: scale * width,
  height: scale * height,
});

const isOnPage = ({ x, y, width, height }: Box, paper: { width: number; height: number }): boolean =>
  x >= MARGIN && y >= MARGIN && x + width <= paper.width - MARGIN && y + height <= paper.height - MARGIN;
