import type { Diagnostic } from '../diagnostics/diagnostic.js';
import type { Collated } from './collate.js';

/** What is said once of a run, however many of its pages it is about. */
export function cautionsOf({ stacks }: Collated): readonly Diagnostic[] {
  return [...numbersOnLabels(stacks), ...withoutNumber(stacks)];
}

/** Nobody can put a page of another printer to its parcel that doesn't say which. */
const withoutNumber = (stacks: Collated['stacks']): readonly Diagnostic[] =>
  stacks.flatMap(({ name, pages }) =>
    pages.flatMap(({ item, numbered, number }, index): readonly Diagnostic[] =>
      item.output === undefined || !numbered || item.numberBox
        ? []
        : [
            {
              code: 'number/no-room',
              severity: 'warning',
              message: `page ${index + 1} of print/${name} has no free margin for the number of its parcel, which is ${number}`,
              remedy: 'Write the number on it by hand, or put the page to its parcel by the name on it.',
              place: { kind: 'run' },
            },
          ],
    ),
  );

function numbersOnLabels(stacks: Collated['stacks']): readonly Diagnostic[] {
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
