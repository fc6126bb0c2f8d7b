import { mmToPt } from '../geometry/length.js';

/** Lines of type of one block stand no farther apart, pt (3 mm): what is so near to ink that fills a size is of it, too. */
export const NEXT_LINE = mmToPt(3);
/** Wider white between a label's own parts is rare, pt (15 mm; common practice, no source). */
export const CLEAR = mmToPt(15);
/** The white where a label ends is this many times as wide as any that may be inside. */
export const WIDER = 1.3;
/** What is of a label keeps to its width, or its height, to this much (pt). */
export const WITHIN = 4;
