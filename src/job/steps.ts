import { closest } from "../machine/closest.js";
import type { LengthText } from "../machine/fields.js";
import type { Units } from "../machine/machine.js";
import type { Path } from "../machine/problem.js";
import { fitDeviations, isHoleFit, KNOWN_FITS } from "../part/fits.js";
import { roundIn } from "../quantity/length.js";
import { halfAngleOfRatio } from "../taper/ratio.js";
import { halfAngle } from "../taper/taper.js";
import { threads } from "../thread/data.js";
import { designationOf, threadsMeant, threadsOfSize } from "../thread/thread.js";
import { type Bar, type Held, isHoleStep, type JobStep, type TaperStep, type Wanted } from "./job.js";
import type { SizeText } from "./sizeText.js";
import { ofHoles, plainDiameters, type RawStep, type StepKey, stepKeys } from "./stepKeys.js";

/** What reading a step takes from the whole file. */
export type StepContext = {
  readonly bar: Bar | undefined;
  readonly units: Units;
  mm(length: LengthText): number;
  /** A size in the file's own words. */
  said(size: number): string;
  error(path: Path, code: string, what: string, remedy: string): void;
};

/** Keys that are no nouns. */
const named: Partial<Record<StepKey, string>> = {
  to: "diameter after",
  at: "place along the work",
  out: "free length",
};

const usualCut = roundIn(0.5, 0.02);
const usualFinish = roundIn(0.1, 0.004);

/** Reads one step, with the hole that it is done in. */
export function readStep(raw: RawStep, path: Path, context: StepContext): JobStep {
  const step = readOne(raw, path, context);
  for (const key of ofHoles)
    if (raw[key] !== undefined && stepKeys[raw.do].may.includes(key) && (context.bar !== undefined || !isHoleStep(raw)))
      context.error(
        [...path, key],
        "not-here",
        isHoleStep(raw)
          ? `${key}: is for holes beside each other, and in a bar every hole lies on the axis`
          : `${key}: is for the edge of a hole`,
        isHoleStep(raw) ? `leave ${key}: out; where the work is clamped, leave bar: out` : "add side: bore",
      );
  const { hole, holes } = raw;
  return { ...step, ...(hole !== undefined && { hole }), ...(holes !== undefined && { holes }) };
}

/** Where it is faulty, something of its kind stands in, since the file is refused in any case. */
function readOne(raw: RawStep, path: Path, context: StepContext): JobStep {
  const { bar, units, mm, said, error } = context;
  const { needs, may } = stepKeys[raw.do];
  for (const key of needs)
    if (raw[key] === undefined)
      error([...path, key], "missing", `"${raw.do}" needs its ${named[key] ?? key}`, `add ${key}:`);
  for (const key of Object.keys(raw) as (keyof RawStep)[])
    if (key !== "do" && raw[key] !== undefined && !needs.includes(key) && !may.includes(key))
      error([...path, key], "not-here", `"${raw.do}" has no ${key}`, `it takes ${[...needs, ...may].join(", ")}`);
  const lengthOf = (key: LengthKey, usual = 1) => (raw[key] === undefined ? usual : mm(raw[key]));
  const cut = lengthOf("cut", usualCut[units]);
  const finish = lengthOf("finish", usualFinish[units]);
  const at = lengthOf("at", 0);
  if (at < 0 && [...needs, ...may].includes("at"))
    error(
      [...path, "at"],
      "bad-value",
      `at: ${said(at)} lies outside the work`,
      "lengths count from the finished face of the free end towards the chuck",
    );
  if (plainDiameters.has(raw.do)) plainDiameter(raw, path, error);
  switch (raw.do) {
    case "face": {
      if ((raw.depth === undefined) === (raw.length === undefined))
        error(
          path,
          raw.depth === undefined ? "missing" : "two-forms",
          raw.depth === undefined ? '"face" needs its depth, or a length' : '"face" is given its depth and a length',
          "depth: is how much comes off; or length:, how long the work is then",
        );
      return {
        do: "face",
        ...(raw.length === undefined ? { depth: lengthOf("depth") } : { length: mm(raw.length) }),
        cut,
        ...(raw.diameter && { diameter: mm(raw.diameter.nominal) }),
      };
    }
    case "centre drill":
      return { do: "centre drill", ...(raw.diameter && { pilot: mm(raw.diameter.nominal) }) };
    case "turn":
    case "shoulder":
    case "bore": {
      const inward = raw.do !== "bore";
      const to = wanted(raw, path, inward ? "shaft" : "hole", context);
      const from = raw.from && mm(raw.from);
      if (from !== undefined && raw.to && (inward ? to.aim >= from : to.aim <= from))
        error(
          [...path, "to"],
          "backwards",
          `"${raw.do}" goes from ${said(from)} to ${said(to.aim)}`,
          inward ? "to is the smaller diameter" : "a bore grows: to is the larger diameter",
        );
      const sizes = [...(from === undefined ? [] : [["from", from] as const]), ["to", to.aim] as const];
      const larger = sizes.find(([, size]) => inward && bar !== undefined && size > bar.diameter + 1e-6);
      if (larger !== undefined && bar !== undefined)
        error(
          [...path, larger[0]],
          "larger-than-bar",
          `${larger[0]}: ${said(larger[1])} is more than the bar of ${said(bar.diameter)}`,
          "mind the order of steps, or the bar",
        );
      return {
        do: raw.do,
        ...(from !== undefined && { from }),
        to,
        at,
        length: lengthOf(inward ? "length" : "depth"),
        cut,
        finish,
      };
    }
    case "groove": {
      const [width, blade] = [lengthOf("width"), lengthOf("blade")];
      if (raw.width && raw.blade && blade > width + 1e-9)
        error(
          [...path, "blade"],
          "too-wide",
          `a blade of ${said(blade)} cuts no groove of ${said(width)}`,
          "take a narrower blade, or widen the groove",
        );
      return { do: "groove", at, width, to: wanted(raw, path, "shaft", context), blade };
    }
    case "chamfer":
      return { do: "chamfer", at, size: lengthOf("size"), side: raw.side ?? "outside" };
    case "taper":
      return { ...taper(raw, path, context), at, cut, finish };
    case "knurl":
      return {
        do: "knurl",
        at,
        length: lengthOf("length"),
        pitch: lengthOf("pitch"),
        pinched: raw.pinched ?? false,
        ...(raw.width && { wheel: mm(raw.width) }),
      };
    case "part":
      return {
        do: "part",
        ...(raw.diameter && { diameter: mm(raw.diameter.nominal) }),
        length: lengthOf("length"),
        blade: lengthOf("blade"),
      };
    case "drill":
    case "ream": {
      const { aim, ...limits } = raw.diameter
        ? withLimits(raw.diameter, [...path, "diameter"], "hole", context)
        : { aim: 1 };
      // What is sold is a drill or reamer of the nominal size; of two limits the lower one is it.
      const { least, words } = limits;
      const byLimits = raw.diameter?.limits === true;
      return {
        do: raw.do,
        diameter:
          words === undefined ? aim : byLimits && least !== undefined ? least : mm((raw.diameter as SizeText).nominal),
        depth: lengthOf("depth"),
        ...(limits.words !== undefined && { wanted: { aim, ...limits } }),
      };
    }
    case "tap":
    case "die":
      return {
        do: raw.do,
        thread: threadName(raw.thread ?? "", [...path, "thread"], context),
        depth: lengthOf(raw.do === "tap" ? "depth" : "length"),
      };
    case "hold":
    case "turn round":
      return { do: raw.do, out: lengthOf("out"), held: (raw.held ?? "chuck") as Held };
  }
}

function plainDiameter({ diameter, do: verb }: RawStep, path: Path, error: StepContext["error"]): void {
  if (diameter?.text !== undefined)
    error(
      [...path, "diameter"],
      "no-tolerance",
      `"${verb}" makes no diameter, so that "${diameter.text}" cannot be held`,
      "give the plain size",
    );
}

type LengthKey = "at" | "length" | "depth" | "cut" | "finish" | "blade" | "width" | "size" | "pitch" | "out";

/** The diameter after a step, with the tolerance that stands in it or beside it. */
function wanted({ to, tolerance }: RawStep, path: Path, kind: "shaft" | "hole", context: StepContext): Wanted {
  const { mm, said, error } = context;
  if (to === undefined) return { aim: 1 };
  const result = withLimits(to, [...path, "to"], kind, context);
  if (tolerance === undefined) return result;
  if (result.most !== undefined)
    error(
      [...path, "tolerance"],
      "two-tolerances",
      "the tolerance stands in to: as well",
      `keep one of them: to: "${to.text}" says it all`,
    );
  const half = mm(tolerance) / 2;
  if (2 * half >= result.aim)
    error(
      [...path, "tolerance"],
      "bad-value",
      `a tolerance of ${said(2 * half)} is as large as the size itself`,
      "it is how far the diameter may differ, from the smallest that will do to the largest",
    );
  return { aim: result.aim, least: result.aim - half, most: result.aim + half };
}

/** As sizes are usual in the file's unit. */
const inLimits: Readonly<Record<Units, string>> = { mm: "12 +0.01 -0.02", in: "0.5 +0.0005 -0.001" };

/** A size with its limits; `aim` in the middle of them. */
function withLimits(
  { nominal, deviations, fit, text }: SizeText,
  path: Path,
  kind: "shaft" | "hole",
  { mm, said, units, error }: StepContext,
): Wanted {
  const size = mm(nominal);
  const found =
    fit === undefined
      ? deviations && { upper: mm(deviations.upper), lower: mm(deviations.lower) }
      : fitDeviations(fit, size);
  if (fit !== undefined && found === undefined)
    error(
      path,
      "unknown-fit",
      `no limits are known for ${fit} at ${said(size)}`,
      `known are ${KNOWN_FITS}; or write the limits out: ${inLimits[units]}`,
    );
  if (fit !== undefined && found !== undefined && isHoleFit(fit) !== (kind === "hole"))
    error(
      path,
      "wrong-fit",
      kind === "hole" ? `${fit} is for shafts, and this is a hole` : `${fit} is for holes, and this is an outside`,
      kind === "hole" ? "a hole's letter is a capital: H7" : "an outside's letter is a small one: h7",
    );
  if (found === undefined) return { aim: size };
  if (fit !== undefined && 2 * Math.max(Math.abs(found.upper), Math.abs(found.lower)) >= size)
    error(
      path,
      "bad-value",
      `${fit} at ${said(size)} may differ by half its size or more`,
      "mind the unit and the decimal point, or give the smallest and the largest that will do",
    );
  const [least, most] = [size + found.lower, size + found.upper];
  return { aim: (least + most) / 2, least, most, ...(text !== undefined && { words: text }) };
}

/** Beyond this a taper is a face, and nobody swivels for it. */
const steepest = (80 / 180) * Math.PI;

/** By both diameters, or by one of them and an angle. */
function taper(raw: RawStep, path: Path, { mm, error }: StepContext): Omit<TaperStep, "at" | "cut" | "finish"> {
  const length = raw.length ? mm(raw.length) : 1;
  const given = { large: raw.large && mm(raw.large), small: raw.small && mm(raw.small) };
  const ratio = raw.ratio === undefined ? undefined : halfAngleOfRatio(raw.ratio);
  if (raw.ratio !== undefined && ratio === undefined)
    error([...path, "ratio"], "bad-value", `"${raw.ratio}" is not a ratio`, 'write it as "1 in 20" or "1:20"');
  const forms = (["ratio", "included", "half"] as const).filter((key) => raw[key] !== undefined);
  const sizes = [given.large, given.small].filter((size) => size !== undefined).length;
  const stated = sizes + forms.length;
  const enough = stated === 2 && sizes > 0;
  if (!enough)
    error(
      path,
      stated > 1 ? "two-forms" : "missing",
      stated > 2
        ? '"taper" is given more than it needs, which may contradict itself'
        : `"taper" is given ${stated === 2 ? "two angles and no diameter" : "too little to know its angle"}`,
      "give large: and small:, or one of them and one of ratio:, included:, half:",
    );
  const angle = ratio ?? (raw.included === undefined ? raw.half : raw.included / 2);
  const narrows = angle === undefined ? 0 : 2 * length * Math.tan(angle);
  const large = given.large ?? (given.small ?? 1) + (narrows || 1);
  const small = given.small ?? (given.large === undefined ? 1 : given.large - narrows);
  if (sizes === 2 && small >= large)
    error(
      [...path, "small"],
      "inside-out",
      "small is not smaller than large",
      "large is the bigger diameter, whichever end it is at",
    );
  const [form] = forms;
  const half = sizes === 2 ? halfAngle(large, small, length) : angle;
  if (enough && half !== undefined && (half >= steepest || (form !== undefined && !(half > 0))))
    error(
      form === undefined ? path : [...path, form],
      "bad-value",
      half > 0 ? "a taper as steep as this is a face" : "a taper's angle must be more than zero",
      "half: is the angle between axis and side, less than 80°; included: that between both sides, less than 160°",
    );
  else if (enough && angle !== undefined && small <= 0)
    error(
      path,
      "bad-value",
      "with this angle it comes to a point before its length ends",
      "shorten it, or mind the angle",
    );
  return {
    do: "taper",
    large,
    small: halfAngle(large, small, length) > 0 ? small : large / 2,
    length,
    smallAt: raw.smallAt ?? "end",
    by: raw.by ?? "top slide",
  };
}

function threadName(name: string, path: Path, { error }: StepContext): string {
  const [found, ...others] = threadsMeant(name);
  if (found !== undefined && others.length > 0)
    error(
      path,
      "which-thread",
      `${[found, ...others].length} threads are called "${name}", and their forms differ`,
      `write ${[found, ...others].join(" or ")}, whichever the tap or die is marked`,
    );
  if (found === undefined && name !== "") {
    // The size was meant: another one's pitch is no help, however alike it is spelt.
    const ofSize = threadsOfSize(name);
    const nearest = closest(name, threads.map(designationOf));
    error(
      path,
      "unknown-thread",
      `there is no thread "${name}" in the tables`,
      ofSize.length > 0
        ? `of this size they hold ${ofSize.join(", ")}`
        : nearest
          ? `did you mean "${nearest}"?`
          : "write it as M6, M8x1, 2BA, 1/4-20 UNC",
    );
  }
  return found ?? name;
}
