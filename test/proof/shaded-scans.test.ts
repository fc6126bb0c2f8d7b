import { describe, expect, it } from 'vitest';
import { processDocument } from '../../src/batch/process-document.js';
import { PLAIN_PRINTER } from '../../src/geometry/printer.js';
import { foreignFiles } from '../samples/foreign/load.js';
import { recipeNamed } from '../steps/on-pages.js';

/** Scans that darken towards a corner, and photographs on yellowish paper, whose labels a search finds by the ink less its shadow. */
const files = [...foreignFiles('second-sight'), ...foreignFiles('third-sight')].filter(({ file }) => /^(?:s11|v05)-/.test(file));

describe('scans that are unevenly lit', () => {
  it.each(files)('$file is weighed shadow against shadow: what is held is held for its codes', async ({ file, bytes }) => {
    const { items } = await processDocument({
      bytes,
      shownName: file,
      recipe: recipeNamed('any-page'),
      media: '4x6in',
      grid: '203dpi',
      printer: PLAIN_PRINTER,
    });
    const ends = items.flatMap(({ role, state }) => (role === 'label' ? [state.kind === 'ready' ? 'ready' : state.code] : []));
    expect(ends.length).toBeGreaterThan(2);
    expect(ends).not.toContain('verify/ink-differs');
    expect(ends).toContain('ready');
  });
});
