import { carbonSteel, highSpeedSteel, type PublishedSpeed, rows } from "./row.js";

/** Drilling, reaming, threading. Left out on purpose: bronze at 200 to 300 ft/min (it names no bronze, and phosphor bronze
 *  is cut at 13 m/min), aluminium at 195 to 390 m/min and nylon at 120 to 300 m/min (industrial). */
const drilling = "drilling";
const asPlastics = "the figure for plastics in general";

const navy = {
  operation: drilling,
  tool: highSpeedSteel,
  unit: "ft/min",
  source: "NAVY14345",
  where: "drill section, Holding the Work",
  confidence: "read",
} as const;
const tut17 = {
  operation: drilling,
  tool: highSpeedSteel,
  unit: "m/min",
  source: "TUT17",
  where: "table 1, HSS drilling",
  confidence: "read",
} as const;
const carvill = { ...tut17, source: "CARVILL", where: "5.7.1, p. 192" } as const;
const elhofy = { ...tut17, source: "ELHOFY", where: "table 5.4, p. 143" } as const;
const tc9 = {
  operation: "threading",
  tool: highSpeedSteel,
  unit: "ft/min",
  source: "TC9-524",
  where: "ch. 7, cutting speeds for threading",
  confidence: "memory",
} as const;

export const holes: readonly PublishedSpeed[] = [
  ...rows(navy, [
    ["mild steel", 80, 110, "low-carbon steel"],
    ["free-cutting steel", 80, 110, "the figure for low-carbon steel"],
    ["medium-carbon steel", 70, 80],
    ["alloy steel", 50, 70],
    ["high-carbon steel", 50, 70, "the figure for alloy steel: none was read for high-carbon steel"],
    ["stainless steel", 30, 40],
    ["free-cutting stainless steel", 30, 40, "the figure for stainless steel"],
    ["brass", 200, 300],
    ["aluminium", 200, 300],
    ["grey cast iron", 70, 150],
  ]),
  ...rows(tut17, [
    ["mild steel", 30, 36],
    ["free-cutting steel", 30, 36, "the figure for mild steel"],
    ["grey cast iron", 25, 35],
    ["stainless steel", 6, 15],
    ["brass", 60, 75],
    ["plastics", 20, 75],
    ["nylon", 20, 75, asPlastics],
    ["acetal", 20, 75, asPlastics],
    ["acrylic", 20, 75, asPlastics],
    ["rigid PVC", 20, 75, asPlastics],
    ["polystyrene", 20, 75, asPlastics],
    ["PTFE", 20, 75, asPlastics],
  ]),
  ...rows(carvill, [
    ["brass", 60, 60],
    ["bronze", 13, 13, "phosphor bronze"],
  ]),
  ...rows(elhofy, [
    ["tool steel", 15, 18, "196 to 241 HB"],
    ["zinc alloy", 76, 76],
  ]),
  ...rows({ ...navy, source: "PROTO", where: "cutting speeds for light metals" }, [
    ["magnesium", 450, 500, "cast and wrought; chips catch fire"],
  ]),
  ...rows({ ...navy, source: "TC9-524", where: "ch. 7, straight turning", confidence: "memory" }, [
    ["copper", 60, 80, "the figure for turning: none was found for drilling"],
  ]),
  ...rows({ ...navy, tool: carbonSteel, source: "POCKETBK", where: "p. 439; printed in inches a minute" }, [
    ["grey cast iron", 6.7, 10],
    ["wrought iron", 11.7, 13.3],
  ]),
  ...["reaming", "threading"].flatMap((operation) =>
    rows({ ...carvill, operation }, [
      ["brass", 18, 18],
      ["bronze", 4.5, 4.5, "phosphor bronze"],
    ]),
  ),
  ...rows(tc9, [
    ["mild steel", 35, 40],
    ["free-cutting steel", 35, 40, "the figure for low-carbon steel"],
    ["medium-carbon steel", 25, 30],
    ["high-carbon steel", 15, 20],
    ["alloy steel", 15, 20, "the figure for high-carbon steel"],
    ["tool steel", 15, 20, "the figure for high-carbon steel"],
    ["stainless steel", 15, 20],
    ["aluminium", 50, 60],
    ["grey cast iron", 20, 25],
    ["copper", 20, 25],
  ]),
];
