import { verdictOn } from "../paper/measuredPiece.js";
import { formatFixed } from "../quantity/format.js";
import { parseLength } from "../quantity/length.js";
import { type Io, Refusal } from "./io.js";
import { load } from "./load.js";
import { report } from "./report.js";

/** Answers whether a printed dial, as a caliper finds it, is good enough, what it would cost, and what would mend it. Exit status 1
 *  when it is not good enough. */
export async function verify(path: string, name: string, measuredText: string, io: Io): Promise<number> {
  const { findings, problems } = await load(path);
  report(problems, path, io);
  if (findings === undefined) return 1;
  const { machine, handwheels } = findings;
  const finding = handwheels.find(({ handwheel }) => handwheel.name.toLowerCase() === name.toLowerCase());
  if (finding === undefined)
    throw new Refusal(
      `${path}: there is no handwheel "${name}"; there are ${handwheels.map(({ handwheel }) => `"${handwheel.name}"`).join(", ") || "none in this file"}`,
    );
  // The sheet says what a piece must measure in millimetres, so a bare number is one too.
  const measured = parseLength(measuredText, "mm");
  if (measured === undefined || !(measured > 0))
    throw new Refusal(`"${measuredText}" is not a length; write what the caliper says, as 119.7 or 4.713 in`, 2);
  const printer = machine.paper.printer;
  const verdict = verdictOn(finding, measured, printer === undefined ? undefined : machine.printers[printer]);
  if ("missing" in verdict) throw new Refusal(`${path}: ${verdict.missing}`);
  const { what, wanted, off, slack, good, perTurn, divisions, across } = verdict;
  io.out(
    `${finding.handwheel.name}: ${what} must measure ${formatFixed(wanted, 2)} mm, the caliper says ${formatFixed(measured, 2)}: ${formatFixed(Math.abs(off), 2)} mm too ${off > 0 ? "long" : "short"}.`,
  );
  io.out(
    good
      ? `Good enough: within ${formatFixed(slack, 2)} mm.`
      : `Not good enough: at most ${formatFixed(slack, 2)} mm off is.`,
  );
  io.out(
    `Stuck on as it is, a reading just before the zero comes round would be out by ${formatFixed(perTurn, 4)} mm, ${formatFixed(divisions, 2)} of a division. It does not add up over the travel: each turn begins at the zero line again.`,
  );
  const scaled = Math.abs(measured / wanted - 1) > 0.05;
  if (scaled)
    io.out(
      'More than 5 % off: the page was most likely printed "fit to page", or the length is in another unit. Print at 100 % first.',
    );
  else if (!good || Math.abs(off) > 0.05) {
    const entry = printer ?? "my printer";
    io.out(
      `To mend it, print again with  printers: { ${/^[\w ]+$/.test(entry) ? entry : JSON.stringify(entry)}: { across: ${formatFixed(across * 200, 2)} of 200 } }${printer === undefined ? ` and  paper: { printer: ${entry} }` : ""}; keep the other bars of that entry as they are.`,
    );
  }
  return good ? 0 : 1;
}
