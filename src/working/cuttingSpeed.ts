import { inward } from "../cutting/choose.js";
import type { CuttingSpeed, SpeedChoice } from "../cutting/finding.js";
import { hazardsOf, mind } from "../cutting/hazards.js";
import { isThreaded } from "../cutting/operations.js";
import { handReversesRpm } from "../cutting/powerTapping.js";
import { figureWords } from "../cutting/published/source.js";
import { cuttingSpeedUnit, rpmFor } from "../cutting/rates.js";
import { sourceTitle } from "../cutting/sources.js";
import { byHandOnly, byHandWords, diametersFor, makesHoles } from "../findings/drills.js";
import type { Findings } from "../findings/findings.js";
import { sameSpeed, type Told, withoutAlike } from "../findings/nearlyAlike.js";
import { sizeWords } from "../findings/sizeName.js";
import { speedFor } from "../findings/speedChoice.js";
import { type Use, usesOf } from "../findings/uses.js";
import type { Limits, Machine, Units, Work } from "../machine/machine.js";
import { formatLength, trimmed } from "../quantity/format.js";
import type { Input, Subject, Working } from "./working.js";

const operations: Readonly<Record<Use, readonly string[]>> = {
  turning: ["turning", "drilling", "facing", "parting", "reaming", "tapping"],
  drilling: ["drilling", "countersinking", "reaming", "tapping"],
};

/** Which position is recommended for every material, diameter and operation of the file. */
export function explainCuttingSpeed(findings: Findings): Subject[] {
  const { machine, drive } = findings;
  if (drive === undefined) return [];
  const { materials } = machine.work;
  return operations[usesOf(machine)[0]].flatMap((operation) =>
    materials.flatMap((material, row) =>
      diametersFor(operation, machine).map((diameter, column) => ({
        name: `${material}, ${sizeWords(operation, diameter, machine)}, ${operation}`,
        explain: () => explainOne(findings, operation, row, column),
      })),
    ),
  );
}

function explainOne(findings: Findings, operation: string, row: number, column: number): Working | { missing: string } {
  const { machine, drive } = findings;
  const { tool, materials, drills } = machine.work;
  const [material = "", diameter = 0] = [materials[row], diametersFor(operation, machine)[column]];
  if (byHandOnly(operation, machine))
    return { missing: `${byHandWords(machine).toLowerCase()}: the file says neither drive: reverses: nor clutch:` };
  const holes = makesHoles(operation);
  const choice = speedFor({ operation, material, diameter }, findings);
  if (choice === undefined || drive === undefined)
    return { missing: `no cutting speed is known for ${operation} ${material} with ${tool}${mind(material)}` };
  const { band } = choice;
  const told = withoutAlike(drive.speeds, machine.limits);
  const speed = cuttingSpeedUnit[machine.units];
  const titles = band.sources.map(sourceTitle).join("; ");
  const source = `${titles}${band.confidence === "memory" ? " (part of it from memory)" : ""}`;
  return {
    title: `Speed for ${operation} ${material}, ${sizeWords(operation, diameter, machine)}, ${tool}`,
    formula: `n = ${perTurn[machine.units]} v ÷ (π d); the fastest position not above the band's n nor any limit; of two, the slower`,
    inputs: [
      {
        name: "diameter d",
        value: diameter,
        unit: "mm",
        source:
          holes && drills === undefined
            ? { from: "assumed", why: "a usual drill: give work: drills: for your own" }
            : {
                from: "stated",
                path: holes ? ["work", "drills", drills?.indexOf(diameter) ?? 0] : ["work", "diameters", column],
              },
      },
      { name: "cutting speed v, least", value: band.slowest, unit: "m/min", source: { from: "looked up", source } },
      { name: "cutting speed v, most", value: band.fastest, unit: "m/min", source: { from: "looked up", source } },
      ...factorInputs(band),
      ...aimInput(band, machine.work),
      ...bandSpeeds(band.slowest, band.most, diameter, machine.units),
      ...limits(machine.limits),
      {
        name: "speeds to choose from",
        value: told.speeds.map(({ rpm }) => rpm),
        unit: "rpm",
        source: { from: "computed", how: "explain speed shows each" },
      },
    ],
    result: {
      name: "position",
      value: choice.speed === undefined ? "none" : choice.speed.position.name,
      unit: "",
    },
    notes: [
      ...(choice.rpm === undefined || choice.metresPerMinute === undefined
        ? []
        : [
            `it runs at ${trimmed(choice.rpm, 0)} rpm, which cuts at ${trimmed(choice.metresPerMinute / speed.metresPerMinute, 1)} ${speed.name}`,
          ]),
      ...alikeNotes(told),
      verdictWords(choice),
      ...(operation === "facing" || operation === "parting" ? inwardNotes(diameter, band, told, machine) : []),
      ...rowNotes(band, machine.units),
      // The sentence's own full stop is set where notes are printed.
      ...hazardsOf([material]).map(({ caution }) => caution.replace(/\.$/, "")),
    ],
  };
}

function verdictWords({ verdict, heldBy, band }: SpeedChoice): string {
  if (heldBy === "hand" && isThreaded(band.operation))
    return `no faster than ${trimmed(handReversesRpm, 0)} rpm, at which a hand still reverses a tap in time`;
  return heldBy === undefined ? verdict : `${verdict}: the ${heldBy}'s`;
}

/** How much of the published range is used. */
const aimInput = ({ most, nearest }: CuttingSpeed, { firmness = "light" }: Work): Input[] =>
  nearest === undefined
    ? []
    : [
        {
          name: "v aimed at, most",
          value: most,
          unit: "m/min",
          source: {
            from: "computed",
            how: `the ${firmness === "light" ? "middle" : "upper end"} of what ${sourceTitle(nearest)} gives: a ${firmness} machine`,
          },
        },
      ];

/** What the published figures were multiplied by: an operation, a tool, a light machine. */
const factorInputs = ({ factors }: CuttingSpeed): Input[] =>
  factors.map(({ what, from, to, source, confidence }) => ({
    name: `of which × for ${what}`,
    value: from === to ? from : [from, to],
    unit: "",
    source:
      source === "the machine file"
        ? { from: "stated", path: ["work", "derating"] }
        : { from: "looked up", source: `${sourceTitle(source)}${confidence === "memory" ? " (from memory)" : ""}` },
  }));

/** Which position is not among the speeds, and which one's speed is taken for it. */
const alikeNotes = ({ alike, covered }: Told): string[] => [
  ...sameSpeed(alike).map(([as, ...others]) => {
    const names = others.map(({ position, rpm }) => `${position.name} (${trimmed(rpm, 0)} rpm)`).join(", ");
    return `${as?.position.name} stands for ${names} too: nearly the same speed`;
  }),
  ...(covered.length === 0
    ? []
    : [`left out, as other positions give their speeds: ${covered.map(({ position }) => position.name).join(", ")}`]),
];

/** From the outside in: where the work has become small enough for a faster position. */
const inwardNotes = (diameter: number, band: CuttingSpeed, { speeds }: Told, machine: Machine): string[] =>
  inward(diameter, band, speeds, machine.limits).then.map(
    ({ speed, below }) =>
      `${speed.position.name} may be used once the cut is below ${formatLength(below, machine.units)}`,
  );

/** Every published row that was found, as printed, and in the reader's unit where that is another; what stands apart is not in the
 *  range. */
const rowNotes = ({ rows, apart }: CuttingSpeed, units: Units): string[] =>
  rows.map(({ from, to, unit, source, where, confidence, toolUnnamed, ...row }) => {
    const printed = `${from === to ? from : `${from} to ${to}`} ${unit}`;
    const remarks = [
      figureWords(row),
      toolUnnamed ? "printed without naming the tool steel" : "",
      apart.some((one) => one.source === source) ? "not counted: twice or half of what the others give" : "",
    ].filter((words) => words !== "");
    const memory = confidence === "memory" ? " (from memory)" : "";
    const own = cuttingSpeedUnit[units];
    const figure = (value: number) =>
      trimmed((value * (unit === "m/min" ? 1 : cuttingSpeedUnit.in.metresPerMinute)) / own.metresPerMinute, 0);
    const told =
      unit === "rpm" || unit === own.name
        ? printed
        : `${from === to ? figure(from) : `${figure(from)} to ${figure(to)}`} ${own.name} (printed as ${printed})`;
    return `${[`${told}: ${sourceTitle(source)}, ${where}${memory}`, ...remarks].join("; ")}`;
  });

/** Millimetres in a metre, or inches in a foot: a cutting speed goes by the one, a diameter by the other. */
const perTurn: Readonly<Record<Units, number>> = { mm: 1000, in: 12 };

function bandSpeeds(slowest: number, fastest: number, diameter: number, units: Units): Input[] {
  const source = { from: "computed", how: `${perTurn[units]} v ÷ (π d)` } as const;
  return [
    { name: "n, least", value: rpmFor(slowest, diameter), unit: "rpm", source },
    { name: "n, most", value: rpmFor(fastest, diameter), unit: "rpm", source },
  ];
}

function limits({ chuckRpm, spindleRpm }: Limits): Input[] {
  const limit = (name: string, key: string, rpm: number | undefined): Input[] =>
    rpm === undefined ? [] : [{ name, value: rpm, unit: "rpm", source: { from: "stated", path: ["limits", key] } }];
  return [...limit("limit of the chuck", "chuck", chuckRpm), ...limit("limit of the spindle", "spindle", spindleRpm)];
}
