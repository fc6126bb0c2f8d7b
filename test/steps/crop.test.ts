import { describe, expect, it } from 'vitest';
import { crop } from '../../src/steps/crop.js';
import { blankPages, endOf, labelOf, onMedia, optionsOf } from './on-sample.js';

const run = (value: number, sheet = labelOf(288, 432)) =>
  crop.apply([sheet], optionsOf(crop, { inset: { value, unit: 'pt' } }), onMedia(blankPages(612, 792)));

describe('crop', () => {
  it('takes an even border off the label', async () => {
    expect((await run(9))[0]?.box).toEqual({ x: 19, y: 29, width: 270, height: 414 });
  });

  it('leaves paper around it, but never beyond the page', async () => {
    expect((await run(-15))[0]?.box).toEqual({ x: 0, y: 5, width: 313, height: 462 });
  });

  it('holds a label of which nothing would be left', async () => {
    expect((await run(140)).map(endOf)).toEqual(['held crop/nothing-left']);
  });

  it('leaves slips alone', async () => {
    const slip = labelOf(288, 432, { role: 'slip' });
    expect(await run(9, slip)).toEqual([slip]);
  });
});
