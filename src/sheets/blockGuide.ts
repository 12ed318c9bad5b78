import type { BlockName, blocks } from "../blocks/registry.js";
import { mostCopies } from "./lengths.js";

/** Of a block in words what it shows, what it needs of the machine file, and what its settings are: for who writes a template. */
type Guide<B extends BlockName> = {
  readonly shows: string;
  /** Empty where it needs nothing. */
  readonly needs: string;
  /** May be told to be about one handwheel. */
  readonly wheels?: true;
  /** One for every setting there is: the compiler names those that are forgotten. */
  readonly settings: { readonly [K in keyof (typeof blocks)[B]["defaults"]]: SettingGuide };
};

/** `is`: of a number what it counts; its bounds, and whether it may carry a unit, follow from that. */
export type SettingGuide = {
  readonly is?: "length" | "count";
  /** Less than other numbers may be. */
  readonly most?: number;
  readonly says: string;
  /** An example of words that must be given: without them the block shows nothing. */
  readonly needed?: string;
};

const length = (says: string): SettingGuide => ({ is: "length", says });
const count = (says: string): SettingGuide => ({ is: "count", says });
const other = (says: string): SettingGuide => ({ says });

const aJob = "a job file";
const aFeed = "a handwheel with feed:";
const aDial = "a handwheel with feed: and dial:";
const aCopy = (says: string): SettingGuide => ({ is: "count", most: mostCopies, says });
const copies = { copies: aCopy("how many of each") };
const dialSettings = {
  copies: aCopy("how many of each dial"),
  index: other("also the index line or vernier"),
  blank: other("also a blank strip to try the fit"),
  places: other("also a small picture of each dial in its place"),
};

export const blockGuide: { readonly [B in BlockName]: Guide<B> } = {
  positions: {
    shows:
      "a row for every belt position: its speed, and the diameters that it serves of each material; all pulleys once",
    needs: "drive:",
    settings: {
      operation: other("what is done; by use: what the machine is for"),
      materials: count("the first so many of the file's"),
      cards: count("at most so many, for which the last materials may be left out"),
      caution: other("in the strip at the top, by where the hand will be"),
    },
  },
  "speed diagram": {
    shows: "diameter against cutting speed: a line for each position, a band for each material",
    needs: "drive:",
    settings: {
      operation: other("what is done; by use: what the machine is for"),
      leave: length("kept free below it, for what follows"),
    },
  },
  "speed tree": {
    shows: "every way from motor to spindle, with the gaps and overlaps of the speeds",
    needs: "drive:",
    settings: { height: length("how high it is drawn") },
  },
  belts: {
    shows: "for every belt its length, wrap, and how far to move the shafts",
    needs: "centres: in a stage of drive:",
    settings: {},
  },
  "hand feed": {
    shows: "for every position how fast to turn a handwheel for three feeds",
    needs: "drive:, and a handwheel with feed:",
    wheels: true,
    settings: {
      mm: other("feeds a revolution on a machine in mm, each in mm"),
      in: other("feeds a revolution on a machine in inches, each in inches"),
      lengthMm: other("cut that is timed on a machine in mm, in mm"),
      lengthIn: other("cut that is timed on a machine in inches, in inches"),
    },
  },
  "published feeds": {
    shows: "what is printed as feed for the file's materials, with the source",
    needs: "",
    settings: {},
  },
  "drill bars": {
    shows: "a bar for every material over the diameters of the drills, cut where the belt changes",
    needs: "drive:",
    settings: {
      operations: other("what is done, one after the other"),
      sizes: other("which drills: the file's own or usual ones (work), usual ones (drills), or one system's"),
      least: length("smallest drill where the file names none"),
      most: length("largest drill where the file names none"),
      coolant: other("also what to cool with"),
    },
  },
  "drill depth": {
    shows: "depth by eighths of a turn of the barrel or quill, and its feed when drilling",
    needs: "a barrel or quill with feed:",
    wheels: true,
    settings: {
      handwheel: other('by its name in the machine file; "" for the one that feeds the drill'),
      turns: count("told where the file does not give the travel"),
    },
  },
  words: {
    shows: "words of your own",
    needs: "",
    settings: {
      text: { says: "the words, in quotes", needed: "Belt cover shut before the motor runs." },
      bold: other("in bold"),
      small: other("in the size of notes instead of that of text"),
    },
  },
  "drive notes": {
    shows: "what the speeds were made from: motor, slip, limits",
    needs: "drive:",
    settings: {},
  },
  cautions: {
    shows: "the usual cautions, by where the hand will be",
    needs: "",
    settings: { of: other("which, must be given") },
  },
  "all cautions": {
    shows: "every caution of the machine's uses in full, once",
    needs: "",
    settings: {},
  },
  "speed list": { shows: "every position and its speed, slowest first, large", needs: "drive:", settings: {} },
  "handwheel list": {
    shows: "what a turn of each handwheel does, what a division is worth, lost motion",
    needs: "a handwheel",
    wheels: true,
    settings: {},
  },
  "turn tables": {
    shows: "distances to turns and divisions, and whole turns to distances",
    needs: aFeed,
    wheels: true,
    settings: {
      turns: count("whole turns told where the file does not give the travel"),
      mm: other("round distances, in mm"),
      in: other("round distances, in inches"),
      both: other("the round distances of the other unit too"),
      tables: other("which of them; those left out are not drawn"),
    },
  },
  "handwheel form": {
    shows: "a page to write readings on, with the turns filled in",
    needs: "",
    wheels: true,
    settings: {
      within: length("how far the feed may be out over the travel (as these stand, a machine in inches has its own)"),
      travel: length("assumed where the file does not say"),
      nominal: length("feed a turn, assumed where the file does not say"),
      gauge: length("least reading, assumed where the file does not say"),
      reach: length("how far the gauge reaches; 0: over the whole travel"),
    },
  },
  "drive form": {
    shows: "a page to write pulleys, centres and speeds on, filled with what the file holds",
    needs: "",
    settings: { blankRows: count("empty rows where the file has no drive") },
  },
  "printer check": {
    shows: "bars and diagonals to measure, which tell what the printer makes of a length",
    needs: "",
    settings: {
      across: length("along the sheet's short side, or as much as there is room for"),
      down: length("along its long side"),
      edge: length("the nearest that a bar comes to an edge of the paper"),
    },
  },
  "measured report": {
    shows: "what was measured on each handwheel and how good it is: plots, budget, the readings",
    needs: "a handwheel whose feed: has readings:",
    wheels: true,
    settings: {
      plotHeight: length("height of the plots"),
      readings: count("at most so many readings are listed"),
    },
  },
  "measured footing": { shows: "who measured, with what; lines to sign", needs: "", settings: {} },
  "plan head": {
    shows: "the part drawn to scale, and what to see to before the first chip",
    needs: aJob,
    settings: {},
  },
  "plan steps": { shows: "a job step by step, to tick and write on", needs: aJob, settings: {} },
  "plan batch": { shows: "the parts after the first: what stays set, belts, time", needs: aJob, settings: {} },
  "stop settings": {
    shows: "turns and reading to every stop, and how alike the parts are",
    needs: "",
    settings: {},
  },
  "gauge blocks": {
    shows: "the turns that a block or shank between stop and slide stands for",
    needs: aFeed,
    settings: {
      mm: other("blocks on a machine in mm, each in mm"),
      in: other("blocks on a machine in inches, each in inches"),
    },
  },
  "spindle stop": { shows: "parts alike through the spindle, in the order of work", needs: "", settings: {} },
  "student side": {
    shows: "in plain words this machine's dial, lost motion, belt and speeds, and what never to do",
    needs: "",
    settings: { materials: count("told of, at most") },
  },
  "student exercises": {
    shows: "exercises of this machine's own numbers, with answers",
    needs: "",
    settings: { answers: other("at the foot of the page, or on a page of their own") },
  },
  "thread table": {
    shows: "sizes, tapping drills, rods for dies, turns for a depth",
    needs: "",
    settings: {
      systems: other("which, in this order, those of the machine's own unit first"),
      engagement: other("of the thread, in per cent"),
      depth: length("for which turns are told"),
      largest: length("threads up to this diameter"),
    },
  },
  "taper table": {
    shows: "the file's tapers, standard ones and 1 in n: what to set, and how to prove it",
    needs: "",
    settings: {
      ratios: other("n of each 1 in n"),
      standard: other("also standard tapers"),
      over: length("over which the indicator's rise is told"),
      bar: length("the sine bar's length"),
    },
  },
  "taper swing": {
    shows: "which way to swing for which end small, drawn from above",
    needs: "",
    settings: { height: length("of each picture") },
  },
  "angle gauges": {
    shows: "a paper wedge of each of the file's half angles, to cut out",
    needs: "tapers:",
    settings: {
      length: length("of a wedge, or as much as there is room for"),
      height: length("of its low end"),
      least: other("half angle from which on scissors can show it, degrees"),
    },
  },
  pieces: {
    shows:
      "all that is cut out and stuck on, packed as one set: dials, index lines and verniers, straight scales, scales of degrees",
    needs: "a handwheel with feed: and dial:, or scales:, or angleScales:",
    wheels: true,
    settings: { ...dialSettings, scales: count("how many of each straight scale and scale of degrees; 0 for none") },
  },
  "dial pieces": {
    shows: "stick-on dials alone, at true size, packed together, with an index line or vernier",
    needs: aDial,
    wheels: true,
    settings: dialSettings,
  },
  "dial choices": {
    shows: "the ways to divide a dial, best first: what each costs, and how it looks",
    needs: aDial,
    wheels: true,
    settings: { most: count("ways at most") },
  },
  verniers: {
    shows: "verniers to cut out, with a drawn reading",
    needs: "a dial with vernier:",
    wheels: true,
    settings: copies,
  },
  engraving: { shows: "dials on bare metal, for laser or engraver", needs: aDial, wheels: true, settings: copies },
  "start readings": {
    shows: "the reading at which each whole turn begins, where a turn is no round number",
    needs: aDial,
    wheels: true,
    settings: { most: count("turns at most") },
  },
  "ring cutting": {
    shows: "every mark of a dial in metal: angle, length, number, how to index it",
    needs: aDial,
    wheels: true,
    settings: { secondsPlaces: count("decimals of the seconds of an angle") },
  },
  "linear scales": { shows: "straight scales at true size", needs: "scales:", settings: copies },
  "angle scales": {
    shows: "scales of degrees at true size, with index or vernier",
    needs: "angleScales:",
    settings: copies,
  },
};

export const guideOf = (
  block: BlockName,
): Guide<BlockName> & { readonly settings: Readonly<Record<string, SettingGuide>> } => blockGuide[block];
