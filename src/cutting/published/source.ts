import { say, translated } from "../../words/say.js";

/** What one source has published. */
export type Source = {
  /** Stands for it in the data and in `explain`. */
  readonly key: string;
  /** The words for it on paper. */
  readonly title: string;
  readonly speeds?: readonly Figures[];
  readonly feeds?: readonly Omit<PublishedFeed, "source">[];
};

/** One published figure, in the unit its source printed. */
export type PublishedSpeed = {
  readonly material: string;
  readonly tool: string;
  readonly operation: string;
  readonly from: number;
  readonly to: number;
  /** `rpm`: the source gives a spindle speed, whatever the diameter. */
  readonly unit: "m/min" | "ft/min" | "rpm";
  /** Key of its source. */
  readonly source: string;
  /** Place in the source. */
  readonly where: string;
  /** `read`: the figure was seen there; `memory`: believed, not seen. Memory counts only where nothing was read. */
  readonly confidence: "read" | "memory";
  readonly note?: string;
  /** What the source prints it for, where that is another material or operation than the row's. */
  readonly figureFor?: string;
  /** The source tells roughing from finishing, and the row is for the one that its operation names. */
  readonly namesCut?: true;
  /** The source does not say of what the tool is: the row's tool is supposed. */
  readonly toolUnnamed?: true;
  /** For work up to this diameter, mm. */
  readonly upTo?: number;
};

/** Published feed per revolution. */
export type PublishedFeed = {
  /** Absent: any material. */
  readonly material?: string;
  /** `least`: whatever is turned, no finer, since fine chips burn. */
  readonly operation: "roughing" | "finishing" | "drilling" | "parting" | "knurling" | "least";
  readonly from: number;
  readonly to: number;
  readonly unit: "mm" | "in";
  /** Drill diameters the row is for, mm: above `over`, up to and with `upTo`. */
  readonly over?: number;
  readonly upTo?: number;
  readonly source: string;
  readonly where: string;
  readonly confidence: "read" | "memory";
};

type Figures = Omit<PublishedSpeed, "source">;
type Remarks = Pick<Figures, "note" | "figureFor">;
type Common = Omit<Figures, "material" | "from" | "to" | keyof Remarks>;
type Figure = readonly [material: string, from: number, to: number, remarks?: string | Remarks];

/** Rows that share all but material and figures; a bare remark is a note. */
export const rows = (common: Common, figures: readonly Figure[]): Figures[] =>
  figures.map(([material, from, to, remarks]) => ({
    ...common,
    ...{ material, from, to },
    ...(typeof remarks === "string" ? { note: remarks } : remarks),
  }));

/** What a row's figure leaves open, in words; empty where it is the source's own for just this. */
export const figureWords = ({ figureFor, note }: Pick<PublishedSpeed, "figureFor" | "note">): string =>
  [
    figureFor === undefined ? [] : say("materials and hazards.figure for", { what: translated(figureFor) }),
    note === undefined ? [] : translated(note),
  ]
    .flat()
    .join(": ");

export const highSpeedSteel = "high-speed steel";
export const carbonSteel = "carbon steel";
export const carbide = "carbide";
export const tools: readonly string[] = [highSpeedSteel, carbonSteel, carbide];
