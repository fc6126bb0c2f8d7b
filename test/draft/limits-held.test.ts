import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { limitsIn } from '../../src/draft/limits-held.js';
import type { Problem } from '../../src/draft/compare.js';
import { ROOT } from '../house/tree.js';
import { itemsBy, recipeFor, stepOf } from './drafting.js';

const problem = (page: number, allow?: string): Problem => ({
  sample: '1.pdf',
  page,
  reason: { code: 'verify/quiet-zone', message: '', remedy: '', ...(allow === undefined ? {} : { allow }) },
});

describe('labels of samples that break a published limit', () => {
  it('are told with what sets it aside', () => {
    expect(limitsIn([problem(1, 'quiet-zone')])).toBe(
      '1 label is held by verify (page 1 of 1.pdf): `slipyard explain` says what is wrong. If the carrier takes it as it is, write `verify: { allow: [quiet-zone] }` in place of verify.',
    );
    const six = [1, 2, 3, 4, 5].map((page) => problem(page, 'quiet-zone'));
    expect(limitsIn([...six, problem(6, 'bar-height')])).toContain(
      '(page 1 of 1.pdf, page 2 of 1.pdf, page 3 of 1.pdf, page 4 of 1.pdf and 2 more)',
    );
    expect(limitsIn([...six, problem(6, 'bar-height')])).toContain('`verify: { allow: [bar-height, quiet-zone] }`');
  });

  it('and nothing else: what no recipe may set aside is no recipe', () => {
    expect(limitsIn([])).toBeUndefined();
    expect(limitsIn([problem(1, 'quiet-zone'), problem(2)])).toBeUndefined();
  });

  it('do not keep a recipe from being drafted: they are where it says, and its line has them printed', { timeout: 60_000 }, async () => {
    const bytes = readFileSync(join(ROOT, 'test/samples/foreign/fourth-sight/w10-small-pages-1.pdf'));
    const text = await recipeFor(bytes);
    expect(text).toMatch(/1 item held\./);
    expect(text).toContain('1 label is held by verify');
    expect(stepOf(text, 'verify')).toBe('verify');
    const ends = async (recipe: string): Promise<readonly string[]> =>
      (await itemsBy(recipe, bytes)).filter(({ role }) => role === 'label').map(({ state }) => state.kind);
    expect((await ends(text)).filter((each) => each === 'held')).toHaveLength(1);
    expect(await ends(text.replace('- verify', '- verify: { allow: [quiet-zone] }'))).toEqual(['ready', 'ready', 'ready', 'ready']);
  });
});
