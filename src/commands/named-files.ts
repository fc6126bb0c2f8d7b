import type { Diagnostic } from '../diagnostics/diagnostic.js';
import type { Reason } from '../sheet/sheet.js';

/** A command that wants documents is given none. @param example what to write behind `slipyard` */
export const noFiles = (example: string): Reason => ({
  code: 'commands/bad-usage',
  message: 'no files are named',
  remedy: `Name documents or folders: slipyard ${example}`,
});

/** What was found wrong with files that were named on the command line: when nothing at all was found that is the error. */
export const ofNamedFiles = (diagnostics: readonly Diagnostic[], nothing: boolean): readonly Diagnostic[] =>
  nothing ? diagnostics.map((each) => ({ ...each, severity: 'error' })) : diagnostics;
