import type { Step } from '../steps/step.js';
import type { ConfigFile, Span } from './config-file.js';
import { quote } from './words.js';

interface Standing {
  readonly step: Step;
  readonly span: Span;
}

/**
 * Reports steps that stand in an order that can't work, twice where once makes sense, or not at all where no recipe may do
 * without them. The rules come from the steps' declarations and hold across steps that are left out; one is added:
 * what works on the whole run comes after what works on a document.
 * @param at where missing steps are reported; undefined when some entry could not be read, so that any may be the missing one
 */
export function checkStepOrder(file: ConfigFile, steps: readonly Step[], standing: readonly Standing[], at: Span | undefined): void {
  standing.forEach((here, index) => {
    const before = standing.slice(0, index);
    const twin = before.find((other) => other.step === here.step);
    if (twin && here.step.repeatable !== true) {
      const message = `${quote(here.step.name)} stands twice; the first is in line ${file.lineOf(twin.span.start)}`;
      file.error('config/duplicate-step', here.span, message, 'Keep one of them, with the options of both.');
      return;
    }
    const blocked = before.flatMap((other) => {
      const why = reason(steps, other.step, here.step);
      return why === undefined ? [] : [{ other, why }];
    })[0];
    if (!blocked) return;
    const { other, why } = blocked;
    const otherLine = file.lineOf(other.span.start);
    const remedy = `Move ${quote(`- ${here.step.name}`)} (line ${file.lineOf(here.span.start)}) above ${quote(`- ${other.step.name}`)} (line ${otherLine}).`;
    file.error('config/step-order', here.span, `${quote(here.step.name)} can't come after ${quote(other.step.name)}: ${why}`, remedy);
  });
  if (!at) return;
  for (const step of steps) {
    if (step.required === undefined || standing.some((each) => each.step === step)) continue;
    file.error(
      'config/missing-step',
      at,
      `the recipe has no step ${quote(step.name)}: ${step.required}`,
      whereToAdd(steps, step, standing),
    );
  }
}

/** Why `earlier` may not stand before `later`; undefined when it may. */
function reason(steps: readonly Step[], earlier: Step, later: Step): string | undefined {
  const declared = earlier.notBefore[later.name];
  if (declared !== undefined) return declared;
  if (earlier.scope === 'run' && later.scope === 'document') return `${quote(earlier.name)} works on the finished stack`;
  const between = steps.find((step) => earlier.notBefore[step.name] !== undefined && reason(steps, step, later) !== undefined);
  return between && `${quote(earlier.name)} belongs after ${quote(between.name)}, and that after ${quote(later.name)}`;
}

/** Behind the last step that has to stand before the missing one, else at the very top. */
function whereToAdd(steps: readonly Step[], missing: Step, standing: readonly Standing[]): string {
  const line = quote(`- ${missing.name}`);
  const previous = standing.findLast((each) => reason(steps, missing, each.step) !== undefined);
  if (previous) return `Add ${line} below ${quote(`- ${previous.step.name}`)}.`;
  const first = standing[0];
  return first ? `Add ${line} above ${quote(`- ${first.step.name}`)}.` : `Add ${line}.`;
}
