/** The machine as read: plain data, SI millimetres, radians and rpm, nothing guessed. A `Part` also
 *  holds every other key of the schema, which tells what it means.
 *  What the file left out is absent here; whoever needs it says on paper that it is missing. */

import type { DrillName } from "../quantity/drill.js";
import type { LanguageCode } from "../words/languages.generated.js";
import type { Part } from "./asRead.js";
import type { PulleyMeasure, VeeSection } from "./effectiveDiameter.js";
import type { MachineFile } from "./schema.js";
import type { Written } from "./written.js";

/** Unit system of the file; a bare length in it is in this unit. */
export type Units = "mm" | "in";

/** What it is: what one does with it chooses sheets and words. */
export type Kind = "lathe" | "drill" | "lathe stood on end";

export type Machine = {
  readonly name: string;
  readonly revision?: string;
  /** Day of measurement as the file states it, ISO 8601. The program has no clock. */
  readonly measured?: string;
  /** What its paper is in; English where it does not say. */
  readonly language?: LanguageCode;
  readonly kind: Kind;
  readonly units: Units;
  /** How the file writes its sizes, where that is no plain number of its unit. */
  readonly written?: Written;
  readonly limits: Limits;
  readonly drive?: Drive;
  readonly handwheels: readonly Handwheel[];
  readonly printers: Readonly<Record<string, Printer>>;
  readonly paper: Paper;
  readonly work: Work;
  readonly stops?: readonly StopWish[];
  readonly tapers?: readonly TaperWish[];
  readonly scales?: readonly LinearScale[];
  readonly angleScales?: readonly AngleScale[];
  readonly dividing?: DividingHead;
  /** Tooth counts of gears at hand: change wheels, for indexing or to gear a dial. */
  readonly gears?: readonly number[];
};

/** A straight scale for a barrel, quill, bed or stop. Exactly one of `divisions` and `turnsOf`. */
export type LinearScale = {
  readonly name: string;
  readonly length: number;
  readonly width: number;
  /** Worth of one division, mm. */
  readonly divisions?: number;
  /** In which it is numbered: that in which the file tells its divisions. */
  readonly unit?: Units;
  /** Name of a handwheel whose turns are the unit. */
  readonly turnsOf?: string;
  /** Divisions to one of its turns. */
  readonly parts?: number;
  /** Side towards which the numbers grow. */
  readonly grows: "left" | "right";
};

/** A scale of degrees for something that swivels about an upright axis. Angles in degrees. */
export type AngleScale = {
  readonly name: string;
  /** `spindle`: a degree plate for its nose, a whole ring numbered right round. */
  readonly part: "headstock" | "top slide" | "vice" | "spindle";
  /** Where the scale is stuck: a flat top or a cylinder's side. */
  readonly shape: "face" | "drum";
  readonly radius: number;
  readonly width: number;
  readonly from: number;
  readonly to: number;
  readonly step: number;
  /** True where the scale turns with the part past a fixed index. */
  readonly turns: boolean;
  readonly vernier?: number;
};

/** A dividing head or rotary table: turns of its crank for one of the work, and the hole circles of its plates. */
export type DividingHead = {
  readonly ratio: number;
  readonly plates: readonly (readonly number[])[];
};

/** Never recommend beyond these. */
export type Limits = {
  readonly chuckRpm?: number;
  readonly spindleRpm?: number;
  /** Diameter of the largest drill that it drives or holds. */
  readonly largestDrill?: number;
};

export type Drive = {
  readonly motor: Motor;
  readonly belt?: Belt;
  /** Motor end first. At least one. */
  readonly stages: readonly Stage[];
  /** Whether the spindle can be run backwards, and whether a clutch lets it slip: without either no tap goes in by power. */
  readonly reverses?: boolean;
  readonly clutch?: boolean;
  readonly tachometer: readonly TachometerReading[];
  /** The inside of the belt cover, where the belt card goes. */
  readonly cover?: Cover;
};

/** A card's size and shape. Holes from its top left corner. */
export type Cover = {
  readonly width: number;
  readonly height: number;
  readonly corner: number;
  readonly holes: readonly { readonly x: number; readonly y: number; readonly diameter: number }[];
};

/** slowestRpm equals fastestRpm for a motor of one speed. */
export type Motor = {
  readonly slowestRpm: number;
  readonly fastestRpm: number;
  /** Of the mains that its plate is for. */
  readonly hertz?: number;
  /** What turns it; a mains motor when absent. */
  readonly by?: "treadle" | "hand";
};

export type BeltKind = "round" | "vee" | "flat" | "toothed";
/** `size`: thickness of a flat belt, diameter of a round one, pitch of a toothed one. `stretch`: by which a joined belt is
 *  cut short, a fraction. */
export type Belt = {
  readonly kind: BeltKind;
  readonly size?: number;
  readonly section?: VeeSection;
  readonly stretch?: number;
};

export type Stage = {
  readonly name: string;
  /** Distance between the two shafts. */
  readonly centres?: number;
  /** A crossed belt turns the driven shaft the other way. */
  readonly crossed?: boolean;
  /** An idler presses on the belt: its length cannot be computed from the centres. */
  readonly idler?: boolean;
  /** Its own belt, where it differs from the drive's. */
  readonly belt?: Belt;
  /** One of them carries the power at a time. At least one. */
  readonly steps: readonly Step[];
};

/** One way through a stage. `belt` and `gears` are exclusive; `direct` is a stage passed through at 1:1. */
export type Step = {
  readonly label: string;
  /** The label as the file has it, where paper calls the step otherwise. */
  readonly written?: string;
} & (
  | {
      readonly kind: "belt";
      /** Effective diameters, where the belt's neutral line runs. */
      readonly driver: number;
      readonly driven: number;
      /** What was measured instead of the effective diameters, where it was something else. */
      readonly driverBy?: PulleyMeasure;
      readonly drivenBy?: PulleyMeasure;
    }
  | {
      readonly kind: "gears";
      /** Teeth. `idlers`: wheels between the two, which only turn the other way. */
      readonly pairs: readonly { readonly driver: number; readonly driven: number; readonly idlers?: number }[];
    }
  | { readonly kind: "direct" }
  /** A speed of a motor that has several: this share of its fastest. */
  | { readonly kind: "motor"; readonly factor: number }
);

/** `labels`: one step label for every stage that offers a choice (more than one step), motor end first. */
export type TachometerReading = { readonly labels: readonly string[]; readonly rpm: number };

type RawHandwheel = NonNullable<MachineFile["handwheels"]>[number];

/** `distances`, as `divisions` of a dial, are in what the dial reads; `travel` is the slide's, over which a dial's doubt is
 *  told. */
export type Handwheel = Part<
  RawHandwheel,
  {
    readonly reads: "travel" | "diameter";
    readonly feed?: Feed;
    readonly dial?: DialWish;
    readonly oldDial?: OldDial;
  }
>;

/** What a handwheel moves, where the file says so. */
export type Moves = NonNullable<RawHandwheel["moves"]>;

/** The dial that a handwheel had. `perTurn`: what it shows in a turn, mm of what it reads; it is marked in `unit`. */
export type OldDial = {
  readonly reads: "travel" | "diameter";
  readonly perTurn: number;
  readonly unit: Units;
  /** Whether it cannot be set to 0 on its wheel, where the file says so. */
  readonly fixed?: boolean;
};

/** How the file says what one turn does. `nominal` is what the maker meant; it is only compared against. */
export type Feed = { readonly nominal?: number } & (
  | { readonly from: "stated"; readonly perTurn: number; readonly uncertainty?: number }
  /** `tpi`: where the pitch was given by threads per inch. */
  | { readonly from: "screw"; readonly pitch: number; readonly starts: number; readonly tpi?: number }
  | {
      readonly from: "rack";
      readonly module: number;
      /** What was given in place of the module: teeth to an inch of pitch diameter, or mm from tooth to tooth. */
      readonly given?: { readonly by: "DP" | "tooth to tooth"; readonly value: number };
      readonly teeth: number;
      readonly reduction: readonly [number, number];
    }
  | ({ readonly from: "readings" } & Readings)
);

/** Equal lengths. `travel` was read while going one way, `back` at the same turns on the return. */
export type Readings = {
  /** Smallest graduation of the gauge. */
  readonly gauge?: number;
  /** Error limit of the gauge over its reach, as its maker or a check tells it. */
  readonly gaugeError?: number;
  /** °C while measuring. */
  readonly temperature?: number;
  /** Where the slide stood at turn 0, in the user's words. */
  readonly zeroAt?: string;
  readonly turns: readonly number[];
  /** The place of each in the file's lists, where some of those were left empty. */
  readonly places?: readonly number[];
  readonly travel: readonly number[];
  readonly back?: readonly number[];
  /** mm of the unit that they are written in; 1 when left out. */
  readonly unit?: number;
  /** The CSV beside the machine file that they stand in. */
  readonly file?: string;
};

export type Closure = "even" | "true" | "rows";

/** Keys whose meaning goes by the shape. */
type DialSize = "shape" | "diameter" | "wrap" | "width" | "outside" | "inside" | "smallDiameter";

/** What the file asks of a dial. What it leaves open, the choosing settles. */
export type DialWish = DialShape &
  Part<
    Omit<NonNullable<RawHandwheel["dial"]>, DialSize>,
    {
      readonly increases: "clockwise" | "anticlockwise";
      /** The file does not say which way its numbers grow. */
      readonly senseAssumed?: true;
      readonly closure?: Closure;
    }
  >;

export type DialShape =
  | {
      readonly shape: "drum";
      readonly diameter?: number /** Measured wrap length; beats the formula. */;
      readonly wrap?: number;
      readonly width: number;
    }
  | { readonly shape: "face"; readonly outside: number; readonly inside: number }
  | { readonly shape: "bevel"; readonly diameter: number; readonly smallDiameter: number; readonly width: number };

/** What was measured on the printer-check page, beside what it should have been. */
export type Printer = {
  readonly across?: Measured;
  readonly down?: Measured;
  /** From top left to bottom right, then from top right to bottom left. */
  readonly diagonals?: readonly [number, number];
};
export type Measured = { readonly measured: number; readonly nominal: number };

export type PaperSize = "A3" | "A4" | "A5" | "Letter" | "Legal";
export type Paper = {
  readonly size: PaperSize;
  readonly thickness: number;
  readonly adhesive: number;
  /** Key into `printers`. */
  readonly printer?: string;
};

export type Work = {
  readonly tool: string;
  readonly materials: readonly string[];
  readonly diameters: readonly number[];
  /** Diameters of the drills at hand; usual ones when absent. */
  readonly drills?: readonly number[];
  /** The number or letter of those that were given by it, by their diameter: 21, "F". Apart from `written`, since a shaft of the same
   *  size is not called so. */
  readonly drillNames?: ReadonlyMap<number, DrillName>;
  /** Which part of the published cutting speeds it bears; light when left out. */
  readonly firmness?: Firmness;
  /** Deepest cut on the radius that was found to go well; a usual one when absent. */
  readonly deepest?: number;
  /** Factor on every published cutting speed, for a light machine; over 0 to 1. */
  readonly derating?: number;
  /** The user's own cutting speeds; they override published ones. */
  readonly cuttingSpeeds?: readonly OwnCuttingSpeed[];
};

/** A light machine keeps to the lower half of a published range, a firm one may use all of it. */
export type Firmness = "light" | "firm";

export type GivenSpeed = { readonly value: number; readonly unit: string };

export type OwnCuttingSpeed = {
  readonly material: string;
  readonly tool?: string;
  readonly operation?: string;
  readonly slowest: number; // m/min
  readonly fastest: number; // m/min
  /** The two as the file gives them, each in its unit. */
  readonly asGiven?: { readonly from: GivenSpeed; readonly to: GivenSpeed };
  readonly source?: string;
};

/** A taper to turn. `halfAngle` (radians) lies between axis and side; the sizes are there when the file gave them. */
export type TaperWish = {
  readonly name: string;
  readonly halfAngle: number;
  readonly large?: number;
  readonly small?: number;
  readonly length?: number;
};

/** A repeat length to a stop; lengths in what the handwheel's dial reads. */
export type StopWish = Part<NonNullable<MachineFile["stops"]>[number], { readonly handwheel: string }>;
