import type { Diagnostic } from '../diagnostics/diagnostic.js';
import type { Reason } from '../sheet/sheet.js';

/** A command that wants documents is given none. @param example what to write behind `slipyard` */
export const noFiles = (example: string): Reason => ({
  code: 'commands/bad-usage',
  message: 'no files are named',
  remedy: `Name documents or folders: slipyard ${example}`,
});

/**
 * What was found wrong with files that were named on the command line: no channel is spoken of, and when nothing at all was found that is
 * the error.
 * @param channel under which they were looked for
 */
export function ofNamedFiles(diagnostics: readonly Diagnostic[], channel: string, nothing: boolean): Diagnostic[] {
  const lead = `channel ${channel}: `;
  return diagnostics.map((each) => ({
    ...each,
    ...(nothing ? { severity: 'error' as const } : {}),
    message: each.message.replace(lead, ''),
  }));
}
