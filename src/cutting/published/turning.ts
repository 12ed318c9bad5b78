import { carbide, carbonSteel, highSpeedSteel, type PublishedSpeed, rows } from "./row.js";

/** Turning. Left out on purpose, as a light bench lathe does not reach them: heavy-lathe and negative-rake tests, cutting
 *  under a flood of coolant, carbide figures of plastics suppliers, and nylon at 126 to 300 m/min (Carvill 5.7.5) beside
 *  the 40 to 50 that names high-speed steel. */
const operation = "turning";
const asMildSteel = "the figure for mild steel: none was read for free-cutting steel, which allows more";
const asHighCarbon = "the figure for high-carbon steel: none was found for alloy steel";
const asPlastics = "the figure for plastics in general";

const jones = {
  operation,
  tool: highSpeedSteel,
  unit: "ft/min",
  source: "JONES1914",
  where: "ch. II, Average Cutting Speeds for Turning; printed without naming the tool steel",
  confidence: "read",
} as const;
const tut17 = {
  operation,
  tool: highSpeedSteel,
  unit: "m/min",
  source: "TUT17",
  where: "table 2, HSS turning",
  confidence: "read",
} as const;
const to1 = {
  operation,
  tool: highSpeedSteel,
  unit: "ft/min",
  source: "TO1-1A-9",
  where: "table 2-8, p. 2-72",
  confidence: "read",
} as const;
const carvill = {
  operation,
  tool: highSpeedSteel,
  unit: "m/min",
  source: "CARVILL",
  where: "5.7.1, p. 192; the scan's heading says m/s, the figures are m/min",
  confidence: "read",
} as const;
const thermoplastics = { ...carvill, where: "5.7.5, p. 194; tool not named; printed in m/s" } as const;
const tc9 = {
  operation,
  tool: highSpeedSteel,
  unit: "ft/min",
  source: "TC9-524",
  where: "ch. 7, cutting speeds for straight turning",
  confidence: "memory",
} as const;

export const turning: readonly PublishedSpeed[] = [
  ...rows(jones, [
    ["mild steel", 45, 65],
    ["free-cutting steel", 45, 65, asMildSteel],
    ["grey cast iron", 40, 50],
    ["tool steel", 25, 35, "annealed"],
    ["brass", 150, 200, "soft yellow brass"],
    ["bronze", 35, 80, "hard, phosphor and other tough bronzes"],
  ]),
  ...rows(tut17, [
    ["mild steel", 25, 45],
    ["free-cutting steel", 25, 45, asMildSteel],
    ["grey cast iron", 22, 30],
    ["stainless steel", 9, 18],
    ["brass", 45, 120],
    ["aluminium", 60, 150],
    ["plastics", 9, 120],
    ["acetal", 9, 120, asPlastics],
    ["acrylic", 9, 120, asPlastics],
    ["rigid PVC", 9, 120, asPlastics],
    ["polystyrene", 9, 120, asPlastics],
  ]),
  ...rows(to1, [
    ["stainless steel", 20, 40, "300 series, roughing"],
    ["stainless steel", 50, 80, "300 series, finishing"],
    ["free-cutting stainless steel", 30, 60, "430F and 416, roughing"],
    ["free-cutting stainless steel", 75, 120, "430F and 416, finishing"],
    ["free-cutting stainless steel", 25, 55, "303 and 420F, roughing"],
    ["free-cutting stainless steel", 65, 105, "303 and 420F, finishing"],
  ]),
  ...rows({ ...to1, tool: carbide }, [
    ["stainless steel", 150, 200, "300 series, roughing"],
    ["stainless steel", 150, 300, "300 series, finishing"],
    ["free-cutting stainless steel", 225, 300, "430F and 416, roughing"],
    ["free-cutting stainless steel", 225, 450, "430F and 416, finishing"],
    ["free-cutting stainless steel", 175, 240, "303 and 420F, roughing"],
    ["free-cutting stainless steel", 195, 350, "303 and 420F, finishing"],
  ]),
  ...rows({ ...to1, where: "ch. 4, safety practices" }, [
    ["magnesium", 500, 700, "keep below 700 ft/min: chips catch fire"],
  ]),
  ...rows({ ...to1, where: "ch. 4, safety practices", tool: carbide }, [
    ["magnesium", 500, 700, "keep below 700 ft/min: chips catch fire"],
  ]),
  ...rows(carvill, [
    ["brass", 75, 100, "roughing and finishing"],
    ["bronze", 18, 36, "phosphor bronze, roughing and finishing"],
  ]),
  ...rows(thermoplastics, [
    ["PTFE", 60, 150],
    ["rigid PVC", 90, 300],
    ["polystyrene", 90, 300],
  ]),
  ...rows({ ...tut17, source: "PRIOR", where: "CNC turning" }, [["nylon", 40, 50]]),
  ...rows({ ...tut17, source: "PRIOR", where: "CNC turning", tool: carbide }, [["nylon", 110, 130]]),
  ...rows({ ...tut17, source: "ELHOFY", where: "table 5.4, p. 143" }, [
    ["zinc alloy", 76, 76, "the figure for drilling: none was found for turning"],
  ]),
  ...rows(tc9, [
    ["medium-carbon steel", 60, 80],
    ["high-carbon steel", 35, 40],
    ["alloy steel", 35, 40, asHighCarbon],
    ["copper", 60, 80, "a text of 1914 turns it nearly as fast as brass"],
  ]),
  ...rows({ ...jones, tool: carbonSteel, source: "ZERBE1914", where: "Lathe Speed, p. 42" }, [
    ["mild steel", 11, 18, "given for steel"],
    ["free-cutting steel", 11, 18, "given for steel"],
    ["brass", 25, 50],
    ["aluminium", 40, 50],
    ["wrought iron", 15, 20],
  ]),
  ...rows({ ...jones, tool: carbonSteel, source: "POCKETBK", where: "p. 439; printed in inches a minute" }, [
    ["grey cast iron", 12.5, 15.8],
    ["wrought iron", 21.7, 23.3],
    ["brass", 25, 25],
  ]),
  ...rows({ ...jones, tool: carbonSteel, source: "SCIAM", where: "Roughing Out Front Tool For Wrought Iron" }, [
    ["wrought iron", 15, 35, "35 up to 1 in, 15 over 20 in"],
  ]),
  {
    material: "hard wood",
    tool: highSpeedSteel,
    operation,
    from: 2400,
    to: 3000,
    unit: "rpm",
    upTo: 76.2,
    source: "MILTON1919",
    where: "ch. II, Speed of the Lathe",
    confidence: "read",
    note: "true, balanced stock up to 3 in; larger on slower steps, over 6 in and untrue stock on the slowest",
  },
];
