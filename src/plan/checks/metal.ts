import { burns } from "../../findings/chipFire.js";
import { isHolding, type JobStep } from "../../job/job.js";
import { diameterAt, least } from "../../part/outline.js";
import { boreOver, openOver, outsideOver, thinnestWall } from "../../part/workpiece.js";
import { roundIn } from "../../quantity/length.js";
import { say } from "../../words/say.js";
import { type Check, type Checked, refused, type StepFinding, takeCare } from "../finding.js";
import { firmnessOf } from "../firmness.js";
import { asManyAsDrilled, holes, throughTheBack } from "./holes.js";
import { SAME } from "./same.js";

/** Thinner metal than this, mm, is spoilt by the next cut or by the jaws; below the second figure it wants care. Common practice. */
const WALL = { least: roundIn(0.3, 0.012), thin: roundIn(1, 0.04) } as const;
/** A blade further out of its holder than so many of its widths wanders and breaks. Common practice. */
const BLADE_OUT = 10;

/** As much may lie between a nominal size and the middle of its tolerance, mm: h11 over 10 mm. */
const A_TOLERANCE = 0.1;

/** Thinner than this, mm, a hand-ground tool rubs. Common practice. */
const THINNEST = roundIn(0.02, 0.001);

/** Is the metal there that a step is to take off, and enough of it afterwards? */
export const metalCheck: Check = (checked) => {
  const { stage, job } = checked;
  if (isHolding(stage.step)) return [];
  // Of a piece on the drill's table nothing is known but its holes.
  if (job.bar === undefined) return [...asManyAsDrilled(checked), ...holes(checked)];
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
            "from:",
          ),
        ]
      : [
          takeCare(
            "thinner-than-said",
            say("plan findings.thinner than said", { said: show(step.from), there: show(there) }),
            say("plan findings.thinner than said remedy"),
            "from:",
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
        "diameter:",
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
          "depth:, bar: length:",
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
          say("plan findings.behind a collar remedy"),
          "{ do: groove, … }",
        ),
      ]
    : [];
}

const largeEnd = ({ at, length, smallAt }: Extract<JobStep, { do: "taper" }>): [number, number] =>
  smallAt === "end" ? [at + length - 1e-4, at + length] : [at, at + 1e-4];

function edges({ stage: { step, before }, show }: Checked): StepFinding[] {
  if (step.do === "chamfer") {
    if (step.side === "bore")
      return diameterAt(before.bore, step.at, 1) > 0
        ? []
        : [
            refused(
              "no-edge",
              say("plan findings.no edge of hole"),
              say("plan findings.no edge of hole remedy"),
              "at:",
            ),
          ];
    const [outer, inner] = [diameterAt(before.outside, step.at, -1), diameterAt(before.outside, step.at, 1)];
    const height = Math.abs(inner - outer) / 2;
    if (height < SAME)
      return [
        refused(
          "no-edge",
          say("plan findings.no edge", { at: show(step.at) }),
          say("plan findings.no edge remedy"),
          "at:",
        ),
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
  const { deepest, why } = firmnessOf(findings.machine.work, job.units);
  return [
    ...(step.cut > deepest + 1e-9
      ? [
          refused(
            "too-deep",
            say("plan findings.too deep", { cut: show(step.cut), most: show(deepest), why }),
            say("plan findings.too deep remedy", { most: show(deepest) }),
            "cut:, work: { deepest: … }",
          ),
        ]
      : []),
    ...("finish" in step && step.finish < THINNEST[job.units] - 1e-9 && !burns(job.material)
      ? [
          takeCare(
            "rubs",
            say("plan findings.rubs", { finish: show(step.finish) }),
            say("plan findings.rubs remedy", { least: show(THINNEST[job.units]) }),
            "finish:",
          ),
        ]
      : []),
  ];
}

function wall({ stage: { step, before, after }, job: { units }, show }: Checked): StepFinding[] {
  if (step.do === "part" || step.do === "face" || step.do === "chamfer" || step.do === "centre drill") return [];
  const now = thinnestWall(after);
  const was = thinnestWall(before);
  if (now === undefined || (was !== undefined && was.wall <= now.wall + SAME)) return [];
  const words =
    now.wall <= 0
      ? say("plan findings.through the wall", { at: show(now.at, 2) })
      : say("plan findings.thin wall", { wall: show(now.wall, 2), at: show(now.at, 2) });
  if (now.wall < WALL.least[units] - SAME)
    return [refused("thin-wall", words, say("plan findings.thin wall refused", { least: show(WALL.least[units]) }))];
  return now.wall < WALL.thin[units] - SAME
    ? [takeCare("thin-wall", words, say("plan findings.thin wall remedy"))]
    : [];
}
