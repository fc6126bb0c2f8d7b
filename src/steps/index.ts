import { crop } from './crop.js';
import { customsForm } from './customs-form.js';
import { impose } from './impose.js';
import { locateLabel } from './locate-label.js';
import { number } from './number.js';
import { packingSlip } from './packing-slip.js';
import { rotate } from './rotate.js';
import { scale } from './scale.js';
import { splitPages } from './split-pages.js';
import type { Step } from './step.js';
import { verify } from './verify.js';

/** All steps, in the order in which a recipe usually has them. */
export const STEPS: readonly Step[] = [splitPages, locateLabel, crop, rotate, scale, packingSlip, customsForm, verify, number, impose];
