import { closingWords } from "../dial/closing.js";
import type { DialChoice, DialFinding } from "../dial/finding.js";
import type { Findings, HandwheelFinding } from "../findings/findings.js";
import type { Machine, Units } from "../machine/machine.js";
import { formatLength, formatSize } from "../quantity/format.js";
import { feedSource } from "./feed.js";
import type { Input, Subject, Working } from "./working.js";

/** How each dial's turn is divided, and what else it might have been. */
export function explainDial({ machine, handwheels }: Findings): Subject[] {
  return handwheels.flatMap((finding, index): Subject[] =>
    finding.handwheel.dial === undefined
      ? []
      : [{ name: finding.handwheel.name, explain: () => dialWorking(finding, index, machine.units) }],
  );
}

/** Flat length of each drum's strip. */
export function explainStrip({ machine, handwheels }: Findings): Subject[] {
  return handwheels.flatMap((finding, index): Subject[] =>
    finding.handwheel.dial?.shape === "drum"
      ? [{ name: finding.handwheel.name, explain: () => stripWorking(finding, index, machine) }]
      : [],
  );
}

const MISSING = "no dial can be made: it needs a feed, and the size of the part it is stuck on";

function dialWorking(
  { handwheel, feed, reading, dial }: HandwheelFinding,
  index: number,
  units: Units,
): Working | { missing: string } {
  if (feed === undefined || reading === undefined || dial === undefined) return { missing: MISSING };
  const { chosen } = dial;
  const wish = handwheel.dial;
  const path = ["handwheels", index, "dial"];
  const onDiameter = handwheel.reads === "diameter";
  return {
    title: `${handwheel.name}: dial`,
    formula: `${closureFormula[chosen.closure]}; p = feed per turn${onDiameter ? " × 2, since it reads the diameter" : ""}, u = worth of a division`,
    inputs: [
      {
        name: "p, read in one turn",
        value: reading.perTurn,
        unit: "mm",
        source: feedSource(feed, index),
      },
      {
        name: "u, worth of a division",
        value: chosen.divisionValue,
        unit: "mm",
        source:
          wish?.divisions === undefined
            ? { from: "computed", how: "best of the round values whose marks an eye can part" }
            : { from: "stated", path: [...path, "divisions"] },
      },
      ...closureInput(dial, wish?.closure === dial.chosen.closure, path),
      {
        name: "distance of neighbouring marks",
        value: chosen.spacing,
        unit: "mm",
        source: { from: "computed", how: "length once round ÷ divisions" },
      },
      {
        name: "error that one turn adds",
        value: chosen.errorPerTurn,
        unit: "mm",
        source: { from: "computed", how: "what the marks say − p" },
      },
    ],
    result: { name: "divisions", value: chosen.divisions, unit: chosen.rows > 1 ? `in ${chosen.rows} rows` : "" },
    notes: [
      ...chosen.remarks,
      ...furtherNotes(dial, units),
      ...dial.choices
        .filter((choice) => choice !== chosen)
        .slice(0, 4)
        .map((choice) => otherChoice(choice, units)),
    ],
  };
}

/** Small numbers of turns that nearly close, by continued fractions; the second scale; the vernier. */
function furtherNotes({ chosen, closings, second, vernier }: DialFinding, units: Units): string[] {
  return [
    `divisions of ${chosen.divisionLabel} come round ${closingWords(closings, units)}`,
    ...(second ? [`second scale: ${otherChoice(second.chosen, units).replace("instead: ", "")}`] : []),
    ...(vernier
      ? [
          `a vernier of ${vernier.parts} over ${vernier.spans} divisions reads ${formatLength(vernier.leastCount, chosen.unit, 5)}`,
        ]
      : []),
  ];
}

const closureFormula = {
  even: "N = the whole number nearest p ÷ u, all divisions equal; error per turn = N u − p",
  true: "marks at every whole u; the last division of a turn is what p ÷ u leaves over, or where a mark before so little would print as one with the zero, a whole u more",
  rows: "k rows for k turns, k the least whole number for which k p ÷ u is whole",
} as const;

const closureInput = (dial: DialFinding, forced: boolean, path: readonly (string | number)[]): Input[] => [
  {
    name: "closure",
    value: dial.chosen.closure,
    unit: "",
    source: forced
      ? { from: "stated", path: [...path, "closure"] }
      : { from: "computed", how: "least cost of error, crowding, odd numbers and rows" },
  },
];

const otherChoice = (choice: DialChoice, units: Units): string =>
  `instead: ${choice.divisions} × ${choice.divisionLabel}, ${choice.closure}${choice.rows > 1 ? ` in ${choice.rows} rows` : ""}, marks ${formatSize(choice.spacing, units)} apart, error ${formatLength(choice.errorPerTurn, choice.unit, 4)} per turn`;

function stripWorking(
  { handwheel, dial }: HandwheelFinding,
  index: number,
  machine: Machine,
): Working | { missing: string } {
  const wish = handwheel.dial;
  if (dial?.stripLength === undefined || wish?.shape !== "drum") return { missing: MISSING };
  const path = ["handwheels", index, "dial"];
  const title = `${handwheel.name}: length of the strip`;
  const result = { name: "once round", value: dial.stripLength, unit: "mm" };
  if (wish.wrap !== undefined)
    return {
      title,
      formula: "the length measured once round; it beats every formula",
      inputs: [{ name: "wrap", value: wish.wrap, unit: "mm", source: { from: "measured", path: [...path, "wrap"] } }],
      result,
    };
  const { thickness, adhesive } = machine.paper;
  return {
    title,
    formula: "π × (diameter + 2 × adhesive + paper): the strip bends about its middle",
    inputs: [
      {
        name: "diameter",
        value: wish.diameter ?? 0,
        unit: "mm",
        source: { from: "measured", path: [...path, "diameter"] },
      },
      { name: "adhesive", value: adhesive, unit: "mm", source: { from: "stated", path: ["paper", "adhesive"] } },
      { name: "paper", value: thickness, unit: "mm", source: { from: "stated", path: ["paper", "thickness"] } },
    ],
    result,
    notes: ["rule of the drawing office: Cyclopedia of Drawing, 1906"],
  };
}
