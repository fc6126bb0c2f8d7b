import { codeUses } from '../proof/code-role.js';
import type { ProvedCode } from '../proof/judge-codes.js';
import type { LabelText } from '../recipe/outcome.js';
import { intersection } from '../geometry/box.js';
import type { SourcePage } from '../reading/source.js';
import { wordLines } from '../reading/word-lines.js';
import type { Sheet } from '../sheet/sheet.js';

/** What a label says: its codes, and the lines of type inside its box, each direction of writing apart. */
export function labelText(sheet: Sheet, page: SourcePage, proved: readonly ProvedCode[]): LabelText {
  const uses = codeUses(proved.map(({ code }) => code));
  const codes = proved.map(({ code }, index) => {
    const use = uses[index];
    const tracking = use?.role === 'tracking' ? use.number : undefined;
    return { text: Buffer.from(code.bytes, 'hex').toString('utf8'), tracking };
  });
  const inside = page.words().filter((word) => intersection(word.box, sheet.box) !== undefined);
  return { itemId: sheet.id, codes, lines: wordLines(inside).map(({ words }) => words.map(({ text }) => text).join(' ')) };
}
