import { type DrillSize, type DrillSystem, drillSizes, drillSystems } from "../../cutting/drillSizes.js";
import type { CuttingSpeed, SpeedChoice } from "../../cutting/finding.js";
import { coolant } from "../../cutting/materials.js";
import { findOperation, operationWords } from "../../cutting/operations.js";
import { burns } from "../../findings/chipFire.js";
import { choiceDoubt } from "../../findings/limits.js";
import { sizeName } from "../../findings/sizeName.js";
import { speedFor, speedForHole } from "../../findings/speedChoice.js";
import { speedDoubt } from "../../findings/speedDoubt.js";
import { BY_HAND, byHandOnly, diametersFor, largestDrill, makesHoles } from "../../findings/uses.js";
import { usualThreads } from "../../findings/usualThreads.js";
import type { Limits, Machine, Units } from "../../machine/machine.js";
import { capital, formatFixed, sizeFigure } from "../../quantity/format.js";
import { block, type Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { heading, whole } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, table } from "../shared/table.js";
import { bandNotes, bandText } from "./bandNotes.js";

/** Material × diameter → belt position and speed, for one operation with the file's tool. `sizes`: the file's diameters
 *  (work; its drills where a hole is made), drills of its unit (drills: metric, or fractions of an inch), or one system of drills, from `least` to `most` mm. `dense` leaves out the words under a
 *  position; bold then means in the band. */
export const speedTable = block(
  { operation: "turning", sizes: "work", least: 1, most: 13, every: 1, dense: false, coolant: false },
  ({ findings, settings, width, height }): Run[] => {
    const { machine, drive } = findings;
    if (drive === undefined) return [];
    const { tool, materials } = machine.work;
    const { dense } = settings;
    const operation = findOperation(settings.operation)?.name ?? settings.operation;
    const instead = (words: string): Run[] => [
      ...heading(capital(operation), width, 2, size.text),
      ...paragraph(words, width, { size: size.text, weight: "bold" }),
    ];
    if (byHandOnly(operation, machine))
      return instead(
        `${BY_HAND}: the file says neither drive: reverses: nor clutch:, without which a tool that binds in its hole breaks.`,
      );
    const threaded = isThreaded(operation);
    const system = threaded ? undefined : drillSystemOf(settings.sizes, machine.units);
    const sizes = sizesOf({ ...settings, operation }, machine);
    if (sizes.length === 0)
      return instead("None of the drills is within the largest that the file allows (limits: drill:).");
    // Metric drills are called by their millimetres.
    const decimals = system !== undefined && (system !== "metric" || machine.units !== "mm");
    const speedOf = makesHoles(operation) ? speedForHole : speedFor;
    const choices = sizes.map(({ diameter }) =>
      materials.map((material) => speedOf({ operation, material, diameter }, findings)),
    );
    // Where a source goes by size it may serve the smaller ones alone.
    const bands = materials.map((_, column) => choices.flatMap((row) => row[column]?.band ?? []).at(-1));
    const columns: Column[] = [
      system !== undefined
        ? { heading: [system === "metric" ? "mm" : system], align: "middle" }
        : {
            heading: threaded ? ["thread"] : [makesHoles(operation) ? "drill" : "diameter", machine.units],
            align: "middle",
          },
      ...(decimals ? [{ heading: [machine.units], align: "decimal" } as const] : []),
      ...materials.map(
        (material, index): Column => ({ heading: [material, bandWords(bands[index], machine.units)], align: "middle" }),
      ),
    ];
    const rows = sizes.map(({ name, diameter }, index) => [
      { text: name, weight: "bold" } satisfies Cell,
      ...(decimals ? [{ text: sizeFigure(diameter, machine.units, machine.units === "mm" ? 2 : 3) }] : []),
      ...(choices[index] ?? []).map((choice, column): Cell => {
        // A tap rubs: where fine chips burn it is turned by hand.
        if (threaded && burns(materials[column] ?? "")) return { text: "by hand", ink: "accent" };
        return choice ? cell(choice, dense, machine.limits) : { text: "no data" };
      }),
    ]);
    const marked = dense && choices.flat().some((choice) => choiceDoubt(choice?.speed, machine.limits) !== "");
    const title = `${operation}, ${tool}: belt position and rpm by ${findOperation(operation)?.diameter ?? "diameter"}`;
    const told = (words: readonly string[], em: number) =>
      words.flatMap((line) => paragraph(line, width, { size: em, weight: "bold", ink: "accent", gap: 0.5 }));
    // The belt card says it in its notes on the drive.
    const doubt = told(settings.coolant ? speedDoubt(findings) : [], size.text);
    const head = heading(capital(title), width, 2, size.text);
    // A table of nothing but "none" would hide why.
    if (findings.drive?.astray)
      return whole([...head, ...doubt, ...told(["None: no speed of this machine is known."], size.text)], height);
    const runs = [
      ...head,
      ...doubt,
      ...table(columns, rows, { width, size: dense ? size.text : size.text, ruled: !dense }),
      ...told(
        marked ? ["A question mark: measure that speed first, or a reading of it is doubtful."] : [],
        size.source,
      ),
      ...paragraph(notes(bands, machine, { ...settings, operation }), width, { size: size.source, gap: 1 }),
    ];
    return whole(runs, height);
  },
  { operation: operationWords, sizes: ["work", "drills", ...drillSystems] },
);

type Settings = {
  readonly operation: string;
  readonly sizes: string;
  readonly least: number;
  readonly most: number;
  readonly every: number;
  readonly dense: boolean;
  readonly coolant: boolean;
};

const isThreaded = (operation: string): boolean => operation === "tapping" || operation === "threading by die";

/** Undefined where the sizes are not those of drills. */
function drillSystemOf(sizes: string, units: Units): DrillSystem | undefined {
  if (sizes === "drills") return units === "mm" ? "metric" : "fraction";
  return drillSystems.find((system) => system === sizes);
}

function sizesOf({ operation, sizes, least, most, every }: Settings, machine: Machine): DrillSize[] {
  if (isThreaded(operation)) return usualThreads(machine.units);
  const system = drillSystemOf(sizes, machine.units);
  if (system !== undefined)
    return drillSizes(system, least, Math.min(most, largestDrill(machine.limits))).filter(
      (_, index) => index % Math.max(1, every) === 0,
    );
  return diametersFor(operation, machine).map((diameter) => ({
    name: sizeName(operation, diameter, machine),
    diameter,
  }));
}

const bandWords = (band: CuttingSpeed | undefined, units: Units): string =>
  band === undefined ? "" : bandText(band, units);

function notes(bands: readonly (CuttingSpeed | undefined)[], machine: Machine, settings: Settings): string {
  const { units, work } = machine;
  const wet = work.materials.flatMap((material) => {
    const found = coolant(material);
    return found === undefined ? [] : [{ material, ...found }];
  });
  // Where the sheet tells what to wet the cut with, and on the first table of any card.
  const warned = settings.coolant || settings.operation === "turning";
  const cautions = warned ? [...new Set(wet.flatMap(({ caution }) => caution ?? []))] : [];
  return [
    `${settings.dense ? "Bold: in the band; plain: the fastest below it. " : ""}Between two positions the slower is given.`,
    ...(settings.coolant
      ? [`To wet the cut: ${wet.map(({ material, words }) => `${material} ${words}`).join("; ")}.`]
      : []),
    ...cautions,
    ...(settings.operation === "tapping"
      ? [
          "Taps driven by the machine; by hand they need no speed. A thread is cut in a second or two: set the depth stop, and reverse, or let the clutch slip, before the bottom of the hole.",
        ]
      : []),
    ...bandNotes(
      bands.flatMap((band) => band ?? []),
      work,
      units,
    ),
  ].join(" ");
}

function cell({ verdict, speed, rpm, heldBy }: SpeedChoice, dense: boolean, limits: Limits): Cell {
  const small = (note: string) => (dense ? {} : { note });
  if (speed === undefined || rpm === undefined)
    return {
      text: "none",
      weight: "bold",
      ink: "accent",
      ...small(heldBy === undefined ? verdict : `beyond the ${heldBy}'s limit`),
    };
  // The doubt takes the place of a note: cells have room for one.
  const doubt = choiceDoubt(speed, limits);
  const note =
    doubt !== ""
      ? doubt
      : verdict === "slower than the band"
        ? "below the band"
        : verdict === "held by a limit"
          ? `held by the ${heldBy}`
          : "";
  return {
    text: `${speed.position.name}  ${formatFixed(rpm, 0)}${dense && doubt !== "" ? "?" : ""}`,
    weight: verdict === "in the band" ? "bold" : "regular",
    ...small(note),
    ...(doubt !== "" && { ink: "accent" }),
  };
}
