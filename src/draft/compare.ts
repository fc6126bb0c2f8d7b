import { contains, grow, type Box } from '../geometry/box.js';
import { formatSize, mmToPt } from '../geometry/length.js';
import type { Turn } from '../geometry/placement.js';
import type { ItemResult } from '../recipe/outcome.js';
import { isLabel, type Reason, type Role, type Sheet } from '../sheet/sheet.js';
import type { Sample, SamplePage, SeenLabel } from './sample.js';

/** Where a recipe brings one piece of a sample: a sheet before it is drawn, or an item after its proof. */
export interface Piece {
  readonly page: number;
  readonly role: Role;
  readonly box: Box | undefined;
  readonly turn: Turn;
  readonly end: 'printed' | 'skipped' | 'held' | 'failed';
  readonly reason: Reason | undefined;
}

export function pieceOf({ page, role, box, turn, state }: Sheet | ItemResult): Piece {
  const shown = { page, role, box, turn };
  return state.kind === 'planned' || state.kind === 'ready'
    ? { ...shown, end: 'printed', reason: undefined }
    : { ...shown, end: state.kind, reason: state };
}

/** Why a recipe does not do for a page of a sample. */
export interface Problem {
  readonly sample: string;
  /** From 1; 0 for the document. */
  readonly page: number;
  readonly reason: Reason;
}

/** Edges of a label come out within this, pt (1 mm). */
const EDGE = mmToPt(1);

/** Everything in which the outcome of a recipe differs from what the pages show. `outward`: how far a box may reach beyond, pt. */
export function problemsOf(sample: Sample, pieces: readonly Piece[], outward: number): readonly Problem[] {
  return sample.pages.flatMap((page) => {
    const own = pieces.filter((each) => each.page === page.number);
    const problem = (reason: Reason): Problem => ({ sample: sample.name, page: page.number, reason });
    const broken = own.flatMap(({ end, reason }) => ((end === 'held' || end === 'failed') && reason ? [problem(reason)] : []));
    if (broken.length > 0) return broken;
    const wrong = differenceOf(page, own, outward);
    return wrong === undefined ? [] : [problem(otherwise(wrong))];
  });
}

function differenceOf(page: SamplePage, pieces: readonly Piece[], outward: number): string | undefined {
  const { seen } = page;
  const printed = pieces.filter(({ end }) => end === 'printed');
  const labels = printed.filter(({ role }) => isLabel({ role }));
  const beside = printed.filter((each) => !labels.includes(each));
  if (pieces.length === 0) return 'nothing becomes of the page';
  switch (seen.kind) {
    case 'unsettled':
      return 'what the page is was not settled';
    case 'other':
      return printed.length > 0 ? 'the page shows no label and no slip, and would be printed' : undefined;
    case 'slip':
    case 'customs-form': {
      const wanted: Role = seen.kind;
      return printed.length > 0 && printed.every(({ role }) => role === wanted)
        ? undefined
        : `the ${WORDS[wanted]} would not be printed as one`;
    }
    case 'labels': {
      const missing = seen.labels.find((label) => !labels.some((each) => isThatLabel(each, label, outward)));
      if (missing) return `the label of ${formatSize(missing.box.width, missing.box.height)} would not be cut out where it is`;
      if (labels.length > seen.labels.length) return 'something that is no label would be printed as one';
      const wanted = seen.beside.kind === 'packing-slip' ? 'slip' : seen.beside.kind === 'customs-form' ? 'customs-form' : undefined;
      if (wanted === undefined) return beside.length > 0 ? 'what stands beside the label would be printed' : undefined;
      const { box } = seen.beside;
      const whole =
        beside.length > 0 && beside.every((each) => each.role === wanted && each.box && box && contains(grow(each.box, 4), box));
      return whole ? undefined : `the ${WORDS[wanted]} beside the label would not be printed whole`;
    }
  }
}

const WORDS = { slip: 'packing slip', 'customs-form': 'customs form' } as const;

function isThatLabel({ box, role }: Piece, label: SeenLabel, outward: number): boolean {
  if (!box || role !== (label.returns === undefined ? 'label' : 'return-label')) return false;
  const isAt = (wanted: Box): boolean => contains(grow(box, EDGE), wanted) && contains(grow(wanted, EDGE + outward), box);
  return isAt(label.box) || (label.inside !== undefined && isAt(label.inside));
}

const otherwise = (message: string): Reason => ({
  code: 'draft/differs',
  message,
  remedy: 'Write the recipe by hand: `slipyard steps` explains the options; or leave the document out of the samples.',
});
