import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import { ontoOwnPaper } from '../../src/locating/own-paper.js';
import { inches, judged } from './judged.js';

const A6 = { width: 297.6, height: 419.5 };
const FRAME = judged({ x: 6, y: 6, width: 248, height: 407 }, 0.9);
const SENDER: Box = { x: 262, y: 200, width: 8, height: 190 };

describe('ontoOwnPaper', () => {
  it('takes what is written beside the frame on paper of a label: the page is the label', () => {
    const onto = ontoOwnPaper(FRAME, A6, [FRAME.box, SENDER], false);
    expect(onto).toMatchObject({ edge: 'page', box: { x: 0, y: 0, ...A6 } });
    expect(onto.evidence).toEqual(['more is written beside it on its page, which is as small as labels are']);
  });

  it('goes to the edges of the paper where only its ink shows a label that is all there is', () => {
    const ink = { ...FRAME, edge: 'ink' as const };
    expect(ontoOwnPaper(ink, A6, [FRAME.box], false)).toMatchObject({ edge: 'page', box: { x: 0, y: 0, ...A6 } });
    expect(ontoOwnPaper(ink, { width: 288, height: 576 }, [FRAME.box], false)).toBe(ink);
  });

  it('goes to the edges of longer paper and of A5 where the ink leaves a border there, and is no whole label by itself', () => {
    const filling = (page: { width: number; height: number }, border: number) => {
      const { width, height } = page;
      const box = { x: border, y: border, width: width - 2 * border, height: height - 2 * border };
      const ink = judged(box, 0.9, { edge: 'ink' });
      return ontoOwnPaper(ink, page, [box], false).edge;
    };
    expect(filling({ width: 288, height: 486 }, 7)).toBe('page');
    expect(filling({ width: 420, height: 595 }, 28)).toBe('page');
    expect(filling({ width: 420, height: 595 }, 50)).toBe('ink');
    // 120 × 170 mm paper around ink as large as a 4×6 label.
    expect(filling({ width: 340, height: 482 }, 30)).toBe('ink');
  });

  it.each<[string, Parameters<typeof ontoOwnPaper>]>([
    ['nothing stands beside its frame', [FRAME, A6, [FRAME.box], false]],
    ['only grains of a scan do', [FRAME, A6, [FRAME.box, { x: 262, y: 200, width: 3, height: 3 }], false]],
    ['a line to cut along parts them', [FRAME, A6, [FRAME.box, SENDER], true]],
    ['the paper is as long as one with a stub', [judged(inches(0.1, 0.1, 3.8, 5.8), 0.9), { width: 288, height: 486 }, [SENDER], false]],
    ['the paper is no size of a label', [FRAME, { width: 400, height: 430 }, [FRAME.box, SENDER], false]],
  ])('leaves a label as it is where %s', (_, [label, ...rest]) => {
    expect(ontoOwnPaper(label, ...rest)).toBe(label);
  });
});
