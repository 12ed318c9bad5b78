import { usesOf } from "../../findings/uses.js";
import { block, type Run } from "../shared/block.js";
import { cautionRuns, furtherCautions } from "../shared/cautions.js";

/** Every caution of the machine's uses in full, once; who comes before them stands in the foot. */
export const allCautions = block({}, ({ findings, width }) => {
  const drilling = usesOf(findings.machine).includes("drilling");
  const turning = usesOf(findings.machine).includes("turning");
  const places = [
    "belt",
    ...(turning ? (["job", "tailstock", "bar", "taper"] as const) : []),
    ...(drilling ? (["drill"] as const) : []),
    "thread",
    "dial",
  ] as const;
  // So many may break over pages, as a single caution among others may not.
  return cautionRuns(furtherCautions(places), width).map(({ drawing }): Run => ({ drawing }));
});
