import { createHash } from 'node:crypto';
import { codeUses, type CodeUse } from '../proof/code-role.js';
import type { ProvedCode } from '../proof/judge-codes.js';
import type { CodeMeasure } from '../proof/measure-code.js';
import type { MatrixMeasure } from '../proof/measure-matrix.js';
import type { BarFigures, CodeSummary, MatrixFigures } from '../recipe/outcome.js';

/** The codes of one label as the account may tell them. */
export function summariesOf(codes: readonly ProvedCode[]): readonly CodeSummary[] {
  const uses = codeUses(codes.map(({ code }) => code));
  return codes.map((each, index) => summaryOf(each, uses[index] ?? { role: 'other', trust: 'likely' }));
}

const sha256 = (...parts: readonly (string | Uint8Array)[]): string =>
  parts.reduce((hash, part) => hash.update(part), createHash('sha256')).digest('hex');

/** Of a code that is no longer than this, the last characters would tell half of it. */
const SHORT_CODE = 8;

function summaryOf(
  { code, moduleDots, measure, matrix, maxicode, onTwin, redrawn }: ProvedCode,
  { role, number, trust }: CodeUse,
): CodeSummary {
  const bytes = Buffer.from(code.bytes, 'hex');
  const printable = bytes.toString('latin1').replaceAll(/[^\x21-\x7e]/g, '');
  return {
    symbology: code.symbology,
    identifier: code.identifier,
    role,
    ...(number === undefined
      ? {}
      : { tracking: { digest: sha256(trust === 'likely' ? withoutLetters(number) : number), trust, ...tailOf(number) } }),
    digest: sha256(code.identifier, bytes),
    tail: printable.length > SHORT_CODE ? printable.slice(-4) : '',
    moduleDots: moduleDots === undefined ? undefined : rounded(moduleDots, 2),
    ...(redrawn === undefined ? {} : { redrawn }),
    ...(measure ? { bars: figuresOf(measure, onTwin) } : {}),
    ...(matrix ? { matrix: matrixFiguresOf(matrix) } : {}),
    ...(maxicode ? { maxicode: { widthMm: rounded(maxicode.widthMm, 1), quietModules: rounded(maxicode.quiet, 1) } } : {}),
  };
}

/** A receipt may repeat its label's number without the letters before it: so many digits are the number alone. */
const withoutLetters = (number: string): string => /^\p{L}{1,4}[ -]*(\d{10,})$/u.exec(number)?.[1] ?? number;

const tailOf = (number: string): { readonly tail?: string } => (number.length > SHORT_CODE ? { tail: number.slice(-4) } : {});

const rounded = (value: number, digits: number): number => Number(value.toFixed(digits));

function figuresOf(measure: CodeMeasure, onTwin: number | undefined): BarFigures {
  const { quiet, decodability } = measure;
  return {
    moduleMm: rounded(measure.moduleMm, 3),
    moduleMil: rounded(measure.moduleMil, 2),
    barHeightMm: rounded(measure.barHeightMm, 1),
    quietModules: rounded(Math.min(quiet.before, quiet.after), 1),
    decodability: {
      asPlanned: rounded(decodability.mean, 2),
      atGain: rounded(decodability.atGain, 2),
      ...(onTwin === undefined ? {} : { onTwin: rounded(onTwin, 2) }),
    },
    modulation: rounded(measure.modulation, 2),
    defects: rounded(measure.defects, 2),
    simulatedGrade: measure.grade,
    notSimulated: ['symbol contrast', 'reflectance'],
  };
}

function matrixFiguresOf(measure: MatrixMeasure): MatrixFigures {
  const { axial, rowHeight, unusedCorrection } = measure;
  return {
    columns: measure.columns,
    rows: measure.rows,
    moduleDots: rounded(measure.moduleDots, 2),
    moduleMm: rounded(measure.moduleMm, 3),
    moduleMil: rounded(measure.moduleMil, 2),
    ...(rowHeight === undefined ? {} : { rowHeightModules: rounded(rowHeight, 2) }),
    quietModules: rounded(measure.quiet, 1),
    ...(axial === undefined ? {} : { axialNonUniformity: rounded(axial, 3) }),
    gridNonUniformity: rounded(measure.gridOff, 2),
    modulation: { asPlanned: rounded(measure.modulation, 2), atGain: rounded(measure.modulationAtGain, 2) },
    ...(unusedCorrection === undefined ? {} : { unusedErrorCorrection: rounded(unusedCorrection, 2) }),
    simulatedGrade: measure.grade,
    notSimulated: ['symbol contrast', 'reflectance', 'fixed pattern damage'],
  };
}
