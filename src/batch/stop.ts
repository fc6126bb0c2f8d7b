/** How a run is asked to end: Ctrl-C, or a request to end from the system. */
export type StopSignal = 'SIGINT' | 'SIGTERM';

/** What `watchStop` needs of the process. */
export interface SignalSource {
  on(signal: StopSignal, listener: () => void): unknown;
  off(signal: StopSignal, listener: () => void): unknown;
}

export interface Stop {
  /** Aborted by the first request: what is running is finished, nothing more is begun. */
  readonly signal: AbortSignal;
  /** Which request came first; undefined while there was none. */
  readonly by: () => StopSignal | undefined;
  /** Stops watching. */
  release(): void;
}

/** Watches for requests to end. `onFirst` may say so; `onSecond` leaves at once (nothing half-written has its final name). */
export function watchStop(source: SignalSource, onFirst: (by: StopSignal) => void, onSecond: (by: StopSignal) => void): Stop {
  const controller = new AbortController();
  let first: StopSignal | undefined;
  const listener = (by: StopSignal) => (): void => {
    if (first !== undefined) {
      onSecond(first);
      return;
    }
    first = by;
    controller.abort();
    onFirst(by);
  };
  const onInterrupt = listener('SIGINT');
  const onTerminate = listener('SIGTERM');
  source.on('SIGINT', onInterrupt);
  source.on('SIGTERM', onTerminate);
  return {
    signal: controller.signal,
    by: () => first,
    release: () => {
      source.off('SIGINT', onInterrupt);
      source.off('SIGTERM', onTerminate);
    },
  };
}
