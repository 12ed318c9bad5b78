import { withSigns } from "../blocks/shared/stepSigns.js";
import type { SpeedChoice } from "../cutting/finding.js";
import { beltFinding } from "../drive/beltFinding.js";
import type { DriveFinding } from "../drive/finding.js";
import { rpmWords } from "../drive/rpmWords.js";
import { changed, speedsAfter } from "../drive/suppose.js";
import { beltSums } from "../findings/beltSums.js";
import { diametersFor } from "../findings/drills.js";
import type { Findings } from "../findings/findings.js";
import { limitWords } from "../findings/limits.js";
import { bandFor, speedInBand } from "../findings/speedChoice.js";
import { usesOf } from "../findings/uses.js";
import type { Drive, Machine } from "../machine/machine.js";
import { largestOf } from "../quantity/extremes.js";
import { formatFixed, trimmed } from "../quantity/format.js";
import { mmPer } from "../quantity/length.js";
import type { Laid, LaidRow } from "./laid.js";
import { Unanswered } from "./unanswered.js";

export type Supposed = { readonly changes: readonly string[]; readonly machine: Machine; readonly drive: DriveFinding };

/** The file's drive with the asked changes, one after the other, several in one with semicolons; the file itself stays as it is.
 *  @throws Unanswered where a change makes no sense. */
export function supposed(findings: Findings, wishes: readonly string[]): Supposed {
  const { machine } = findings;
  const { drive } = machine;
  if (drive === undefined) throw new Unanswered(`the file has no drive to change; give it a motor and stages`);
  let now: Drive = drive;
  const changes: string[] = [];
  for (const wish of wishes.flatMap((one) => partsOf(one, findings))) {
    const own = changed(now, wish, machine.units);
    const result = "what" in own ? changed(now, stepInFull(wish, findings), machine.units) : own;
    if ("what" in result) throw new Unanswered(`suppose: ${result.what}; ${result.remedy}`);
    changes.push(result.words);
    now = result.drive;
  }
  return { changes, machine: { ...machine, drive: now }, drive: speedsAfter(drive, now) };
}

/** What semicolons part, where they are not in a name. */
function partsOf(wish: string, { machine: { drive, units } }: Findings): string[] {
  if (drive !== undefined && "drive" in changed(drive, wish, units)) return [wish];
  const parts = wish.split(";").filter((part) => part.trim() !== "");
  return parts.length === 0 ? [wish] : parts;
}

/** A step called by its sign alone, or with its belt's name before that, as "A 60 to 150": by its own name. */
function stepInFull(wish: string, findings: Findings): string {
  const signed = withSigns(findings)?.findings.machine.drive?.stages ?? [];
  const words = wish.trim().replace(/\s+/g, " ");
  for (const [index, { name, steps }] of (findings.machine.drive?.stages ?? []).entries())
    for (const [place, { label }] of steps.entries()) {
      const sign = signed[index]?.steps[place]?.label ?? label;
      // A step without a name has no sign.
      if (sign === "") continue;
      const said = [sign, `${name} ${sign}`].find((one) => words.toLowerCase().startsWith(`${one} `.toLowerCase()));
      const sizes = said === undefined ? "" : words.slice(said.length + 1);
      if (/^[\d.]/.test(sizes) && sizes.includes(" to ")) return `${name} ${label} ${sizes}`;
    }
  return wish;
}

const COLUMNS = ["position, rpm", "before", "after", "change"] as const;

/** Speeds, belts and the recommended positions, before and after. */
export function supposedLaid(findings: Findings, after: Supposed): Laid[] {
  const before = findings.drive?.speeds ?? [];
  // As the list of all positions calls them, with what signs stand for.
  const signed = withSigns(findings);
  const called = (name: string): string => {
    const at = before.findIndex(({ position }) => position.name === name);
    return signed?.findings.drive?.speeds[at]?.position.name ?? name;
  };
  return [
    {
      heading: `Supposed: ${after.changes.join("; ")}`,
      columns: COLUMNS,
      rows: before.map((was) => {
        const then = after.drive.speeds.find((speed) => speed.position.name === was.position.name) ?? was;
        const [from = "", to = ""] = [was, then].map((speed) => rpmWords({ ...speed, slowestRpm: speed.rpm }));
        const change = `${formatFixed((then.rpm / was.rpm - 1) * 100, 1)} %`;
        const limit = limitWords(then, findings.machine.limits) ?? "";
        return { cells: [called(was.position.name), from, to, change, origin[then.from], limit] };
      }),
      after: [...(signed ? [signed.key] : []), ...newSums(findings.machine, after.machine)],
    },
    ...beltLengths(findings.machine, after.machine),
    ...positionsChosen(findings, after, called),
  ];
}

/** What a supposed pulley does to its belt, where it did not before. */
function newSums(before: Machine, { drive, units }: Machine): string[] {
  const was = new Set((before.drive ? beltSums(before.drive, units) : []).map(({ what }) => what));
  const is = drive ? beltSums(drive, units) : [];
  return is.flatMap(({ what }) => (was.has(what) ? [] : [`${what}.`]));
}

/** The same as a terminal shows it, an empty line before each part. */
export const supposedLines = (parts: readonly Laid[]): string[] =>
  parts.flatMap((one) => ["", one.heading, ...(one.columns === undefined ? changeLines(one) : speedLines(one))]);

function speedLines({ columns = [], rows, after: below = [] }: Laid): string[] {
  const [head = "", before = "", after = "", change = ""] = columns;
  const width = Math.max(head.length, largestOf(rows.map(({ cells: [name = ""] }) => name.length)));
  return [
    `  ${head.padEnd(width)}  ${before.padStart(7)}  ${after.padStart(7)}    ${change.padStart(9)}`,
    ...rows.map(({ cells: [name = "", from = "", to = "", by = "", whence = "", limit = ""] }) =>
      `  ${name.padEnd(width)}  ${from.padStart(7)}  ${to.padStart(7)}    ${by.padStart(9)}  ${whence}  ${limit}`.trimEnd(),
    ),
    ...below.map((line) => `  ${line}`),
  ];
}

const changeLines = ({ rows }: Laid): string[] =>
  rows.map(({ cells: [name, was, is], same }) => `  ${name}: ${same ? `${was}, as before` : `${was} → ${is}`}`);

/** Where a speed is known from. */
export const origin = {
  measured: "measured, unchanged",
  slip: "by ratio, less slip",
  ratio: "by ratio alone",
  unknown: "not known",
};

function beltLengths(before: Machine, after: Machine): Laid[] {
  const unit = mmPer[before.units];
  const places = before.units === "mm" ? 1 : 3;
  const rows = (before.drive?.stages ?? []).flatMap((stage, index) => {
    const [was, is] = [stage, after.drive?.stages[index] ?? stage].map((one) => beltFinding(one));
    return (was?.steps ?? []).flatMap((step, place) => {
      const then = is?.steps[place];
      if (then === undefined || Math.abs(then.length - step.length) < 0.05) return [];
      const name = [stage.name, step.label].filter((word) => word !== "").join(" ");
      const length = (mm: number) => formatFixed(mm / unit, places);
      return [{ cells: [name, length(step.length), `${length(then.length)} ${before.units}`] }];
    });
  });
  return rows.length === 0 ? [] : [{ heading: "Belt lengths that change", rows }];
}

function positionsChosen(findings: Findings, after: Supposed, called: (name: string) => string): Laid[] {
  const { machine, drive } = findings;
  const [use] = usesOf(machine);
  const diameters = diametersFor(use, machine);
  const unit = mmPer[machine.units];
  const rows = machine.work.materials.flatMap((material) =>
    diameters.flatMap((diameter): LaidRow[] => {
      const band = bandFor({ operation: use, material, diameter }, findings);
      if (band === undefined || drive === undefined) return [];
      const [was, is] = [drive, after.drive].map((one) =>
        choiceWords(speedInBand(diameter, band, { machine, drive: one }), called),
      );
      const name = `${material}, ${trimmed(diameter / unit, 4)} ${machine.units}`;
      return [{ cells: [name, was ?? "", is ?? ""], ...(was === is && { same: true }) }];
    }),
  );
  return rows.length === 0 ? [] : [{ heading: `Positions for ${use}, before → after`, rows }];
}

const choiceWords = (choice: SpeedChoice | undefined, called: (name: string) => string): string =>
  choice?.speed === undefined || choice.rpm === undefined
    ? "none"
    : `${called(choice.speed.position.name)} ${formatFixed(choice.rpm, 0)}`;
