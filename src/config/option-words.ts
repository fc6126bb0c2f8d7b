import type { Length } from '../geometry/length.js';
import type { Option, OptionKind } from '../steps/option.js';

/** What may stand there, in a few words: "a length such as 10mm". */
export function kindInWords(kind: OptionKind): string {
  switch (kind.kind) {
    case 'choice':
      return kind.values.join(' | ');
    case 'choices':
      return `${kind.values.join(' | ')}, or a list of them`;
    case 'length':
      return `length (mm, in, pt, dots)${kind.min === undefined ? '' : ` of at least ${showValue(kind, kind.min)}`}`;
    case 'box':
      return 'box [x, y, width, height] of lengths';
    case 'percent':
      return `percentage from ${showValue(kind, kind.min)} to ${showValue(kind, kind.max)}`;
    case 'integer':
      return `whole number from ${kind.min} to ${kind.max}`;
    case 'boolean':
      return 'true | false';
    case 'phrases':
      return 'list of phrases';
    case 'pages':
      return 'pages: every, none, odd, even, first, last, 2, 2-, 1,3,5-7';
    case 'media':
      return 'page size such as 4x6in, 100x150mm, letter, a4';
  }
}

const isLength = (value: unknown): value is Length => typeof value === 'object' && value !== null && 'unit' in value;

/** A checked value as somebody would write it in a recipe; "-" where there is none. */
export function showValue(kind: OptionKind, value: unknown): string {
  if (value === undefined) return '-';
  if (Array.isArray(value)) return `[${value.map((each) => showValue(kind, each)).join(', ')}]`;
  if (isLength(value)) return `${value.value}${value.unit}`;
  if (kind.kind === 'percent' && typeof value === 'number') return `${+(value * 100).toFixed(2)}%`;
  return typeof value === 'string' ? value : JSON.stringify(value);
}

/** The option's sentence, with its default. */
export function optionInWords({ kind, description, default: fallback }: Option): string {
  const isNothing = fallback === undefined || (Array.isArray(fallback) && fallback.length === 0);
  return isNothing ? description : `${description} Default: ${showValue(kind, fallback)}.`;
}
