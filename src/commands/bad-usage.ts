import { diagnosticLine } from '../report/json-lines.js';

export { exitLine } from '../report/json-lines.js';

/**
 * What is wrong with the words on the command line, as the JSON line of a diagnostic.
 * @param message the problem, and on further lines a hint in brackets
 */
export function badUsageLine(message: string): string {
  const [problem = '', ...hint] = message.replace(/^error: /, '').split('\n');
  const remedy = hint.length > 0 ? hint.join(' ').replace(/^\((.*)\)$/, '$1') : 'See slipyard run --help.';
  return diagnosticLine({ code: 'commands/bad-usage', severity: 'error', message: problem, place: { kind: 'run' }, remedy });
}
