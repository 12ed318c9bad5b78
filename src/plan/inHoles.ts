import { say } from "../words/say.js";
import type { Stage } from "./stage.js";

/** What is done, and in which holes of those beside each other. */
export function inHoles(what: string, { hole }: Pick<Stage, "hole">): string {
  if (hole === undefined) return what;
  const { name, count: n, drilled: of, another } = hole;
  const some = n < of;
  if (name !== undefined)
    return some ? say("plan.some named holes", { what, n, of, name }) : say("plan.named holes", { what, n, name });
  if (another) return say("plan.other holes", { what, n });
  if (some) return say("plan.some holes", { what, n, of });
  return n > 1 ? say("plan.holes alike", { what, n }) : what;
}

/** How the same is done in several holes: all with one tool before the next. Its zero is that of the first. */
export const holesInTurn = ({ hole }: Pick<Stage, "hole">, onTheTable: boolean): string[] =>
  hole === undefined || hole.count < 2
    ? []
    : [say(onTheTable ? "plan.holes in turn" : "plan.holes on the axis", { n: hole.count })];
