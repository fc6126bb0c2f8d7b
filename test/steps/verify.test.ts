import { describe, expect, it } from 'vitest';
import { held, pageSheet } from '../../src/sheet/sheet.js';
import { verify } from '../../src/steps/verify.js';
import { blankPages, labelOf, onMedia, optionsOf } from './on-sample.js';

describe('verify', () => {
  it('plans the proof of all that is to be drawn, and of nothing else', async () => {
    const reason = { code: 'scale/too-large', message: 'm', remedy: 'r' } as const;
    const sheets = [labelOf(288, 432), held(pageSheet(2, 612, 792), reason)];
    const made = await verify.apply(sheets, optionsOf(verify), onMedia(blankPages(612, 792, 2)));
    expect(made.map((sheet) => sheet.proof)).toEqual([
      { codes: 'required', allow: [], gain: expect.closeTo(0.5, 9) as number, secondOpinion: 'at-risk' },
      undefined,
    ]);
    const none = await verify.apply(sheets, optionsOf(verify, { codes: 'none' }), onMedia(blankPages(612, 792, 2)));
    expect(none[0]?.proof).toMatchObject({ codes: 'none' });
    const wide = await verify.apply(
      sheets,
      optionsOf(verify, { gain: { value: 0.25, unit: 'mm' }, allow: ['quiet-zone'] }),
      onMedia(blankPages(612, 792, 2)),
    );
    expect(wide[0]?.proof).toMatchObject({ allow: ['quiet-zone'], gain: expect.closeTo((0.25 / 25.4) * 203, 6) as number });
  });
});
