import { MM_PER_FOOT } from "../../quantity/length.js";

/** A material that burns or poisons while it is cut, and what to beware of. */
export type Hazard = {
  /** As a sentence begins with it. */
  readonly material: string;
  /** Names, short names and symbols, in small letters: one as a word of a material's name is enough, whatever else stands
   *  there, also in a name of the user's own. */
  readonly names: readonly string[];
  /** What a word of its grades and kinds looks like. */
  readonly grades?: RegExp;
  readonly caution: string;
  /** Its chips catch fire the finer and hotter they are: no fine feed, no dwell, no spring pass. */
  readonly burnsWhenFine?: true;
  /** Cutting speed above which its chips are the likelier to catch fire, m/min: no row goes beyond it, one's own neither. */
  readonly fastest?: number;
  /** Its dust burns or poisons: no file, no emery, no polishing. */
  readonly noDust?: true;
  /** No beginner cuts it alone: the student's sheet says to ask. */
  readonly notAlone?: true;
  /** Its name in the data of feeds. */
  readonly fedLike?: string;
  /** Key of a source in `data.ts`. */
  readonly source: string;
  readonly where: string;
  /** `read`: seen there; `memory`: believed to stand there, not seen. */
  readonly confidence: "read" | "memory";
};

export const hazards: readonly Hazard[] = [
  {
    material: "Magnesium",
    names: ["magnesium", "mg"],
    // Alloys go by letters of the metals in them and their hundredths: AZ31B, WE43; or by symbols: MgAl3Zn1.
    grades: /^(magnes|mg[a-z]*\d|(a[ejmsxz]|z[cehkm]|e[lvz]|h[kmz]|l[az]|q[eh]|w[ez])\d{2,3}[a-z]?$|[mk]1a$)/,
    caution:
      "Magnesium chips catch fire. Sharp tools; no fine feed, no dwell, nothing that rubs; below 213 m/min (700 ft/min). Cut dry. Sweep the chips up dry and often. Dry sand, or an extinguisher for burning metal, within reach: never water, liquid or foam.",
    burnsWhenFine: true,
    noDust: true,
    notAlone: true,
    fedLike: "magnesium",
    fastest: (700 * MM_PER_FOOT) / 1000,
    source: "TO1-1A-9",
    where: "ch. 4, safety practices",
    confidence: "read",
  },
  {
    material: "Zirconium",
    names: ["zirconium", "zr"],
    grades: /^(zirc|zr[a-z]*\d)/,
    caution:
      "Zirconium dust and fine chips catch fire from a spark or a rubbing tool. Sharp tools, firm feed, no dwell; clear the chips often and keep none in the shop. Dry sand, or an extinguisher for burning metal, within reach: never water on what burns.",
    burnsWhenFine: true,
    noDust: true,
    notAlone: true,
    source: "NFPA484",
    where: "zirconium",
    confidence: "memory",
  },
  {
    material: "Titanium",
    names: ["titanium", "ti"],
    grades: /^(titan|ti[a-z]*\d|6al4v|tc4$)/,
    caution:
      "Titanium dust and fine chips catch fire. Sharp tools, firm feed, no dwell, nothing that rubs; clear the chips often. Dry sand, or an extinguisher for burning metal, within reach: never water on what burns.",
    burnsWhenFine: true,
    noDust: true,
    notAlone: true,
    source: "NFPA484",
    where: "titanium",
    confidence: "memory",
  },
  {
    material: "Beryllium",
    // Not "be" nor "cube" alone, which are words.
    names: ["beryllium", "becu"],
    grades: /^(beryl|becu|cube\d|c17\d|albe|nibe|beni|beo$)/,
    caution:
      "Beryllium dust and fumes harm the lungs for life, also from its alloys with copper. Never grind, sand or polish it; keep the cut and the chips wet, wipe up wet, never blow or sweep; wash before you eat. Not without a competent supervisor.",
    noDust: true,
    notAlone: true,
    source: "OSHA1910",
    where: "1910.1024",
    confidence: "memory",
  },
  {
    material: "Fluoroplastics",
    names: ["ptfe", "pvdf", "pctfe", "ctfe", "ectfe", "etfe", "pfa", "fep"],
    grades: /fluor|ptfe/,
    caution:
      "Hot fluoroplastics (PTFE and its like) give off poisonous fumes: sharp tools, keep it cool, air the room. No smoking: a crumb of it in the glow is enough.",
    source: "COMMON",
    where: "common practice",
    confidence: "memory",
  },
  {
    material: "PVC",
    names: ["pvc", "vinyl"],
    grades: /pvc|vinylchlorid/,
    caution: "Hot PVC gives off acid fumes: if it smokes, stop and air the room.",
    source: "COMMON",
    where: "common practice",
    confidence: "memory",
  },
  {
    material: "Wood",
    names:
      "wood hardwood softwood plywood timber mdf yew iroko teak ebony cocobolo padauk wenge oak ash beech birch maple pine walnut mahogany laburnum cedar lignum balsa spruce cherry elm fir larch alder poplar willow hornbeam sapele bubinga purpleheart chipboard".split(
        " ",
      ),
    grades: /wood$/,
    caution:
      "Wood dust harms the lungs and burns: extract it, wear a mask, no flame near it. Dust of some woods (yew, iroko, cocobolo, rosewood, laburnum) poisons or sickens.",
    source: "COMMON",
    where: "common practice",
    confidence: "memory",
  },
];
