import { twinOf, type Grid } from '../geometry/grid.js';
import { wrapped } from './chart.js';

/** One thing to look at on the page, in a letter that is on the page too. */
export interface Look {
  readonly letter: string;
  readonly name: string;
  readonly text: string;
}

export type LookName = 'size' | 'place' | 'margins' | 'dots' | 'darkness' | 'codes';

/** What to look at on the ruler page, in this order; the page and the command say the same. */
export function looks(grid: Grid): Readonly<Record<LookName, Look>> {
  return {
    size: {
      letter: 'A',
      name: 'Size',
      text: 'The line across is 3 in (76.2 mm) long, the upright one at the left 100 mm: what it measures is the scale in per cent. Off by more than half a mm? Print again without scaling before you look at B to F.',
    },
    place: {
      letter: 'B',
      name: 'Place',
      text: 'Measure from the paper’s left edge to 50 on the upper ruler, and from its top edge to 50 on the left one. 50 minus that is the offset: 48.5 and 50.5 mm make offset:\u00a0[1.5mm,\u00a0-0.5mm]',
    },
    margins: {
      letter: 'C',
      name: 'Margins',
      text: 'Five lines run along each edge, 1 mm apart, the first on the edge. Where outer ones are missing, measure from the paper’s edge to the first that is there: margins:\u00a0[top,\u00a0right,\u00a0bottom,\u00a0left]',
    },
    dots: {
      letter: 'D',
      name: 'Dots',
      text: `An even grey in both fine patches: grid:\u00a0${grid.name} is right. Waves or stripes: the printer has other dots; try --grid\u00a0${twinOf(grid.name)}. In each pair of bars the gap is as wide as one bar.`,
    },
    darkness: {
      letter: 'E',
      name: 'Darkness',
      text: 'Three different greys, and open white lines. If not: less heat (darkness), or slower.',
    },
    codes: {
      letter: 'F',
      name: 'Codes',
      text: 'Scan each: it says how many dots its narrow bars have. What won’t scan is too fine for this printer.',
    },
  };
}

/** How programs call printing without scaling, and what they call the opposite. */
export const NO_SCALING = 'Print it once at 100 %: programs say “actual size”, “no scaling” or “scale: none”, never “fit” or “shrink”.';

/** What `slipyard ruler` says besides. */
export function rulerText(media: string, grid: Grid): string {
  const sections = Object.values(looks(grid)).map(({ letter, name, text }) => lines(`${letter}  ${name}. ${text}`, '   '));
  return [
    lines(NO_SCALING, ''),
    lines('Then take a rule in mm and look at what the page shows, each beside its letter:', ''),
    ...sections,
    lines('What you found goes into pipeline.yaml; leave out what is as it should be:', ''),
    [
      `media: ${media}`,
      `grid: ${grid.name}`,
      'offset: [1.5mm, -0.5mm] # to the right, down',
      'margins: [0mm, 1mm, 0mm, 1mm] # top, right, bottom, left',
      'print-width: 100mm # only for a print head that is narrower than the page',
    ]
      .map((line) => `   ${line}`)
      .join('\n'),
  ]
    .map((part) => `${part}\n`)
    .join('\n');
}

/** Columns of a terminal that text takes. */
const COLUMNS = 90;

const lines = (text: string, indent: string): string =>
  wrapped(text, (line) => line.length + indent.length <= COLUMNS)
    .join(`\n${indent}`)
    .replaceAll('\u00a0', ' ');
