import { describe, expect, it } from 'vitest';
import type { AsItIs, OnPage, PrintedCode, PrintedLabel } from '../../src/explain/explained.js';
import { verdictOf } from '../../src/explain/verdict.js';

const box = { x: 0, y: 0, width: 288, height: 432 };
const LABEL = { mark: 1, role: 'label', box, turn: 0, evidence: [] } as const;
const CODE = { mark: 2, symbology: 'Code 128', tail: '0000', box, label: 1, moduleMm: 0.375 } as const;
const PAGE: OnPage = {
  kind: 'label',
  about: undefined,
  labels: [LABEL],
  candidates: [],
  codes: [CODE],
  unreadRows: 0,
  frames: 0,
  pictures: 0,
  words: 0,
  crooked: 0,
};
const RANGE = { leastMil: 13, mostMil: 21, source: 'a standard', trust: 'secondary' } as const;
const GOOD: PrintedCode = { mark: 2, standing: 'in-range', moduleDots: 3, moduleMil: 14.8, range: RANGE, readBack: true };
const UPRIGHT: PrintedLabel = { mark: 1, width: 288, height: 432, share: 1, lies: 'upright', turnNeeded: 0 };
const printed = (changes: Partial<AsItIs>): Omit<AsItIs, 'verdict'> => ({
  media: '4x6in',
  grid: '203dpi',
  factor: 1,
  pageTurned: false,
  factorUnturned: undefined,
  labels: [UPRIGHT],
  codes: [GOOD],
  ...changes,
});
const fine: PrintedCode = { ...GOOD, standing: 'too-fine', moduleDots: 1.4, moduleMil: 6.9, readBack: false };
const under: PrintedCode = { ...GOOD, standing: 'under-range', moduleDots: 2.2, moduleMil: 10.8 };

describe('the verdict on sending a page as it is', () => {
  it.each<[string, Partial<OnPage>, Partial<AsItIs>]>([
    ['fit', {}, {}],
    ['too-fine', {}, { codes: [fine] }],
    ['under-range', {}, { codes: [under] }],
    ['not-read', {}, { codes: [{ ...GOOD, readBack: false }] }],
    ['not-true-size', {}, { factor: 0.94 }],
    ['turned', {}, { labels: [{ ...UPRIGHT, lies: 'upside-down' }] }],
    ['not-measured', { codes: [] }, { codes: [] }],
    ['not-measured', {}, { codes: [{ ...GOOD, standing: 'not-measured', moduleDots: undefined, moduleMil: undefined }] }],
    ['no-label', { kind: 'blank', labels: [] }, { labels: [] }],
    ['no-label', { kind: 'named', about: 'invoice', labels: [] }, { labels: [] }],
    ['no-label', { kind: 'no-codes', labels: [] }, { labels: [] }],
    // Nothing is known as a label, but its codes can be measured.
    ['too-fine', { kind: 'doubtful', about: 'two answers', labels: [] }, { labels: [], codes: [fine] }],
    ['too-fine', { kind: 'unnamed', labels: [] }, { labels: [], codes: [fine] }],
  ])('%s', (kind, onPage, changes) => {
    const verdict = verdictOf({ ...PAGE, ...onPage }, printed(changes));
    expect(verdict.kind).toBe(kind);
    // One sentence: its only full stop that a blank could follow is the last.
    expect(verdict.sentence).toMatch(/^[A-Z](?:(?!\. ).)+\.$/);
    expect(verdict.sentence).not.toMatch(/undefined|NaN/);
  });

  it('of a page that is not true size tells bars on whole dots from bars between them', () => {
    expect(verdictOf(PAGE, printed({ factor: 0.75 })).sentence).toContain(
      '3.0 dots (14.8 mil) wide: it should scan, but it is not true size.',
    );
    const between = [{ ...GOOD, moduleDots: 2.82 }];
    expect(verdictOf(PAGE, printed({ factor: 0.94, codes: between })).sentence).toContain(
      "between the printer's dots: it looks fine and may scan badly.",
    );
  });

  it('lets the gravest thing decide', () => {
    const labels = [{ ...UPRIGHT, lies: 'on-its-side' as const }];
    expect(verdictOf(PAGE, printed({ factor: 0.47, labels, codes: [under, fine] })).kind).toBe('too-fine');
    expect(verdictOf(PAGE, printed({ factor: 0.9, labels, codes: [under] })).kind).toBe('under-range');
    expect(verdictOf(PAGE, printed({ factor: 0.9, labels })).kind).toBe('not-true-size');
  });

  it('never lets a code beside the label decide', () => {
    const beside = { ...CODE, mark: 3, label: undefined };
    expect(verdictOf({ ...PAGE, codes: [CODE, beside] }, printed({ codes: [GOOD, { ...fine, mark: 3 }] })).kind).toBe('fit');
  });

  it('says it when what the label is is not sure', () => {
    const { sentence } = verdictOf({ ...PAGE, kind: 'doubtful', labels: [] }, printed({ labels: [], codes: [fine], factor: 0.47 }));
    expect(sentence).toContain('the page comes out at 47 % of its size (what the label is, is not sure)');
  });

  it('of several labels tells the least and the most of the print', () => {
    const labels = [
      { ...UPRIGHT, share: 0.22 },
      { ...UPRIGHT, mark: 2, share: 0.18, lies: 'on-its-side' as const },
    ];
    expect(verdictOf(PAGE, printed({ labels })).sentence).toContain(
      'each of the 2 labels comes out at true size, not all the same way up, on 18 to 22 % of the print',
    );
  });
});
