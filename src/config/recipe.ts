import type { OrderMap } from '../orders/order-map.js';

/** A step of a recipe with its checked options. Plain data: a worker finds the step again by its name. */
export interface CompiledStep {
  readonly name: string;
  readonly options: Readonly<Record<string, unknown>>;
}

/** A checked recipe: its steps stand in an order that makes sense, every option has a value. */
export interface CompiledRecipe {
  /** File name without its ending: `any-page`. */
  readonly name: string;
  readonly about: string;
  /** The file it was read from, absolute; not for outputs, which must not depend on where the program is installed. */
  readonly file?: string;
  readonly steps: readonly CompiledStep[];
  /** How the channel's order files are read; absent where the recipe says nothing of them. */
  readonly orders?: OrderMap;
}
