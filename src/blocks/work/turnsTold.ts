import type { HandwheelFinding } from "../../findings/findings.js";

/** Beyond so many turns only every tenth is told: what lies between adds up. */
const MOST_TURNS = 60;
const TURNS_IN_FULL = 20;

/** Whole turns over the travel, `usual` of them where the file does not give that, from `first` on; none where the travel is less
 *  than one. `most`: up to so many each one is told. */
export function turnsTold(
  { handwheel, feed }: HandwheelFinding,
  usual: number,
  first = 1,
  most = MOST_TURNS,
): number[] {
  const { travel } = handwheel;
  const last = travel === undefined || feed === undefined ? usual : Math.floor(travel / feed.perTurn + 1e-9);
  return Array.from({ length: Math.max(0, last + 1 - first) }, (_, index) => index + first).filter(
    (turn) => last <= most || turn <= TURNS_IN_FULL || turn % 10 === 0 || turn === last,
  );
}
