import { describe, expect, it } from 'vitest';
import { ANY_HAN, hanOrder } from '../../../src/press/type/han.js';

describe('the regional form of Han characters', () => {
  it.each([
    ['手作りノート', 'jp'],
    ['손으로 묶은 冊', 'kr'],
    ['手工装订笔记本', 'sc'],
    ['手工裝訂筆記本，亞麻封面', 'tc'],
    ['東京都渋谷区見本町', 'jp'],
  ])('of %s is %s', (text, han) => {
    expect(hanOrder(text, ANY_HAN)[0]).toBe(han);
    expect([...hanOrder(text, ANY_HAN)].sort()).toEqual([...ANY_HAN].sort());
  });

  it('is what the slip speaks otherwise, where a text tells nothing', () => {
    expect(hanOrder('一二三', ['jp', 'sc', 'tc', 'kr'])[0]).toBe('jp');
    expect(hanOrder('Paper star', ['kr', 'sc', 'tc', 'jp'])).toEqual(['kr', 'sc', 'tc', 'jp']);
  });
});
