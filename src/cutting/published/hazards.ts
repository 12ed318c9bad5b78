/** A material that burns or poisons while it is cut, and what to beware of. */
export type Hazard = {
  /** As a sentence begins with it. */
  readonly material: string;
  /** Found in a material's name, whatever else stands there: also in names of the user's own. */
  readonly named: RegExp;
  readonly caution: string;
  /** Its chips catch fire the finer and hotter they are: no fine feed, no dwell, no spring pass. */
  readonly burnsWhenFine?: true;
  /** Key of a source in `data.ts`. */
  readonly source: string;
  readonly where: string;
  /** `read`: seen there; `memory`: believed to stand there, not seen. */
  readonly confidence: "read" | "memory";
};

export const hazards: readonly Hazard[] = [
  {
    material: "Magnesium",
    // With the usual short names of its alloys.
    named: /magnesium|\b(az|am|zk|ze|we) ?\d{2}[a-z]?\b/i,
    caution:
      "Magnesium chips catch fire. Sharp tools; no fine feed, no dwell, nothing that rubs; below 213 m/min (700 ft/min). Cut dry. Sweep the chips up dry and often. Dry sand, or an extinguisher for burning metal, within reach: never water, liquid or foam.",
    burnsWhenFine: true,
    source: "TO1-1A-9",
    where: "ch. 4, safety practices",
    confidence: "read",
  },
  {
    material: "Zirconium",
    named: /zirc/i,
    caution:
      "Zirconium dust and fine chips catch fire from a spark or a rubbing tool. Sharp tools, firm feed, no dwell; clear the chips often and keep none in the shop. Dry sand, or an extinguisher for burning metal, within reach: never water on what burns.",
    burnsWhenFine: true,
    source: "NFPA484",
    where: "zirconium",
    confidence: "memory",
  },
  {
    material: "Titanium",
    named: /titan|\bti-?6/i,
    caution:
      "Titanium dust and fine chips catch fire. Sharp tools, firm feed, no dwell, nothing that rubs; clear the chips often. Dry sand, or an extinguisher for burning metal, within reach: never water on what burns.",
    burnsWhenFine: true,
    source: "NFPA484",
    where: "titanium",
    confidence: "memory",
  },
  {
    material: "Beryllium",
    named: /beryll|\bbecu\b|\bc17[0-9]/i,
    caution:
      "Beryllium dust and fumes harm the lungs for life, also from its alloys with copper. Never grind, sand or polish it; keep the cut and the chips wet, wipe up wet, never blow or sweep; wash before you eat. Not without a competent supervisor.",
    source: "OSHA1910",
    where: "1910.1024",
    confidence: "memory",
  },
  {
    material: "Fluoroplastics",
    named: /ptfe|pvdf|pctfe|\be?ctfe\b|etfe|\bpfa\b|\bfep\b|fluoro/i,
    caution:
      "Hot fluoroplastics (PTFE and its like) give off poisonous fumes: sharp tools, keep it cool, air the room. No smoking: a crumb of it in the glow is enough.",
    source: "COMMON",
    where: "common practice",
    confidence: "memory",
  },
  {
    material: "PVC",
    named: /pvc|vinyl chloride/i,
    caution: "Hot PVC gives off acid fumes: if it smokes, stop and air the room.",
    source: "COMMON",
    where: "common practice",
    confidence: "memory",
  },
  {
    material: "Wood",
    // But for Wood's metal.
    named:
      /wood(?!'s)|timber|\b(yew|iroko|teak|ebony|cocobolo|padauk|wenge|oak|beech|walnut|mahogany|laburnum|box|cedar|mdf)\b|lignum/i,
    caution:
      "Wood dust harms the lungs and burns: extract it, wear a mask, no flame near it. Dust of some woods (yew, iroko, cocobolo, rosewood, laburnum) poisons or sickens.",
    source: "COMMON",
    where: "common practice",
    confidence: "memory",
  },
];
