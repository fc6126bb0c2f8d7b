import { fitFactor, type Media } from '../geometry/media.js';
import { isLabel } from '../sheet/sheet.js';
import type { Tried } from './try-plan.js';
import { labelPagesOf } from './locate-parts.js';
import { part, stepPart, type Plan } from './plan.js';
import type { Sample } from './sample.js';

/** A plan with one more option, and what that leaves to the seller. */
export interface Mended {
  readonly plan: Plan;
  readonly remark: string;
}

/** Labels are never drafted smaller than this: bars shrink with them. */
const LEAST_FLOOR = 0.85;

/** Labels were all found, but each is held for the same reason that an option of the recipe takes away; undefined when it's none of these. */
export function mend(plan: Plan, { problems, pieces }: Tried, samples: readonly Sample[], media: Media): Mended | undefined {
  const codes = new Set(problems.map(({ reason }) => reason.code).filter((code) => code !== 'batch/parcel-held'));
  const [code] = codes;
  if (codes.size !== 1) return undefined;
  if (code === 'scale/too-large') return lowerFloor(plan, samples, media);
  if (code === 'rotate/doubtful') return fixTurn(plan, { problems, pieces });
  return code === 'verify/nothing-to-prove' ? withoutProof(plan, samples) : undefined;
}

/** All labels that could be read lie one way: so do the others. */
function fixTurn(plan: Plan, { problems, pieces }: Tried): Mended | undefined {
  const turns = new Set(pieces.flatMap(({ role, end, turn }) => (isLabel({ role }) && end === 'printed' ? [turn] : [])));
  const [turn] = turns;
  if (turns.size !== 1 || turn === undefined) return undefined;
  return {
    plan: { ...plan, rotate: part(`rotate: ${turn}`, 'Some labels have no words to tell which way is up; the others all lie this way.') },
    remark: `Which way is up could not be read on ${problems.length} of the labels: they are turned by ${turn}°, as the others are. Look at them.`,
  };
}

function withoutProof(plan: Plan, samples: readonly Sample[]): Mended | undefined {
  if (labelPagesOf(samples).some(({ page }) => page.looksCoded)) return undefined;
  return {
    plan: { ...plan, verify: part('verify: none', 'The labels of the samples carry no barcode.') },
    remark: 'No label of the samples has a barcode: nothing proves what is printed. If there should be one, do not use this recipe.',
  };
}

function lowerFloor(plan: Plan, samples: readonly Sample[], media: Media): Mended | undefined {
  const needed = labelPagesOf(samples).flatMap(({ labels }) =>
    labels.map(({ box: { width, height } }) =>
      Math.max(fitFactor(width, height, media.width, media.height), fitFactor(height, width, media.width, media.height)),
    ),
  );
  const floor = Math.floor(Math.min(...needed) * 100 - 0.5) / 100;
  if (floor < LEAST_FLOOR || floor >= 0.95) return undefined;
  const percent = `${Math.round(floor * 100)}%`;
  return {
    plan: {
      ...plan,
      scale: stepPart('scale', { to: 'true-size', floor: percent }, `The labels are larger than ${media.name}: they are shrunk to fit.`),
    },
    remark: `The labels are larger than ${media.name} and are shrunk, down to ${percent}; their codes were still proved on the samples. Print on larger media if the carrier asks for true size or a label has a hazard mark.`,
  };
}
