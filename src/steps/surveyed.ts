import { dotsPerPt } from '../geometry/grid.js';
import { ptToMm } from '../geometry/length.js';
import type { Box } from '../geometry/box.js';
import type { Judged } from '../locating/candidate.js';
import { survey, type Survey } from '../locating/survey.js';
import type { SourcePage } from '../reading/source.js';
import { held, type Reason, type Sheet } from '../sheet/sheet.js';
import type { StepContext } from './step.js';

/** What a page is, by itself; split-pages and locate-label ask the same question and get one answer. */
export const surveyed = (page: SourcePage, { media, grid }: StepContext): Promise<Survey> =>
  survey(page, media, (box) => page.codes(box, 2 * dotsPerPt(grid)));

/** Most answers that a picture shows and a remedy spells out. */
const MOST_ANSWERS = 4;

/** Holds a page for which there is more than one answer, with the line for the recipe that chooses each. */
export function heldForAnswers(sheet: Sheet, code: Reason['code'], message: string, candidates: readonly Judged[]): Sheet {
  const answers = candidates.slice(0, MOST_ANSWERS).map(({ box }) => box);
  const lines = answers.map((box, index) => `for ${index + 1} \`box: ${boxOption(box)}\``).join(', ');
  // Where split-pages judges the page, it would hold it again before locate-label comes to its box.
  const options = `the options ${code === 'split-pages/doubtful' ? '`split-pages: { by: position }` and ' : ''}\`locate-label: { box: … }\`,`;
  return {
    ...held(sheet, {
      code,
      message,
      remedy: `Look at the numbers on the picture; to choose one, give such pages a channel of their own with ${options} ${lines}; or take the page out of the folder.`,
    }),
    answers,
  };
}

const boxOption = ({ x, y, width, height }: Box): string =>
  `[${[x, y, width, height].map((each) => `${ptToMm(each).toFixed(1)}mm`).join(', ')}]`;
