import { highSpeedSteel, type PublishedSpeed, rows } from "./row.js";

const operation = "tapping";
const tap = { operation, tool: highSpeedSteel, unit: "ft/min", confidence: "read" } as const;
const lavallee = { ...tap, source: "LAVALLEE", where: "table of tapping speeds" } as const;
const clarkson = { ...tap, source: "CLARKSON", where: "Recommended Cutting Speeds for HSS Taps" } as const;

/** Machine tapping under power; a tap in the hand or a spindle turned by hand needs none of it. The two sources differ up to
 *  twofold in the same material. */
export const tapping: readonly PublishedSpeed[] = [
  ...rows(lavallee, [
    ["free-cutting steel", 40, 80],
    ["stainless steel", 5, 35],
    ["grey cast iron", 50, 100],
    ["brass", 50, 200],
    ["bronze", 50, 100],
    ["bronze", 20, 80, "aluminium bronze"],
    ["copper", 30, 60],
    ["aluminium", 50, 150],
    ["magnesium", 75, 200],
    ["zinc alloy", 60, 150, "die castings"],
    ...["plastics", "nylon", "acetal", "acrylic", "rigid PVC", "polystyrene", "PTFE"].map(
      (material) => [material, 50, 100, "thermoplastic"] as const,
    ),
  ]),
  ...rows(clarkson, [
    ["mild steel", 50, 60],
    ["medium-carbon steel", 50, 60, "plain carbon steel under 250 HB"],
    ["high-carbon steel", 32, 50, "the figure for alloy steel under 250 HB"],
    ["alloy steel", 32, 50, "under 250 HB"],
    ["tool steel", 22, 32, "the figure for alloy steel of 250 to 350 HB"],
    ["stainless steel", 16, 22, "austenitic"],
    ["free-cutting stainless steel", 22, 32],
    ["grey cast iron", 50, 80, "under 150 HB"],
    ["grey cast iron", 30, 40, "150 to 300 HB"],
    ["brass", 50, 65],
    ["bronze", 10, 16, "high strength"],
    ["copper", 22, 40],
    ["aluminium", 32, 50, "unalloyed"],
    ["aluminium", 50, 150, "with silicon under 10 %"],
  ]),
];
