import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { processDocument } from '../../src/batch/process-document.js';
import { loadPipeline } from '../../src/config/load-pipeline.js';
import type { ItemResult } from '../../src/recipe/outcome.js';
import type { LayoutPage } from '../samples/layout.js';
import { addressedMatrix, bareBox, letter, sidewaysLabel, slipAround, smallBarred } from '../locating/survey-pages.js';
import { other } from '../samples/layout.js';
import { documentOf, instructionsPage, labelPageWithoutCode } from './on-pages.js';

const folder = mkdtempSync(join(tmpdir(), 'slipyard-remedies-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** What comes of a page by `any-page`, with these lines below the channel's `options:`. */
async function items(page: LayoutPage, lines: readonly string[] = []): Promise<readonly ItemResult[]> {
  const options = lines.length === 0 ? [] : ['    options:', ...lines.map((line) => `      ${line}`)];
  const file = join(folder, 'pipeline.yaml');
  writeFileSync(file, ['channels:', '  - name: mugs', '    files: inbox/*', '    recipe: any-page', ...options, ''].join('\n'));
  const { value, diagnostics } = loadPipeline(file);
  const recipe = value?.channels[0]?.recipe;
  if (!recipe) throw new Error(diagnostics.map(({ message }) => message).join('\n'));
  const bytes = await documentOf([page]);
  return (await processDocument({ bytes, shownName: 'page.pdf', recipe, media: '4x6in', grid: '203dpi' })).items;
}

const codeOf = ({ state }: ItemResult): string => (state.kind === 'ready' ? 'ready' : `${state.kind} ${state.code}`);
const ends = (all: readonly ItemResult[]): readonly string[] =>
  all.filter(({ role }) => role !== 'remainder').map((item) => `${item.role} ${codeOf(item)}`);

/** The lines that the remedy of an item with this code tells to write. */
function linesOf(all: readonly ItemResult[], code: string): readonly string[] {
  const state = all.map((item) => item.state).find((each) => each.kind !== 'ready' && each.code === code);
  const remedy = state && state.kind !== 'ready' ? state.remedy : '';
  return [...remedy.matchAll(/`([a-z-]+: (?:\{[^`]*\}|[a-z0-9-]+))`/g)].map(([, line]) => line ?? '');
}

describe('a line that a remedy tells to write', () => {
  it('makes a label of a page that has no code', async () => {
    const page = labelPageWithoutCode(1);
    const lines = linesOf(await items(page), 'split-pages/no-code');
    expect(lines).toEqual(['split-pages: { by: position }', 'verify: none']);
    expect(ends(await items(page, [...lines, 'locate-label: { box: [0.32in, 0.32in, 4.04in, 6.04in] }']))).toEqual(['label ready']);
  });

  it('makes the label that is chosen where more than one thing may be it', async () => {
    const page = letter(sidewaysLabel(3, 40), other(bareBox(260, 240, '00340000123456789012', 1, 40), 90, 460));
    const made = await items(page);
    const [line, ...more] = linesOf(made, 'locate-label/doubtful');
    expect([ends(made), more]).toEqual([['label ready', 'page held locate-label/doubtful'], []]);
    // It has not a word, so that its turn is to be named, too.
    expect(linesOf(await items(page, [line ?? '']), 'rotate/doubtful')).toContain('rotate: 0');
    const [chosen] = await items(page, [line ?? '', 'rotate: 0']);
    expect(chosen && codeOf(chosen)).toBe('ready');
    expect([chosen?.box?.x, chosen?.box?.y].map((each) => Math.round(each ?? 0))).toEqual([89, 459]);
  });

  it.each<[string, LayoutPage, string]>([
    [
      'small bars with a short number',
      letter(
        other(
          smallBarred(
            ['Officina Ficta', 'Via Ficta 3', '00730 Nusquam'],
            ['Ines Exempla', 'Via Ficta 12', '00731 Nusquam'],
            [],
            '1072326667',
          ),
          40,
          60,
        ),
      ),
      "one row of bars, smaller than most labels', no words of a label that Slipyard knows",
    ],
    [
      'a matrix code',
      letter(other(addressedMatrix('BX682434879094', ['Ship to']), 40, 240)),
      'all but its title in one size, and one code',
    ],
  ])('prints what has little of a label, if the seller says that it is one: %s', async (_, page, why) => {
    const held = await items(page);
    const state = held[0]?.state;
    expect(state?.kind === 'held' && state.message.replace(/^.*?: /, '')).toBe(why);
    const lines = linesOf(held, 'split-pages/doubtful');
    expect(lines).toHaveLength(2);
    expect(ends(await items(page, lines))).toEqual(['label ready']);
  });

  it('prints a label without the slip that lies around it', async () => {
    const made = await items(slipAround(1));
    const [alone] = linesOf(made, 'packing-slip/overlaps-label');
    expect(ends(made)).toEqual(['label held batch/parcel-held', 'slip held packing-slip/overlaps-label']);
    expect(alone).toBe('packing-slip: { if-held: print-label }');
    expect(ends(await items(slipAround(1), [alone ?? '']))).toEqual(['label ready', 'slip held packing-slip/overlaps-label']);
  });

  it('has a page looked at as a label though it calls itself something else', async () => {
    const [line] = linesOf(await items(instructionsPage()), 'split-pages/skipped');
    expect(line).toBe('split-pages: { label-words: [a phrase] }');
    const [made] = await items(instructionsPage(), ['split-pages: { label-words: [how to use] }']);
    expect(made && `${made.role} ${codeOf(made)}`).toMatch(/^label held locate-label/);
  });
});
