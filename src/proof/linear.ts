import { LINEAR } from '../reading/codes.js';
import type { Code } from '../reading/source.js';

/** Whether a code is one row of bars. */
export const isLinear = (code: Pick<Code, 'symbology'>): boolean => LINEAR.includes(code.symbology);
