import { halfAngleOfRatio } from "../taper/ratio.js";
import { halfAngle as halfAngleOf, halfAngleOfTaper, taperPerFoot } from "../taper/taper.js";
import type { Context, Raw } from "./context.js";
import type { TaperWish } from "./machine.js";
import type { Path } from "./problem.js";

type RawTaper = Raw<"tapers">[number];

/** Beyond this a taper is a face: nobody swivels for it. */
const steepest = (80 * Math.PI) / 180;

export const assembleTapers = (tapers: Raw<"tapers">, context: Context): TaperWish[] =>
  tapers.map((taper, index) => assembleTaper(taper, ["tapers", index], context));

function assembleTaper(taper: RawTaper, path: Path, context: Context): TaperWish {
  const { mm, error } = context;
  const sizes = {
    ...(taper.large && { large: mm(taper.large) }),
    ...(taper.small && { small: mm(taper.small) }),
    ...(taper.length && { length: mm(taper.length) }),
  };
  const { large, small, length } = sizes;
  const forms = [taper.ratio, taper.perFoot, taper.included, taper.half].filter((form) => form !== undefined).length;
  const byDiameters = large !== undefined && small !== undefined && length !== undefined;
  if (forms + (byDiameters && forms === 0 ? 1 : 0) !== 1)
    error(
      path,
      forms > 1 ? "two-forms" : "missing",
      `the taper "${taper.name}" is given ${forms > 1 ? `${forms} ways` : "no angle"}`,
      "give large, small and length, or one of ratio, perFoot, included, half",
    );
  if (small !== undefined && small < 0)
    error([...path, "small"], "bad-value", "small is less than nothing", "give the smaller diameter; 0 is a point");
  if (large !== undefined && small !== undefined && !(large > small))
    error(
      [...path, "small"],
      "inside-out",
      "small is not smaller than large",
      "large is the bigger diameter, whichever end it is at",
    );
  let halfAngle = 0;
  if (taper.half !== undefined) halfAngle = taper.half;
  else if (taper.included !== undefined) halfAngle = taper.included / 2;
  else if (taper.perFoot !== undefined) halfAngle = halfAngleOfTaper(taperPerFoot(taper.perFoot));
  else if (taper.ratio !== undefined) {
    const found = halfAngleOfRatio(taper.ratio);
    if (found === undefined)
      error([...path, "ratio"], "bad-value", `"${taper.ratio}" is not a ratio`, 'write it as "1 in 20" or "1:20"');
    else halfAngle = found;
  } else if (byDiameters) halfAngle = halfAngleOf(large, small, length);
  if ((forms === 1 || (byDiameters && large > small)) && !(halfAngle > 0 && halfAngle < steepest))
    error(
      path,
      "bad-value",
      `the taper "${taper.name}" has a half angle of ${((halfAngle * 180) / Math.PI).toFixed(1)}°`,
      "it must lie between 0 and 80°",
    );
  else if (forms === 1 && large !== undefined && length !== undefined)
    judgeSizes(taper.name, { large, length, ...(small !== undefined && { small }) }, halfAngle, path, context);
  return { name: taper.name, halfAngle, ...sizes };
}

/** How far diameters written to a few figures may stand from the angle beside them: hundredths of mm, and of their difference. */
const roundedOff = 0.02;

/** Sizes that are given beside an angle must lie on it. */
function judgeSizes(
  name: string,
  { large, small, length }: { readonly large: number; readonly small?: number; readonly length: number },
  halfAngle: number,
  path: Path,
  { said, error }: Context,
): void {
  const narrows = 2 * length * Math.tan(halfAngle);
  if (
    small === undefined
      ? narrows > large + roundedOff
      : Math.abs(large - small - narrows) > Math.max(roundedOff, roundedOff * narrows)
  )
    error(
      path,
      "contradiction",
      `over ${said(length)} the taper "${name}" narrows by ${said(narrows)} at its angle, ${small === undefined ? `but is only ${said(large)} thick` : `but from large to small by ${said(large - small)}`}`,
      "keep the diameters with their length, or the angle, whichever was measured",
    );
}
