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
  if (rest.name?.kind === 'packing-slip' || rest.name?.kind === 'customs-form') {
    const isSlip = rest.name.kind === 'packing-slip';
    const beside: Sheet = {
      ...sheet,
      id: `${sheet.id}.${isSlip ? 'slip' : 'form'}`,
      role: isSlip ? 'slip' : 'customs-form',
      box: rest.box ?? sheet.box,
      evidence: [`beside the label the page says "${rest.name.words}"`],
    };
    if (!single) return [...found, held(beside, WHOSE)];
    return [...found, rest.box ? beside : held(beside, OVERLAPS)];
  }
  if (single && rest.box === undefined && rest.name === undefined) return found;
  const what = rest.name ? `: it says "${rest.name.words}"` : '';
  return [
    ...found,
    skipped(
      { ...sheet, id: `${sheet.id}.rest`, role: 'remainder' },
      {
        code: 'locate-label/remainder',
        message: `the rest of the page beside ${labels.length === 1 ? 'the label' : `${labels.length} labels`}${what}`,
        remedy: 'Nothing to do; if a packing slip is on it, name its place under packing-slip.',
      },
    ),
  ];
}

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
  remedy: "Name the slip's `place` or `box` under packing-slip with `from: same-page`, or print it apart.",
};
