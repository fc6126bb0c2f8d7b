import type { Length } from '../geometry/length.js';

/**
 * How one option of a step is declared: once. The option's type, the JSON Schema, the listing of `slipyard steps` and the
 * README table all come from this value.
 */
export type OptionKind =
  | { readonly kind: 'choice'; readonly values: readonly string[] }
  /** One word, or a list of words to try in order. */
  | { readonly kind: 'choices'; readonly values: readonly string[] }
  /** `4in`, `10mm`, `12pt`, `24dots`; where it may not be any, not below `min`. */
  | { readonly kind: 'length'; readonly min?: Length }
  /** `[x, y, width, height]` as lengths, from the top-left corner of the page. */
  | { readonly kind: 'box' }
  /** `94%`, as a factor (0.94). */
  | { readonly kind: 'percent'; readonly min: number; readonly max: number }
  | { readonly kind: 'integer'; readonly min: number; readonly max: number }
  | { readonly kind: 'boolean' }
  /** A list of phrases, matched on the page without regard to case. */
  | { readonly kind: 'phrases' }
  /** `every`, `odd`, `even`, `first`, `last`, `none`, `2`, `2-`, `1,3,5-7`. */
  | { readonly kind: 'pages' }
  /** A media name or size. */
  | { readonly kind: 'media' };

export interface Option<Kind extends OptionKind = OptionKind, Default = unknown> {
  readonly kind: Kind;
  /** One sentence for people, with the unit where there is one. */
  readonly description: string;
  readonly default: Default;
}

/** Which pages of a document: checked text such as `odd` or `1,3,5-7`. `steps/pages.ts` applies it. */
export type PagesPattern = string;
/** x, y, width, height. */
export type BoxLengths = readonly [Length, Length, Length, Length];

interface ValueOfKind {
  choice: string;
  choices: readonly string[];
  length: Length;
  box: BoxLengths;
  percent: number;
  integer: number;
  boolean: boolean;
  phrases: readonly string[];
  pages: PagesPattern;
  media: string;
}

type Value<Kind extends OptionKind> = Kind extends { kind: 'choice'; values: readonly (infer V)[] }
  ? V
  : Kind extends { kind: 'choices'; values: readonly (infer V)[] }
    ? readonly V[]
    : ValueOfKind[Kind['kind']];

/** An option with a default; its value is always there. */
export function option<const Kind extends OptionKind>(kind: Kind, description: string, fallback: Value<Kind>): Option<Kind, Value<Kind>> {
  return { kind, description, default: fallback };
}

/** An option that may be left out; its value is then undefined. */
export function optional<const Kind extends OptionKind>(kind: Kind, description: string): Option<Kind, undefined> {
  return { kind, description, default: undefined };
}

export type Options = Readonly<Record<string, Option>>;

/** The checked values of declared options. */
export type OptionValues<O extends Options> = {
  readonly [Name in keyof O]: O[Name] extends Option<infer Kind, infer Default>
    ? Value<Kind> | (Default extends undefined ? undefined : never)
    : never;
};
