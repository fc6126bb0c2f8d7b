import type { Diagnostic } from '../diagnostics/diagnostic.js';
import type { RunEvent } from '../batch/events.js';
import type { RunEnd } from '../batch/run-batch.js';
import type { RunRecord } from '../batch/run-record.js';

/** One JSON value on a line of its own. */
export const jsonLine = (value: object): string => `${JSON.stringify(value)}\n`;

/** The line of a diagnostic, whichever command tells it. */
export const diagnosticLine = (diagnostic: Diagnostic): string => jsonLine({ type: 'diagnostic', diagnostic });

/** The line of an event; undefined for what only the log wants. */
export function eventLine(event: RunEvent): string | undefined {
  return event.type === 'talk' ? undefined : jsonLine(event);
}

/** What came out, after the last event and before the last line: what was noted of documents, stacks, every item that isn't ready, the account. */
export function endLines(end: RunEnd): string {
  switch (end.kind) {
    case 'stopped':
      return jsonLine({ type: 'stopped', done: end.done, of: end.of });
    case 'cannot-go-on':
      return jsonLine({ type: 'cannot-go-on', reason: end.reason, left: end.left });
    case 'finished':
      return recordLines(end.record).map(jsonLine).join('');
  }
}

function recordLines({ stacks, documents, orders, account }: RunRecord): object[] {
  const items = documents.flatMap(({ name, channel, items: all }) =>
    all
      .filter(({ state }) => state !== 'ready')
      .map(({ id, page, role, state, reason, held }) => ({
        type: 'item',
        document: name,
        channel,
        item: id,
        page,
        role,
        state,
        reason,
        held,
      })),
  );
  const diagnostics = documents.flatMap(({ diagnostics: all }) => all.map((diagnostic) => ({ type: 'diagnostic', diagnostic })));
  return [
    ...diagnostics,
    ...stacks.map((stack) => ({ type: 'stack', ...stack })),
    ...items,
    ...(orders ? [{ type: 'orders', ...orders }] : []),
    { type: 'account', ...account },
  ];
}

/** The last line of every `--json` command, whatever happened. */
export const exitLine = (exitCode: number): string => jsonLine({ type: 'end', exitCode });
