import type { Channel, Pipeline } from '../config/pipeline.js';
import { ROLL, type Output } from '../geometry/printer.js';
import type { StackPlan } from '../steps/step.js';
import type { StackTarget } from './build-stacks.js';
import type { CollateDocument, Stack } from './collate.js';
import { stackPlanOf } from './stack-plan.js';

type Printers = Pick<Pipeline, 'media' | 'grid' | 'printer' | 'outputs' | 'largePages'>;

/** Which printers the pages of a channel are for, and what is done with them there. */
export interface ChannelOutputs {
  /** Where its labels go. Where they are laid on larger sheets its media is the label's, not the sheet's. */
  readonly own: Output;
  /** Where its pages go that are too large for that; undefined: nowhere. */
  readonly large: Output | undefined;
  readonly plan: StackPlan;
}

/** The printer of this name: `ROLL`, or one of the pipeline's outputs. Throws for any other (check has refused it). */
export function outputNamed({ media, grid, printer, outputs }: Printers, name: string): Output {
  if (name === ROLL) return { name, media, grid, printer };
  const output = outputs.find((each) => each.name === name);
  if (!output) throw new Error(`outputs: there is no printer ${name}`);
  return output;
}

/** What the pages of a stack were pressed for: its printer's media, or where they are laid on its sheets, the pipeline's label. */
export function pagesFor(pipeline: Printers, name: string, imposed: boolean): Output {
  const output = outputNamed(pipeline, name);
  return imposed ? { ...output, media: pipeline.media } : output;
}

/** What a stack is made for. */
export function stackTarget(pipeline: Printers, { output, impose }: Pick<Stack, 'output' | 'impose'>): StackTarget {
  const { media, grid, printer } = pagesFor(pipeline, output, impose !== undefined);
  // Sheets of a channel that names no printer for them don't come out of the roll's.
  const offset = impose !== undefined && output !== ROLL ? { offset: printer.offset } : {};
  return { media, grid, output: printer.output, ...offset };
}

/** What collate needs of a document's channel. */
export function placeOf(outputs: readonly ChannelOutputs[], channel: number): Pick<CollateDocument, 'output' | 'plan'> {
  const { own, plan } = outputs[channel] ?? {};
  if (!own || !plan) throw new Error(`outputs: there is no channel ${channel}`);
  return { output: own.name, plan };
}

export function outputsOf(pipeline: Printers, { printOn = ROLL, recipe }: Pick<Channel, 'printOn' | 'recipe'>): ChannelOutputs {
  const plan = stackPlanOf(recipe, outputNamed(pipeline, printOn).grid);
  const own = pagesFor(pipeline, printOn, plan.impose !== undefined);
  const { largePages } = pipeline;
  const isOwn = largePages === printOn && plan.impose === undefined;
  return { own, large: largePages === undefined || isOwn ? undefined : outputNamed(pipeline, largePages), plan };
}
