import { UNITS } from '../geometry/length.js';
import { MEDIA_NAMES } from '../geometry/media.js';
import type { Option, OptionKind } from '../steps/option.js';
import type { JsonSchema } from './json-schema.js';
import { optionInWords, showValue } from './option-words.js';

/** The text of a length, as `parseLength` takes it. */
const LENGTH_PATTERN = `^\\s*(-?\\d+(\\.\\d+)?|-?\\.\\d+)\\s*(${UNITS.join('|')})\\s*$`;
export const LENGTH: JsonSchema = { type: 'string', pattern: LENGTH_PATTERN, examples: ['10mm', '4in', '12pt', '24dots'] };

/** The text of a page pattern, as `isPagesPattern` takes it, but that `5-3` is left to the loader. */
const PAGES_PATTERN = '^\\s*[1-9]\\d*(-\\d*)?(\\s*,\\s*[1-9]\\d*(-\\d*)?)*\\s*$';
const PAGES: JsonSchema = {
  anyOf: [
    { enum: ['every', 'none', 'odd', 'even', 'first', 'last'] },
    { type: 'string', pattern: PAGES_PATTERN, examples: ['2-', '1,3,5-7'] },
    { type: 'integer', minimum: 1 },
  ],
};

export const MEDIA: JsonSchema = {
  anyOf: [
    { enum: MEDIA_NAMES },
    { type: 'string', pattern: '^([a-z]+_[a-z0-9.-]+_)?\\d+(\\.\\d+)?x\\d+(\\.\\d+)?(in|mm)$', examples: ['4x6in', '100x150mm'] },
  ],
};

const TEXT: JsonSchema = { type: 'string', pattern: '\\S' };

/** YAML reads `90` as a number and `true` as no text: both ways of writing a word are allowed. */
export function wordsSchema(words: readonly string[]): JsonSchema {
  return { enum: words.flatMap((word): readonly unknown[] => (/^\d+$/.test(word) ? [word, Number(word)] : [word])) };
}

/** What an editor may take for the value of an option: no narrower than the loader. */
export function kindSchema(kind: OptionKind): JsonSchema {
  switch (kind.kind) {
    case 'choice':
      return wordsSchema(kind.values);
    case 'choices': {
      const word = wordsSchema(kind.values);
      return { anyOf: [word, { type: 'array', items: word, minItems: 1, uniqueItems: true }] };
    }
    case 'length':
      return LENGTH;
    case 'box':
      return { type: 'array', items: [LENGTH, LENGTH, LENGTH, LENGTH], minItems: 4, maxItems: 4, additionalItems: false };
    case 'percent':
      return { type: 'string', pattern: '^\\s*\\d+(\\.\\d+)?\\s*%\\s*$', examples: [showValue(kind, kind.max)] };
    case 'integer':
      return { type: 'integer', minimum: kind.min, maximum: kind.max };
    case 'boolean':
      return { type: 'boolean' };
    case 'phrases':
      return { anyOf: [TEXT, { type: 'array', items: TEXT }] };
    case 'pages':
      return PAGES;
    case 'media':
      return MEDIA;
  }
}

/** The schema of an option with its words for people, in which the default is said too. */
export const optionSchema = (option: Option): JsonSchema => ({ description: optionInWords(option), ...kindSchema(option.kind) });
