import { describe, expect, it } from 'vitest';
import { held, isLabel, isPlanned, pageSheet, ROLES, skipped, type Reason } from '../../src/sheet/sheet.js';

const reason: Reason = { code: 'scale/too-large', message: 'a message', remedy: 'a remedy' };

describe('a sheet', () => {
  it('of a page is the whole page, at true size, not judged', () => {
    const sheet = pageSheet(3, 612, 792);
    expect(sheet).toMatchObject({ id: 'p3', page: 3, role: 'page', box: { x: 0, y: 0, width: 612, height: 792 }, turn: 0, scale: 1 });
    expect(isPlanned(sheet)).toBe(true);
    expect(isLabel(sheet)).toBe(false);
  });

  it('is held or skipped as a changed copy, with its whole reason', () => {
    const sheet = pageSheet(1, 612, 792);
    expect(held(sheet, reason)).toEqual({ ...sheet, state: { kind: 'held', ...reason } });
    expect(skipped(sheet, reason)).toEqual({ ...sheet, state: { kind: 'skipped', ...reason } });
    expect(isPlanned(sheet)).toBe(true);
    expect([held(sheet, reason), skipped(sheet, reason)].map(isPlanned)).toEqual([false, false]);
  });

  it('is a label as label or return label only', () => {
    expect(ROLES.filter((role) => isLabel({ ...pageSheet(1, 1, 1), role }))).toEqual(['label', 'return-label']);
  });

  it('crosses threads and prints as JSON without a loss', () => {
    const sheet = held({ ...pageSheet(1, 612, 792), role: 'slip', content: { kind: 'text', lines: ['a', 'b'], fontSize: 8 } }, reason);
    expect(structuredClone(sheet)).toEqual(sheet);
    expect(pageSheet(1, 612, 792)).toMatchObject(JSON.parse(JSON.stringify(pageSheet(1, 612, 792))) as object);
  });
});
