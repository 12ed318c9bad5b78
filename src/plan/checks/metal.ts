import { burns } from "../../findings/chipFire.js";
import { isHolding, type JobStep } from "../../job/job.js";
import { diameterAt, least } from "../../part/outline.js";
import { boreOver, depthOfHole, endsOf, openOver, outsideOver, thinnestWall } from "../../part/workpiece.js";
import { type Check, type Checked, refused, type StepFinding, takeCare } from "../finding.js";
import { firmnessOf } from "../firmness.js";

/** Thinner metal than this, mm, is spoilt by the next cut or by the jaws; below the second figure it wants care. Common practice. */
const WALL = { least: 0.3, thin: 1 } as const;
/** A reamer takes at most so much off a hole, as a share of its size and at least, mm (common practice); with so many
 *  times as much its flutes jam (own figure). Its lead wants so much room below, mm (own figure). */
const REAMER = { share: 0.03, least: 0.3, jams: 3, lead: 1.5 } as const;
/** A blade further out of its holder than so many of its widths wanders and breaks. Common practice. */
const BLADE_OUT = 10;

/** A drill up to this, mm, starts well enough on a faced end. Common practice. */
const PUNCHED = 3;

/** As much may lie between a nominal size and the middle of its tolerance, mm: h11 over 10 mm. */
const A_TOLERANCE = 0.1;

/** Thinner than this, mm, a hand-ground tool rubs. Common practice. */
const THINNEST = 0.02;

/** Sizes apart by less are the same on any drawing. */
const SAME = 1e-6;

/** Is the metal there that a step is to take off, and enough of it afterwards? */
export const metalCheck: Check = (checked) => {
  const { stage, job } = checked;
  if (isHolding(stage.step)) return [];
  // Of a piece on the drill's table nothing is known but its holes.
  if (job.bar === undefined) return holes(checked);
  const found = [
    ...lengthKnown(checked),
    ...begins(checked),
    ...behindACollar(checked),
    ...holes(checked),
    ...throughTheBack(checked),
    ...edges(checked),
    ...deepEnough(checked),
  ];
  if (found.some(({ kind }) => kind === "refused")) return found;
  return [...found, ...cutsAir(checked), ...wall(checked)];
};

/** Steps that leave the metal where it is. */
const cutless: readonly JobStep["do"][] = ["knurl", "die", "tap"];

function cutsAir({ stage: { step, shaping, before }, show }: Checked): StepFinding[] {
  if (cutless.includes(step.do) || shaping.removed > 1e-4) return [];
  const there = outsideOver(before, shaping.from, shaping.to);
  return [
    refused(
      "cuts-air",
      `cuts nothing: ${step.do === "face" ? "no metal stands before that face" : shaping.inside.length > 0 ? `the hole there is ${show(boreOver(before, shaping.from, shaping.to))} already` : `the work is ${show(there)} there already`}`,
      "mind the order of steps, where it begins, and its sizes",
    ),
  ];
}

/** What the file says stands there, against what does. */
function begins({ stage: { step, before, shaping }, show }: Checked): StepFinding[] {
  if (step.do === "turn" || step.do === "shoulder") {
    const there = outsideOver(before, shaping.from, shaping.to);
    if (step.from === undefined || Math.abs(step.from - there) < SAME) return [];
    return step.from < there
      ? [
          refused(
            "thicker-than-said",
            `begins at ${show(step.from)}, but the work is still ${show(there)} there: a first cut would be too deep`,
            "leave from: out, or mind the order of steps",
          ),
        ]
      : [
          takeCare(
            "thinner-than-said",
            `begins at ${show(step.from)}, but the work is only ${show(there)} there`,
            "leave from: out; the cuts are planned from what stands there",
          ),
        ];
  }
  if (step.do === "taper") {
    const there = least(before.outside, ...largeEnd(step));
    // A diameter that was turned to the middle of its tolerance is what the drawing calls by its nominal size.
    return there < step.large - A_TOLERANCE
      ? [
          refused(
            "beyond-the-stock",
            `needs ${show(step.large)} where it is large, and the work is ${Number.isFinite(there) ? show(there) : "not"} there`,
            "shorten it, or begin it where the metal is",
          ),
        ]
      : [];
  }
  if (step.do !== "knurl" && step.do !== "groove" && step.do !== "part") return [];
  const there = outsideOver(before, shaping.from, shaping.to);
  if (there === 0)
    return [
      refused(
        "cuts-air",
        `there is no metal at ${show(shaping.from)}`,
        "lengths count from the free end's finished face",
      ),
    ];
  if (step.do === "knurl" && step.wheel !== undefined && step.wheel > step.length + SAME)
    return [
      refused(
        "wider-than-the-knurl",
        `a wheel ${show(step.wheel)} wide marks more than ${show(step.length)}`,
        "take a narrower wheel, or make the knurl as wide as it",
      ),
    ];
  if (step.do === "knurl")
    return least(before.outside, shaping.from, shaping.to) < there - SAME
      ? [takeCare("uneven", "runs over more than one diameter", "knurl one cylinder")]
      : [];
  if (step.do === "part" && step.diameter !== undefined && Math.abs(step.diameter - there) > SAME)
    return [
      takeCare(
        "other-diameter",
        `gives ${show(step.diameter)} at the blade, and the work is ${show(there)} there`,
        "leave diameter: out; the plan goes by what stands there",
      ),
    ];
  return [];
}

/** A length to face to is nothing on a bar that goes on into the spindle. */
const lengthKnown = ({ stage: { step, openEnded } }: Checked): StepFinding[] =>
  step.do === "face" && step.length !== undefined && openEnded
    ? [
        refused(
          "length-unknown",
          "faces to a length, and how long the bar is nobody said",
          "depth: is how much comes off; or give the blank's length under bar: length:",
        ),
      ]
    : [];

/** A tool that cuts towards the chuck has to get down to its depth somewhere. */
function behindACollar({ stage: { step, before, shaping }, show }: Checked): StepFinding[] {
  if (step.do !== "turn" && step.do !== "shoulder" && step.do !== "taper") return [];
  if (step.at <= SAME) return [];
  const collar = diameterAt(before.outside, step.at, -1);
  const depth = shaping.outside[0]?.start ?? 0;
  return collar > depth + SAME
    ? [
        takeCare(
          "behind-a-collar",
          `begins at ${show(step.at)} behind ${show(collar)}: the tool has to plunge in there, which a knife tool does not`,
          `cut a groove first: { do: groove, at: ${show(step.at)}, … }, or use a pointed tool in light cuts`,
        ),
      ]
    : [];
}

/** A drill that comes out behind a blank meets whatever is there: a stop, a jaw, the spindle. */
function throughTheBack({ stage: { step, before, openEnded, shaping }, job, show }: Checked): StepFinding[] {
  if (step.do !== "drill" || openEnded || job.bar === undefined) return [];
  const { to } = endsOf(before);
  return shaping.to > to + SAME
    ? [
        takeCare(
          "through-the-back",
          `comes out at the back: its point goes to ${show(shaping.to)}, and the work is ${show(to)} long`,
          job.spindleStop
            ? "keep the stop in the spindle clear of the drill, or make it hollow"
            : "see that nothing stands behind it, and ease the feed at the end",
        ),
      ]
    : [];
}

const largeEnd = ({ at, length, smallAt }: Extract<JobStep, { do: "taper" }>): [number, number] =>
  smallAt === "end" ? [at + length - 1e-4, at + length] : [at, at + 1e-4];

function holes({ stage: { step, before }, job, show }: Checked): StepFinding[] {
  const { from, to } = endsOf(before);
  const size = "diameter" in step && step.diameter !== undefined ? step.diameter : 0;
  const outside = (depth: number) => least(before.outside, from, Math.min(depth, to));
  const widest = () => boreOver(before, from, to);
  const made = (hole: number) => (hole > 0 ? `the hole is ${show(hole, 2)}` : "none was made");
  switch (step.do) {
    case "drill":
      if (size >= outside(step.depth))
        return [
          refused(
            "wider-than-the-work",
            `drills ${show(size)} into work of ${show(outside(step.depth))}`,
            "take a smaller drill, or drill it before the outside is turned",
          ),
        ];
      return job.bar !== undefined && widest() === 0 && size > PUNCHED
        ? [takeCare("no-start", "begins on a plain face, where a drill wanders", "add { do: centre drill } before it")]
        : [];
    case "bore": {
      const reach = Math.min(step.at + step.length, to);
      const hole = openOver(before, Math.max(from, step.at), reach);
      if (step.to.aim >= outside(reach))
        return [
          refused(
            "wider-than-the-work",
            `bores ${show(step.to.aim)} into work of ${show(outside(reach))}`,
            "bore less, or before the outside is turned",
          ),
        ];
      if (hole === 0)
        return [
          refused(
            "no-hole",
            widest() === 0
              ? "bores where no hole was made"
              : `bores ${show(step.at + step.length)} deep, and the hole is not so deep`,
            "drill first, to the full depth and a little more",
          ),
        ];
      if (step.from !== undefined && hole < step.from - SAME)
        return [
          refused(
            "narrower-than-said",
            `begins in a hole of ${show(step.from)}, and it is ${show(hole)}`,
            "leave from: out, or mind the order of steps",
          ),
        ];
      return step.length > 5 * hole
        ? [
            takeCare(
              "slender-bar",
              `bores ${show(step.length)} deep in a hole of ${show(hole)}: a boring tool so long springs`,
              "take light cuts and measure often, or drill and ream",
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
            `wants a hole a little under ${show(size)}${widest() > 0 && hole < size ? " for its whole depth" : ""}; ${hole === 0 && widest() > 0 ? "it is not so deep" : made(hole)}`,
            "drill first, a little smaller and deeper",
          ),
        ];
      const room = depthOfHole(before, hole) - step.depth;
      if (room < REAMER.lead - SAME && depthOfHole(before, hole) < to - SAME)
        return [
          takeCare(
            "short-below",
            `leaves ${show(Math.max(0, room), 2)} of hole below the reamed depth, where the reamer's lead ends`,
            `drill ${show(REAMER.lead - Math.max(0, room), 2)} deeper, or ream less`,
          ),
        ];
      return size - hole > most + SAME
        ? [
            takeCare(
              "much-to-ream",
              `takes ${show(size - hole)} off a hole of ${show(hole)}, more than a reamer bears (about ${show(most, 2)})`,
              `drill or bore it to ${show(size - most, 2)} or a little more`,
            ),
          ]
        : [];
    }
    default:
      return [];
  }
}

function edges({ stage: { step, before }, show }: Checked): StepFinding[] {
  if (step.do === "chamfer") {
    if (step.side === "bore")
      return diameterAt(before.bore, step.at, 1) > 0
        ? []
        : [refused("no-edge", "breaks the edge of a hole that was not made", "drill first, or mind at:")];
    const [outer, inner] = [diameterAt(before.outside, step.at, -1), diameterAt(before.outside, step.at, 1)];
    const height = Math.abs(inner - outer) / 2;
    if (height < SAME)
      return [
        refused(
          "no-edge",
          `there is no edge at ${show(step.at)}`,
          "at: is where the edge lies, from the free end; 0 is the end itself",
        ),
      ];
    return step.size > height + SAME
      ? [
          refused(
            "larger-than-the-edge",
            `takes ${show(step.size)} off an edge that stands only ${show(height)} high`,
            `make it ${show(height)} or less`,
          ),
        ]
      : [];
  }
  if (step.do !== "part" && step.do !== "groove") return [];
  const [from, to] = step.do === "part" ? [step.length, step.length + step.blade] : [step.at, step.at + step.width];
  const deep = (outsideOver(before, from, to) - (step.do === "part" ? openOver(before, from, to) : step.to.aim)) / 2;
  return deep > BLADE_OUT * step.blade
    ? [
        takeCare(
          "slender-blade",
          `goes ${show(deep)} deep with a blade ${show(step.blade)} wide, more than ${BLADE_OUT} times its width: it wanders and breaks`,
          `take a blade of ${show(deep / BLADE_OUT, 2)} or wider, or turn the place down first`,
        ),
      ]
    : [];
}

/** Cuts as deep as such a machine bears, and no deeper. */
function deepEnough({ stage: { step }, findings, job, show }: Checked): StepFinding[] {
  if (!("cut" in step)) return [];
  const { deepest, why } = firmnessOf(findings.machine.work);
  return [
    ...(step.cut > deepest + 1e-9
      ? [
          refused(
            "too-deep",
            `cuts ${show(step.cut)} deep; this machine bears ${show(deepest)} (${why})`,
            `cut: ${show(deepest)} or less, or work: { deepest: … } in the machine's file where it was tried`,
          ),
        ]
      : []),
    ...("finish" in step && step.finish < THINNEST && !burns(job.material)
      ? [
          takeCare(
            "rubs",
            `leaves ${show(step.finish)} for the last cut: the tool rubs instead of cutting`,
            `finish: ${show(THINNEST)} or more`,
          ),
        ]
      : []),
  ];
}

function wall({ stage: { step, before, after }, show }: Checked): StepFinding[] {
  if (step.do === "part" || step.do === "face" || step.do === "chamfer" || step.do === "centre drill") return [];
  const now = thinnestWall(after);
  const was = thinnestWall(before);
  if (now === undefined || (was !== undefined && was.wall <= now.wall + SAME)) return [];
  const words =
    now.wall <= 0
      ? `breaks through the wall at ${show(now.at, 2)} along the work`
      : `leaves a wall of ${show(now.wall, 2)} at ${show(now.at, 2)} along the work`;
  if (now.wall < WALL.least - SAME)
    return [refused("thin-wall", words, `mind both diameters: less than ${show(WALL.least)} does not stand the cut`)];
  return now.wall < WALL.thin - SAME
    ? [takeCare("thin-wall", words, "take light cuts last, and mind that jaws press it out of round")]
    : [];
}
