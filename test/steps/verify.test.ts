import { describe, expect, it } from 'vitest';
import { held, pageSheet } from '../../src/sheet/sheet.js';
import { verify } from '../../src/steps/verify.js';
import { blankPages, labelOf, onMedia, optionsOf } from './on-sample.js';

describe('verify', () => {
  it('plans the proof of all that is to be drawn, and of nothing else', async () => {
    const reason = { code: 'scale/too-large', message: 'm', remedy: 'r' } as const;
    const sheets = [labelOf(288, 432), held(pageSheet(2, 612, 792), reason)];
    const made = await verify.apply(sheets, optionsOf(verify), onMedia(blankPages(612, 792, 2)));
    expect(made.map((sheet) => sheet.proof)).toEqual([{ codes: 'required' }, undefined]);
    const none = await verify.apply(sheets, optionsOf(verify, { codes: 'none' }), onMedia(blankPages(612, 792, 2)));
    expect(none[0]?.proof).toEqual({ codes: 'none' });
  });
});
