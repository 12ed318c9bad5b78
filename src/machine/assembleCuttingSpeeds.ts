import { MM_PER_FOOT } from "../quantity/length.js";
import type { Context } from "./context.js";
import type { CuttingSpeedText } from "./fields.js";
import type { Units, Work } from "./machine.js";
import type { MachineFile } from "./schema.js";

/** m/min in one of the units that people give cutting speeds in. */
const metresPerMinuteIn = { "m/min": 1, "ft/min": MM_PER_FOOT / 1000 } as const;
/** The unit of a bare one. */
const usualUnit: Readonly<Record<Units, keyof typeof metresPerMinuteIn>> = { mm: "m/min", in: "ft/min" };

/** The user's own cutting speeds, and the factor on the published ones. */
export function assembleCuttingSpeeds(
  given: MachineFile["work"],
  { units, error }: Context,
): Pick<Work, "firmness" | "derating" | "cuttingSpeeds"> {
  const unitOf = ({ unit }: CuttingSpeedText) => (unit === "file" ? usualUnit[units] : unit);
  const metresPerMinute = (speed: CuttingSpeedText) => speed.value * metresPerMinuteIn[unitOf(speed)];
  const own = given?.cuttingSpeeds?.map(({ speed: [least, most], ...row }, index) => {
    // A unit on one of the two holds for both: [25, 35 m/min].
    const unit = least.unit === "file" ? most.unit : least.unit;
    const [from, to] = [least, most].map((one) => (one.unit === "file" ? { ...one, unit } : one)) as [
      CuttingSpeedText,
      CuttingSpeedText,
    ];
    const [slowest, fastest] = [metresPerMinute(from), metresPerMinute(to)];
    if (slowest > fastest)
      error(
        ["work", "cuttingSpeeds", index, "speed"],
        "backwards",
        "the slower cutting speed comes after the faster one",
        "write the slower one first",
      );
    const { material, tool, operation, source } = row;
    const words = { ...(tool !== undefined && { tool }), ...(operation !== undefined && { operation }) };
    const asGiven = { from: { value: from.value, unit: unitOf(from) }, to: { value: to.value, unit: unitOf(to) } };
    return { material, ...words, slowest, fastest, asGiven, ...(source !== undefined && { source }) };
  });
  return {
    ...(given?.firmness !== undefined && { firmness: given.firmness }),
    ...(given?.derating !== undefined && { derating: given.derating }),
    ...(own && { cuttingSpeeds: own }),
  };
}
