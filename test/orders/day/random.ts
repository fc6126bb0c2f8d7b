/** Numbers that look random and are the same for the same seed (mulberry32, public domain). */
export class Random {
  #state: number;

  constructor(seed: number) {
    this.#state = seed >>> 0;
  }

  /** From 0 to below 1. */
  next(): number {
    this.#state = (this.#state + 0x6d2b79f5) >>> 0;
    let t = this.#state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  }

  /** A whole number from 0 to below `count`. */
  below(count: number): number {
    return Math.floor(this.next() * count);
  }

  chance(share: number): boolean {
    return this.next() < share;
  }

  pick<T>(values: readonly T[]): T {
    if (values.length === 0) throw new Error('nothing to pick from');
    return values[this.below(values.length)] as T;
  }

  shuffled<T>(values: readonly T[]): T[] {
    const result = [...values];
    for (let at = result.length - 1; at > 0; at--) {
      const other = this.below(at + 1);
      [result[at], result[other]] = [result[other] as T, result[at] as T];
    }
    return result;
  }
}
