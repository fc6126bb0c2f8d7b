import { describe, expect, it } from 'vitest';
import { scale } from '../../src/steps/scale.js';
import { blankPages, endOf, labelOf, onMedia, opened, optionsOf, through } from './on-sample.js';

type Changed = Parameters<typeof optionsOf<typeof scale.options>>[1];
const run = async (width: number, height: number, changed: Changed = {}, turn: 0 | 90 = 0) =>
  (await scale.apply([labelOf(width, height, { turn })], optionsOf(scale, changed), onMedia(blankPages(612, 792))))[0];

describe('scale', () => {
  it('leaves a label that fits at true size, a smaller one too', async () => {
    expect((await run(288, 432))?.scale).toBe(1);
    expect((await run(200, 300))?.scale).toBe(1);
    expect((await run(432, 288, {}, 90))?.scale).toBe(1);
  });

  it('shrinks within the floor, evenly: A6 onto 4×6 in is 0.9676 (handbook section 5.5, computed)', async () => {
    expect((await run(297.638, 419.528))?.scale).toBeCloseTo(0.9676, 4);
  });

  it('holds what would need less than the floor', async () => {
    expect(endOf(await run(288, 576))).toBe('held scale/too-large');
    expect(endOf(await run(297.638, 419.528, { floor: 0.98 }))).toBe('held scale/too-large');
    expect((await run(288, 576, { floor: 0.7 }))?.scale).toBeCloseTo(0.75, 6);
  });

  it('enlarges only when asked', async () => {
    expect((await run(200, 300, { to: 'fill' }))?.scale).toBeCloseTo(1.44, 6);
  });

  it('says on the sheet when bars are to stay as drawn, so that the proof does not ask for it', async () => {
    expect((await run(288, 432))?.barsAsDrawn).toBeUndefined();
    expect((await run(288, 432, { bars: 'as-drawn' }))?.barsAsDrawn).toBe(true);
  });

  it('keeps clear of the margin', async () => {
    const made = await run(288, 432, { margin: { value: 2, unit: 'mm' }, floor: 0.9 });
    expect(made?.scale).toBeCloseTo((288 - (4 / 25.4) * 72) / 288, 6);
    expect(made?.margin).toBeCloseTo(5.669, 3);
  });

  it('holds every label when the margin leaves no room', async () => {
    const made = await run(288, 432, { margin: { value: 2, unit: 'in' } });
    expect(endOf(made)).toBe('held scale/too-large');
    expect(made?.state).toMatchObject({ message: 'a margin of 50.8 mm leaves no room on 4.00×6.00 in' });
  });

  it('makes a pixel of a 203 dpi picture one dot', async () => {
    const { document, sheets } = await opened('letter-upper-sideways', 'bilevel');
    const made = await through(['split-pages', 'locate-label', 'rotate', 'scale'], sheets, onMedia(document));
    const picture = document.page(1).pictureUnder(made[0]?.box ?? { x: 0, y: 0, width: 0, height: 0 });
    expect(((made[0]?.scale ?? 0) * 203) / 72 / (picture?.pixelsPerPt ?? NaN)).toBeCloseTo(1, 6);
    document.close();
  });
});
