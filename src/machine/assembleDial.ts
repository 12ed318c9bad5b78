import { inWords } from "../quantity/length.js";
import { asRead } from "./asRead.js";
import type { Context, Raw } from "./context.js";
import { dialKeys, dialSizes } from "./dialKeys.js";
import type { DialWish } from "./machine.js";
import type { Path } from "./problem.js";

/** Diameters, mm, between which a handwheel's dial can lie; beyond them a number was meant in the other unit. Common
 *  practice. */
const leastDial = 5;
const largestDial = 500;
/** What a hand still finds beside its slide: a larger one is likelier a slip of the decimal point. Common practice. */
const usualDial = 300;
/** Room for marks and the smallest numbers, mm. */
const leastWidth = 3;
/** Paper and glue add at most some hundredths to a measured wrap; more is a slip of the rule. */
const largestWrapError = 0.05;

/** What the file asks of a dial; undefined where too little of it is known to go on (an error was told). */
export function assembleDial(
  dial: NonNullable<Raw<"handwheels">[number]["dial"]>,
  path: Path,
  { feedMm, said, error, warn, units }: Context,
): DialWish | undefined {
  const sizes = asRead(dial, feedMm);
  const { shape, diameter, wrap, width = 0, outside = 0, inside = 0, smallDiameter = 0, ...plain } = sizes;
  const wish = {
    ...plain,
    increases: plain.increases === undefined || plain.increases === "clockwise" ? "clockwise" : "anticlockwise",
    ...(plain.increases === undefined && { senseAssumed: true as const }),
  } as const;
  if (shape === "face" && dial.lap !== undefined)
    error([...path, "lap"], "not-this-shape", "a face dial is a whole ring and has no joint to lap", "leave lap out");
  if (shape === "drum" && dial.index !== undefined)
    error([...path, "index"], "not-this-shape", "round a drum the numbers are upright everywhere", "leave index out");
  const { needs, may } = dialKeys[shape];
  const missing = needs.filter((key) => dial[key] === undefined);
  for (const key of missing)
    error(
      path,
      "missing",
      `a ${shape} dial needs its ${key}`,
      `add ${key}:, in ${units === "in" ? "inches" : "mm"} or with its unit`,
    );
  for (const key of dialSizes)
    if (dial[key] !== undefined && !needs.includes(key) && !may.includes(key))
      error(
        [...path, key],
        "not-this-shape",
        `a ${shape} dial has no ${key}`,
        `it takes ${[...needs, ...may].join(", ")}`,
      );
  if (shape === "drum" && dial.diameter === undefined && dial.wrap === undefined)
    error(
      path,
      "missing",
      "a drum dial needs its diameter or its wrap length",
      "measure across the drum, or once round it with a strip of paper",
    );
  for (const key of ["diameter", "outside", "wrap", "width"] as const) {
    const value = sizes[key];
    const largest = key === "wrap" ? Math.PI * largestDial : key === "width" ? largestDial / 2 : largestDial;
    const least = key === "wrap" ? Math.PI * leastDial : key === "width" ? 0 : leastDial;
    if (value !== undefined && (value > largest || value < least))
      error(
        [...path, key],
        value > largest ? "too-large" : "too-small",
        `${key} of ${said(value)} is no dial's`,
        `write the unit beside it: a bare number is in ${inWords[units]} here`,
      );
    else if (value !== undefined && key !== "width" && value > (usualDial * largest) / largestDial)
      warn(
        [...path, key],
        "too-large",
        `${key} of ${said(value)} is unusual for a handwheel's dial`,
        `mind the decimal point: is it ${said(value / 10)}?`,
      );
  }
  if (missing.length > 0) return undefined;
  const round = wrap ?? Math.PI * (diameter ?? 0);
  if (wish.lap !== undefined && round > 0 && wish.lap > round / 4)
    error(
      [...path, "lap"],
      "too-large",
      `a tab of ${said(wish.lap)} is more than a quarter of the ${said(round, 1)} once round`,
      `${said(5, 0)} to ${said(10, 0)} are enough for glue; mind the unit`,
    );
  const along = shape === "face" ? (outside - inside) / 2 : width;
  if (shape !== "drum" && outside >= inside && along < leastWidth)
    error(
      [...path, shape === "face" ? "inside" : "width"],
      "too-narrow",
      `a ring ${said(along)} wide has no room for marks and numbers`,
      shape === "face"
        ? `outside and inside are both diameters: they must differ by ${said(2 * leastWidth)} at least`
        : `measure width along the slope; at least ${said(leastWidth)}`,
    );
  if (shape === "face") {
    if (!(outside > inside))
      error(
        [...path, "inside"],
        "inside-out",
        "inside is not smaller than outside",
        "outside is the larger diameter of the ring",
      );
    return { shape: "face", outside, inside, ...wish };
  }
  if (shape === "bevel") {
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
        `a slope of ${said(width)} cannot reach from ${said(diameter ?? 0)} to ${said(smallDiameter)}`,
        `measure width along the slope: at least ${said(((diameter ?? 0) - smallDiameter) / 2)}`,
      );
    return { shape: "bevel", diameter: diameter ?? 0, smallDiameter, width, ...wish };
  }
  if (width < leastWidth)
    error(
      [...path, "width"],
      "too-narrow",
      `a strip ${said(width)} wide has no room for marks and numbers`,
      `measure the width of the drum; at least ${said(leastWidth)}`,
    );
  if (wrap !== undefined && diameter !== undefined && Math.abs(wrap / (Math.PI * diameter) - 1) > largestWrapError)
    warn(
      [...path, "wrap"],
      "wrap-unlike-diameter",
      `once round a drum of ${said(diameter, 2)} is about ${said(Math.PI * diameter, 1)}, not ${said(wrap, 2)}`,
      "measure both again; the dial is made to the wrap",
    );
  return {
    shape: "drum",
    width,
    ...(diameter !== undefined && { diameter }),
    ...(wrap !== undefined && { wrap }),
    ...wish,
  };
}
