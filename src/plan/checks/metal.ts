import { burns } from "../../findings/chipFire.js";
import { isHolding, type JobStep } from "../../job/job.js";
import { diameterAt, least } from "../../part/outline.js";
import { boreOver, depthOfHole, endsOf, openOver, outsideOver, thinnestWall } from "../../part/workpiece.js";
import { say } from "../../words/say.js";
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
      step.do === "face"
        ? say("plan findings.cuts air, face")
        : shaping.inside.length > 0
          ? say("plan findings.cuts air, hole", { size: show(boreOver(before, shaping.from, shaping.to)) })
          : say("plan findings.cuts air", { size: show(there) }),
      say("plan findings.cuts air remedy"),
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
            say("plan findings.thicker than said", { said: show(step.from), there: show(there) }),
            say("plan findings.leave from out"),
          ),
        ]
      : [
          takeCare(
            "thinner-than-said",
            say("plan findings.thinner than said", { said: show(step.from), there: show(there) }),
            say("plan findings.thinner than said remedy"),
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
            Number.isFinite(there)
              ? say("plan findings.beyond the stock", { large: show(step.large), there: show(there) })
              : say("plan findings.no stock", { large: show(step.large) }),
            say("plan findings.beyond the stock remedy"),
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
        say("plan findings.no metal", { at: show(shaping.from) }),
        say("plan findings.no metal remedy"),
      ),
    ];
  if (step.do === "knurl" && step.wheel !== undefined && step.wheel > step.length + SAME)
    return [
      refused(
        "wider-than-the-knurl",
        say("plan findings.wider than the knurl", { wheel: show(step.wheel), length: show(step.length) }),
        say("plan findings.wider than the knurl remedy"),
      ),
    ];
  if (step.do === "knurl")
    return least(before.outside, shaping.from, shaping.to) < there - SAME
      ? [takeCare("uneven", say("plan findings.knurls unevenly"), say("plan findings.knurls unevenly remedy"))]
      : [];
  if (step.do === "part" && step.diameter !== undefined && Math.abs(step.diameter - there) > SAME)
    return [
      takeCare(
        "other-diameter",
        say("plan findings.other diameter", { said: show(step.diameter), there: show(there) }),
        say("plan findings.other diameter remedy"),
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
          say("plan findings.face, length unknown"),
          say("plan findings.face, length unknown remedy"),
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
          say("plan findings.behind a collar", { at: show(step.at), collar: show(collar) }),
          say("plan findings.behind a collar remedy", { step: `{ do: groove, at: ${show(step.at)}, … }` }),
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
          say("plan findings.through the back", { to: show(shaping.to), long: show(to) }),
          job.spindleStop ? say("plan findings.through the back, stop") : say("plan findings.through the back remedy"),
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
      return job.bar !== undefined && widest() === 0 && size > PUNCHED
        ? [takeCare("no-start", say("plan findings.no start"), say("plan findings.no start remedy"))]
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

function edges({ stage: { step, before }, show }: Checked): StepFinding[] {
  if (step.do === "chamfer") {
    if (step.side === "bore")
      return diameterAt(before.bore, step.at, 1) > 0
        ? []
        : [refused("no-edge", say("plan findings.no edge of hole"), say("plan findings.no edge of hole remedy"))];
    const [outer, inner] = [diameterAt(before.outside, step.at, -1), diameterAt(before.outside, step.at, 1)];
    const height = Math.abs(inner - outer) / 2;
    if (height < SAME)
      return [
        refused("no-edge", say("plan findings.no edge", { at: show(step.at) }), say("plan findings.no edge remedy")),
      ];
    return step.size > height + SAME
      ? [
          refused(
            "larger-than-the-edge",
            say("plan findings.larger than the edge", { size: show(step.size), height: show(height) }),
            say("plan findings.larger than the edge remedy", { height: show(height) }),
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
          say("plan findings.slender blade", { deep: show(deep), blade: show(step.blade), times: BLADE_OUT }),
          say("plan findings.slender blade remedy", { blade: show(deep / BLADE_OUT, 2) }),
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
            say("plan findings.too deep", { cut: show(step.cut), most: show(deepest), why }),
            say("plan findings.too deep remedy", { most: show(deepest) }),
          ),
        ]
      : []),
    ...("finish" in step && step.finish < THINNEST && !burns(job.material)
      ? [
          takeCare(
            "rubs",
            say("plan findings.rubs", { finish: show(step.finish) }),
            say("plan findings.rubs remedy", { least: show(THINNEST) }),
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
      ? say("plan findings.through the wall", { at: show(now.at, 2) })
      : say("plan findings.thin wall", { wall: show(now.wall, 2), at: show(now.at, 2) });
  if (now.wall < WALL.least - SAME)
    return [refused("thin-wall", words, say("plan findings.thin wall refused", { least: show(WALL.least) }))];
  return now.wall < WALL.thin - SAME ? [takeCare("thin-wall", words, say("plan findings.thin wall remedy"))] : [];
}
