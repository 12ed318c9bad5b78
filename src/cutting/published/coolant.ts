/** What to wet the cut with, and what to beware of, by material. Common practice, but for magnesium: USAF T.O. 1-1A-9, ch. 4. */
export type Coolant = { readonly words: string; readonly caution?: string };

const oil: Coolant = { words: "cutting oil or soluble oil" };
const dry: Coolant = { words: "dry" };
const air: Coolant = {
  words: "dry, or a little air; keep it cool",
  caution: "Plastics soften and wrap round the tool: stop to clear chips.",
};

export const coolants: Readonly<Record<string, Coolant>> = {
  "free-cutting steel": oil,
  "mild steel": oil,
  "medium-carbon steel": oil,
  "high-carbon steel": oil,
  "alloy steel": oil,
  "tool steel": oil,
  "wrought iron": oil,
  "stainless steel": { words: "cutting oil, plenty; never let the tool rub" },
  "free-cutting stainless steel": { words: "cutting oil, plenty; never let the tool rub" },
  "grey cast iron": { words: "dry", caution: "Cast iron dust: keep it off the slides and out of the lungs." },
  brass: dry,
  bronze: { words: "dry; cutting oil for drilling and reaming" },
  copper: { words: "soluble oil" },
  aluminium: {
    words: "paraffin (kerosene) or soluble oil",
    caution: "Paraffin (kerosene) on the work burns: no flame near it.",
  },
  "zinc alloy": {
    words: "paraffin (kerosene) or dry",
    caution: "Paraffin (kerosene) on the work burns: no flame near it.",
  },
  magnesium: {
    words: "dry; never water",
    caution:
      "Magnesium chips catch fire: sharp tools, no fine feeds, no dwell, chips swept up dry. Dry sand or a metal-fire extinguisher at hand; never water or foam.",
  },
  plastics: air,
  nylon: air,
  acetal: air,
  acrylic: air,
  "rigid PVC": {
    words: "dry, or a little air",
    caution: "Hot PVC gives off acid fumes: if it smokes, stop and air the room.",
  },
  polystyrene: air,
  PTFE: { words: "dry", caution: "Overheated PTFE gives off poisonous fumes: keep it cool, do not smoke over it." },
  "hard wood": { words: "dry", caution: "Wood dust harms the lungs and burns: extract it, wear a mask." },
};
