import { describe, expect, it } from 'vitest';
import { STEPS } from '../../src/steps/index.js';
import { filesUnder, textOf } from './tree.js';

/** Files of src/steps that are no step: what steps are made of. */
const STEP_PARTS = [
  'index',
  'option',
  'step',
  'beside-label',
  'continued-form',
  'cut-ink',
  'fit-slip',
  'inside-cut-line',
  'inside-white',
  'lies-on-dots',
  'pages',
  'place-on-page',
  'reflow',
  'surveyed',
  'true-size',
  'whole-dots',
  'whose',
];

describe('one step, one file, one name', () => {
  it.each(STEPS.map(({ name }) => name))('%s has its file, its test and its row in README', (name) => {
    expect(filesUnder('src/steps')).toContain(`src/steps/${name}.ts`);
    expect(filesUnder('test/steps')).toContain(`test/steps/${name}.test.ts`);
    expect(textOf('README.md')).toMatch(new RegExp(`^\\| \`${name}\` \\|`, 'm'));
    expect(textOf(`src/steps/${name}.ts`)).toContain(`name: '${name}'`);
  });

  it('has no step file that is not in the registry', () => {
    const names = filesUnder('src/steps').map((path) => path.slice('src/steps/'.length, -'.ts'.length));
    const steps = STEPS.map(({ name }) => name);
    expect(names.filter((name) => !STEP_PARTS.includes(name) && !steps.includes(name))).toEqual([]);
  });
});
