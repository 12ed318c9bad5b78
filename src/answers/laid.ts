/** A part of an answer before it is set: in columns for a terminal, in a table for the page. */
export type Laid = {
  readonly heading: string;
  /** Beneath it, before the rows: a formula. */
  readonly about?: string;
  /** Heads of the columns, where they have any. */
  readonly columns?: readonly string[];
  readonly rows: readonly LaidRow[];
  /** Beneath the rows: a result, notes. */
  readonly after?: readonly string[];
};

/** `same`: nothing changes in it. */
export type LaidRow = { readonly cells: readonly string[]; readonly same?: true };
