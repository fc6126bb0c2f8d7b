import { describe, expect, it } from 'vitest';
import { printerOf, stackPlanOf } from '../../src/batch/stack-plan.js';
import { PLAIN_PRINTER } from '../../src/geometry/printer.js';

const recipe = (...names: readonly string[]) => ({
  name: 'any',
  about: 'Any.',
  steps: names.map((name) => ({
    name,
    options: name === 'impose' ? { sheet: 'letter', columns: 1, rows: 2, lying: 'sideways', 'first-free': 1 } : {},
  })),
});

describe('the printer that pages are pressed for', () => {
  const own = { ...PLAIN_PRINTER, output: 'dots', offset: { x: 3, y: 0 } } as const;

  it('is the label printer, and a plain one for pages that are laid on larger sheets', () => {
    expect(printerOf(stackPlanOf(recipe(), '203dpi'), own)).toBe(own);
    expect(printerOf(stackPlanOf(recipe('impose'), '203dpi'), own)).toBe(PLAIN_PRINTER);
    expect(printerOf(stackPlanOf(recipe(), '203dpi'))).toBe(PLAIN_PRINTER);
  });

  it('of a step that is not there nothing is planned: it is a bug', () => {
    expect(() => stackPlanOf(recipe('no-such-step'), '203dpi')).toThrow('no-such-step');
  });
});
