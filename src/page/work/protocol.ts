import type { Explainable } from "../../answers/explained.js";
import type { Laid } from "../../answers/laid.js";
import type { Measured, Mend } from "../../answers/verified.js";
import type { Use } from "../../findings/uses.js";
import type { Format } from "../../output/formats.js";
import type { Affine } from "../../paper/printerCorrection.js";
import type { Turned } from "../../student/marking.js";
import type { LanguageCode } from "../../words/languages.generated.js";
import type { Way } from "../file/edit.js";
import type { Schema } from "../schema.js";

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
  /** The part of the file that it is about, also where that is not there yet. */
  readonly way?: Way;
  readonly what: string;
  readonly remedy: string;
  /** What is not made while it stands: nothing where it is left out. */
  readonly stops?: "every sheet" | "what needs it" | "its own";
};

export type SheetNamed = {
  /** Only made when it is asked for by name. */
  readonly onRequest: boolean;
  /** From a template of the reader's own. */
  readonly own: boolean;
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
      /** The unit in which each of them is read. */
      readonly readIn: readonly ("mm" | "in")[];
    };
  };
  /** Every sheet that there is. */
  readonly sheets: { readonly asked: Record<never, never>; readonly answer: readonly SheetNamed[] };
  /** What a sheet lacks; nothing where it can be made. */
  readonly lacks: { readonly asked: { readonly sheet: string }; readonly answer: { readonly why?: string } };
  /** A sheet as it will come out, page by page, or why it cannot. */
  readonly sheet: {
    /** `job`: the file of the one that a plan is drawn of; of all when left out. */
    readonly asked: { readonly sheet: string; readonly job?: string };
    readonly answer: {
      readonly pages: readonly DrawnPage[];
      readonly why?: string;
      /** Files of the jobs on it that are refused, where there are any. */
      readonly refused?: readonly string[];
    };
  };
  /** The files of a print, as the command line makes them. No sheets named: all that one gets without asking. */
  readonly print: {
    readonly asked: {
      readonly sheets?: readonly string[];
      readonly bound?: boolean;
      readonly format: PageFormat;
      /** Only of these; of all when left out. */
      readonly handwheels?: readonly string[];
      /** Of the paper, before what the machine's file says. */
      readonly language?: LanguageCode;
      /** What becomes of jobs that are refused; while that is not said, and there is one, nothing is made. */
      readonly refusedJobs?: "made" | "left out";
    };
    readonly answer: {
      readonly files: readonly Made[];
      readonly why: readonly string[];
      /** Files of the jobs for which that must be said first, and whether anything is left without them. */
      readonly toSay?: { readonly refused: readonly string[]; readonly others: boolean };
    };
  };
  readonly readings: { readonly asked: ReadingsAsked; readonly answer: ReadingsSoFar };
  /** The dial of a wheel; where it has none, why. */
  readonly dial: {
    readonly asked: { readonly wheel: string };
    readonly answer: { readonly dial?: DialSeen; readonly why?: string };
  };
  readonly standing: {
    readonly asked: { readonly wheel: string; readonly turned: Turned };
    readonly answer: WheelStanding | undefined;
  };
  /** The exercises of the student's sheets. */
  readonly exercises: { readonly asked: Record<never, never>; readonly answer: readonly ExerciseSeen[] };
  readonly mark: { readonly asked: { readonly at: number; readonly given: Given }; readonly answer: Marked };
  readonly solve: { readonly asked: { readonly at: number }; readonly answer: string };
  /** How to move by a distance, in the unit of the wheel's dial unless it says its own. */
  readonly distance: {
    readonly asked: { readonly wheel: string; readonly distance: string };
    readonly answer: Answered & { readonly turns?: number };
  };
  /** What can be asked about speeds. */
  readonly choices: {
    readonly asked: Record<never, never>;
    readonly answer: {
      readonly materials: readonly string[];
      readonly operations: readonly string[];
      /** Those whose diameter may be a drill's name. */
      readonly holes: readonly string[];
    };
  };
  /** Every quantity whose working can be shown, and what of this file has it. */
  readonly explainable: { readonly asked: Record<never, never>; readonly answer: readonly Explainable[] };
  /** How a number came about. `of`: of one thing alone; of all that have the quantity when left out. */
  readonly explain: {
    readonly asked: { readonly quantity: string; readonly of?: string };
    readonly answer: AnsweredParts;
  };
  /** Of each wheel that has a dial, what a caliper can be laid on. */
  readonly measures: { readonly asked: Record<never, never>; readonly answer: readonly WheelMeasures[] };
  /** Whether a printed dial is good enough. */
  readonly verify: { readonly asked: Measured; readonly answer: Judged };
  /** A CSV's readings, in words of the machine's file; `there`: it lies on the desk. */
  readonly table: {
    readonly asked: { readonly name: string; readonly units: "mm" | "in" };
    readonly answer: {
      readonly there: boolean;
      readonly rows: readonly { readonly turns: string; readonly travel: string; readonly return?: string }[];
    };
  };
  /** What a sheet's template may say: as the command lists it, and for the editor. */
  readonly blocks: {
    readonly asked: Record<never, never>;
    readonly answer: { readonly lines: readonly string[]; readonly schema: Schema };
  };
  /** Changes of this drive, in the words in which one asks for them. */
  readonly wishes: { readonly asked: Record<never, never>; readonly answer: readonly string[] };
  /** Speeds, belts and choices as the drive is and as it would be. */
  readonly suppose: { readonly asked: { readonly wishes: readonly string[] }; readonly answer: AnsweredParts };
  readonly speed: {
    readonly asked: { readonly material: string; readonly operation: string; readonly diameter: string };
    readonly answer: Answered;
  };
};

/** Readings as they stand in the grid, in the file's unit, and what is known beside them; `gauge`: its smallest graduation. */
export type ReadingsAsked = {
  readonly units: "mm" | "in";
  readonly gauge: string;
  readonly gaugeError: string;
  readonly temperature: string;
  readonly rows: readonly { readonly turns: string; readonly travel: string; readonly back: string }[];
};

/** What they say so far: by how much each place is off the line, mm, and whether it does not belong to the others; then in words, as is
 *  the most that one is off. */
export type ReadingsSoFar = {
  readonly places: readonly {
    readonly row: number;
    readonly turn: number;
    readonly off: number;
    readonly doubted: boolean;
    /** By how much the reading on the way back is off the line of its own, where it does not belong to the others. */
    readonly back?: number;
  }[];
  readonly most: string;
  readonly words: readonly string[];
};

/** A dial to look at: its marks at angles (radians) that grow with the reading. In turns: one division; after how many the marks begin
 *  again; lost motion, `supposed` where nobody measured any. */
export type DialSeen = {
  readonly division: number;
  readonly round: number;
  readonly lost: { readonly turns: number; readonly supposed: boolean };
  readonly rows: readonly (readonly { readonly angle: number; readonly rank: 1 | 2 | 3; readonly label?: string }[])[];
  readonly increases: "clockwise" | "anticlockwise";
  readonly unit: string;
  /** Turns over the whole travel, where that is known. */
  readonly end?: number;
};

/** Where a wheel stands, so many turns from zero. `beyond`: that its slide cannot be there. */
export type WheelStanding = {
  readonly figure?: string;
  readonly row?: number;
  readonly travel: string;
  readonly beyond?: string;
};

/** An exercise as it is put. `wheel`, `from`: the wheel that it is about, and the turns at which it stands to begin with. `stands`: what must
 *  be known beside the question. `sheet`: the one to look at. */
export type ExerciseSeen = {
  readonly question: string;
  readonly use: Use;
  readonly by: "turning" | "number" | "position" | "nothing";
  readonly wheel?: string;
  readonly from?: number;
  readonly stands?: string;
  readonly sheet?: string;
  readonly unit?: string;
  readonly positions?: readonly string[];
};
/** What a student answers. */
export type Given = { readonly words: string } | { readonly turned: Turned };
/** `right` is absent where the answer could not be read. */
export type Marked = { readonly right?: boolean; readonly said: string };

/** An answer in words, and how it came about. `from`: numbers in it that can show their own working. */
export type Answered = {
  readonly said: readonly string[];
  readonly working: readonly string[];
  readonly from?: readonly { readonly quantity: string; readonly of: string }[];
};

/** Lines as the command prints them, and what would mend it; or, where the question has no answer as it is put, what is wrong and what
 *  would be right. */
export type Judged = { readonly lines: readonly string[]; readonly mend?: Mend; readonly refused?: string };

/** An answer in parts, to be set as tables, or why there is none. */
export type AnsweredParts = { readonly parts: readonly Laid[]; readonly refused?: string };

/** What a caliper can be laid on of a wheel's dial. */
export type WheelMeasures = {
  readonly wheel: string;
  readonly measures: readonly { readonly by: string; readonly what: string }[];
};

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
