/** A problem is data: where, what is wrong, what would be right. Lines and columns count from 1. */
export type Problem = {
  readonly severity: "error" | "warning";
  readonly code: string;
  /** Another file than the one read, as a CSV beside it. */
  readonly file?: string;
  readonly line: number;
  readonly column: number;
  /** What it is about, where that is a part of the file: also what is not there yet. */
  readonly path?: Path;
  readonly what: string;
  readonly remedy: string;
};

/** Path of keys and indices into the file, as in `["handwheels", 0, "feed"]`. */
export type Path = readonly (string | number)[];

/** Where the value at a path (or its nearest ancestor that exists) begins in the file. `leftOut`: the file does not have it. */
export type Places = (path: Path) => { readonly line: number; readonly column: number; readonly leftOut?: true };

/** A problem that was found without the file at hand: it still knows what it is about, not yet where that stands. */
export type Remark = Omit<Problem, "line" | "column" | "path"> & { readonly path: Path };
