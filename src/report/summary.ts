import type { RunRecord, DocumentRecord, ItemRecord, StackRecord } from '../batch/run-record.js';
import { ROLL } from '../geometry/printer.js';
import type { ItemStateKind } from '../recipe/outcome.js';
import { ROLES } from '../sheet/sheet.js';
import { count, countRole, list, painter, roleWord, type Style } from './words.js';

export interface SummaryOptions {
  readonly colour: boolean;
  /** The output folder as people should see it: put before every path. */
  readonly out: string;
  readonly dryRun: boolean;
}

/** No more documents than this are named for one reason; run.json has them all. */
const NAMED = 12;

interface Told {
  readonly document: DocumentRecord;
  readonly item: ItemRecord;
}

/** What a run made, what is held and why, and where to look: the end of `slipyard run`. */
export function summary(record: RunRecord, options: SummaryOptions): string {
  const paint = painter(options.colour);
  const { account, stacks } = record;
  if (account.documents.taken === 0) return nothingToDo(options);
  const sections = [
    made(record, options),
    ...stacks.map((stack) => `  ${stackLine(stack, record, options)}`),
    ...listLines(record, options),
    ...section('held', 'Held, not printed', 'yellow', record, options),
    ...section('failed', 'Failed', 'red', record, options),
    ...section('skipped', 'Skipped', 'dim', record, options),
    ...ordersTold(record, options),
    ...notes(record, options),
    ...mistakes(record, options),
    '',
    accountLine(record),
    ...(options.dryRun ? [] : [whereToLook(account.items.held > 0, options)]),
  ];
  return `${sections.map((line, index) => (index === 0 ? paint('bold', line) : line)).join('\n')}\n`;
}

/** A stack of an earlier run is gone then: it would be printed a second time. */
function nothingToDo({ out, dryRun }: SummaryOptions): string {
  return `Nothing to do: no documents were found${dryRun ? '' : `, so there is no stack in ${out}/print`}.\n`;
}

function whereToLook(held: boolean, { out }: SummaryOptions): string {
  const pictures = held ? [`at ${out}/held for pictures of what is held`] : [];
  return `Look ${list([...pictures, `at ${out}/run.json for what became of each page`])}.`;
}

function made({ account, stacks }: RunRecord, { dryRun }: SummaryOptions): string {
  const roles = ROLES.flatMap((role) => {
    const ready = account.items.byRole[role]?.ready ?? 0;
    return ready > 0 ? [countRole(ready, role)] : [];
  });
  if (roles.length === 0) return 'Nothing is ready to print.';
  const where = stacks.length === 1 ? 'in one stack' : `in ${stacks.length} stacks`;
  return `${list(roles)} ${dryRun ? 'would be' : account.items.ready === 1 ? 'is' : 'are'} ready to print, ${where}:`;
}

function stackLine(stack: StackRecord, record: RunRecord, { out }: SummaryOptions): string {
  const { file, output, media, pages, sheets } = stack;
  const onSheets = sheets === pages ? '' : ` on ${count(sheets, 'sheet')}`;
  const printer = record.stacks.every((each) => each.output === ROLL) ? '' : ` of ${media} for ${output === ROLL ? 'the roll' : output}`;
  return `${out}/${file}  ${count(pages, 'page')}${onSheets}${printer}, ${whoseStack(stack, record)}`;
}

/** Numbers of more parcels than these tell nobody anything. */
const NUMBERS_TOLD = 12;

/** Whose parcels a stack is for: by number where it has none of their labels, since its pages are put to labels by that. */
function whoseStack({ file, output, parcels }: StackRecord, { documents }: RunRecord): string {
  if (output === ROLL) return count(parcels, 'parcel');
  const there = documents.flatMap(({ items }) => items.filter(({ printed }) => printed?.stack === file));
  if (there.some(({ role }) => role === 'label' || role === 'return-label') || parcels > NUMBERS_TOLD) return count(parcels, 'parcel');
  const numbers = [...new Set(there.map(({ printed }) => printed?.number ?? 0))].sort((a, b) => a - b);
  return `to go with ${numbers.length === 1 ? 'parcel' : 'parcels'} ${list(numbers.map(String))}`;
}

function listLines({ orders }: RunRecord, { out }: SummaryOptions): string[] {
  if (!orders || orders.lists.length === 0) return [];
  return [`  ${out}/lists/  what to fetch, and what each carrier takes`];
}

/** What became of the orders, and what is left over of them. */
function ordersTold({ orders }: RunRecord, options: SummaryOptions): string[] {
  if (!orders || orders.sums.orders + orders.looseEnds.length === 0) return [];
  const paint = painter(options.colour);
  const { sums, looseEnds } = orders;
  const ends = [
    `${sums.packed} packed`,
    `${sums.held} held`,
    `${sums['no-label']} without a label`,
    `${sums['not-expected']} that need none`,
  ];
  const told = grouped(looseEnds, ({ code, remedy }) => `${code} ${remedy}`).flatMap((group) => [
    ...few(
      group.map(({ code, message }) => `  ${message} ${paint('dim', `[${code}]`)}`),
      TOLD_ABOVE.includes(group[0]?.code ?? '') ? options : undefined,
    ),
    `    do: ${group[0]?.remedy ?? ''}`,
  ]);
  return [
    '',
    `${count(sums.orders, 'order')}: ${ends.join(', ')}.`,
    ...(looseEnds.length === 0 ? [] : [paint('yellow', `Loose ends: ${looseEnds.length}`), ...told]),
  ];
}

/** Loose ends of labels that are named above already, held or printed: no more than the first few are named again. */
const TOLD_ABOVE: readonly string[] = ['orders/no-order', 'orders/label-held'];

/** Each of these names another document: a folder that is there twice would fill the screen if each were told with its remedy. */
const TWICE: ReadonlySet<string> = new Set(['intake/duplicate', 'batch/duplicate']);

function section(state: ItemStateKind, title: string, style: Style, record: RunRecord, options: SummaryOptions): string[] {
  const told = record.documents.flatMap((document) =>
    document.items.filter((item) => item.state === state).map((item) => ({ document, item })),
  );
  if (told.length === 0) return [];
  const paint = painter(options.colour);
  const groups = grouped(told, ({ item: { reason } }) =>
    JSON.stringify([reason?.code, TWICE.has(reason?.code ?? '') ? '' : reason?.message, reason?.remedy]),
  );
  return ['', paint(style, `${title}: ${told.length}`), ...groups.flatMap((group) => groupLines(group, options))];
}

/** Those with the same key together, in the order in which the keys first come. */
function grouped<T>(all: readonly T[], keyOf: (each: T) => string): (readonly T[])[] {
  const groups = new Map<string, T[]>();
  for (const each of all) {
    const group = groups.get(keyOf(each));
    if (group) group.push(each);
    else groups.set(keyOf(each), [each]);
  }
  return [...groups.values()];
}

/** What was put right on the way, so that nobody wonders afterwards. */
function notes({ documents }: RunRecord, options: SummaryOptions): string[] {
  const told = documents.flatMap(({ name, diagnostics }) => diagnostics.map(({ message }) => ({ name, message })));
  if (told.length === 0) return [];
  const groups = grouped(told, ({ message }) => message);
  return [
    '',
    `Noted: ${told.length}`,
    ...groups.flatMap((group) => [
      `  ${group[0]?.message ?? ''}`,
      ...named(
        group.map(({ name }) => name),
        options,
      ),
    ]),
  ];
}

/** What a run was told of at its beginning, in another stream perhaps: a channel that gave nothing must not be forgotten over the others. */
function mistakes({ diagnostics }: RunRecord, { colour }: SummaryOptions): string[] {
  const told = diagnostics.filter(({ severity }) => severity === 'error');
  if (told.length === 0) return [];
  const paint = painter(colour);
  const lines = told.map(({ code, message, place }) => {
    const where = 'file' in place ? `${place.file}${'line' in place ? `:${place.line}:${place.col}` : ''}: ` : '';
    return `  ${where}${message} ${paint('dim', `[${code}]`)}`;
  });
  return ['', paint('red', `Mistakes to put right: ${told.length}`), ...lines];
}

/** The first of many lines, and how many there are more; a dry run leaves no file that would name them. */
function named(lines: readonly string[], options: SummaryOptions): string[] {
  return few(
    lines.map((line) => `    ${line}`),
    options,
  );
}

/** @param options left out: all lines */
function few(lines: readonly string[], options: SummaryOptions | undefined): string[] {
  if (options === undefined || lines.length <= NAMED) return [...lines];
  return [...lines.slice(0, NAMED), `    and ${lines.length - NAMED} more${options.dryRun ? '' : `, see ${options.out}/run.json`}`];
}

/** A reason once, and below it whom it concerns; of what a label leaves of its page only the number. */
function groupLines(group: readonly Told[], options: SummaryOptions): string[] {
  const paint = painter(options.colour);
  const reason = group[0]?.item.reason;
  const lines = [`  ${reason?.message ?? ''} ${paint('dim', `[${reason?.code ?? ''}]`)}`];
  if (group.every(({ item }) => item.role === 'remainder' && item.state === 'skipped')) {
    return [`  ${reason?.message ?? ''}: ${count(group.length, 'time')} ${paint('dim', `[${reason?.code ?? ''}]`)}`];
  }
  if (new Set(group.map(({ item }) => item.reason?.message)).size > 1) {
    const each = group.map(({ document, item }) => `  ${whose(document, item, options)}: ${item.reason?.message ?? ''}`);
    lines.splice(
      0,
      1,
      ...few(
        each.map((line) => `${line} ${paint('dim', `[${reason?.code ?? ''}]`)}`),
        options,
      ),
    );
  } else {
    lines.push(
      ...named(
        group.map(({ document, item }) => whose(document, item, options)),
        options,
      ),
    );
  }
  if (reason?.remedy) lines.push(`    do: ${reason.remedy.replaceAll('\n', '\n        ')}`);
  return lines;
}

function whose({ name, pages }: DocumentRecord, { page, role, held }: ItemRecord, { out, dryRun }: SummaryOptions): string {
  const where = page === 0 ? '' : pages > 1 ? `, page ${page}` : '';
  const what = page === 0 || role === 'page' ? '' : ` (${roleWord(role)})`;
  const picture = held?.picture !== undefined && !dryRun ? `  → ${out}/${held.picture}` : '';
  return `${name}${where}${what}${picture}`;
}

function accountLine({ account: { documents, pages, items } }: RunRecord): string {
  const ended = [`${documents.read} read`, `${documents.failed} failed`, `${documents.skipped} skipped`].join(', ');
  const states = [`${items.ready} ready`, `${items.held} held`, `${items.skipped} skipped`, `${items.failed} failed`].join(', ');
  return `The account adds up: ${count(documents.taken, 'document')} (${ended}), ${count(pages.source, 'page')}, ${count(items.given, 'item')} (${states}).`;
}
