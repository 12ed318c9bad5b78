import type { Signed } from "../blocks/shared/stepSigns.js";
import type { SpeedFinding } from "../drive/finding.js";
import { rpmWords } from "../drive/rpmWords.js";
import { doubtRemedy } from "../findings/doubtRemedy.js";
import type { Findings, HandwheelFinding } from "../findings/findings.js";
import { limitWords } from "../findings/limits.js";
import { speedDoubt } from "../findings/speedDoubt.js";
import { travelWords } from "../findings/travelWords.js";
import { unknownDoubt } from "../findings/unknownDoubt.js";
import type { Limits, Units } from "../machine/machine.js";
import { formatDoubted, formatFixed, plural } from "../quantity/format.js";
import { fitted, inTable, namesFit, type Row } from "./inColumns.js";
import { toAdd } from "./toAdd.js";

/** Whether the name of every position has room beside its speed. */
export const positionsFit = ({ drive, machine }: Findings): boolean =>
  drive === undefined || namesFit(speedRows(drive.speeds, machine.limits));

/** What `check` shows of a sound file: a line for each position and each handwheel, what the file could say next. `signed`: by which the
 *  positions are called, where their names have no room. */
export function overview(findings: Findings, signed?: Signed): string[] {
  const { machine, drive, handwheels } = findings;
  const lines = [`${machine.name}${machine.revision ? `, revision ${machine.revision}` : ""}`];
  if (drive) {
    lines.push("", "Spindle speeds, slowest first");
    lines.push(
      ...inTable(speedRows(signed?.findings.drive?.speeds ?? drive.speeds, machine.limits)),
      ...(signed ? [`  ${signed.key}`] : []),
      ...speedDoubt(findings).map((words) => `  ${words}`),
    );
    if (drive.slip !== undefined) lines.push(`  mean slip ${formatFixed(drive.slip * 100, 1)} %`);
  }
  if (handwheels.length > 0)
    lines.push("", "Handwheels: feed a turn, and the dial chosen", ...handwheelLines(findings));
  const remarks = [...handwheels.flatMap((finding) => remarksOf(finding, machine.units)), ...senseAssumed(findings)];
  if (remarks.length > 0) lines.push("", ...remarks);
  lines.push(...toAdd(findings));
  return lines.flatMap((line) => fitted(line));
}

function speedRows(speeds: readonly SpeedFinding[], limits: Limits): Row[] {
  const told = speeds.map((speed) => rpmWords(speed));
  const width = told.reduce((most, rpm) => Math.max(most, rpm.length), 4);
  return speeds.map((speed, index) => [
    speed.position.name,
    `${(told[index] ?? "").padStart(width)} rpm  ${origin(speed)}${beyond(speed, limits)}`,
  ]);
}

/** Positions that the limits forbid, or allow only turned down. */
function beyond(speed: SpeedFinding, limits: Limits): string {
  const words = limitWords(speed, limits);
  return words === undefined ? "" : `; ${words}`;
}

function origin({ from, slip, doubtful, byRatioRpm }: SpeedFinding): string {
  if (from === "unknown") return `not known; ${formatFixed(byRatioRpm, 0)} by ratio, contradicted`;
  if (doubtful) return `${from === "slip" ? "by ratio, less slip" : "by ratio alone"}; reading doubtful`;
  if (from === "measured") return `measured${slip === undefined ? "" : `, slip ${formatFixed(slip * 100, 1)} %`}`;
  return from === "slip" ? "by ratio, less slip" : "by ratio alone, not measured";
}

function handwheelLines({ handwheels, machine: { units } }: Findings): string[] {
  const told = handwheels.map((finding) => {
    const { handwheel, feed } = finding;
    if (!feed) return { name: handwheel.name, feed: withoutFeed(finding), from: "", dial: "" };
    const value = formatDoubted(feed.perTurn, feed.uncertainty, units, units === "mm" ? 4 : 5);
    return { name: handwheel.name, feed: value, from: feedOrigin[feed.from], dial: dialWords(finding) };
  });
  const width = (key: "feed" | "from") =>
    told.reduce((most, line) => (line.from === "" ? most : Math.max(most, line[key].length)), 0);
  const [feed, from] = [width("feed"), width("from")];
  return inTable(
    told.map(
      (line): Row => [
        line.name,
        line.from === "" ? line.feed : `${line.feed.padEnd(feed)}  ${line.from.padEnd(from)}  ${line.dial}`.trimEnd(),
      ],
    ),
  );
}

const withoutFeed = ({ miscounted, study }: HandwheelFinding): string =>
  miscounted
    ? `${study?.jump ? "its readings jump" : "a turn miscounted in its readings"}, no feed told`
    : "feed per turn not given";

const feedOrigin = { readings: "measured", stated: "as stated", screw: "nominal", rack: "nominal" };

/** "169 × 0.05 mm Ø, 2 rows": how the dial is divided, and how the turn is closed. */
function dialWords({ handwheel, dial, doubtful }: HandwheelFinding): string {
  if (doubtful) return "no dial";
  if (!dial) return "";
  const { divisions, divisionLabel, closure, rows } = dial.chosen;
  return `${divisions} × ${divisionLabel}${handwheel.reads === "diameter" ? " Ø" : ""}, ${rows > 1 ? plural(rows, "row") : closure}`;
}

/** Which way the numbers of a dial grow is chosen, where the file does not say it. */
function senseAssumed({ handwheels }: Findings): string[] {
  const names = handwheels.flatMap(({ handwheel, dial }) =>
    dial && handwheel.dial?.senseAssumed ? [handwheel.name] : [],
  );
  return names.length === 0
    ? []
    : [`  ${names.join(", ")}: numbers grow clockwise, since the file does not say which way (dial: increases:)`];
}

/** What is wrong with a handwheel, whole and with its name. */
function remarksOf(finding: HandwheelFinding, units: Units): string[] {
  const { handwheel, doubtful, feed } = finding;
  const unknown = feed && unknownDoubt(feed);
  return [
    ...(unknown === undefined ? [] : [`  ${handwheel.name}: ${unknown}`]),
    ...travelWords(finding, units).map((words) => `  ${words}`),
    ...(doubtful
      ? [
          `  ${handwheel.name}: no dial, since the feed may be off by more than a division of ${doubtful.chosen.divisionLabel}; ${doubtRemedy(finding, doubtful).short}`,
        ]
      : []),
  ];
}
