import { MM_PER_INCH, mmPer } from "../quantity/length.js";
import { assembleDrive } from "./assembleDrive.js";
import { assembleFeed } from "./assembleFeed.js";
import { assembleScales } from "./assembleScales.js";
import { assembleStops } from "./assembleStops.js";
import { assembleTapers } from "./assembleTapers.js";
import type { Context, CsvFiles, Raw, Report } from "./context.js";
import type { LengthText } from "./fields.js";
import type { DialWish, Handwheel, Machine, Paper, Printer, Work } from "./machine.js";
import type { Path } from "./problem.js";
import type { MachineFile } from "./schema.js";

/** Puts the file's unit to bare numbers, fills in what has a sensible meaning, and judges what one value alone cannot show.
 *  Errors go to `report`; the machine is only good when there were none. */
export function assemble(file: MachineFile, report: Report, csv: CsvFiles): Machine {
  const units = file.units ?? "mm";
  const mm = ({ value, unit }: LengthText): number => (unit === "mm" ? value : value * mmPer[units]);
  const context: Context = {
    csv,
    units,
    mm,
    feedMm: (feed) => (feed.unit === "tpi" ? MM_PER_INCH / feed.value : mm(feed as LengthText)),
    error: (path, code, what, remedy) => report({ severity: "error", path, code, what, remedy }),
    warn: (path, code, what, remedy) => report({ severity: "warning", path, code, what, remedy }),
  };
  if (file.name.trim() === "") context.error(["name"], "missing", "name is empty", "say what you call the machine");
  if (file.measured !== undefined && !isDay(file.measured))
    context.error(
      ["measured"],
      "bad-value",
      `measured: "${file.measured}" is not a day`,
      "write it year first: 2026-11-01",
    );
  uniqueNames(file.handwheels ?? [], context);
  return {
    name: file.name,
    ...(file.revision !== undefined && { revision: file.revision }),
    ...(file.measured !== undefined && { measured: file.measured }),
    units,
    limits: {
      ...(file.limits?.chuck !== undefined && { chuckRpm: file.limits.chuck }),
      ...(file.limits?.spindle !== undefined && { spindleRpm: file.limits.spindle }),
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
    work: { ...work(file.work, context), ...cuttingWishes(file.work, context) },
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

function handwheel(wheel: Raw<"handwheels">[number], path: Path, context: Context): Handwheel {
  const feed = wheel.feed === undefined ? undefined : assembleFeed(wheel.feed, [...path, "feed"], context);
  const dial = wheel.dial === undefined ? undefined : assembleDial(wheel.dial, [...path, "dial"], context);
  return {
    name: wheel.name,
    reads: wheel.reads ?? "travel",
    ...(wheel.travel !== undefined && { travel: context.mm(wheel.travel) }),
    ...(feed !== undefined && { feed }),
    ...(dial !== undefined && { dial }),
    ...(wheel.distances && { distances: wheel.distances.map(context.mm) }),
  };
}

function assembleDial(
  dial: NonNullable<Raw<"handwheels">[number]["dial"]>,
  path: Path,
  { mm, error }: Context,
): DialWish | undefined {
  const wish = {
    increases: dial.increases ?? "clockwise",
    ...(dial.divisions !== undefined && { divisions: mm(dial.divisions) }),
    ...(dial.closure !== undefined && { closure: dial.closure }),
    ...(dial.oncePerTurn && { oncePerTurn: true }),
    ...(dial.second !== undefined && { second: mm(dial.second) }),
    ...(dial.vernier !== undefined && { vernier: dial.vernier }),
    ...(dial.lap !== undefined && { lap: mm(dial.lap) }),
    ...(dial.index !== undefined && { index: dial.index }),
  } as const;
  if (dial.shape === "face" && dial.lap !== undefined)
    error([...path, "lap"], "not-this-shape", "a face dial is a whole ring and has no joint to lap", "leave lap out");
  if (dial.shape === "drum" && dial.index !== undefined)
    error([...path, "index"], "not-this-shape", "round a drum the numbers are upright everywhere", "leave index out");
  const wants: Record<typeof dial.shape, readonly (keyof typeof dial)[]> = {
    drum: ["width"],
    face: ["outside", "inside"],
    bevel: ["diameter", "smallDiameter", "width"],
  };
  const allowed: Record<typeof dial.shape, readonly (keyof typeof dial)[]> = {
    drum: ["diameter", "wrap"],
    face: [],
    bevel: [],
  };
  const missing = wants[dial.shape].filter((key) => dial[key] === undefined);
  for (const key of missing)
    error(path, "missing", `a ${dial.shape} dial needs its ${key}`, `add ${key}:, in ${"mm"} or with its unit`);
  for (const key of ["diameter", "wrap", "width", "outside", "inside", "smallDiameter"] as const)
    if (dial[key] !== undefined && !wants[dial.shape].includes(key) && !allowed[dial.shape].includes(key))
      error(
        [...path, key],
        "not-this-shape",
        `a ${dial.shape} dial has no ${key}`,
        `it takes ${[...wants[dial.shape], ...allowed[dial.shape]].join(", ")}`,
      );
  if (dial.shape === "drum" && dial.diameter === undefined && dial.wrap === undefined)
    error(
      path,
      "missing",
      "a drum dial needs its diameter or its wrap length",
      "measure across the drum, or once round it with a strip of paper",
    );
  const size = (key: "diameter" | "wrap" | "width" | "outside" | "inside" | "smallDiameter") =>
    dial[key] === undefined ? undefined : mm(dial[key]);
  for (const key of ["diameter", "outside"] as const) {
    const value = size(key);
    if (value !== undefined && value > 1000)
      error([...path, key], "too-large", `${key} of ${value} mm is no handwheel's`, "check the unit");
  }
  const [outside = 0, inside = 0, diameter, smallDiameter = 0, width = 0, wrap] = [
    size("outside"),
    size("inside"),
    size("diameter"),
    size("smallDiameter"),
    size("width"),
    size("wrap"),
  ];
  if (missing.length > 0) return undefined;
  if (dial.shape === "face") {
    if (!(outside > inside))
      error(
        [...path, "inside"],
        "inside-out",
        "inside is not smaller than outside",
        "outside is the larger diameter of the ring",
      );
    return { shape: "face", outside, inside, ...wish };
  }
  if (dial.shape === "bevel") {
    if (!((diameter ?? 0) > smallDiameter))
      error(
        [...path, "smallDiameter"],
        "inside-out",
        "smallDiameter is not smaller than diameter",
        "diameter is the larger end; for equal ends use shape: drum",
      );
    else if (2 * width < (diameter ?? 0) - smallDiameter)
      error(
        [...path, "width"],
        "too-narrow",
        `a slope of ${width} mm cannot reach from ${diameter} to ${smallDiameter} mm`,
        `measure width along the slope: at least ${((diameter ?? 0) - smallDiameter) / 2} mm`,
      );
    return { shape: "bevel", diameter: diameter ?? 0, smallDiameter, width, ...wish };
  }
  if (width < 3)
    error(
      [...path, "width"],
      "too-narrow",
      `a strip ${width} mm wide has no room for marks and numbers`,
      "measure the width of the drum; at least 3 mm",
    );
  return {
    shape: "drum",
    width,
    ...(diameter !== undefined && { diameter }),
    ...(wrap !== undefined && { wrap }),
    ...wish,
  };
}

/** Beyond this no printer is simply untrue: the page was scaled. */
const largestScaleError = 0.05;

function assemblePrinter(printer: Raw<"printers">[string], path: Path, { mm, error }: Context): Printer {
  for (const key of ["across", "down"] as const) {
    const bar = printer[key];
    if (bar !== undefined && Math.abs(bar.measured / bar.nominal - 1) > largestScaleError)
      error(
        [...path, key],
        "scaled-page",
        `${key} is ${(Math.abs(bar.measured / bar.nominal - 1) * 100).toFixed(1)} % off, more than a printer is`,
        'the page was most likely printed "fit to page": print it again at 100 % and measure again',
      );
  }
  const diagonals = printer.diagonals && ([mm(printer.diagonals[0]), mm(printer.diagonals[1])] as const);
  if (diagonals && Math.abs(diagonals[0] / diagonals[1] - 1) > largestScaleError)
    error(
      [...path, "diagonals"],
      "scaled-page",
      "the diagonals differ by more than a printer's skew",
      "measure again from corner to corner, from top left first",
    );
  if (diagonals && (printer.across === undefined || printer.down === undefined))
    error([...path, "diagonals"], "missing", "the diagonals mean nothing without both bars", "add across: and down:");
  return {
    ...(printer.across && { across: printer.across }),
    ...(printer.down && { down: printer.down }),
    ...(diagonals && { diagonals }),
  };
}

/** Copy paper of 75 to 80 g/m² is about 0.10 mm thick: 500 sheets of 75 g/m² measure 51.5 mm (The Physics Factbook, 2001). */
const usualThickness = 0.1;

function paper({ paper, printers }: MachineFile, { mm, error }: Context): Paper {
  const known = Object.keys(printers ?? {});
  if (paper?.printer !== undefined && !known.includes(paper.printer))
    error(
      ["paper", "printer"],
      "unknown-printer",
      `there is no printer "${paper.printer}"`,
      known.length > 0 ? `there are ${known.join(", ")}` : "add it under printers:, or leave it out here",
    );
  const thickness = paper?.thickness === undefined ? usualThickness : mm(paper.thickness);
  const adhesive = paper?.adhesive === undefined ? 0 : mm(paper.adhesive);
  for (const [key, value] of [
    ["thickness", thickness],
    ["adhesive", adhesive],
  ] as const)
    if (value < 0 || value > 2)
      error(["paper", key], "bad-value", `${key} of ${value} mm is no paper's`, "copy paper is about 0.10 mm");
  return {
    size: paper?.size ?? "A4",
    thickness,
    adhesive,
    ...(paper?.printer !== undefined && { printer: paper.printer }),
  };
}

function cuttingWishes(given: MachineFile["work"], { error }: Context): Pick<Work, "derating" | "cuttingSpeeds"> {
  const own = given?.cuttingSpeeds?.map(({ speed: [slowest, fastest], ...row }, index) => {
    if (slowest > fastest)
      error(
        ["work", "cuttingSpeeds", index, "speed"],
        "backwards",
        "the slower cutting speed comes after the faster one",
        "write the slower one first",
      );
    const { material, tool, operation, source } = row;
    const words = { ...(tool !== undefined && { tool }), ...(operation !== undefined && { operation }) };
    return { material, ...words, slowest, fastest, ...(source !== undefined && { source }) };
  });
  return {
    ...(given?.derating !== undefined && { derating: given.derating }),
    ...(own && { cuttingSpeeds: own }),
  };
}

function work(given: MachineFile["work"], { units, mm }: Context): Work {
  const usual = units === "mm" ? [3, 6, 10, 16, 25, 40] : [1 / 8, 1 / 4, 3 / 8, 1 / 2, 3 / 4, 1, 1.5];
  return {
    tool: given?.tool ?? "high-speed steel",
    materials: given?.materials ?? ["mild steel", "free-cutting steel", "brass", "aluminium", "grey cast iron"],
    diameters: given?.diameters?.map(mm) ?? usual.map((diameter) => diameter * mmPer[units]),
  };
}
