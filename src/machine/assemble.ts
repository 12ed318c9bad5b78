import { drillNameIn } from "../quantity/drill.js";
import { trimmedSize } from "../quantity/format.js";
import { mmPer } from "../quantity/length.js";
import { pitchOf } from "../quantity/thread.js";
import { asRead } from "./asRead.js";
import { assembleCuttingSpeeds } from "./assembleCuttingSpeeds.js";
import { assembleDial } from "./assembleDial.js";
import { assembleDrive } from "./assembleDrive.js";
import { assembleFeed } from "./assembleFeed.js";
import { assembleOldDial } from "./assembleOldDial.js";
import { assemblePrinter } from "./assemblePrinter.js";
import { assembleScales } from "./assembleScales.js";
import { assembleStops } from "./assembleStops.js";
import { assembleTapers } from "./assembleTapers.js";
import type { Context, CsvFiles, Raw, Report } from "./context.js";
import type { LengthText } from "./fields.js";
import { judgeMoves } from "./judgeMoves.js";
import type { Handwheel, Machine, Paper, Work } from "./machine.js";
import type { Path } from "./problem.js";
import type { MachineFile } from "./schema.js";
import { writtenAs } from "./written.js";

/** Puts the file's unit to bare numbers, fills in what has a sensible meaning, and judges what one value alone cannot show.
 *  Errors go to `report`; the machine is only good when there were none. */
export function assemble(file: MachineFile, report: Report, csv: CsvFiles): Machine {
  const units = file.units ?? "mm";
  const written = new Map<number, string>();
  const mm = ({ value, unit, text }: LengthText): number => {
    const length = unit === "mm" ? value : value * mmPer[units];
    const words = text === undefined ? undefined : writtenAs(text, units);
    if (words !== undefined) written.set(length, words);
    return length;
  };
  const context: Context = {
    csv,
    units,
    mm,
    said: (length, mmPlaces = 3) => trimmedSize(length, units, mmPlaces),
    feedMm: (feed) => (feed.unit === "tpi" ? pitchOf(feed.value) : mm(feed as LengthText)),
    error: (path, code, what, remedy) => report({ severity: "error", path, code, what, remedy }),
    warn: (path, code, what, remedy) => report({ severity: "warning", path, code, what, remedy }),
  };
  if (file.measured !== undefined && !isDay(file.measured))
    context.error(
      ["measured"],
      "bad-value",
      `measured: "${file.measured}" is not a day`,
      "write it year first: 2026-11-01",
    );
  uniqueNames(file.handwheels ?? [], context);
  judgeMoves(file.handwheels ?? [], context);
  return {
    name: file.name,
    ...(file.revision !== undefined && { revision: file.revision }),
    ...(file.measured !== undefined && { measured: file.measured }),
    ...(file.language !== undefined && { language: file.language }),
    kind: file.kind ?? "lathe",
    units,
    written,
    limits: {
      ...(file.limits?.chuck !== undefined && { chuckRpm: file.limits.chuck }),
      ...(file.limits?.spindle !== undefined && { spindleRpm: file.limits.spindle }),
      ...(file.limits?.drill !== undefined && { largestDrill: mm(file.limits.drill) }),
    },
    ...(file.drive && { drive: assembleDrive(file.drive, context) }),
    handwheels: (file.handwheels ?? []).map((wheel, index) => handwheel(wheel, ["handwheels", index], context)),
    printers: Object.fromEntries(
      Object.entries(file.printers ?? {}).map(([name, printer]) => [
        name,
        assemblePrinter(printer, ["printers", name], context),
      ]),
    ),
    paper: paper(file, context),
    work: { ...work(file.work, context), ...assembleCuttingSpeeds(file.work, context) },
    ...assembleScales(file, context),
    ...(file.stops && { stops: assembleStops(file, context) }),
    ...(file.tapers && { tapers: assembleTapers(file.tapers, context) }),
  };
}

function isDay(text: string): boolean {
  const day = new Date(`${text}T00:00:00Z`);
  return /^\d{4}-\d{2}-\d{2}$/.test(text) && !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text);
}

function uniqueNames(wheels: Raw<"handwheels">, { error }: Context): void {
  const seen = new Set<string>();
  for (const [index, { name }] of wheels.entries()) {
    const key = name.trim().toLowerCase();
    if (seen.has(key))
      error(
        ["handwheels", index, "name"],
        "same-name",
        `there are two handwheels named "${name}"`,
        "give each a name of its own",
      );
    seen.add(key);
  }
}

function handwheel(
  { reads = "travel", feed: rawFeed, dial: rawDial, oldDial: rawOld, ...plain }: Raw<"handwheels">[number],
  path: Path,
  context: Context,
): Handwheel {
  const feed = rawFeed && assembleFeed(rawFeed, [...path, "feed"], context);
  const dial = rawDial && assembleDial(rawDial, [...path, "dial"], context);
  const nominal = rawFeed !== undefined && !("value" in rawFeed) ? rawFeed.nominal : undefined;
  const oldDial = rawOld && assembleOldDial(rawOld, nominal, [...path, "oldDial"], context);
  return {
    ...asRead(plain, context.feedMm),
    reads,
    ...(feed && { feed }),
    ...(dial && { dial }),
    ...(oldDial && { oldDial }),
  };
}

/** Copy paper of 75 to 80 g/m² is about 0.10 mm thick: 500 sheets of 75 g/m² measure 51.5 mm (The Physics Factbook, 2001). */
const usualThickness = 0.1;

/** Between these, mm, lies what goes through a printer. Common practice. */
const thinnest = 0.03;
const thickest = 0.5;

function paper({ paper, printers }: MachineFile, { mm, said, error, warn }: Context): Paper {
  const known = Object.keys(printers ?? {});
  if (paper?.printer !== undefined && !known.includes(paper.printer))
    error(
      ["paper", "printer"],
      "unknown-printer",
      `there is no printer "${paper.printer}"`,
      known.length > 0 ? `there are ${known.join(", ")}` : "add it under printers:, or leave it out here",
    );
  if (paper?.printer === undefined && known[0] !== undefined)
    warn(
      ["printers", known[0]],
      "unused-printer",
      "no page is corrected by these figures: paper names no printer",
      `add printer: ${known.length === 1 ? known[0] : `one of ${known.join(", ")}`} under paper:, or take printers: out`,
    );
  const thickness = paper?.thickness === undefined ? usualThickness : mm(paper.thickness);
  const adhesive = paper?.adhesive === undefined ? 0 : mm(paper.adhesive);
  for (const [key, value] of [
    ["thickness", thickness],
    ["adhesive", adhesive],
  ] as const)
    if (value < 0 || value > 2)
      error(
        ["paper", key],
        "bad-value",
        `${key} of ${said(value)} is no paper's`,
        `copy paper is about ${said(usualThickness)}`,
      );
    else if (value > thickest || (key === "thickness" && value < thinnest))
      warn(
        ["paper", key],
        "unlikely-paper",
        `${key} of ${said(value, 4)} is unusual: copy paper is ${said(usualThickness)}, a label or photo paper up to ${said(thickest)}`,
        "measure ten sheets together, and mind the unit and the decimal point",
      );
  return {
    size: paper?.size ?? "A4",
    thickness,
    adhesive,
    ...(paper?.printer !== undefined && { printer: paper.printer }),
  };
}

const namesOf = (drills: readonly LengthText[], mm: (length: LengthText) => number): Work["drillNames"] =>
  new Map(
    drills.flatMap((drill) => {
      const name = drillNameIn(drill.text ?? "");
      return name === undefined ? [] : [[mm(drill), name] as const];
    }),
  );

/** Deeper than this on the radius, mm, no small machine cuts. Common practice. */
const deepestOfAll = 5;

function work(given: MachineFile["work"], { units, mm, said, error }: Context): Work {
  const deepest = given?.deepest && mm(given.deepest);
  if (deepest !== undefined && deepest > deepestOfAll)
    error(
      ["work", "deepest"],
      "bad-value",
      `a small machine does not cut ${said(deepest)} deep on the radius`,
      `it is half of what comes off the diameter; at most ${said(deepestOfAll)}`,
    );
  const usual = units === "mm" ? [3, 6, 10, 16, 25, 40] : [1 / 8, 1 / 4, 3 / 8, 1 / 2, 3 / 4, 1, 1.5];
  return {
    tool: given?.tool ?? "high-speed steel",
    materials: given?.materials ?? ["mild steel", "free-cutting steel", "brass", "aluminium", "grey cast iron"],
    ...(deepest !== undefined && { deepest }),
    ...(given?.drills && { drills: given.drills.map(mm), drillNames: namesOf(given.drills, mm) }),
    diameters: given?.diameters?.map(mm) ?? usual.map((diameter) => diameter * mmPer[units]),
  };
}
