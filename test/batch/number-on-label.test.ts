import { describe, expect, it } from 'vitest';
import { cautionsOf } from '../../src/batch/cautions.js';
import { collate } from '../../src/batch/collate.js';
import { processDocument } from '../../src/batch/process-document.js';
import { stackPlanOf } from '../../src/batch/stack-plan.js';
import { loadRecipe } from '../../src/config/load-recipe.js';
import { contains, type Box } from '../../src/geometry/box.js';
import { dotsPerPt, gridOf } from '../../src/geometry/grid.js';
import { mediaNamed } from '../../src/geometry/media.js';
import { joinStack } from '../../src/press/stack.js';
import { openPdf } from '../../src/reading/open-pdf.js';
import type { DocumentResult } from '../../src/recipe/outcome.js';
import { ROOT } from '../house/tree.js';
import { LAYOUTS } from '../samples/layouts.js';
import { sample, type Kind } from '../samples/sample.js';
import { item } from './fakes.js';

const WHOLE: Box = { x: 0, y: 0, width: 288, height: 432 };
const GRID = gridOf('203dpi');

function recipeWith(onLabel: boolean): NonNullable<ReturnType<typeof loadRecipe>['value']> {
  const { value } = loadRecipe('any-page', ROOT);
  if (!value) throw new Error('any-page has mistakes');
  const steps = value.steps.map((step) => (step.name === 'number' ? { ...step, options: { ...step.options, 'on-label': onLabel } } : step));
  return { ...value, steps };
}

async function processed(name: string, kind: Kind, onLabel: boolean): Promise<DocumentResult> {
  const layout = LAYOUTS.find((each) => each.name === name);
  if (!layout) throw new Error(`the layout ${name} is gone`);
  const { bytes } = await sample(layout, kind, 0);
  return processDocument({ bytes, shownName: 'sample', recipe: recipeWith(onLabel), media: '4x6in', grid: '203dpi' });
}

async function shown(bytes: Uint8Array) {
  const document = await openPdf(bytes, { as: 'output' });
  if ('refused' in document) throw new Error(document.refused.message);
  const page = document.page(1);
  const codes = await page.codes(WHOLE, 2 * dotsPerPt(GRID));
  const raster = page.render(WHOLE, 4);
  document.close();
  return {
    raster,
    codes: codes.map(({ identifier, bytes: text, box }) => `${identifier} ${text} ${Math.round(box.x)} ${Math.round(box.y)}`).sort(),
  };
}

describe('a number on a label', () => {
  it.each([
    ['page-4x6', 'vector'],
    ['page-4x6', 'bilevel'],
    ['page-4x6', 'grey'],
  ] as const)('changes nothing of it outside its own rectangle, and its codes are read as before: %s, %s', async (name, kind) => {
    const { items, pressed } = await processed(name, kind, true);
    const [label] = items;
    const { numberBox, drawnBox } = label ?? {};
    if (label?.state.kind !== 'ready' || !pressed || !numberBox || !drawnBox) throw new Error('a label with room on it');
    expect(label.numberOnLabel).toBe(true);
    expect(contains(drawnBox, numberBox)).toBe(true);
    const media = mediaNamed('4x6in');
    const join = (stamp: { text: string; fontSize: number; box: Box } | undefined) =>
      joinStack(() => pressed, { pages: [{ part: 0, page: label.pressedPage ?? 1, stamp }], media, imposed: undefined });
    const plain = await shown(await join(undefined));
    const stamped = await shown(await join({ text: '1000/1000', fontSize: 9, box: numberBox }));
    const changed = [...stamped.raster.data.keys()].filter((at) => stamped.raster.data[at] !== plain.raster.data[at]);
    expect(changed.length).toBeGreaterThan(50);
    const { width, pixelsPerPt } = stamped.raster;
    const outside = changed.filter((at) => {
      const dot = {
        x: (at % width) / pixelsPerPt,
        y: Math.floor(at / width) / pixelsPerPt,
        width: 1 / pixelsPerPt,
        height: 1 / pixelsPerPt,
      };
      return !contains(numberBox, dot, 0.01);
    });
    expect(outside).toEqual([]);
    // It was free: what the number covers was white paper.
    expect(changed.every((at) => (plain.raster.data[at] ?? 0) > 245)).toBe(true);
    expect(plain.codes.length).toBeGreaterThan(0);
    expect(stamped.codes).toEqual(plain.codes);
  });

  it('is not there unless it is asked for', async () => {
    const unasked = (await processed('page-4x6', 'vector', false)).items[0];
    expect(unasked?.state.kind).toBe('ready');
    expect(unasked?.numberBox).toBeUndefined();
  });
});

describe('the caution', () => {
  const plan = stackPlanOf(recipeWith(true), '203dpi');
  const said = (onLabel: readonly boolean[]) =>
    cautionsOf(collate([{ plan, items: onLabel.map((on, at) => item(`p${at}`, on ? { numberOnLabel: true } : {})) }], () => '4x6in'));

  it('is said once, with how many labels, and only where a label carries its number', () => {
    expect(said([false, false])).toEqual([]);
    expect(said([true, false, true])).toMatchObject([
      {
        code: 'number/on-label',
        severity: 'note',
        message: '2 labels carry their number on the label itself: carriers may refuse labels with additions',
      },
    ]);
    expect(said([true])[0]?.message).toMatch(/^1 label carries its number/);
  });
});
