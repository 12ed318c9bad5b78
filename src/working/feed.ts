import type { FeedFinding } from "../feed/finding.js";
import { roundingDeviation } from "../feed/gauge.js";
import { studentT95 } from "../feed/studentT.js";
import { lostMotionDoubted } from "../findings/compute.js";
import type { Findings, HandwheelFinding } from "../findings/findings.js";
import type { Feed, Units } from "../machine/machine.js";
import type { Path } from "../machine/problem.js";
import { trimmedSize } from "../quantity/format.js";
import type { Amount, Input, Source, Subject, Working } from "./working.js";

/** True travel per turn of every handwheel. */
export function explainFeed({ machine, handwheels }: Findings): Subject[] {
  return handwheels.map((finding, index) => ({
    name: finding.handwheel.name,
    explain: () => feedWorking(finding, index, machine.units),
  }));
}

/** Lost motion of every handwheel. */
export function explainLostMotion({ handwheels }: Findings): Subject[] {
  return handwheels.map((finding, index) => ({
    name: finding.handwheel.name,
    explain: () => lostMotionWorking(finding, index),
  }));
}

const feedPath = (index: number): Path => ["handwheels", index, "feed"];

/** Where a feed came from, for workings that build on it. */
export const feedSource = ({ from }: FeedFinding, index: number): Source =>
  from === "stated"
    ? { from: "stated", path: feedPath(index) }
    : { from: "computed", how: `explain feed shows it (from ${from})` };

function feedWorking(
  { handwheel, feed }: HandwheelFinding,
  index: number,
  units: Units,
): Working | { missing: string } {
  const given = handwheel.feed;
  if (given === undefined) return { missing: "the file gives no feed: measured readings, a screw, a rack or a length" };
  if (feed === undefined) return { missing: "the readings cannot carry a line: give at least 3, at 2 different turns" };
  const result = { name: "feed per turn", value: feed.perTurn, unit: "mm/turn" };
  const doubt = feed.uncertainty === undefined ? {} : { uncertainty: feed.uncertainty };
  const compared =
    feed.nominal === undefined
      ? []
      : [`the maker meant ${trimmedSize(feed.nominal, units, 5)} per turn; that is only compared against, never used`];
  return {
    title: `${handwheel.name}: feed per turn`,
    ...byForm(given, feed, index, units),
    result,
    ...doubt,
    notes: [...(feed.uncertainty === undefined ? ["nothing says how good this value is"] : []), ...compared],
  };
}

/** By the figures that the file gives, not by what they are turned into. */
function byForm(given: Feed, feed: FeedFinding, index: number, units: Units): Pick<Working, "formula" | "inputs"> {
  const path = feedPath(index);
  switch (given.from) {
    case "stated":
      return {
        formula: "as the file says it",
        inputs: [{ name: "feed", value: given.perTurn, unit: "mm/turn", source: { from: "stated", path } }],
      };
    case "screw": {
      const source: Source = { from: "stated", path };
      const { pitch, starts, tpi } = given;
      return {
        formula: tpi === undefined ? "pitch × starts" : `${inch[units]} ÷ threads per inch × starts`,
        inputs: [
          tpi === undefined
            ? { name: "pitch", value: pitch, unit: "mm", source }
            : { name: "threads per inch", value: tpi, unit: "tpi", source },
          { name: "starts", value: starts, unit: "", source: { from: "stated", path: [...path, "screw", "starts"] } },
        ],
      };
    }
    case "rack":
      return byRack(given, [...path, "rack"], units);
    case "readings":
      return {
        formula:
          "slope of the least-squares line through travel against turns, with an intercept; ± t × scatter ÷ √Σ(turns − mean)²",
        inputs: [...readingInputs(given, path), ...fitInputs(feed, given.gauge)],
      };
  }
}

const inch: Readonly<Record<Units, string>> = { mm: "25.4 mm", in: "1 in" };

function byRack(rack: Feed & { from: "rack" }, path: Path, units: Units): Pick<Working, "formula" | "inputs"> {
  const { module, given, teeth, reduction } = rack;
  const source: Source = { from: "stated", path };
  const geared = reduction[0] !== reduction[1];
  const [formula, pitch] = (
    given === undefined
      ? ["π × module × teeth", { name: "module, always in mm", value: module, unit: "" }]
      : given.by === "DP"
        ? [`π × teeth ÷ DP${units === "in" ? "" : ` × ${inch[units]}`}`, { name: "DP", value: given.value, unit: "" }]
        : ["pitch × teeth", { name: "pitch, tooth to tooth", value: given.value, unit: "mm" }]
  ) satisfies [string, Amount];
  return {
    formula: geared ? `${formula} × reduction, driving ÷ driven` : formula,
    inputs: [
      { ...pitch, source },
      { name: "teeth", value: teeth, unit: "", source },
      ...(geared ? [{ name: "reduction", value: reduction.join(" ÷ "), unit: "", source }] : []),
    ],
  };
}

const readingsPath = (path: Path, key: string): Path => [...path, "readings", key];

const measuredIn =
  ({ file }: Feed & { from: "readings" }, path: Path) =>
  (key: string): Source => ({ from: "measured", path: readingsPath(path, key), ...(file !== undefined && { file }) });

function readingInputs(given: Feed & { from: "readings" }, path: Path): Input[] {
  const measured = measuredIn(given, path);
  return [
    { name: "turns", value: given.turns, unit: "", source: measured("turns") },
    { name: "travel", value: given.travel, unit: "mm", source: measured("travel") },
    ...(given.gauge === undefined
      ? []
      : [
          {
            name: "gauge, smallest graduation",
            value: given.gauge,
            unit: "mm",
            source: { from: "stated", path: readingsPath(path, "gauge") } as const,
          },
        ]),
  ];
}

function fitInputs({ fit }: FeedFinding, gauge: number | undefined): Input[] {
  if (fit === undefined) return [];
  const source = (how: string): Source => ({ from: "computed", how });
  return [
    {
      name: "scatter about the line",
      value: fit.residualDeviation,
      unit: "mm",
      source: source(`√(Σ residual² ÷ ${fit.degreesOfFreedom})`),
    },
    ...(gauge === undefined
      ? []
      : [
          {
            name: "least scatter that the gauge can show",
            value: roundingDeviation(gauge),
            unit: "mm",
            source: source("graduation ÷ √12 (GUM, F.2.2.1, memory); the larger of the two counts"),
          },
        ]),
    {
      name: "t",
      value: studentT95(fit.degreesOfFreedom),
      unit: "",
      source: source(`Student's t, 95 %, ${fit.degreesOfFreedom} degrees of freedom`),
    },
  ];
}

function lostMotionWorking({ handwheel, feed, study }: HandwheelFinding, index: number): Working | { missing: string } {
  const given = handwheel.feed;
  const lost = feed?.lostMotion;
  if (study?.back && lostMotionDoubted(study))
    return {
      missing: study.back.contradiction
        ? "lost motion is not known: the return readings contradict the way out; take them again"
        : study.back.miscounted
          ? "lost motion is not known: a turn was miscounted on the way back; take the return readings again"
          : "lost motion is not known: readings on the way back do not fit the others; take them again",
    };
  if (given?.from !== "readings" || given.back === undefined || lost === undefined)
    return { missing: "lost motion was not measured: readings need a return list, taken on the way back" };
  const measured = measuredIn(given, feedPath(index));
  return {
    title: `${handwheel.name}: lost motion`,
    formula: lost.worst
      ? `mean of (return − travel) at equal turns from turn ${lost.worst.fromTurn} to ${lost.worst.toTurn}, where it is largest; as turn: ÷ feed per turn`
      : "mean of (return − travel) at equal turns; as turn: ÷ feed per turn",
    inputs: [
      { name: "travel", value: given.travel, unit: "mm", source: measured("travel") },
      { name: "return", value: given.back, unit: "mm", source: measured("return") },
      {
        name: "feed per turn",
        value: feed?.perTurn ?? 0,
        unit: "mm/turn",
        source: { from: "computed", how: "explain feed shows it" },
      },
      {
        name: "lost motion as turn",
        value: lost.turn,
        unit: "turn",
        source: { from: "computed", how: "lost motion ÷ feed per turn" },
      },
    ],
    result: { name: "lost motion", value: lost.travel, unit: "mm" },
    ...(lost.uncertainty === undefined ? {} : { uncertainty: lost.uncertainty }),
  };
}
