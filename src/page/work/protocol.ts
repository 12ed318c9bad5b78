import type { Format } from "../../output/formats.js";
import type { Affine } from "../../paper/printerCorrection.js";

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

export type SheetNamed = {
  /** Only made when it is asked for by name. */
  readonly onRequest: boolean;
  readonly name: string;
  readonly title: string;
};

/** A sheet, and what is lacking to make it; absent where it can be made. */
export type SheetState = SheetNamed & { readonly why?: string };

/** A format that needs nothing but a browser. */
export type PageFormat = Exclude<Format, "png">;

/** Size in mm. `correction`: what a printer's correction does to the page on paper. */
export type DrawnPage = {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
  readonly correction: Affine;
};
export type Made = { readonly name: string; readonly bytes: Uint8Array | string };

/** What the page asks of its worker, and what it gets. Lengths in mm. */
export type Work = {
  /** What stands in the files. */
  readonly read: {
    readonly asked: Record<never, never>;
    readonly answer: {
      readonly told: readonly Told[];
      readonly sound: boolean;
      readonly handwheels: readonly string[];
    };
  };
  /** Every sheet that there is. */
  readonly sheets: { readonly asked: Record<never, never>; readonly answer: readonly SheetNamed[] };
  /** What a sheet lacks; nothing where it can be made. */
  readonly lacks: { readonly asked: { readonly sheet: string }; readonly answer: { readonly why?: string } };
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
  readonly readings: { readonly asked: ReadingsAsked; readonly answer: ReadingsSoFar };
  /** The dial of a wheel; absent where it has none. */
  readonly dial: { readonly asked: { readonly wheel: string }; readonly answer: { readonly dial?: DialSeen } };
  readonly standing: {
    readonly asked: { readonly wheel: string; readonly turns: number };
    readonly answer: WheelStanding | undefined;
  };
  /** How to move by a distance, in the file's unit unless it says its own. */
  readonly distance: {
    readonly asked: { readonly wheel: string; readonly distance: string };
    readonly answer: Answered & { readonly turns?: number };
  };
  /** What can be asked about speeds. */
  readonly choices: {
    readonly asked: Record<never, never>;
    readonly answer: { readonly materials: readonly string[]; readonly operations: readonly string[] };
  };
  readonly speed: {
    readonly asked: { readonly material: string; readonly operation: string; readonly diameter: string };
    readonly answer: Answered;
  };
};

/** Readings as they stand in the grid, in the file's unit; `gauge`: its smallest graduation. */
export type ReadingsAsked = {
  readonly units: "mm" | "in";
  readonly gauge: string;
  readonly rows: readonly { readonly turns: string; readonly travel: string; readonly back: string }[];
};

/** What they say so far: by how much each place is off the line, mm, and whether it does not belong to the others; then in words. */
export type ReadingsSoFar = {
  readonly places: readonly {
    readonly row: number;
    readonly turn: number;
    readonly off: number;
    readonly doubted: boolean;
  }[];
  readonly words: readonly string[];
};

/** A dial to look at: its marks at angles (radians) that grow with the reading. */
export type DialSeen = {
  readonly rows: readonly (readonly { readonly angle: number; readonly rank: 1 | 2 | 3; readonly label?: string }[])[];
  readonly increases: "clockwise" | "anticlockwise";
  readonly unit: string;
};

/** Where a wheel stands, so many turns from zero. */
export type WheelStanding = { readonly figure?: string; readonly row?: number; readonly travel: string };

/** An answer in words, and how it came about. */
export type Answered = { readonly said: readonly string[]; readonly working: readonly string[] };

export type WorkName = keyof Work;
export type Asked<N extends WorkName> = Work[N]["asked"];
export type AnswerTo<N extends WorkName> = Work[N]["answer"];

/** One message to the worker, about the files that it was handed last, and the one that comes back. */
export type Ask = {
  readonly id: number;
  readonly name: WorkName;
  readonly asked: Asked<WorkName>;
};
export type Reply = { readonly id: number } & ({ readonly answer: AnswerTo<WorkName> } | { readonly fault: string });
