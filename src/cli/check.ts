import type { Findings, HandwheelFinding } from "../findings/findings.js";
import type { Problem } from "../machine/problem.js";
import { formatProblem } from "../machine/read.js";
import { formatFixed, formatUncertain } from "../quantity/format.js";
import type { Io } from "./io.js";
import { load } from "./load.js";
import { summary } from "./summary.js";

/** Reports every problem of a file, and shows what follows from it. Exit status 1 when it holds an error. */
export async function check(path: string, options: { json: boolean }, io: Io): Promise<number> {
  const { findings, problems } = await load(path);
  if (options.json) io.out(JSON.stringify(summary(findings, problems), null, 2));
  else {
    report(problems, path, io);
    if (findings) io.out(overview(findings).join("\n"));
  }
  return findings ? 0 : 1;
}

/** Problems go to standard error, one a line, so that an editor can jump to them. */
export function report(problems: readonly Problem[], path: string, io: Io): void {
  for (const problem of problems) {
    const line = formatProblem(problem, path);
    io.err(io.colour ? `\u001b[${problem.severity === "error" ? 31 : 33}m${line}\u001b[0m` : line);
  }
}

function overview(findings: Findings): string[] {
  const { machine, drive, handwheels } = findings;
  const lines = [`${machine.name}${machine.revision ? `, revision ${machine.revision}` : ""}`];
  if (drive) {
    lines.push("", "Spindle speeds, slowest first");
    const width = Math.max(...drive.speeds.map(({ position }) => position.name.length));
    for (const { position, rpm, from, slip } of drive.speeds)
      lines.push(
        `  ${position.name.padEnd(width)}  ${formatFixed(rpm, 0).padStart(5)} rpm  ${speedOrigin(from, slip)}`,
      );
    if (drive.slip !== undefined) lines.push(`  mean slip ${formatFixed(drive.slip * 100, 1)} %`);
  }
  for (const finding of handwheels) lines.push("", ...handwheelLines(finding));
  return lines;
}

const speedOrigin = (from: "measured" | "slip" | "ratio", slip: number | undefined): string =>
  from === "measured"
    ? `measured${slip === undefined ? "" : `, slip ${formatFixed(slip * 100, 1)} %`}`
    : from === "slip"
      ? "by ratio, less mean slip"
      : "by ratio alone, not measured";

function handwheelLines({ handwheel, feed, dial }: HandwheelFinding): string[] {
  if (!feed) return [`${handwheel.name}: feed per turn not given`];
  const doubt = feed.uncertainty === undefined ? undefined : formatUncertain(feed.perTurn, feed.uncertainty);
  const lines = [
    `${handwheel.name}: ${doubt ? `${doubt.value} ± ${doubt.uncertainty}` : formatFixed(feed.perTurn, 4)} mm a turn (${feedOrigin[feed.from]}), dial reads ${handwheel.reads}`,
  ];
  if (feed.lostMotion)
    lines.push(
      `  lost motion ${formatFixed(feed.lostMotion.travel, 3)} mm, ${formatFixed(feed.lostMotion.turn, 3)} of a turn`,
    );
  if (feed.nominal !== undefined)
    lines.push(
      `  nominal ${formatFixed(feed.nominal, 4)} mm a turn: a nominal dial is wrong by ${formatFixed((feed.perTurn - feed.nominal) * 1000, 1)} µm a turn`,
    );
  if (!dial) return lines;
  if (dial.stripLength !== undefined) lines.push(`  strip ${formatFixed(dial.stripLength, 2)} mm once round`);
  for (const choice of dial.choices.slice(0, 6)) {
    const rows = choice.rows > 1 ? ` in ${choice.rows} rows` : "";
    lines.push(
      `  ${choice === dial.chosen ? "→" : " "} ${choice.divisions} × ${choice.divisionLabel}, ${choice.closure}${rows}, marks ${formatFixed(choice.spacing, 2)} mm apart: ` +
        `${formatFixed(choice.errorPerTurn, 4)} mm a turn, ${formatFixed(choice.errorOverTravel, 3)} mm over ${formatFixed(choice.overTravel, 0)} mm`,
    );
  }
  return lines;
}

const feedOrigin = {
  readings: "measured",
  stated: "as stated",
  screw: "nominal screw, not measured",
  rack: "nominal rack, not measured",
};
