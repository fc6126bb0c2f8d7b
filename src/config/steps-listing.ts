import type { Step } from '../steps/step.js';
import { kindInWords, optionInWords, showValue } from './option-words.js';
import { optionsOf } from './step-options.js';

/** Widest line of the listing (characters). */
const WIDEST = 96;

/** Breaks a text into lines that begin with `indent`. A word that is too long keeps a line of its own. */
function wrap(text: string, indent: string): string {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    if (line !== '' && indent.length + line.length + 1 + word.length > WIDEST) {
      lines.push(line);
      line = word;
    } else {
      line = line === '' ? word : `${line} ${word}`;
    }
  }
  return [...lines, line].map((each) => indent + each).join('\n');
}

/** The steps for people at a terminal, each with its options: name, what may stand there, what it does, default. */
export const stepsText = (steps: readonly Step[]): string => `${steps.map(stepText).join('\n\n')}\n`;

function stepText(step: Step): string {
  const options = Object.entries(optionsOf(step)).flatMap(([name, option]) => [
    wrap(`${name}: ${kindInWords(option.kind)}`, '    '),
    wrap(optionInWords(option), '        '),
  ]);
  const short = step.short === undefined ? [] : [wrap(`Short: \`${step.name}: VALUE\` sets ${step.short}.`, '  ')];
  const required = step.required === undefined ? [] : [wrap(`Every recipe has it: ${step.required}.`, '  ')];
  return [step.name, wrap(step.summary, '  '), ...required, ...short, ...options].join('\n');
}

/** In a table's cell a bar would end the cell. */
const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('\n', ' ');

/** The steps as a Markdown table for README: what each does, and its options with their defaults. */
export function stepsTable(steps: readonly Step[]): string {
  const rows = steps.map((step) => {
    const options = Object.entries(optionsOf(step)).map(
      ([name, { kind, default: value }]) => `\`${name}\` ${hasDefault(value) ? showValue(kind, value) : '-'}`,
    );
    return `| \`${step.name}\` | ${cell(step.summary)} | ${options.map(cell).join(', ')} |`;
  });
  const head = ['| Step | What it does | Options and defaults |', '| --- | --- | --- |'];
  return `${['<!-- prettier-ignore-start -->', ...head, ...rows, '<!-- prettier-ignore-end -->'].join('\n')}\n`;
}

const hasDefault = (value: unknown): boolean => value !== undefined && !(Array.isArray(value) && value.length === 0);
