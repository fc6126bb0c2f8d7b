import type { Box } from '../geometry/box.js';
import type { Code, SourcePage, Word } from '../reading/source.js';
import type { Phrase } from '../reading/word-lines.js';
import type { Judged } from './candidate.js';
import type { Said } from './kind-of-words.js';

/** Reads the codes in a box of the page. */
export type ReadCodes = (box: Box) => Promise<readonly Code[]>;

/** What is known of a page before it is settled what is on it. */
export interface PageFacts {
  readonly page: SourcePage;
  readonly blobs: readonly Box[];
  readonly phrases: readonly Phrase[];
  readonly readCodes: ReadCodes;
  /** Parts of the page whose words were read out of its picture. */
  readonly pictures?: readonly Box[];
}

/** What was read out of the picture of a page. */
export interface ReadPictures {
  /** Where it was read, pt. */
  readonly boxes: readonly Box[];
  readonly words: readonly Word[];
}

/** A candidate with what its own words say that it is. */
export interface SaidCandidate extends Judged {
  readonly said: Said;
  /** Whether a customs declaration is a part of it: then a table of items and its title say nothing about the whole. */
  readonly declares?: boolean;
}
