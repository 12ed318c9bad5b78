/** What to wet the cut with, and what that may do; what burns or poisons stands in `hazards.ts`. Common practice, but for magnesium: USAF T.O. 1-1A-9, ch. 4. */
export type Coolant = { readonly words: string; readonly caution?: string };

export type Material = {
  readonly name: string;
  /** Other names that the trade uses for it. */
  readonly otherNames?: readonly string[];
  readonly coolant: Coolant;
  /** Known by name alone: no source has a cutting speed for turning it. */
  readonly withoutSpeeds?: true;
  /** Fed as plastics in general. */
  readonly plastic?: true;
};

const oil: Coolant = { words: "cutting oil or soluble oil" };
const plentyOfOil: Coolant = { words: "cutting oil, plenty; never let the tool rub" };
const dry: Coolant = { words: "dry" };
const air: Coolant = {
  words: "dry, or a little air; keep it cool",
  caution: "Plastics soften and wrap round the tool: stop to clear chips.",
};
const askSupplier: Coolant = { words: "only as the supplier of the material says" };
const paraffinBurns = "Paraffin (kerosene) on the work burns: no flame near it.";

/** Every material that something is known of, in the order in which messages list them. */
export const materials: readonly Material[] = [
  { name: "mild steel", otherNames: ["low-carbon steel"], coolant: oil },
  { name: "free-cutting steel", otherNames: ["free cutting steel", "free-machining steel"], coolant: oil },
  {
    name: "grey cast iron",
    otherNames: ["cast iron", "gray cast iron"],
    coolant: { ...dry, caution: "Cast iron dust: keep it off the slides and out of the lungs." },
  },
  { name: "tool steel", otherNames: ["silver steel", "drill rod", "gauge plate"], coolant: oil },
  { name: "brass", otherNames: ["free-cutting brass", "free cutting brass"], coolant: dry },
  {
    name: "bronze",
    otherNames: ["phosphor bronze", "gun metal", "gunmetal"],
    coolant: { words: "dry; cutting oil for drilling and reaming" },
  },
  { name: "stainless steel", otherNames: ["stainless"], coolant: plentyOfOil },
  {
    name: "aluminium",
    otherNames: ["aluminum", "aluminium alloy"],
    coolant: { words: "paraffin (kerosene) or soluble oil", caution: paraffinBurns },
  },
  { name: "plastics", otherNames: ["plastic"], coolant: air, plastic: true },
  { name: "acetal", coolant: air, plastic: true },
  { name: "acrylic", coolant: air, plastic: true },
  {
    name: "rigid PVC",
    otherNames: ["PVC"],
    coolant: { words: "dry, or a little air" },
    plastic: true,
  },
  { name: "polystyrene", coolant: air, plastic: true },
  { name: "free-cutting stainless steel", coolant: plentyOfOil },
  {
    name: "magnesium",
    otherNames: ["magnesium alloy", "magnesium alloys"],
    coolant: { words: "dry; never water" },
  },
  {
    name: "PTFE",
    otherNames: ["polytetrafluoroethylene"],
    coolant: { words: "dry, or a little air; keep it cool" },
    plastic: true,
  },
  { name: "nylon", coolant: air, plastic: true },
  {
    name: "zinc alloy",
    otherNames: ["zinc"],
    coolant: { words: "paraffin (kerosene) or dry", caution: paraffinBurns },
  },
  { name: "medium-carbon steel", otherNames: ["medium carbon steel"], coolant: oil },
  { name: "high-carbon steel", otherNames: ["high carbon steel"], coolant: oil },
  { name: "alloy steel", coolant: oil },
  { name: "copper", coolant: { words: "soluble oil" } },
  { name: "wrought iron", coolant: oil },
  {
    name: "hard wood",
    otherNames: ["hardwood"],
    coolant: dry,
  },
  { name: "titanium", otherNames: ["titanium alloy", "titanium alloys"], coolant: askSupplier, withoutSpeeds: true },
  { name: "zirconium", otherNames: ["zirconium alloy", "zirconium alloys"], coolant: askSupplier, withoutSpeeds: true },
  {
    name: "beryllium copper",
    otherNames: ["beryllium-copper", "copper beryllium", "beryllium bronze", "BeCu", "CuBe", "Be-Cu", "Cu-Be"],
    coolant: { words: "cutting oil, plenty: it binds the dust" },
    withoutSpeeds: true,
  },
];

export const plastics = materials.filter(({ plastic }) => plastic).map(({ name }) => name);
