import { describe, expect, it } from 'vitest';
import { Findings, type Finding } from '../../src/orders/findings.js';

const finding: Finding = { code: 'orders/bad-date', severity: 'warning', message: 'no date', remedy: 'Write one.' };

describe('findings', () => {
  it('come by line and column, counted where there are many of a kind', () => {
    const findings = new Findings('a.csv');
    for (let line = 30; line >= 1; line--) findings.add(finding, { line, col: 2 }, 'Date');
    findings.add(finding, { line: 5, col: 1 }, 'Ship by');
    const lines = findings.list().map(({ place, message }) => `${place.kind === 'orders' ? `${place.line}:${place.col}` : ''} ${message}`);
    expect(lines).toHaveLength(12);
    expect(lines[0]).toBe('1:2 20 more of this kind up to this line; the first says: no date');
    expect(lines[1]).toBe('5:1 no date');
    expect(lines.at(-1)).toBe('30:2 no date');
  });

  it('told once are told at the first place', () => {
    const findings = new Findings('a.csv');
    findings.once(finding, { line: 1, col: 1 }, 'x');
    findings.once(finding, { line: 2, col: 1 }, 'x');
    findings.once(finding, { line: 3, col: 1 }, 'y');
    expect(findings.list().map(({ place }) => (place.kind === 'orders' ? place.line : 0))).toEqual([1, 3]);
  });
});
