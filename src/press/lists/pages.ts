import { stacked, type Block, type ListPage } from './block.js';
import type { ListFace } from './face.js';
import type { List, ListSection } from './list.js';
import { styleOf, type Measures } from './measures.js';
import { columnsOf, headBlock, rowBlocks, rule, shortBlock, textBlock } from './table.js';

type Placed = ListPage['placed'][number];

/** A sentence of the intro takes no more lines than this. */
const MOST_OF_INTRO = 8;

/** A list on pages: each with the title, the head of the table where a table is on it, and its number of how many. No page is empty. */
export function pagesOf(list: List, m: Measures, face: ListFace): readonly ListPage[] {
  const columns = columnsOf(list, m, face);
  const head = titleBlock(list, m, face);
  const tableHead = headBlock(columns, m, face);
  const foot = list.caution === '' ? undefined : textBlock(list.caution, 'small', m, face);
  const footHeight = (foot?.height ?? 0) + numberBlock(99, 99, m, face).height + m.pad;
  const low = m.margin + m.height - footHeight;
  const pages: Placed[][] = [];
  let y = low;
  const put = (block: Block): void => {
    pages.at(-1)?.push({ block, x: m.margin, y });
    y += block.height;
  };
  const turn = (): void => {
    pages.push([]);
    y = m.margin;
    put(head);
  };
  turn();
  if (list.intro.length > 0) put({ height: m.pad, marks: [] });
  for (const sentence of list.intro) put(shortBlock(sentence, '', 'plain', m, face, MOST_OF_INTRO));
  list.sections.forEach((section, index) => {
    // What the heads of a page leave for rows.
    const heading = (again: boolean): Block => stacked([gap(m), ...headings(section, again, m, face)]);
    const most = low - m.margin - head.height - heading(true).height - tableHead.height;
    const rows = section.rows.flatMap((row) => rowBlocks(row, columns, most, m, face));
    if (section.ownPage && index > 0) turn();
    const end = stacked(endOf(section, m, face));
    const first = rows[0] ? tableHead.height + rows[0].height : end.height;
    if (y + heading(false).height + first > low && (pages.at(-1)?.length ?? 0) > 1) turn();
    put(heading(false));
    if (rows.length > 0) put(tableHead);
    for (const row of rows) {
      if (y + row.height > low) {
        turn();
        put(heading(true));
        put(tableHead);
      }
      put(row);
    }
    if (rows.length > 0 && y + end.height > low) {
      turn();
      put(heading(true));
    }
    put(end);
  });
  return pages.map((placed, index) => {
    const number = numberBlock(index + 1, pages.length, m, face);
    const bottom = m.margin + m.height - number.height;
    const caution = foot ? [{ block: foot, x: m.margin, y: bottom - foot.height }] : [];
    return { placed: [...placed, ...caution, { block: number, x: m.margin, y: bottom }] };
  });
}

const gap = (m: Measures): Block => ({ height: 2 * m.pad, marks: [] });

const numberBlock = (number: number, of: number, m: Measures, face: ListFace): Block =>
  textBlock(`Page ${number} of ${of}`, 'small', m, face);

function headings({ heading }: ListSection, again: boolean, m: Measures, face: ListFace): readonly Block[] {
  return heading === '' ? [] : [shortBlock(heading, again ? ' (continued)' : '', 'strong', m, face)];
}

/** The title, and the day: beside it where both fit on a line, else below. */
function titleBlock({ title, date }: List, m: Measures, face: ListFace): Block {
  const [name, day] = [shortBlock(title, '', 'big', m, face), shortBlock(date, '', 'plain', m, face)];
  const end = { height: m.pad, marks: [] };
  const line = rule(m.width, 0.5);
  const dayWide = face.width(date, styleOf('plain', m));
  const fits = face.width(title, styleOf('big', m)) + m.gap + dayWide <= m.width;
  if (!fits) return stacked([name, day, end, line]);
  const beside = day.marks.flatMap((mark) =>
    mark.kind === 'text' ? { ...mark, x: m.width - dayWide, baseline: baselineOf(name) ?? mark.baseline } : [],
  );
  return stacked([{ height: name.height, marks: [...name.marks, ...beside] }, end, line]);
}

const baselineOf = ({ marks }: Block): number | undefined => marks.flatMap((mark) => (mark.kind === 'text' ? mark.baseline : []))[0];

/** What closes a section: its sum, and lines to write on, side by side where there is room for a hand. */
function endOf({ closing, sign }: ListSection, m: Measures, face: ListFace): readonly Block[] {
  const sum = closing ? [gap(m), shortBlock(closing.of, `: ${closing.sum}`, 'strong', m, face)] : [];
  const across = m.width / Math.max(1, sign.length) >= HAND ? sign.length : 1;
  const width = (m.width - (across - 1) * 2 * m.gap) / Math.max(1, across);
  const lines = sign.map((label) => stacked([{ height: 3 * m.size, marks: [] }, rule(width, 0.5), textBlock(label, 'small', m, face)]));
  return [...sum, ...(across > 1 ? [besideEachOther(lines, width + 2 * m.gap)] : lines)];
}

/** What a hand needs to write its name, pt. */
const HAND = 140;

const besideEachOther = (blocks: readonly Block[], step: number): Block => ({
  height: Math.max(...blocks.map(({ height }) => height)),
  marks: blocks.flatMap(({ marks }, at) => marks.map((mark) => ({ ...mark, x: mark.x + at * step }))),
});
