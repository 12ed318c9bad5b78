import type { DialChoice } from "../dial/finding.js";
import type { Findings, HandwheelFinding } from "../findings/findings.js";
import { heldByLimit, measureFirst } from "../findings/limits.js";
import type { Problem } from "../machine/problem.js";
import { nothingKnown } from "./nothingKnown.js";

/** The object that `check --json` prints; documented in the README. Lengths mm, speeds rpm. */
export function summary(findings: Findings | undefined, problems: readonly Problem[]) {
  return { ...(findings ? known(findings) : nothingKnown), problems: problems.map(problemSummary) };
}

const problemSummary = ({ severity, line, column, what, remedy, code, file }: Problem) => ({
  severity,
  line,
  column,
  code,
  message: `${what}; ${remedy}`,
  ...(file !== undefined && { file }),
});

/** What follows from a sound file. */
export function known(findings: Findings) {
  return {
    name: findings.machine.name,
    handwheels: findings.handwheels.map(handwheelSummary),
    speeds:
      findings.drive?.speeds.map(({ position, rpm, slowestRpm, highestRpm, from, byRatioRpm, slip, doubtful }) => ({
        position: position.name,
        // A ratio that every reading contradicts is nobody's speed.
        rpm: from === "unknown" ? null : rpm,
        slowestRpm: from === "unknown" ? null : slowestRpm,
        highestRpm,
        limit: heldByLimit({ rpm, slowestRpm, highestRpm }, findings.machine.limits) ?? null,
        measureFirst: measureFirst({ from, highestRpm }, findings.machine.limits),
        doubtful: doubtful ?? [],
        from,
        byRatioRpm,
        slip: slip ?? null,
      })) ?? [],
    slip: findings.drive?.slip ?? null,
  };
}

function handwheelSummary({ handwheel, feed, dial }: HandwheelFinding) {
  return {
    name: handwheel.name,
    reads: handwheel.reads,
    feedPerTurn: feed ? { mm: feed.perTurn, uncertaintyMm: feed.uncertainty ?? null, from: feed.from } : null,
    lostMotionMm: feed?.lostMotion?.travel ?? null,
    dial: dial
      ? {
          shape: dial.shape,
          ...choiceSummary(dial.chosen),
          stripLengthMm: dial.stripLength ?? null,
          choices: dial.choices.map(choiceSummary),
          second: dial.second ? choiceSummary(dial.second.chosen) : null,
          vernier: dial.vernier
            ? { parts: dial.vernier.parts, spans: dial.vernier.spans, leastCountMm: dial.vernier.leastCount }
            : null,
        }
      : null,
  };
}

const choiceSummary = (choice: DialChoice) => ({
  divisionValueMm: choice.divisionValue,
  divisionLabel: choice.divisionLabel,
  divisions: choice.divisions,
  rows: choice.rows,
  closure: choice.closure,
  leftOverMm: choice.leftOver,
  errorPerTurnMm: choice.errorPerTurn,
  errorOverTravelMm: choice.errorOverTravel,
  overTravelMm: choice.overTravel,
  spacingMm: choice.spacing,
});
