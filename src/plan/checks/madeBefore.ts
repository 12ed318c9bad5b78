import type { JobStep } from "../../job/job.js";
import type { Surface } from "../../part/workpiece.js";
import { threadOnPaper } from "../../thread/onPaper.js";
import { say } from "../../words/say.js";
import { type Check, refused } from "../finding.js";

/** Cuts along the work. A groove, a chamfer or a parting blade goes into a thread where a thread is meant to end. */
const along: readonly JobStep["do"][] = ["drill", "ream", "bore", "turn", "shoulder", "taper"];

/** A cut that takes away most of a thread or a knurl which an earlier step made. What leaves the greater part of it may be meant: a
 *  counterbore, a reduced end. */
export const madeBeforeCheck: Check = ({ stage: { step, before, after } }) =>
  along.includes(step.do)
    ? namesOf(before.surfaces).flatMap((surface) => {
        const was = lengthOf(before.surfaces, surface);
        if (lengthOf(after.surfaces, surface) >= was / 2) return [];
        const { kind, name } = surface;
        const made =
          kind === "thread"
            ? say("plan findings.the thread", { name: threadOnPaper(name) })
            : say("plan findings.the knurl");
        return [
          refused(
            "spoils-a-thread",
            say("plan findings.spoils", { made }),
            say("plan findings.spoils remedy", { made }),
          ),
        ];
      })
    : [];

const alike = (one: Surface, other: Surface): boolean =>
  one.kind === other.kind && one.side === other.side && one.name === other.name;

const namesOf = (surfaces: readonly Surface[]): Surface[] =>
  surfaces.filter((surface, place) => surfaces.findIndex((other) => alike(surface, other)) === place);

const lengthOf = (surfaces: readonly Surface[], like: Surface): number =>
  surfaces.filter((surface) => alike(surface, like)).reduce((sum, { from, to }) => sum + to - from, 0);
