import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { processDocument } from '../../src/batch/process-document.js';
import { loadRecipe } from '../../src/config/load-recipe.js';
import type { DocumentResult } from '../../src/recipe/outcome.js';
import { ROOT } from '../house/tree.js';
import { LAYOUTS } from '../samples/layouts.js';
import { KINDS, sample, type Kind } from '../samples/sample.js';
import { bytesOf, inTempFolder, outsideCheck, runTool, type OutsideTool } from './tools.js';

/**
 * One sample written anew by general-purpose programs: the structures that files from anywhere come in. Each must give the
 * same items with the same codes as the sample itself; none may be taken for damaged.
 */
interface Writer {
  readonly name: string;
  readonly tool: OutsideTool;
  readonly args: (input: string, output: string) => readonly string[];
  /** What the written file must contain for the check to mean what its name says. */
  readonly shows: RegExp | Readonly<Record<Kind, RegExp>>;
}

const qpdf = (name: string, shows: RegExp, ...options: string[]): Writer => ({
  name: `qpdf ${name}`,
  tool: 'qpdf',
  args: (input, output) => [...options, input, output],
  shows,
});
const ghostscript = (name: string, shows: Writer['shows'], ...options: string[]): Writer => ({
  name: `gs ${name}`,
  tool: 'gs',
  args: (input, output) => [
    '-q',
    '-dBATCH',
    '-dNOPAUSE',
    '-dAutoRotatePages=/None',
    '-sDEVICE=pdfwrite',
    ...options,
    `-sOutputFile=${output}`,
    input,
  ],
  shows,
});

const WRITERS: readonly Writer[] = [
  qpdf('plain, every length in an object of its own', /\/Length \d+ 0 R/, '--qdf'),
  qpdf('linearised', /\/Linearized/, '--linearize'),
  qpdf('with object streams', /\/ObjStm/, '--object-streams=generate'),
  qpdf('with object streams, linearised', /\/Linearized[^]*\/ObjStm/, '--object-streams=generate', '--linearize'),
  qpdf('AES-256, empty user password', /\/AESV3/, '--encrypt', '', 'owner', '256', '--'),
  qpdf(
    'AES-128 with object streams, empty user password',
    /\/AESV2/,
    '--object-streams=generate',
    '--allow-weak-crypto',
    '--encrypt',
    '',
    'owner',
    '128',
    '--use-aes=y',
    '--',
  ),
  qpdf('RC4-40, empty user password', /\/Encrypt/, '--allow-weak-crypto', '--encrypt', '', 'owner', '40', '--'),
  ghostscript('1.7', { vector: /%PDF-1\.7/, bilevel: /\/CCITTFaxDecode/, grey: /%PDF-1\.7/ }),
  ghostscript(
    '1.3, grey pictures by JPEG',
    { vector: /%PDF-1\.3/, bilevel: /%PDF-1\.3/, grey: /\/DCTDecode/ },
    '-dCompatibilityLevel=1.3',
    '-dAutoFilterGrayImages=false',
    '-dGrayImageFilter=/DCTEncode',
    '-dDownsampleGrayImages=false',
    '-dDownsampleMonoImages=false',
  ),
  { name: 'cairo', tool: 'pdftocairo', args: (input, output) => ['-pdf', input, output], shows: /cairo/ },
];

const originals = new Map<Kind, Uint8Array>();

async function processed(bytes: Uint8Array): Promise<DocumentResult> {
  const { value } = loadRecipe('any-page', ROOT);
  if (!value) throw new Error('any-page has mistakes');
  return processDocument({ bytes, shownName: 'sample.pdf', recipe: value, media: '4x6in', grid: '203dpi' });
}

/** What must not depend on who wrote the file: items, where they ended, how they are turned, their codes. */
const toldOf = ({ pageCount, items }: DocumentResult): unknown => [
  pageCount,
  items.map(({ id, role, turn, state, codes }) => [
    id,
    role,
    turn,
    state.kind === 'ready' ? state.kind : `${state.kind} ${state.code}`,
    codes.map(({ symbology, identifier, digest }) => [symbology, identifier, digest]),
  ]),
];

function written(kind: Kind, tool: OutsideTool, args: Writer['args']): Promise<Uint8Array> {
  return inTempFolder((folder) => {
    const [input, output] = [join(folder, 'in.pdf'), join(folder, 'out.pdf')];
    writeFileSync(input, originals.get(kind) ?? new Uint8Array());
    runTool(tool, args(input, output));
    return bytesOf(output);
  });
}

beforeAll(async () => {
  const layout = LAYOUTS.find(({ name }) => name === 'letter-upper-sideways');
  if (!layout) throw new Error('no layout');
  for (const kind of KINDS) originals.set(kind, (await sample(layout, kind, 0)).bytes);
});

describe.each(KINDS)('a %s label written anew', (kind) => {
  let expected: unknown;
  beforeAll(async () => {
    const result = await processed(originals.get(kind) ?? new Uint8Array());
    expected = toldOf(result);
  });

  it('is ready as the sample draws it, with two codes', async () => {
    expect(JSON.stringify(expected)).toContain('"ready"');
    expect(JSON.stringify(expected).match(/"[0-9a-f]{64}"/g)).toHaveLength(2);
  });

  for (const { name, tool, args, shows } of WRITERS) {
    outsideCheck(`by ${name}`, [tool], async () => {
      const bytes = await written(kind, tool, args);
      const sign = shows instanceof RegExp ? shows : shows[kind];
      expect(sign.test(Buffer.from(bytes).toString('latin1'))).toBe(true);
      const result = await processed(bytes);
      expect(toldOf(result)).toEqual(expected);
      expect(result.diagnostics).toEqual([]);
      expect(result.counts.documentsOpened).toBe(1);
    });
  }
});

describe('a file that asks for a password', () => {
  outsideCheck('is refused in one line', ['qpdf'], async () => {
    const bytes = await written('vector', 'qpdf', (input, output) => ['--encrypt', 'user', 'owner', '256', '--', input, output]);
    const { items, pageCount } = await processed(bytes);
    expect([pageCount, items.map(({ state }) => (state.kind === 'ready' ? '' : `${state.kind} ${state.code}`))]).toEqual([
      0,
      ['failed reading/needs-password'],
    ]);
  });
});
