import type { Findings, HandwheelFinding } from "../findings/findings.js";
import { angleScalesOf, scalesOf } from "../findings/ofWheels.js";
import { say } from "../words/say.js";
import type { Need } from "./template.js";

/** Whether a handwheel has what a sheet is about. */
export const has = ({ feed, dial }: HandwheelFinding, need: Need): boolean =>
  need === "vernier"
    ? dial?.vernier !== undefined
    : need === "dial" || need === "pieces"
      ? dial !== undefined
      : need === "feed" || need === "drive or feed"
        ? feed !== undefined
        : true;

/** What is missing in the machine file to make a sheet, in words; undefined where nothing is. */
export function unmet(findings: Findings, need: Need): string | undefined {
  if (need === "drive") return findings.drive ? undefined : say("binder.missing drive");
  if (need === "drive or feed" && findings.drive) return undefined;
  if (need === "feed" || need === "drive or feed")
    return findings.handwheels.some((finding) => has(finding, need))
      ? undefined
      : need === "drive or feed"
        ? say("binder.missing drive and feed")
        : findings.handwheels.some(({ miscounted }) => miscounted)
          ? say("binder.missing feed, miscounted")
          : say("binder.missing feed");
  const [scales, angleScales] = [scalesOf(findings), angleScalesOf(findings)];
  if (need === "pieces" && scales.length + angleScales.length > 0) return undefined;
  if (need === "dial" || need === "pieces")
    return findings.handwheels.some((finding) => has(finding, need))
      ? undefined
      : findings.handwheels.some(({ doubtful, miscounted }) => doubtful || miscounted)
        ? say("binder.missing dial, uncertain")
        : say("binder.missing dial");
  if (need === "vernier")
    return findings.handwheels.some((finding) => has(finding, need))
      ? undefined
      : findings.handwheels.some(({ handwheel }) => handwheel.dial?.vernier)
        ? say("binder.missing vernier, no dial")
        : say("binder.missing vernier");
  if (need === "readings")
    return findings.handwheels.some(({ study }) => study !== undefined) ? undefined : say("binder.missing readings");
  if (need === "job") return findings.job ? undefined : say("binder.missing job");
  if (need === "scales" && scales.length === 0)
    return say(findings.machine.scales?.length ? "binder.missing scales of these" : "binder.missing scales");
  if (need === "angle scales" && angleScales.length === 0)
    return say(findings.machine.angleScales?.length ? "binder.missing scales of these" : "binder.missing angle scales");
  return undefined;
}
