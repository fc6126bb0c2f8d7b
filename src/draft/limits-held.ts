import type { Problem } from './compare.js';
import { plural } from './remarks.js';

/**
 * What a recipe is to say of the labels of its samples that are held only because their codes break a published limit which a seller may set aside;
 * undefined when anything else is held, too.
 */
export function limitsIn(problems: readonly Problem[]): string | undefined {
  const own = problems.filter(({ reason }) => reason.code !== 'batch/parcel-held');
  const limits = own.map(({ reason }) => reason.allow);
  const names = [...new Set(limits)].sort();
  if (own.length === 0 || names.includes(undefined)) return undefined;
  const where = [...new Set(own.map(({ sample, page }) => `page ${page} of ${sample}`))];
  const shown =
    where.length > MOST_NAMED ? `${where.slice(0, MOST_NAMED).join(', ')} and ${where.length - MOST_NAMED} more` : where.join(', ');
  const them = plural(own.length, 'it', 'them');
  return (
    `${own.length} ${plural(own.length, 'label is', 'labels are')} held by verify (${shown}): \`slipyard explain\` says what is wrong. ` +
    `If the carrier takes ${them} as ${plural(own.length, 'it is', 'they are')}, write \`verify: { allow: [${names.join(', ')}] }\` in place of verify.`
  );
}

/** Pages that are named one by one. */
const MOST_NAMED = 4;
