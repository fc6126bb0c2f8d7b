/** The keys that each kind of file, and each entry of `channels`, may have. */
export const PIPELINE_KEYS = ['media', 'grid', 'output', 'print-width', 'margins', 'offset', 'out', 'jobs', 'channels'] as const;
export const CHANNEL_KEYS = ['name', 'files', 'recipe', 'options'] as const;
export const RECIPE_KEYS = ['about', 'steps'] as const;

/** Whether `word` is one of `keys`. */
export const isKey = (keys: readonly string[], word: string): boolean => keys.includes(word);
