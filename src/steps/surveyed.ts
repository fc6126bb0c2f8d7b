import { dotsPerPt } from '../geometry/grid.js';
import { ptToMm } from '../geometry/length.js';
import { union, type Box } from '../geometry/box.js';
import type { Judged } from '../locating/candidate.js';
import type { Doubt } from '../locating/doubts.js';
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
  // Where split-pages judges the page, it would hold it again before locate-label comes to its box.
  const splits = code === 'split-pages/doubtful' ? 'with `split-pages: { by: position }` and ' : 'with ';
  const [how, each] =
    answers.length === 1
      ? ['if that is the label, give such pages a channel of their own', '']
      : ['give such pages a channel of their own for each label that you want', 'the line of its number: '];
  return {
    ...held(sheet, {
      code,
      message,
      remedy: `Look at the picture; ${how}, ${splits}${each}${boxLines(answers)}\nOr take the page out of the folder.`,
    }),
    answers,
  };
}

/** Holds what may be a further label on a page of which other labels are made. */
export function heldBeside(sheet: Sheet, { why, answers }: Doubt, made: number): Sheet {
  const boxes = answers.slice(0, MOST_ANSWERS).map(({ box }) => box);
  const others = made === 1 ? 'the other label of this page goes on without it' : `the other ${made} labels of this page go on without it`;
  const which = boxes.length === 1 ? '' : 'the line of its number: ';
  return {
    ...held(
      { ...sheet, box: union(boxes) ?? sheet.box, evidence: [...sheet.evidence, ...(answers[0]?.evidence ?? [])] },
      {
        code: 'locate-label/doubtful',
        message: `${why}; ${others}`,
        remedy: `Look at the picture; if this is a label, too, give the page to a channel of its own, with ${which}${boxLines(boxes)}\nThat makes this label only. If it is none, there is nothing to do.`,
      },
    ),
    answers: boxes,
  };
}

/** The option that chooses each answer, a line each; numbered as on the picture where there are several. */
function boxLines(answers: readonly Box[]): string {
  if (answers.length === 1) return answers.map((box) => `\`locate-label: { box: ${boxOption(box)} }\`.`).join('');
  return answers.map((box, index) => `\n${index + 1}: \`locate-label: { box: ${boxOption(box)} }\``).join('');
}

/** A box (pt) as an option of a recipe, mm. */
export const boxOption = ({ x, y, width, height }: Box): string =>
  `[${[x, y, width, height].map((each) => `${ptToMm(each).toFixed(1)}mm`).join(', ')}]`;
