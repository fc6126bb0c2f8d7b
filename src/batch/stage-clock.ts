import type { StageTimes } from '../recipe/outcome.js';

/** Adds up the ms that this thread spends in each stage; the work is synchronous, so on a free core that is CPU time. */
export class StageClock {
  readonly #times = new Map<string, number>();

  async time<T>(stage: string, work: () => Promise<T>): Promise<T> {
    const start = performance.now();
    try {
      return await work();
    } finally {
      this.#times.set(stage, (this.#times.get(stage) ?? 0) + performance.now() - start);
    }
  }

  times(): StageTimes {
    return Object.fromEntries(this.#times);
  }
}
