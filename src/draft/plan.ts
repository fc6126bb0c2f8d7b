/** One step of a drafted recipe as it stands in its list, with the comment above it. */
export interface Part {
  /** `locate-label: { place: upper-half, by: frame }` */
  readonly text: string;
  /** Sentences, each for people. */
  readonly notes: readonly string[];
}

/** A recipe being drafted: one entry for each step, in the order of the file. */
export interface Plan {
  readonly split: Part;
  readonly locate: Part;
  readonly rotate: Part;
  readonly scale: Part;
  readonly slip: Part | undefined;
  readonly customs: Part | undefined;
  readonly verify: Part;
}

/** What stands around the steps. `head`: the lines of the comment above all, without `#`. */
export interface Frame {
  readonly head: readonly string[];
  readonly about: string;
}

export const part = (text: string, ...notes: readonly string[]): Part => ({ text, notes });

/** A step with the options that have a value, in YAML's short form. */
export function stepPart(name: string, options: Readonly<Record<string, string | undefined>>, ...notes: readonly string[]): Part {
  const given = Object.entries(options).flatMap(([key, value]) => (value === undefined ? [] : [`${key}: ${value}`]));
  return part(given.length === 0 ? name : `${name}: { ${given.join(', ')} }`, ...notes);
}

/** Words that YAML takes for something else than text. */
const NOT_TEXT = /^(?:true|false|null|yes|no|on|off|y|n)$/i;

/** A text as YAML: plain where that is safe, else in single quotes. */
export const yamlText = (text: string): string =>
  /^\p{L}[\p{L}\p{N} -]*$/u.test(text) && !text.endsWith(' ') && !NOT_TEXT.test(text) ? text : `'${text.replaceAll("'", "''")}'`;

/** A list of texts as YAML; undefined for none. */
export const yamlList = (texts: readonly string[]): string | undefined =>
  texts.length === 0 ? undefined : `[${texts.map(yamlText).join(', ')}]`;

/** Columns of a comment. */
const WIDE = 112;

/** A text over lines of a comment, the first after `lead`, the others after `next`. */
export function wrapped(text: string, lead: string, next: string): string[] {
  const lines: string[] = [];
  let line = lead;
  for (const word of text.split(' ')) {
    if (line !== lead && line !== next && line.length + 1 + word.length > WIDE) {
      lines.push(line);
      line = next;
    }
    line += line === lead || line === next ? word : ` ${word}`;
  }
  return [...lines, line];
}

/** The recipe file, as `recipes/` has them. */
export function recipeText(plan: Plan, { head, about }: Frame): string {
  const steps = [plan.split, plan.locate, plan.rotate, plan.scale, plan.slip, plan.customs, plan.verify, part('number')];
  return [
    '# yaml-language-server: $schema=./recipe.schema.json',
    ...head.flatMap((line) => (line === '' ? ['#'] : wrapped(line, '# ', line.startsWith('- ') ? '#   ' : '# '))),
    `about: ${about}`,
    'steps:',
    ...steps.flatMap((step) =>
      step ? [...(step.notes.length > 0 ? wrapped(step.notes.join(' '), '  # ', '  # ') : []), `  - ${step.text}`] : [],
    ),
    '',
  ].join('\n');
}
