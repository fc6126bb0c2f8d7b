/** The keys that each kind of file, and each entry of `channels`, may have. */
export const PIPELINE_KEYS = [
  'media',
  'grid',
  'output',
  'print-width',
  'margins',
  'offset',
  'outputs',
  'large-pages',
  'studio',
  'stack-order',
  'lists',
  'out',
  'jobs',
  'channels',
] as const;
/** The keys of each of `outputs`. */
export const OUTPUT_KEYS = ['media', 'grid', 'output', 'print-width', 'margins', 'offset'] as const;
/** The keys of `studio`. */
export const STUDIO_KEYS = ['name', 'contact'] as const;
export const CHANNEL_KEYS = ['name', 'files', 'orders', 'carrier', 'print-on', 'recipe', 'options'] as const;
export const RECIPE_KEYS = ['about', 'orders', 'steps'] as const;
/** Those that a recipe can't be without. */
export const RECIPE_NEEDS = ['about', 'steps'] as const;
/** The keys of `orders` in a recipe. */
export const ORDERS_KEYS = [
  'columns',
  'date-order',
  'encoding',
  'delimiter',
  'list',
  'states',
  'label-without-order',
  'max-age',
  'file-name',
] as const;

/** Whether `word` is one of `keys`. */
export const isKey = (keys: readonly string[], word: string): boolean => keys.includes(word);
