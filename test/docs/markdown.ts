/** A fenced block: its language and its text, without the indent of the list that it stands in. */
export interface Fence {
  readonly language: string;
  readonly text: string;
}

export function fencesOf(markdown: string): readonly Fence[] {
  return [...markdown.matchAll(/^( *)```(\w*)\n([^]*?)\n\1```$/gm)].map(([, indent = '', language = '', text = '']) => ({
    language,
    text: text
      .split('\n')
      .map((line) => (line.startsWith(indent) ? line.slice(indent.length) : line))
      .join('\n'),
  }));
}

/** The text between `<!-- name:begin -->` and `<!-- name:end -->`. */
export function betweenMarkers(markdown: string, name: string): string {
  const [, text] = new RegExp(`<!-- ${name}:begin -->\\n([^]*?)<!-- ${name}:end -->`).exec(markdown) ?? [];
  if (text === undefined) throw new Error(`no ${name} between markers`);
  return text;
}

/** The same Markdown with other text between the markers. */
export function withBetween(markdown: string, name: string, text: string): string {
  const [begin, end] = [`<!-- ${name}:begin -->\n`, `<!-- ${name}:end -->`];
  return markdown.slice(0, markdown.indexOf(begin) + begin.length) + text + markdown.slice(markdown.indexOf(end));
}
