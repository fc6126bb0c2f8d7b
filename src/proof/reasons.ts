import { twinOf, type Grid } from '../geometry/grid.js';
import { MM_PER_IN } from '../geometry/length.js';
import type { Code } from '../reading/source.js';
import type { Reason, Sheet } from '../sheet/sheet.js';
import type { CodesCompared } from './compare-codes.js';
import { LEAST_DOTS, LEAST_MODULE } from './limits.js';

const CHECK_BOX = 'Look at the picture: is the whole label on it? If not, give the recipe the right box.';

export const nothingToProve: Reason = {
  code: 'verify/nothing-to-prove',
  message: 'no code can be read on the label, so nothing shows that it will scan',
  remedy:
    "If this channel's labels carry no code, say `verify: none` below `options:` of the channel; otherwise look at the picture and the label's box.",
};

export const unread: Reason = {
  code: 'verify/unread-bars',
  message: 'bars on the label can not be read in the source, though another code can',
  remedy:
    'Look at the picture: if a code is smeared or cut, get the label anew from the channel; if the bars are no code, print it by hand.',
};

export const blank: Reason = {
  code: 'verify/blank',
  message: 'the source shows ink here and the drawn page is blank',
  remedy: 'Open the document in a viewer, print it to a new PDF there, and use that one.',
};

export const empty: Reason = {
  code: 'verify/blank',
  message: 'nothing on the label is dark enough to be printed',
  remedy: 'Look at the picture: if it is a blank page, let the recipe skip it; if it is a pale label, ask the channel for a black one.',
};

export const vanishes: Reason = {
  code: 'verify/text-vanishes',
  message: "small pale writing would be lost in the printer's dots",
  remedy: 'Write `output: vector` in the pipeline and look at the print, or ask the channel for a label in black.',
};

export const beyondPage: Reason = {
  code: 'verify/beyond-page',
  message: "a part of it comes to lie beyond the page's edge",
  remedy:
    'Look at `offset` in the pipeline: a label as large as the media can not be moved. Print a smaller label, or set the printer itself right.',
};

export const outOfReach = (dots: number): Reason => ({
  code: 'verify/out-of-reach',
  message: `${dots} dots of it lie where the printer can't print, as the pipeline's \`margins\` and \`print-width\` say`,
  remedy:
    'Let the recipe shrink it a little (`scale: { margin: … }`), or print it on wider media; if the printer reaches farther, correct the pipeline.',
});

export function inkDiffers(squares: number): Reason {
  return {
    code: 'verify/ink-differs',
    message: `${squares} half-inch ${squares === 1 ? 'square' : 'squares'} of the drawn page ${squares === 1 ? 'has' : 'have'} much more or less ink than the source`,
    remedy: 'Compare the picture with the document in a viewer; if something is missing, print the document to a new PDF and use that one.',
  };
}

export function cut(codes: readonly Code[]): Reason {
  return {
    code: 'verify/cut',
    message: `the edge of the box cuts through ${list(codes)}`,
    remedy: CHECK_BOX,
  };
}

export const cutBars: Reason = {
  code: 'verify/cut',
  message: 'the edge of the box cuts through bars of which no code can be read',
  remedy: CHECK_BOX,
};

const SHRUNK_FINE = 'Let the recipe take only the label and leave it at true size.';

export function tooFine(code: Code, dots: number, grid: Grid, sheet: Pick<Sheet, 'scale'>): Reason {
  const mm = (dots / grid.dpi) * MM_PER_IN;
  const shrunk = isShrunk(sheet);
  return {
    code: 'verify/too-fine',
    message: `the narrowest bars of ${list([code])} come out ${dots.toFixed(1)} dots wide (${mm.toFixed(2)} mm)${shrunk ? ` at ${(sheet.scale * 100).toFixed(0)} % of its size` : ''}; ${LEAST_DOTS.value} dots and ${LEAST_MODULE.value} mm are the least`,
    remedy: shrunk ? SHRUNK_FINE : 'The source draws it that fine: print it on a finer printer, or ask the channel for a larger label.',
  };
}

/** What to do about a broken limit, and that it may be set aside: where, as most recipes are not the seller's own. */
export const orAllow = (limit: string, cure: string): Pick<Reason, 'remedy' | 'allow'> => ({
  remedy: `${cure} If this channel's labels are read all the same, set the limit aside: \`verify: { allow: ${limit} }\` below \`options:\` of the channel.`,
  allow: limit,
});

/** How a sheet's bars were brought to the page. */
export type BarsDrawn = Pick<Sheet, 'scale' | 'barsAsDrawn'>;

/** Whether a label comes out smaller by more than bringing bars and pixels onto dots may make it. */
const isShrunk = ({ scale }: Pick<Sheet, 'scale'>): boolean => scale < 0.98;

/** What can better bars that come out uneven. */
function betterBars(drawn: BarsDrawn): Pick<Reason, 'remedy' | 'allow'> {
  const cure = drawn.barsAsDrawn
    ? "Let bars be brought onto the printer's dots: take `bars: as-drawn` out of the recipe's `scale`."
    : isShrunk(drawn)
      ? 'Let the recipe leave the label at true size, on media that takes it.'
      : 'Get the label from the channel as a PDF or in a better resolution, or print it on a finer printer.';
  return orAllow('decodability', cure);
}

export const uneven = (code: Code, off: number, moduleDots: number, drawn: BarsDrawn): Reason => ({
  code: 'verify/uneven-bars',
  message: Number.isFinite(off)
    ? `a bar of ${list([code])} comes out ${off.toFixed(1)} dots off its width; a module is ${moduleDots.toFixed(2)} dots`
    : `a line across ${list([code])} shows other bars than the rest of it`,
  ...betterBars(drawn),
});

export const unmeasured = (code: Code, drawn: BarsDrawn): Reason => ({
  code: 'verify/uneven-bars',
  message: `no line across ${list([code])} shows its bars as they are planned, though a reader makes it out`,
  ...betterBars(drawn),
});

export const badlyDecodable = (code: Code, share: number, least: number, moduleDots: number, drawn: BarsDrawn): Reason => ({
  code: 'verify/decodability',
  message: `${list([code])} has a decodability of ${share.toFixed(2)} on the printer's dots, at ${moduleDots.toFixed(2)} dots a module; ${least} is the least (simulated; no verifier measurement)`,
  ...betterBars(drawn),
});

export const atGain = (code: Code, share: number, gain: number | undefined, least: number): Reason => ({
  code: 'verify/decodability',
  message: `${list([code])} has a decodability of ${share.toFixed(2)} when bars print ${gain ?? 0.5} dots wider or narrower; ${least} is the least (simulated; no verifier measurement)`,
  ...orAllow('decodability', 'Print it on a finer printer.'),
});

export const onTwin = (code: Code, share: number, grid: Grid): Reason => ({
  code: 'verify/decodability',
  message: `${list([code])} would have a decodability of ${share.toFixed(2)} on ${twinOf(grid.name)}, which a driver for ${grid.name} may use instead (simulated; no verifier measurement)`,
  ...orAllow('decodability', `Write \`output: dots\` in the pipeline, so that no driver draws it again.`),
});

export const otherSize = (code: Code, factor: number): Reason => ({
  code: 'verify/size',
  message: `${list([code])} comes out at ${(factor * 100).toFixed(1)} % of the size that it is to have`,
  remedy: `${OTHER_FORM} Report it with the document: drawing must never change a size.`,
});

export const quietZone = (code: Code, modules: number, least: number): Reason => ({
  code: 'verify/quiet-zone',
  message: `${list([code])} has only ${modules.toFixed(1)} modules of clear paper at one end; ${least} are the least`,
  ...orAllow('quiet-zone', 'Look at the picture: is something printed or cut beside the bars?'),
});

export const notWholeDots = (code: Code, dots: number, planned: number): Reason => ({
  code: 'verify/uneven-bars',
  message: `${list([code])} was to be drawn at ${planned} dots a module and has ${dots.toFixed(3)}`,
  remedy: 'Let the recipe leave the bars as they are: `scale: { bars: as-drawn }`. Report it with the document.',
});

export const modulesTooFine = (code: Code, dots: number, grid: Grid, least: number, sheet: Pick<Sheet, 'scale'>): Reason => ({
  code: 'verify/too-fine',
  message: `the modules of ${list([code])} come out ${dots.toFixed(1)} dots wide (${((dots / grid.dpi) * MM_PER_IN).toFixed(2)} mm); ${LEAST_DOTS.value} dots${least > 0 ? ` and ${least} mm` : ''} are the least`,
  ...orAllow(
    'module-width',
    isShrunk(sheet) ? SHRUNK_FINE : 'The source draws them that fine: print it on a finer printer, or ask the channel for a larger label.',
  ),
});

export const rowsTooLow = (code: Code, modules: number, least: number): Reason => ({
  code: 'verify/rows-too-low',
  message: `the rows of ${list([code])} come out ${modules.toFixed(1)} modules high; ${least} are the least`,
  ...orAllow('row-height', 'Leave the label at true size; if the source has such low rows, ask the channel for a label with higher ones.'),
});

export const quietAround = (code: Code, modules: number, least: number): Reason => ({
  code: 'verify/quiet-zone',
  message: `${list([code])} has only ${modules.toFixed(1)} modules of clear paper on one side; ${least} ${least === 1 ? 'is' : 'are'} the least`,
  ...orAllow('quiet-zone', 'Look at the picture: is something printed or cut beside the code?'),
});

export const maxiCodeShrunk = (scale: number): Reason => ({
  code: 'verify/maxicode-size',
  message: `a MaxiCode has one size and the label is shrunk to ${(scale * 100).toFixed(0)} %; it may not come out smaller than 94 %`,
  remedy: 'Print the label at true size, on media that takes it.',
});

export const unreadMaxiCode: Reason = {
  code: 'verify/unread-bars',
  message: 'the rings of a MaxiCode are on the label, but it can not be read in the source, though another code can',
  ...orAllow('maxicode-unread', 'Look at the picture: if the code is smeared, cut or shrunk, get the label anew from the channel.'),
};

export const maxiCodeSmall = (widthMm: number): Reason => ({
  code: 'verify/maxicode-size',
  message: `a MaxiCode is ${widthMm.toFixed(1)} mm wide, and so it is in the source; it has one size, 26.4 mm, and may not be smaller than 94 % of it`,
  ...orAllow('maxicode-size', 'Ask the channel for the label in its full size.'),
});

/** What a seller can do tonight about a drawing that is wrong. */
const OTHER_FORM =
  'Do not print it. Get the label from the channel in another form (PDF instead of a picture, or the other way), and use that one.';

/** The gravest difference, as the reason for holding; undefined when there is none. */
export function codesDiffer({ lost, changed, moved, extra }: CodesCompared, sheet: Pick<Sheet, 'scale'>): Reason | undefined {
  if (changed.length > 0) {
    return {
      code: 'verify/code-changed',
      message: `${list(changed.map((each) => each.source))} reads differently on the drawn page`,
      remedy: `${OTHER_FORM} Report it with the document: drawing must never change a code.`,
    };
  }
  if (lost.length > 0) {
    return {
      code: 'verify/code-lost',
      message: `${list(lost)} of the source can't be read from the printer's dots`,
      remedy: isShrunk(sheet)
        ? 'Let the recipe leave the label at true size, on media that takes it.'
        : 'Get the label from the channel again, as a PDF or in a better resolution, or print it on a finer printer.',
    };
  }
  if (moved.length > 0) {
    return {
      code: 'verify/code-moved',
      message: `${list(moved.map((each) => each.source))} is not where the source has it`,
      remedy: `${OTHER_FORM} Report it with the document: drawing must never move a code.`,
    };
  }
  if (extra.length > 0) {
    return {
      code: 'verify/code-extra',
      message: `${list(extra)} can be read on the drawn page but not in the source`,
      remedy: 'Look at the picture: a second label on the page, or ruled lines that read as a code? Give the recipe a tighter box.',
    };
  }
  return undefined;
}

/** "a Code 128", "a Code 128 and a QR": kinds only, never what they say. */
export function list(codes: readonly Code[]): string {
  const names = codes.map((code) => `${/^[AI]/.test(code.symbology) ? 'an' : 'a'} ${code.symbology} code`);
  return names.length < 2 ? (names[0] ?? 'no code') : `${names.slice(0, -1).join(', ')} and ${names.at(-1) ?? ''}`;
}
