import type { Diagnostic } from '../diagnostics/diagnostic.js';
import type { Collated } from './collate.js';

/** What is said once of a run, however many of its pages it is about. */
export function cautionsOf({ stacks }: Collated): readonly Diagnostic[] {
  const additions = stacks.flatMap(({ pages }) => pages).filter(({ stamp, item }) => stamp && item.numberOnLabel === true).length;
  if (additions === 0) return [];
  return [
    {
      code: 'number/on-label',
      severity: 'note',
      message: `${additions === 1 ? '1 label carries its' : `${additions} labels carry their`} number on the label itself: carriers may refuse labels with additions`,
      remedy: 'Ask your carriers whether they take such labels, or leave `on-label` out: slips are numbered all the same.',
      place: { kind: 'run' },
    },
  ];
}
