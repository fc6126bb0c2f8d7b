import { describe, expect, it } from 'vitest';
import { grow } from '../../src/geometry/box.js';
import { addsOnlyUnits, closedUnits } from '../../src/locating/closed-units.js';
import { blankPages } from '../steps/on-sample.js';
import { inches } from './judged.js';

const label = inches(1, 1, 4, 6);
const receipt = inches(1, 7.2, 4, 2);
const line = inches(1.2, 7.5, 2, 0.1);
const both = inches(1, 1, 4, 8.2);

describe('closedUnits', () => {
  it('takes blocks of ink with something inside, the outermost only', () => {
    const page = blankPages(612, 792).page(1);
    expect(closedUnits(page, [receipt, grow(receipt, -10), line])).toEqual([receipt]);
    expect(closedUnits(page, [label, line])).toEqual([]);
  });

  it('takes no strip that is thinner than half an inch: a rule, and the line of type that touches it, with another line beside', () => {
    const page = blankPages(612, 792).page(1);
    expect(closedUnits(page, [inches(1, 0.5, 4, 0.4), inches(3.5, 0.6, 1, 0.1)])).toEqual([]);
    expect(closedUnits(page, [inches(1, 0.5, 4, 0.6), inches(3.5, 0.6, 1, 0.1)])).toHaveLength(1);
  });
});

describe('addsOnlyUnits', () => {
  it('is so where all other ink lies in a unit beside the label', () => {
    expect(addsOnlyUnits(both, label, [label, receipt, line], [receipt])).toBe(true);
    expect(addsOnlyUnits(both, label, [label, line], [])).toBe(false);
    expect(addsOnlyUnits(both, label, [label, receipt, inches(1, 7.05, 3, 0.1)], [receipt])).toBe(false);
  });

  it('is not so where nothing is added, or the unit reaches into the label', () => {
    expect(addsOnlyUnits(both, label, [label], [receipt])).toBe(false);
    expect(addsOnlyUnits(both, label, [label, line], [inches(1, 6.5, 4, 2.7)])).toBe(false);
  });
});
