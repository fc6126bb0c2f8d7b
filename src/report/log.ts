import { pino } from 'pino';
import type { RunEvent } from '../batch/events.js';

/** The run's own log: one JSON line an event, with its time. For finding out afterwards what a run did when. */
export interface RunLog {
  write(event: RunEvent): void;
  /** All lines so far. */
  text(): string;
}

export function runLog(): RunLog {
  const lines: string[] = [];
  const logger = pino({ base: null, timestamp: pino.stdTimeFunctions.isoTime }, { write: (line) => lines.push(line) });
  return {
    write: ({ type, ...rest }) => {
      if (type === 'diagnostic') logger.warn(rest, type);
      else logger.info(rest, type);
    },
    text: () => lines.join(''),
  };
}
