import { least } from "../../part/outline.js";
import { boreOver, depthOfHole, endsOf, openOver } from "../../part/workpiece.js";
import { roundIn } from "../../quantity/length.js";
import { say } from "../../words/say.js";
import { type Checked, refused, type StepFinding, takeCare } from "../finding.js";
import { SAME } from "./same.js";

/** A reamer takes at most so much off a hole, as a share of its size and at least, mm (common practice); with so many
 *  times as much its flutes jam (own figure). Its lead wants so much room below, mm (own figure). */
const REAMER = { share: 0.03, least: 0.3, jams: 3, lead: 1.5 } as const;
/** A drill up to this, mm, starts well enough on a faced end. Common practice. */
const PUNCHED = roundIn(3, 1 / 8);

/** A drill that comes out behind a blank meets whatever is there: a stop, a jaw, the spindle. */
export function throughTheBack({ stage: { step, before, openEnded, shaping }, job, show }: Checked): StepFinding[] {
  if (step.do !== "drill" || openEnded || job.bar === undefined) return [];
  const { to } = endsOf(before);
  return shaping.to > to + SAME
    ? [
        takeCare(
          "through-the-back",
          say("plan findings.through the back", { to: show(shaping.to), long: show(to) }),
          job.spindleStop ? say("plan findings.through the back, stop") : say("plan findings.through the back remedy"),
        ),
      ]
    : [];
}

/** More holes cannot be tapped than were drilled, nor more drilled than were begun. */
export function asManyAsDrilled({ stage: { hole } }: Checked): StepFinding[] {
  if (hole === undefined || hole.count <= hole.drilled) return [];
  const { count, drilled: n } = hole;
  return [
    refused(
      "more-holes",
      say("plan findings.more holes", { count, n }),
      say("plan findings.more holes remedy"),
      "holes:, hole:",
    ),
  ];
}

/** What a hole needs to be drilled, bored or reamed: metal round it, a start, a hole of the right size before it. */
export function holes({ stage: { step, before }, job, show }: Checked): StepFinding[] {
  const { from, to } = endsOf(before);
  const size = "diameter" in step && step.diameter !== undefined ? step.diameter : 0;
  const outside = (depth: number) => least(before.outside, from, Math.min(depth, to));
  const widest = () => boreOver(before, from, to);
  const made = (hole: number) =>
    hole > 0 ? say("plan findings.hole is", { hole: show(hole, 2) }) : say("plan findings.none made");
  switch (step.do) {
    case "drill":
      if (size >= outside(step.depth))
        return [
          refused(
            "wider-than-the-work",
            say("plan findings.drill wider than work", { size: show(size), work: show(outside(step.depth)) }),
            say("plan findings.drill wider than work remedy"),
          ),
        ];
      return job.bar !== undefined && widest() === 0 && size > PUNCHED[job.units] + SAME
        ? [
            takeCare(
              "no-start",
              say("plan findings.no start"),
              say("plan findings.no start remedy"),
              "{ do: centre drill }",
            ),
          ]
        : [];
    case "bore": {
      const reach = Math.min(step.at + step.length, to);
      const hole = openOver(before, Math.max(from, step.at), reach);
      if (step.to.aim >= outside(reach))
        return [
          refused(
            "wider-than-the-work",
            say("plan findings.bore wider than work", { size: show(step.to.aim), work: show(outside(reach)) }),
            say("plan findings.bore wider than work remedy"),
          ),
        ];
      if (hole === 0)
        return [
          refused(
            "no-hole",
            widest() === 0
              ? say("plan findings.bore without hole")
              : say("plan findings.bore deeper than hole", { depth: show(step.at + step.length) }),
            say("plan findings.bore without hole remedy"),
          ),
        ];
      if (step.from !== undefined && hole < step.from - SAME)
        return [
          refused(
            "narrower-than-said",
            say("plan findings.narrower than said", { said: show(step.from), there: show(hole) }),
            say("plan findings.leave from out"),
            "from:",
          ),
        ];
      return step.length > 5 * hole
        ? [
            takeCare(
              "slender-bar",
              say("plan findings.slender boring tool", { depth: show(step.length), hole: show(hole) }),
              say("plan findings.slender boring tool remedy"),
            ),
          ]
        : [];
    }
    case "ream": {
      const hole = openOver(before, Math.max(0, from), Math.min(step.depth, to));
      const most = Math.max(REAMER.least, REAMER.share * size);
      // A centre hole or a drill's point is no hole to ream.
      if (hole === 0 || hole >= size - SAME || size - hole > REAMER.jams * most + SAME)
        return [
          refused(
            "no-hole",
            say(widest() > 0 && hole < size ? "plan findings.ream, hole for its depth" : "plan findings.ream, hole", {
              size: show(size),
              found: hole === 0 && widest() > 0 ? say("plan findings.not so deep") : made(hole),
            }),
            say("plan findings.ream, hole remedy"),
          ),
        ];
      const room = depthOfHole(before, hole) - step.depth;
      if (room < REAMER.lead - SAME && depthOfHole(before, hole) < to - SAME)
        return [
          takeCare(
            "short-below",
            say("plan findings.ream, short below", { room: show(Math.max(0, room), 2) }),
            say("plan findings.ream, short below remedy", { more: show(REAMER.lead - Math.max(0, room), 2) }),
          ),
        ];
      return size - hole > most + SAME
        ? [
            takeCare(
              "much-to-ream",
              say("plan findings.much to ream", { off: show(size - hole), hole: show(hole), most: show(most, 2) }),
              say("plan findings.much to ream remedy", { size: show(size - most, 2) }),
            ),
          ]
        : [];
    }
    default:
      return [];
  }
}
