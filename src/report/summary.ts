import type { RunRecord, DocumentRecord, ItemRecord, StackRecord } from '../batch/run-record.js';
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
  if (account.documents.taken === 0) return 'Nothing to do: no documents were found.\n';
  const sections = [
    made(record, options),
    ...stacks.map((stack) => `  ${stackLine(stack, options)}`),
    ...section('held', 'Held, not printed', 'yellow', record, options),
    ...section('failed', 'Failed', 'red', record, options),
    ...section('skipped', 'Skipped', 'dim', record, options),
    '',
    accountLine(record),
    ...(options.dryRun
      ? []
      : [`Look at: ${list([...(account.items.held > 0 ? [`${options.out}/held`] : []), `${options.out}/run.json`])}`]),
  ];
  return `${sections.map((line, index) => (index === 0 ? paint('bold', line) : line)).join('\n')}\n`;
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

function stackLine({ file, parcels, pages, sheets }: StackRecord, { out }: SummaryOptions): string {
  const onSheets = sheets === pages ? '' : ` on ${count(sheets, 'sheet')}`;
  return `${out}/${file}  ${count(pages, 'page')}${onSheets}, ${count(parcels, 'parcel')}`;
}

function section(state: ItemStateKind, title: string, style: Style, record: RunRecord, options: SummaryOptions): string[] {
  const told = record.documents.flatMap((document) =>
    document.items.filter((item) => item.state === state).map((item) => ({ document, item })),
  );
  if (told.length === 0) return [];
  const paint = painter(options.colour);
  const groups = new Map<string, Told[]>();
  for (const each of told) {
    const { reason } = each.item;
    const key = JSON.stringify([reason?.code, reason?.message, reason?.remedy]);
    groups.set(key, [...(groups.get(key) ?? []), each]);
  }
  return ['', paint(style, `${title}: ${told.length}`), ...[...groups.values()].flatMap((group) => groupLines(group, options))];
}

/** A reason once, and below it whom it concerns. */
function groupLines(group: readonly Told[], options: SummaryOptions): string[] {
  const paint = painter(options.colour);
  const reason = group[0]?.item.reason;
  const lines = [`  ${reason?.message ?? ''} ${paint('dim', `[${reason?.code ?? ''}]`)}`];
  for (const { document, item } of group.slice(0, NAMED)) lines.push(`    ${whose(document, item, options)}`);
  if (group.length > NAMED) lines.push(`    and ${group.length - NAMED} more, see ${options.out}/run.json`);
  if (reason?.remedy) lines.push(`    do: ${reason.remedy}`);
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
