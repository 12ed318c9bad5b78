import { chooseSpeed } from "../cutting/choose.js";
import { cuttingSpeed } from "../cutting/cuttingSpeeds.js";
import type { SpeedChoice } from "../cutting/finding.js";
import { beltFinding } from "../drive/beltFinding.js";
import type { DriveFinding } from "../drive/finding.js";
import { rpmWords } from "../drive/rpmWords.js";
import { changed, speedsAfter } from "../drive/suppose.js";
import type { Findings } from "../findings/findings.js";
import { limitWords } from "../findings/limits.js";
import { diametersFor, usesOf } from "../findings/uses.js";
import type { Drive, Machine } from "../machine/machine.js";
import { largestOf } from "../quantity/extremes.js";
import { formatFixed, trimmed } from "../quantity/format.js";
import { mmPer } from "../quantity/length.js";
import { Unanswered } from "./unanswered.js";

export type Supposed = { readonly changes: readonly string[]; readonly machine: Machine; readonly drive: DriveFinding };

/** The file's drive with the asked changes, one after the other; the file itself stays as it is.
 *  @throws Unanswered where a change makes no sense. */
export function supposed({ machine }: Findings, wishes: readonly string[]): Supposed {
  const { drive } = machine;
  if (drive === undefined) throw new Unanswered(`the file has no drive to change; give it a motor and stages`);
  let now: Drive = drive;
  const changes: string[] = [];
  for (const wish of wishes) {
    const result = changed(now, wish, machine.units);
    if ("what" in result) throw new Unanswered(`suppose: ${result.what}; ${result.remedy}`);
    changes.push(result.words);
    now = result.drive;
  }
  return { changes, machine: { ...machine, drive: now }, drive: speedsAfter(drive, now) };
}

const HEAD = "position, rpm";

/** Speeds, belts and the recommended positions, before and after. */
export function supposedLines(findings: Findings, after: Supposed): string[] {
  const before = findings.drive?.speeds ?? [];
  const width = Math.max(HEAD.length, largestOf(before.map(({ position }) => position.name.length)));
  return [
    "",
    `Supposed: ${after.changes.join("; ")}`,
    `  ${HEAD.padEnd(width)}  ${"before".padStart(7)}  ${"after".padStart(7)}    ${"change".padStart(9)}`,
    ...before.map((was) => {
      const then = after.drive.speeds.find((speed) => speed.position.name === was.position.name) ?? was;
      const change = `${formatFixed((then.rpm / was.rpm - 1) * 100, 1).padStart(7)} %  ${origin[then.from]}`;
      const words = limitWords(then, findings.machine.limits);
      const limit = words === undefined ? "" : `  ${words}`;
      const [from, to] = [was, then].map((speed) => rpmWords({ ...speed, slowestRpm: speed.rpm }).padStart(7));
      return `  ${was.position.name.padEnd(width)}  ${from}  ${to}    ${change}${limit}`;
    }),
    ...beltLines(findings.machine, after.machine),
    ...choiceLines(findings, after),
  ];
}

const origin = {
  measured: "measured, unchanged",
  slip: "by ratio, less slip",
  ratio: "by ratio alone",
  unknown: "not known",
};

function beltLines(before: Machine, after: Machine): string[] {
  const unit = mmPer[before.units];
  const places = before.units === "mm" ? 1 : 3;
  const lines = (before.drive?.stages ?? []).flatMap((stage, index) => {
    const [was, is] = [stage, after.drive?.stages[index] ?? stage].map((one) => beltFinding(one));
    return (was?.steps ?? []).flatMap((step, place) => {
      const then = is?.steps[place];
      if (then === undefined || Math.abs(then.length - step.length) < 0.05) return [];
      const name = [stage.name, step.label].filter((word) => word !== "").join(" ");
      return [
        `  ${name}: ${formatFixed(step.length / unit, places)} → ${formatFixed(then.length / unit, places)} ${before.units}`,
      ];
    });
  });
  return lines.length === 0 ? [] : ["", "Belt lengths that change", ...lines];
}

function choiceLines({ machine, drive }: Findings, after: Supposed): string[] {
  const { materials, tool } = machine.work;
  const [use] = usesOf(machine);
  const diameters = diametersFor(use, machine);
  const unit = mmPer[machine.units];
  const lines = materials.flatMap((material) =>
    diameters.flatMap((diameter) => {
      const band = cuttingSpeed(material, tool, use, { ...machine.work, diameter });
      if (band === undefined || drive === undefined) return [];
      const [was, is] = [drive.speeds, after.drive.speeds].map((list) =>
        choiceWords(chooseSpeed(diameter, band, list, machine.limits)),
      );
      return [
        `  ${material}, ${trimmed(diameter / unit, 4)} ${machine.units}: ${was === is ? `${was}, as before` : `${was} → ${is}`}`,
      ];
    }),
  );
  return lines.length === 0 ? [] : ["", `Positions for ${use}, before → after`, ...lines];
}

const choiceWords = ({ speed, rpm }: SpeedChoice): string =>
  speed === undefined || rpm === undefined ? "none" : `${speed.position.name} ${formatFixed(rpm, 0)}`;
