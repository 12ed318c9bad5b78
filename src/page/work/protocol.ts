import type { Format } from "../../output/formats.js";

/** A file that a machine's file, or the reader, names. */
export type Named = { readonly name: string; readonly text: string };

/** All that one works with: a machine's file, and what goes with it. */
export type Files = {
  readonly machine: string;
  readonly jobs: readonly Named[];
  readonly readings: readonly Named[];
  readonly sheets: readonly Named[];
};

/** What is wrong, or to be minded, in one of the files. */
export type Told = {
  /** Its name; the machine's file has none. */
  readonly file?: string;
  readonly severity: "error" | "warning";
  readonly line: number;
  readonly column: number;
  readonly what: string;
  readonly remedy: string;
};

export type SheetName = { readonly name: string; readonly title: string; readonly onRequest: boolean };

/** What the page asks of its worker, and what it gets. */
export type Work = {
  /** What stands in the files. */
  readonly read: {
    readonly asked: Record<never, never>;
    readonly answer: { readonly told: readonly Told[]; readonly sound: boolean; readonly sheets: readonly SheetName[] };
  };
  /** A sheet as it will come out, page by page, or why it cannot. */
  readonly sheet: {
    readonly asked: { readonly sheet: string };
    readonly answer: { readonly pages: readonly DrawnPage[]; readonly why?: string };
  };
  /** The files of a print, as the command line makes them. */
  readonly print: {
    readonly asked: { readonly sheets: readonly string[] | "all"; readonly format: Exclude<Format, "png">; readonly stem: string };
    readonly answer: { readonly files: readonly Made[]; readonly why: readonly string[] };
  };
};

export type DrawnPage = { readonly title: string; readonly svg: string; readonly width: number; readonly height: number };
export type Made = { readonly name: string; readonly bytes: Uint8Array | string };
export type WorkName = keyof Work;
export type Ask<N extends WorkName = WorkName> = { readonly id: number; readonly name: N; readonly files: Files } & {
  readonly asked: Work[N]["asked"];
};
export type Answer<N extends WorkName = WorkName> = { readonly id: number } & (
  | { readonly answer: Work[N]["answer"] }
  | { readonly fault: string }
);
