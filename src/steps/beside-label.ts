import { isSlip, type Rest } from '../locating/rest.js';
import type { FoundLabel, Survey } from '../locating/survey.js';
import { held, skipped, type Reason, type Sheet } from '../sheet/sheet.js';
import { heldBeside } from './surveyed.js';

/** The sheets of a page by what was found on it: its labels in reading order, then what is beside them. */
export function sheetsOfSurvey(sheet: Sheet, { labels, rest, doubts }: Extract<Survey, { kind: 'labels' }>): readonly Sheet[] {
  const single = labels.length === 1 && doubts.length === 0;
  // What is in doubt comes last: a slip after it may be its own, and is held with what it would go behind.
  const found = [
    ...labels.map((label, index) => labelSheet(sheet, single ? sheet.id : `${sheet.id}.${index + 1}`, label)),
    ...doubts.map((doubt, index) =>
      heldBeside({ ...sheet, role: 'page', id: `${sheet.id}.${labels.length + index + 1}` }, doubt, labels.length),
    ),
  ];
  const slip = isSlip(rest);
  if (slip || rest.name?.kind === 'customs-form') {
    const beside: Sheet = {
      ...sheet,
      id: `${sheet.id}.${slip ? 'slip' : 'form'}`,
      role: slip ? 'slip' : 'customs-form',
      box: rest.box ?? sheet.box,
      evidence: [besideWords(rest)],
    };
    if (!single) return [...found, held(beside, WHOSE)];
    if (!rest.box) return [...found, held(beside, OVERLAPS)];
    return rest.others ? [...found, beside, remainder(sheet)] : [...found, beside];
  }
  if (single && rest.box === undefined && rest.name === undefined) return found;
  return [...found, remainder(sheet, rest.name ? `: it says "${rest.name.words}"` : '', labels.length)];
}

function besideWords({ name, items }: Rest): string {
  const rows = items > 0 ? `${items} rows of items` : '';
  if (!name) return `beside the label stand ${rows}`;
  return `beside the label the page says "${name.words}"${name.kind === 'invoice' ? `, with ${rows}` : ''}`;
}

/** What is left of a page beside its labels. */
export const remainder = (sheet: Sheet, what = '', labels = 1): Sheet =>
  skipped(
    { ...sheet, id: `${sheet.id}.rest`, role: 'remainder' },
    {
      code: 'locate-label/remainder',
      message: `the rest of the page beside ${labels === 1 ? 'the label' : `${labels} labels`}${what}`,
      remedy: 'Nothing to do; if a packing slip is on it, name its place under packing-slip.',
    },
  );

const labelSheet = (sheet: Sheet, id: string, label: FoundLabel): Sheet => ({
  ...sheet,
  id,
  role: sheet.role === 'return-label' || label.returns !== undefined ? 'return-label' : 'label',
  box: label.box,
  evidence: [
    ...sheet.evidence,
    ...label.evidence,
    ...(label.returns !== undefined && sheet.role !== 'return-label' ? [`it says "${label.returns}"`] : []),
  ],
});

const WHOSE: Reason = {
  code: 'packing-slip/whose',
  message: 'the page has more than one label and one packing slip or form beside them',
  remedy: 'Print the slips of such pages apart, or take the page apart with `place` under locate-label.',
};

const OVERLAPS: Reason = {
  code: 'packing-slip/overlaps-label',
  message: 'the packing slip or form lies around the label: no rectangle has all of it and nothing of the label',
  remedy:
    'To have the label printed without it: `packing-slip: { if-held: print-label }`. To have a part of the page behind the label, clear of it: `packing-slip: { from: same-page, box: [left, top, width, height] }`.',
};
