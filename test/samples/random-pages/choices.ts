import { Dice } from '../foreign/designs/content.js';

/** Seeded choices, the same on every machine; what was chosen is kept by name, to count by it afterwards. */
export class Choices extends Dice {
  readonly made: Record<string, string> = {};

  /** From `low` to `high`, to a tenth. */
  size(low: number, high: number): number {
    return Math.round((low + this.next() * (high - low)) * 10) / 10;
  }

  chance(share: number): boolean {
    return this.next() < share;
  }

  /** One of the names, as often as its weight says. */
  weighed<T extends string>(weights: Readonly<Record<T, number>>): T {
    const names = Object.keys(weights) as T[];
    let at = this.next() * names.reduce((sum, name) => sum + weights[name], 0);
    for (const name of names) {
      at -= weights[name];
      if (at < 0) return name;
    }
    return names[0] as T;
  }

  /** The same, kept under a name. */
  kept<T extends string>(name: string, weights: Readonly<Record<T, number>>): T {
    const chosen = this.weighed(weights);
    this.made[name] = chosen;
    return chosen;
  }

  note(name: string, value: string): void {
    this.made[name] = value;
  }

  shuffled<T>(list: readonly T[]): T[] {
    const left = [...list];
    const out: T[] = [];
    while (left.length > 0) out.push(...left.splice(this.between(0, left.length - 1), 1));
    return out;
  }
}
