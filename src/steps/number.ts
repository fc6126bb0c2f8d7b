import { lengthToPt } from '../geometry/length.js';
import { option } from './option.js';
import { runStep } from './step.js';

/** Plans the numbers; only proved parcels get one, so numbers never shift. */
export const number = runStep({
  name: 'number',
  summary:
    'Number the parcels of the stack ("7/41", on slips with the end of the tracking number) so that box, label and slip are matched at a glance.',
  options: {
    'on-label-page': option({ kind: 'boolean' }, "Number the label's page too, where there is free paper outside the label itself.", true),
    'on-label': option(
      { kind: 'boolean' },
      'Where there is none, set the number on the label itself, on paper clear of its codes and writing: carriers may refuse labels with additions.',
      false,
    ),
    size: option({ kind: 'length', min: { value: 4, unit: 'pt' } }, 'Height of the type.', { value: 9, unit: 'pt' }),
  },
  short: undefined,
  notBefore: { verify: 'only proved pages are numbered' },
  together(options) {
    if (!options['on-label'] || options['on-label-page']) return undefined;
    return {
      message: '`on-label` sets the number on the label, but `on-label-page: false` wants none on its page',
      remedy: 'Leave `on-label-page` out, or take `on-label` out.',
    };
  },
  plan(plan, options, grid) {
    return {
      ...plan,
      number: {
        onLabelPage: options['on-label-page'],
        onLabel: options['on-label'] || undefined,
        fontSize: lengthToPt(options.size, grid),
      },
    };
  },
});
