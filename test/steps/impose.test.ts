import { expect, it } from 'vitest';
import { PLAIN_PRINTER } from '../../src/geometry/printer.js';
import { gridOf } from '../../src/geometry/grid.js';
import { impose } from '../../src/steps/impose.js';
import { mediaNamed, optionsOf } from './on-sample.js';

it('impose plans two-up on letter by default, sideways, and leaves the rest of the plan alone', () => {
  const number = { onLabelPage: false, fontSize: 9 };
  expect(impose.plan({ number, impose: undefined }, optionsOf(impose, { 'first-free': 2 }), gridOf('203dpi'))).toEqual({
    number,
    impose: { sheet: 'letter', columns: 1, rows: 2, turn: 90, firstFree: 2 },
  });
  const upright = impose.plan(
    { number: undefined, impose: undefined },
    optionsOf(impose, { sheet: 'a4', columns: 2, lying: 'upright' }),
    gridOf('203dpi'),
  );
  expect(upright.impose).toEqual({ sheet: 'a4', columns: 2, rows: 2, turn: 0, firstFree: 1 });
});

it('impose plans measured label sheets in pt, cut marks and pairs', () => {
  const length = (value: number) => ({ value, unit: 'in' }) as const;
  const options = optionsOf(impose, {
    'pitch-across': length(4.25),
    'margin-top': length(0.5),
    'printer-margin': length(0.125),
    'cut-marks': true,
    pairs: true,
    columns: 2,
  });
  expect(impose.plan({ number: undefined, impose: undefined }, options, gridOf('203dpi')).impose).toEqual({
    sheet: 'letter',
    columns: 2,
    rows: 2,
    turn: 90,
    firstFree: 1,
    pitchAcross: 306,
    marginTop: 36,
    printerMargin: 9,
    cutMarks: true,
    pairs: true,
  });
});

it('impose refuses pairs without neighbours, lengths in dots and positions that are not there', () => {
  const wrong = (changed: Parameters<typeof optionsOf<typeof impose.options>>[1]): string | undefined =>
    impose.together?.(optionsOf(impose, changed))?.message;
  expect(wrong({ pairs: true })).toBeUndefined();
  expect(wrong({ pairs: true, columns: 4, rows: 3 })).toBeUndefined();
  expect(wrong({ pairs: true, columns: 3 })).toMatch(/without a neighbour/);
  expect(wrong({ pairs: true, columns: 1, rows: 3 })).toMatch(/without a neighbour/);
  expect(wrong({ 'margin-left': { value: 80, unit: 'dots' } })).toMatch(/`margin-left`/);
  expect(wrong({ 'first-free': 3 })).toBe('the first free position is 3, but a sheet has 2');
});

it('impose says on what media it cannot do what it says, with an order what to do', () => {
  const on = (media: string, changed: Parameters<typeof optionsOf<typeof impose.options>>[1]) =>
    impose.onMedia?.(optionsOf(impose, changed), mediaNamed(media));
  expect(on('4x6in', {})).toBeUndefined();
  expect(on('4x6in', { 'printer-margin': { value: 0.7, unit: 'in' } })).toBeUndefined();
  expect(on('4x6in', { 'printer-margin': { value: 0.8, unit: 'in' } })?.remedy).toMatch(/^Use fewer columns or rows.*\.$/);
  expect(on('4x6in', { 'margin-top': { value: 4, unit: 'in' } })?.remedy).toMatch(/^Use a smaller `margin-top`/);
});

it('refuses sheets that the printer of the channel does not take, or does not print all of', () => {
  const margins = (all: number) => ({ top: all, right: all, bottom: all, left: all });
  const on = (media: string, all = 0, y = 0) =>
    impose.onMedia?.(optionsOf(impose), mediaNamed('4x6in'), {
      name: 'office',
      media,
      grid: '300dpi',
      printer: { ...PLAIN_PRINTER, margins: margins(all), offset: { x: 0, y } },
    });
  expect(on('letter')).toBeUndefined();
  expect(on('8.5x11in', 50)).toBeUndefined();
  expect(on('a4')?.message).toContain('laid on `letter`, but `office`, which the channel prints on, takes `a4`');
  expect(on('letter', 60)?.message).toContain('prints nothing');
  // The upper page lies 54 pt below the edge.
  expect(on('letter', 50, -4)).toBeUndefined();
  expect(on('letter', 50, -5)?.message).toContain('moved by the `offset` of `office`');
});
