import { lengthToPt } from '../geometry/length.js';
import { option } from './option.js';
import { runStep } from './step.js';

/** Plans the numbers; only proved parcels get one, so numbers never shift. */
export const number = runStep({
  name: 'number',
  summary: 'Number the parcels of the stack ("7/41") so that box, label and slip are matched at a glance.',
  options: {
    'on-label-page': option({ kind: 'boolean' }, "Number the label's page too, where there is free paper outside the label itself.", true),
    size: option({ kind: 'length', min: { value: 4, unit: 'pt' } }, 'Height of the type.', { value: 9, unit: 'pt' }),
  },
  short: undefined,
  notBefore: { verify: 'only proved pages are numbered' },
  plan(plan, options, grid) {
    return { ...plan, number: { onLabelPage: options['on-label-page'], fontSize: lengthToPt(options.size, grid) } };
  },
});
