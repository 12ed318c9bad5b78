import { lineBand } from "../../feed/lineBand.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import type { Units } from "../../machine/machine.js";
import { unitName } from "../../quantity/format.js";
import { fromMm } from "../../quantity/length.js";
import { say } from "../../words/say.js";
import type { Run } from "../shared/block.js";
import { plotDrawing } from "./plot.js";

/** How far the readings lie off the line, and the band in which the line itself may lie. What was read on the way back is plotted only
 *  where it does not make one number. */
export function reportPlots(finding: HandwheelFinding, units: Units, width: number, height: number): Run[] {
  const { handwheel, study } = finding;
  const feed = finding.feed ?? finding.miscounted;
  if (feed?.fit === undefined || handwheel.feed?.from !== "readings") return [];
  const { turns, travel, back } = handwheel.feed;
  const { fit } = feed;
  const wild = new Set(study?.wild.map(({ index }) => index));
  const sense = Math.sign(fit.slope) || 1;
  const half = study?.budget && lineBand(fit, study.budget, turns);
  const across = say("measured report.turns of the wheel");
  const up = unitName(units);
  const residuals = plotDrawing(
    {
      name: "residuals",
      title: say("measured report.plot off"),
      across,
      up,
      points: turns.map((x, index) => ({
        x,
        y: fromMm(sense * (fit.residuals[index] ?? 0), units),
        ...(wild.has(index) && { label: String(index + 1) }),
      })),
      ...(half && {
        band: { half: (turn: number) => fromMm(half(turn), units), words: say("measured report.plot band") },
      }),
    },
    width,
    height,
  );
  const plots: Run[] = [{ drawing: residuals, gap: 3 }];
  const told = study?.back;
  if (back === undefined || !(told?.wild.length || told?.miscounted || told?.contradiction)) return plots;
  const doubtful = new Set(told.wild.map(({ index }) => index));
  const drawing = plotDrawing(
    {
      name: "lost-motion",
      title: say("measured report.plot back"),
      across,
      up,
      points: back.map((reading, index) => ({
        x: turns[index] ?? 0,
        y: fromMm(sense * (reading - (travel[index] ?? 0)), units),
        ...(doubtful.has(index) && { label: String(index + 1) }),
      })),
    },
    width,
    height,
  );
  return [...plots, { drawing, gap: 2 }];
}
