import type { Code } from '../reading/source.js';
import type { Reason } from '../sheet/sheet.js';
import type { Limit } from './limits.js';
import { list, orAllow } from './reasons.js';

/** A length of a code on the print against the limit that it breaks, mm. */
export interface Broken {
  readonly code: Code;
  /** The number that it carries, where the limit is that of the number. */
  readonly what: string | undefined;
  readonly mm: number;
  readonly limit: Limit;
  /** The label's scale, and whether the source breaks the limit as well at its own size. */
  readonly scale: number;
  readonly isSources: boolean;
}

export const narrow = (broken: Broken): Reason => ({
  code: 'verify/module-range',
  message: `the narrowest bars of ${named(broken)} come out ${broken.mm.toFixed(3)} mm wide${cause(broken)}; ${least(broken)}`,
  ...orAllow('module-range', cureOf(broken)),
});

export const low = (broken: Broken): Reason => ({
  code: 'verify/bars-too-low',
  message: `the bars of ${named(broken)} come out ${broken.mm.toFixed(1)} mm high${cause(broken)}; ${least(broken)}`,
  ...orAllow('bar-height', cureOf(broken)),
});

export const narrowNote = (broken: Broken): string =>
  `${named(broken)}: narrowest bars of ${broken.mm.toFixed(3)} mm, at least ${byRule(broken)}`;
export const wideNote = (broken: Broken): string =>
  `${named(broken)}: narrowest bars of ${broken.mm.toFixed(3)} mm, at most ${byRule(broken)}`;
export const lowNote = (broken: Broken): string => `${named(broken)}: bars ${broken.mm.toFixed(1)} mm high, at least ${byRule(broken)}`;

const named = ({ code, what }: Broken): string => list([code]) + (what === undefined ? '' : ` with ${what}`);

/** Figures as their standards print them: 0.495, 0.33, 19.05, 12.7. */
const figure = ({ value }: Limit): string => String(Number(value.toFixed(value < 1 ? 3 : 2)));
const least = ({ limit }: Broken): string => `at least ${figure(limit)} mm by rule (${limit.source})`;
const byRule = ({ limit }: Broken): string =>
  `${figure(limit)} mm by rule (${limit.source}${limit.trust === 'from memory' ? ', not seen in its text' : ''})`;

const isShrunk = ({ scale }: Broken): boolean => scale < 0.995;

const cause = (broken: Broken): string => {
  if (broken.isSources) return ', and so they do in the source';
  return isShrunk(broken) ? ` at ${(broken.scale * 100).toFixed(0)} % of the label's size` : '';
};

function cureOf(broken: Broken): string {
  const { isSources } = broken;
  return isSources
    ? 'Ask the channel for the label in its full size.'
    : isShrunk(broken)
      ? 'Let the recipe leave the label at true size, on media that takes it.'
      : 'Let the recipe leave the bars as they are: `scale: { bars: as-drawn }`.';
}
