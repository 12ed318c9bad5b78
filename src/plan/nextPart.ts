import type { Job } from "../job/job.js";
import { TOUCHED } from "./doubt.js";
import { isDrawnOut } from "./drawnOut.js";
import { endsOfWork } from "./endsOfWork.js";
import type { PlannedSize, PlannedStep, TouchedAnew } from "./plannedStep.js";
import { setsThePost } from "./toolPost.js";

/** The steps, each with what the next part does to its zeros; parts then differ by the touches as well. */
export const withNextPart = (
  steps: readonly Omit<PlannedStep, "anew">[],
  job: Pick<Job, "bar" | "batch" | "parts" | "spindleStop">,
): PlannedStep[] =>
  endsOfWork(steps).flatMap((end) => {
    const tools = new Set(end.filter(setsThePost).map(({ tool }) => tool));
    const across =
      job.parts > 1 && job.batch === "part" && (tools.size > 1 || end.some(({ first }) => first.length > 0));
    return end.map((step): PlannedStep => {
      const { holding } = step.stage;
      const drawnOut = isDrawnOut(job) && holding.end === "first";
      const stands = job.spindleStop && !drawnOut && holding.held !== "between centres";
      const along = across || (job.parts > 1 && job.bar !== undefined && !stands);
      return {
        ...step,
        anew: { across, along },
        sizes: step.sizes.map((size) => touchedAnew(size, { across, along })),
      };
    });
  });

/** By a touch on either part; on diameter it counts twice. */
function touchedAnew(size: PlannedSize, { across, along }: TouchedAnew): PlannedSize {
  const touches = size.what === "diameter" ? (across ? 4 : 0) : size.what === "length" && along ? 2 : 0;
  return size.alike === undefined || touches === 0 ? size : { ...size, alike: size.alike + touches * TOUCHED };
}
