import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { pipelineFrom, type PipelineArgs } from '../../src/commands/run-pipeline.js';
import { GRID_NAMES, gridOf, MOST_PIXELS, wholeDots } from '../../src/geometry/grid.js';
import { mediaNamed } from '../../src/geometry/media.js';
import { temporaryFolder } from '../files/temp-folder.js';

const NOTHING: PipelineArgs = {
  config: undefined,
  recipe: undefined,
  out: undefined,
  files: [],
  jobs: undefined,
  media: undefined,
  grid: undefined,
};
const ANY_PAGE: PipelineArgs = { ...NOTHING, recipe: 'any-page', out: 'out', files: ['a.pdf'] };

const told = (args: PipelineArgs, folder = temporaryFolder()): string[] =>
  pipelineFrom(args, folder).diagnostics.map(({ code, place }) => `${code}${place.kind === 'config' ? ` ${place.line}:${place.col}` : ''}`);

describe('pipelineFrom', () => {
  it.each([['5000x5000mm'], ['0.4x6in'], ['4x49in']])('refuses --media %s as the file does: no printer takes it', (media) => {
    expect(told({ ...ANY_PAGE, media })).toEqual(['commands/bad-usage']);
  });

  it.each([
    ['11x17in', '600dpi'],
    ['48x48in', '203dpi'],
  ])('refuses %s at %s, which no page could be proved in', (media, grid) => {
    expect(told({ ...ANY_PAGE, media, grid })).toEqual(['config/too-many-dots']);
  });

  it.each(GRID_NAMES.flatMap((grid) => ['4x6in', 'letter', 'legal'].map((media) => [media, grid] as const)))(
    'takes %s at %s',
    (media, grid) => {
      const { value } = pipelineFrom({ ...ANY_PAGE, media, grid }, temporaryFolder());
      expect(value).toMatchObject({ media, grid });
      const { width, height } = mediaNamed(media);
      expect(wholeDots(width, gridOf(grid)) * wholeDots(height, gridOf(grid))).toBeLessThanOrEqual(MOST_PIXELS);
    },
  );

  it('does not take the output folder of a pipeline for one recipe, and says why', () => {
    const folder = temporaryFolder();
    const problem = (): unknown => pipelineFrom({ ...ANY_PAGE, out: undefined }, folder).diagnostics;
    const code = 'commands/bad-usage';
    expect(problem()).toMatchObject([{ code, message: '--recipe needs an output folder', remedy: 'Add --out one-off.' }]);
    writeFileSync(join(folder, 'pipeline.yaml'), '');
    expect(problem()).toMatchObject([
      { code, message: expect.stringContaining('would take the place') as unknown, remedy: 'Add --out one-off.' },
    ]);
    expect(told({ ...ANY_PAGE, out: 'one-off' }, folder)).toEqual([]);
  });

  it('judges what the file says together with what was typed, and points at the file', () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, 'pipeline.yaml'), 'grid: 600dpi\nchannels:\n  - name: mugs\n    files: a.pdf\n    recipe: two-up-sheets\n');
    expect(told(NOTHING, folder)).toEqual([]);
    expect(told({ ...NOTHING, media: '11x17in' }, folder)).toContain('config/too-many-dots 1:7');
    expect(pipelineFrom({ ...NOTHING, media: '100x150mm', grid: '203dpi' }, folder).value).toMatchObject({
      media: '100x150mm',
      grid: '203dpi',
    });
  });

  it('says before anything is started that pages do not fit their sheet, and where it is written', () => {
    expect(told({ ...ANY_PAGE, recipe: 'two-up-sheets', media: 'letter' })).toEqual(['config/option-conflict 12:5']);
    expect(told({ ...ANY_PAGE, recipe: 'two-up-sheets' })).toEqual([]);
  });
});
