import { parseNumber } from "../quantity/number.js";
import { halfAngle as halfAngleOf, halfAngleOfTaper, taperOfRatio, taperPerFoot } from "../taper/taper.js";
import type { Context, Raw } from "./context.js";
import type { TaperWish } from "./machine.js";
import type { Path } from "./problem.js";

type RawTaper = Raw<"tapers">[number];

/** Beyond this a taper is a face: nobody swivels for it. */
const steepest = (80 * Math.PI) / 180;

export const assembleTapers = (tapers: Raw<"tapers">, context: Context): TaperWish[] =>
  tapers.map((taper, index) => assembleTaper(taper, ["tapers", index], context));

function assembleTaper(taper: RawTaper, path: Path, { mm, error }: Context): TaperWish {
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
    const [one, inLength] = taper.ratio.split(/\s*(?:in|:)\s*/).map(parseNumber);
    if (one === undefined || inLength === undefined || !(one > 0 && inLength > 0))
      error([...path, "ratio"], "bad-value", `"${taper.ratio}" is not a ratio`, 'write it as "1 in 20" or "1:20"');
    else halfAngle = halfAngleOfTaper(taperOfRatio(one, inLength));
  } else if (byDiameters) halfAngle = halfAngleOf(large, small, length);
  if (forms === 1 && !(halfAngle > 0 && halfAngle < steepest))
    error(
      path,
      "bad-value",
      `the taper "${taper.name}" has a half angle of ${((halfAngle * 180) / Math.PI).toFixed(1)}°`,
      "it must lie between 0 and 80°",
    );
  return { name: taper.name, halfAngle, ...sizes };
}
