import { byUnit, compareKeys, naturalKey } from '../text/natural.js';
import type { WorkItem } from './work.js';

/** A name without its ending: `label.pdf` comes before its second download `label (1).pdf`. */
const stem = (name: string): string => name.replace(/\.[^./\\]{1,5}$/, '');

/** File names as a person counts them: `label 2` before `label 10`. The same on every machine; 0 only for equal names. */
export const compareNames = (a: string, b: string): number =>
  compareKeys(naturalKey(stem(a)), naturalKey(stem(b))) || compareKeys(naturalKey(a), naturalKey(b)) || byUnit(a, b);

/** The fixed order of a run: channel as listed, file name in natural order, content hash; then whatever still differs. */
export const compareWork = (a: WorkItem, b: WorkItem): number =>
  a.channel - b.channel ||
  compareNames(a.shownName, b.shownName) ||
  byUnit(a.sha256, b.sha256) ||
  byUnit(a.path, b.path) ||
  byUnit(a.entry ?? '', b.entry ?? '');
