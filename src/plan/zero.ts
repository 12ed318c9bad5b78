import type { Setting } from "../dial/setting.js";
import type { HandwheelFinding } from "../findings/findings.js";
import { settingToMove } from "../findings/settings.js";

/** Where a wheel's readings begin: touched off once with a tool, then gone by until the tool, the work or the slide's angle changes. */
export type Zero = {
  readonly wheel: HandwheelFinding;
  /** What is touched: `end` is the free end as it then is, `corner` the edge that a chamfer breaks, `mouth` the end where a drill's
   *  full diameter just enters; `tip`: the end, by a drill's tip; `begin`: nothing, the tip stands where its cut begins. */
  readonly of: "diameter" | "bore" | "end" | "corner" | "raw end" | "mouth" | "begin" | "tip";
  /** Diameter touched, or the place along the work, mm. */
  readonly at: number;
};

/** What a wheel is set to, counted from its zero: how far its dial has gone on, or back (`back`: against its numbers). */
export type Reading = {
  readonly setting: Setting;
  readonly back: boolean;
  /** Where the slide truly stands then, mm from the zero, by the feed of the file; back is less than 0. */
  readonly travel: number;
};

/** The nearest reading for so much travel of the slide from the zero, mm, as it can be set: to a tenth of a division. Undefined
 *  where the wheel has no feed. */
export function readingAt(wheel: HandwheelFinding, travel: number): Reading | undefined {
  const back = travel < -1e-9;
  const setting = settingToMove(wheel, Math.abs(travel));
  if (setting === undefined) return undefined;
  const reached = Math.abs(travel) + setting.error / (wheel.reading?.factor ?? 1);
  return { setting, back, travel: back ? 0 - reached : reached };
}
