import { stepsTable, stepsText } from '../config/steps-listing.js';
import { optionsOf } from '../config/step-options.js';
import { STEPS } from '../steps/index.js';
import { EXIT, type CommandIo, type ExitCode } from './exit-codes.js';

export interface StepsArgs {
  readonly json?: boolean | undefined;
  /** The table that README shows. */
  readonly table?: boolean | undefined;
}

/** Lists the steps in the order in which a recipe usually has them, with their options. */
export async function runSteps(args: StepsArgs, io: CommandIo): Promise<ExitCode> {
  if (args.json === true) {
    for (const step of STEPS) {
      const { name, summary, scope, short, required, notBefore } = step;
      io.out(`${JSON.stringify({ type: 'step', name, summary, scope, short, required, notBefore, options: optionsOf(step) })}\n`);
    }
    io.out(`${JSON.stringify({ type: 'listed', steps: STEPS.length })}\n`);
  } else {
    io.out(args.table === true ? stepsTable(STEPS) : stepsText(STEPS));
  }
  return EXIT.done;
}
