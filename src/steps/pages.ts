/**
 * Page patterns of recipes: `every`, `none`, `odd`, `even`, `first`, `last`, `2`, `2-`, `1,3,5-7`; pages count from 1.
 */
const PART = /^(\d+)(-(\d+)?)?$/;

/** Whether `text` is a page pattern. */
export function isPagesPattern(text: string): boolean {
  if (['every', 'none', 'odd', 'even', 'first', 'last'].includes(text)) return true;
  return text.split(',').every((part) => {
    const match = PART.exec(part.trim());
    if (!match) return false;
    const from = Number(match[1]);
    return from >= 1 && (match[3] === undefined || Number(match[3]) >= from);
  });
}

/** Whether page `page` (from 1) of `count` is meant by `pattern`, a text for which `isPagesPattern` holds. */
export function pagesMatch(pattern: string, page: number, count: number): boolean {
  switch (pattern) {
    case 'every':
      return true;
    case 'none':
      return false;
    case 'odd':
      return page % 2 === 1;
    case 'even':
      return page % 2 === 0;
    case 'first':
      return page === 1;
    case 'last':
      return page === count;
  }
  return pattern.split(',').some((part) => {
    const match = PART.exec(part.trim());
    if (!match) return false;
    const from = Number(match[1]);
    if (match[2] === undefined) return page === from;
    return page >= from && (match[3] === undefined || page <= Number(match[3]));
  });
}
