import { MM_PER_IN } from '../geometry/length.js';
import { LEAST_DOTS, LEAST_MODULE } from '../proof/limits.js';
import type { AsItIs, OnPage, PrintedCode, PrintedLabel, Verdict } from './explained.js';

/** Printed within this of its size, a page counts as true size. */
const TRUE_SIZE = 0.005;

/** What comes of sending a page as it is, in one sentence: the gravest thing decides. */
export function verdictOf(onPage: OnPage, printed: Omit<AsItIs, 'verdict'>): Verdict {
  const none = noLabel(onPage);
  if (none !== undefined) return { kind: 'no-label', sentence: none };
  const { lead, what } = leadOf(onPage, printed);
  const codes = ofLabels(onPage, printed.codes);
  const finest = codes.filter(({ moduleDots }) => moduleDots !== undefined).sort((a, b) => (a.moduleDots ?? 0) - (b.moduleDots ?? 0))[0];
  const say = (kind: Verdict['kind'], rest: string): Verdict => ({ kind, sentence: `${lead}${rest}` });

  if (codes.length === 0) return say('not-measured', `, and no code on ${what} can be read, so its bars can not be measured.`);
  if (finest?.standing === 'too-fine') {
    const atDots = `${LEAST_DOTS.value} dots and ${LEAST_MODULE.value} mm (${((LEAST_MODULE.value / MM_PER_IN) * 1000).toFixed(1)} mil)`;
    return say('too-fine', `, its finest bars ${bars(finest)} wide where ${atDots} are the least: don't expect it to scan.`);
  }
  const under = codes.find(({ standing }) => standing === 'under-range');
  if (under?.range) {
    const { leastMil, source } = under.range;
    return say(
      'under-range',
      `, bars ${bars(under)} wide where ${source} asks for at least ${leastMil.toFixed(1)} mil: it may be refused.`,
    );
  }
  const lost = codes.filter(({ readBack }) => !readBack);
  if (lost.length > 0) {
    const names = lost.length === 1 ? 'a code' : `${lost.length} codes`;
    return say('not-read', `, and ${names} on it can not be read from the printer's dots: don't expect it to scan.`);
  }
  if (!isTrueSize(printed.factor)) {
    const comes =
      finest && !isWholeDots(finest)
        ? "between the printer's dots: it looks fine and may scan badly"
        : 'it should scan, but it is not true size';
    return say('not-true-size', finest ? `, bars ${bars(finest)} wide${isWholeDots(finest) ? ':' : ','} ${comes}.` : `: ${comes}.`);
  }
  if (printed.labels.some(({ lies }) => lies === 'on-its-side' || lies === 'upside-down'))
    return say('turned', `${finest ? `, bars ${bars(finest)} wide` : ''}: it should scan, but it lies wrong on the print.`);
  if (!finest) return say('not-measured', ", but it has no bars that can be measured; its codes can be read from the printer's dots.");
  return say('fit', `, bars ${bars(finest)} wide: it can be printed as it is.`);
}

function noLabel({ kind, about, labels }: OnPage): string | undefined {
  if (labels.length > 0) return undefined;
  if (kind === 'blank') return 'The page is blank: it would only cost a label of the roll.';
  if (kind === 'named')
    return `There is no label on it, it calls itself otherwise (${about ?? ''}): it would only cost a label of the roll.`;
  return kind === 'no-codes' ? 'There is no label on it, nothing reads like a barcode: it would only cost a label of the roll.' : undefined;
}

/** Of a page whose label isn't known every code counts. */
function ofLabels({ codes, labels }: OnPage, printed: readonly PrintedCode[]): PrintedCode[] {
  return printed.filter(({ mark }) => labels.length === 0 || codes.find((each) => each.mark === mark)?.label !== undefined);
}

const isTrueSize = (factor: number): boolean => Math.abs(factor - 1) <= TRUE_SIZE;
/** Within what measuring may be off by. */
const isWholeDots = ({ moduleDots = 0 }: PrintedCode): boolean => Math.abs(moduleDots - Math.round(moduleDots)) < 0.06;
const percent = (share: number): string => `${Math.round(share * 100)} %`;
const bars = ({ moduleDots = 0, moduleMil = 0 }: PrintedCode): string => `${moduleDots.toFixed(1)} dots (${moduleMil.toFixed(1)} mil)`;

const LIES: Readonly<Record<PrintedLabel['lies'], string>> = {
  upright: 'upright',
  'on-its-side': 'on its side',
  'upside-down': 'upside down',
  along: 'along the print',
  'not-sure': 'which way up is not sure',
};

/** "22 %", "20 to 24 %". */
function shares(labels: readonly PrintedLabel[]): string {
  const all = labels.map(({ share }) => Math.round(share * 100));
  const [least, most] = [Math.min(...all), Math.max(...all)];
  return least === most ? percent(least / 100) : `${least} to ${most} %`;
}

function leadOf(onPage: OnPage, { factor, labels }: Omit<AsItIs, 'verdict'>): { readonly lead: string; readonly what: string } {
  const size = isTrueSize(factor) ? 'at true size' : `at ${percent(factor)} of its size`;
  const [first, ...others] = labels;
  if (!first) {
    const why = onPage.kind === 'doubtful' ? 'what the label is, is not sure' : 'nothing on it is known as a label';
    return { lead: `Fitted whole, the page comes out ${size} (${why})`, what: 'the page' };
  }
  const name = others.length === 0 ? 'the label' : `each of the ${labels.length} labels`;
  const lies = others.every((each) => each.lies === first.lies) ? LIES[first.lies] : 'not all the same way up';
  return { lead: `Fitted whole, ${name} comes out ${size}, ${lies}, on ${shares(labels)} of the print`, what: 'the label' };
}
