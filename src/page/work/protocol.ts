import type { Format } from "../../output/formats.js";

/** A file that a machine's file, or the reader, names. */
export type Named = { readonly name: string; readonly text: string };

/** All that one works with: a machine's file, and what goes with it. */
export type Files = {
  readonly machine: Named;
  readonly jobs: readonly Named[];
  /** CSV files with readings, named as the machine's file names them. */
  readonly readings: readonly Named[];
  /** Sheet templates of the reader's own. */
  readonly sheets: readonly Named[];
};

/** What is wrong, or to be minded, in one of the files. */
export type Told = {
  readonly file: string;
  readonly severity: "error" | "warning";
  readonly line: number;
  readonly column: number;
  readonly what: string;
  readonly remedy: string;
};

/** A sheet, and whether the files hold what it needs. */
export type SheetState = {
  /** Only made when it is asked for by name. */
  readonly onRequest: boolean;
  readonly name: string;
  readonly title: string;
  /** What is lacking to make it; absent where it can be made. */
  readonly why?: string;
};

/** A format that needs nothing but a browser. */
export type PageFormat = Exclude<Format, "png">;

export type DrawnPage = { readonly svg: string; readonly width: number; readonly height: number };
export type Made = { readonly name: string; readonly bytes: Uint8Array | string };

/** What the page asks of its worker, and what it gets. Lengths in mm. */
export type Work = {
  /** What stands in the files. */
  readonly read: {
    readonly asked: Record<never, never>;
    readonly answer: { readonly told: readonly Told[]; readonly sound: boolean; readonly handwheels: readonly string[] };
  };
  /** Every sheet, with what it lacks. */
  readonly sheets: { readonly asked: Record<never, never>; readonly answer: readonly SheetState[] };
  /** A sheet as it will come out, page by page, or why it cannot. */
  readonly sheet: {
    readonly asked: { readonly sheet: string };
    readonly answer: { readonly pages: readonly DrawnPage[]; readonly why?: string };
  };
  /** The files of a print, as the command line makes them. No sheets named: all that one gets without asking. */
  readonly print: {
    readonly asked: { readonly sheets?: readonly string[]; readonly bound?: boolean; readonly format: PageFormat };
    readonly answer: { readonly files: readonly Made[]; readonly why: readonly string[] };
  };
};

export type WorkName = keyof Work;
export type Asked<N extends WorkName> = Work[N]["asked"];
export type AnswerTo<N extends WorkName> = Work[N]["answer"];

/** One message to the worker, and the one that comes back. */
export type Ask = { readonly id: number; readonly name: WorkName; readonly files: Files; readonly asked: Asked<WorkName> };
export type Reply = { readonly id: number } & ({ readonly answer: AnswerTo<WorkName> } | { readonly fault: string });
