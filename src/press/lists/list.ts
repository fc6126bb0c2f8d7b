/** How a text is set: `big` and `strong` are for what the eye looks for first. */
export type ListStyle = 'plain' | 'strong' | 'big' | 'small';

/** A text of a cell, on lines of its own; or a square to tick off by hand. */
export type ListText = { readonly text: string; readonly style: ListStyle } | { readonly tick: true };

export interface ListColumn {
  readonly head: string;
  readonly align: 'left' | 'right';
  /**
   * A number: as wide as its widest text, but no more than this share (0 to 1) of the table. `rest`: it shares what the others leave; at least one
   * column does.
   */
  readonly width: number | 'rest';
}

export interface ListRow {
  /** What the row is called where it goes on on another page. */
  readonly name: string;
  /** One for each column; a cell's texts stand one below the other. */
  readonly cells: readonly (readonly ListText[])[];
}

export interface ListSection {
  /** Empty: none. Told again where the section goes on on another page. */
  readonly heading: string;
  /** Whether it begins on a page of its own. */
  readonly ownPage: boolean;
  readonly rows: readonly ListRow[];
  /** A line below the table: what is summed up, and the sum. */
  readonly closing: { readonly of: string; readonly sum: string } | undefined;
  /** Lines to write on by hand, each with what belongs there; they are never torn apart. */
  readonly sign: readonly string[];
}

/** A table for the bench, as plain data: what is printed is here, nothing is looked up and no clock is read. */
export interface List {
  readonly title: string;
  /** Beside the title on each page, as it is to be read: the day, the run. */
  readonly date: string;
  /** Sentences below the first page's title. */
  readonly intro: readonly string[];
  readonly columns: readonly ListColumn[];
  readonly sections: readonly ListSection[];
  /** A sentence at the foot of each page; empty: none. */
  readonly caution: string;
}
