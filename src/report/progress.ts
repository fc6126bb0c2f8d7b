import { SingleBar } from 'cli-progress';
import type { RunEvent } from '../batch/events.js';
import { count } from './words.js';

/** Shows how far a run is. Results are never its business. */
export interface Progress {
  show(event: RunEvent): void;
  /** Leaves the terminal in order; nothing is shown afterwards. Safe to call twice. */
  end(): void;
}

export const silentProgress: Progress = { show: () => undefined, end: () => undefined };

/** One updating line on a terminal, gone when it ends. */
export function terminalProgress(terminal: NodeJS.WriteStream): Progress {
  const tally = { ready: 0, held: 0, failed: 0 };
  let bar: SingleBar | undefined;
  let ended = false;
  return {
    show: (event) => {
      if (ended || event.type !== 'document') return;
      tally.ready += event.items.ready;
      tally.held += event.items.held;
      tally.failed += event.items.failed;
      if (!bar) {
        bar = new SingleBar({
          format: '{bar} {value}/{total} documents: {ready} ready, {held} held, {failed} failed',
          stream: terminal,
          barsize: 24,
          barCompleteChar: '█',
          barIncompleteChar: '░',
          // A hidden cursor would stay hidden after a kill.
          hideCursor: false,
          clearOnComplete: true,
          gracefulExit: false,
          emptyOnZero: true,
        });
        bar.start(event.of, 0, tally);
      }
      bar.update(event.done, tally);
    },
    end: () => {
      ended = true;
      bar?.stop();
      bar = undefined;
    },
  };
}

/** A plain line at every tenth of the documents, for logs and pipes. Few documents give few lines. */
export function plainProgress(err: (text: string) => void): Progress {
  let tenth = 0;
  let ended = false;
  return {
    show: (event) => {
      if (ended || event.type !== 'document' || event.of < 10) return;
      const now = Math.floor((10 * event.done) / event.of);
      if (now === tenth) return;
      tenth = now;
      err(`${event.done} of ${count(event.of, 'document')} done\n`);
    },
    end: () => {
      ended = true;
    },
  };
}
