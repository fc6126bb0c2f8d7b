/** A code of a label, as matching needs it. */
export interface LabelCode {
  /** The characters that it holds. */
  readonly text: string;
  /** The tracking number in it, when it is of that kind; undefined for routing, product and order codes. */
  readonly tracking: string | undefined;
}

/** What a page of the channel's own packing slip says that is printed behind a label. */
export interface SlipFacts {
  readonly codes: readonly LabelCode[];
  /** Lines of type, in reading order; none when it is a picture. */
  readonly lines: readonly string[];
  /** How messages call it: its page. */
  readonly shown: string;
}

/** What is known of one proved label of the run. Personal data: in memory only, never written. */
export interface LabelFacts {
  /** Unique in the run. */
  readonly id: string;
  /** Index of the channel in the pipeline, from 0. */
  readonly channel: number;
  /** Name of its file without folders; of a file in a ZIP, its own. */
  readonly fileName: string;
  readonly codes: readonly LabelCode[];
  /** Lines of type on the label, in reading order; none when it is a picture. */
  readonly lines: readonly string[];
  /** How messages call it: file, page, never anything that it says. */
  readonly shown: string;
  /** Whether it is a return label, which goes in the parcel of its order and is no parcel of its own. */
  readonly isReturn: boolean;
  /**
   * Of a return label: id of the outbound label that stands in the same parcel of its document. Left out: none is known. A return label
   * often says nothing of its order, and then this is the only way to it.
   */
  readonly outbound?: string;
  /** The pages of its slip, when the channel gives one; left out: none. */
  readonly slip?: readonly SlipFacts[];
}
