import type { Findings } from "../../findings/findings.js";
import type { CsvRead } from "../../findings/ofText.js";
import { ofText } from "../../findings/ofText.js";
import type { Problem } from "../../machine/problem.js";
import { type Prints, printsOf, type Wish } from "../../printing/prints.js";
import { withValue } from "../file/edit.js";
import { nodesOf } from "../file/nodes.js";
import type { Plain } from "../file/yamlText.js";

/** While a handwheel has something to mend, others stand in for it, as unlike each other as wheels are: a sheet that comes out the same
 *  with each of them does not need it, and goes on. */
export type AsIf = {
  /** The machine with each of them; the one machine itself where nothing is to be mended. Empty where no sheet goes on. */
  readonly machines: readonly Findings[];
  /** Names of the handwheels that wait. */
  readonly waiting: readonly string[];
};

const measured = {
  feed: {
    readings: { gauge: "0.01 mm", turns: [0, 2, 4, 6, 8], travel: ["0 mm", "6 mm", "12 mm", "18 mm", "24.01 mm"] },
  },
  dial: { shape: "drum", diameter: "40 mm", width: "10 mm" },
  travel: "24 mm",
};
/** The feeds lie as far apart as those of wheels that move so: by them a hand keeps up with other speeds of the spindle. */
const standIns: readonly Readonly<Record<string, Plain>>[] = [
  {},
  { ...measured, moves: "along" },
  { ...measured, moves: "across" },
  { ...measured, moves: "angled" },
  { feed: "0.1 mm", moves: "barrel" },
  { feed: "10 mm", moves: "quill" },
];

/** What the file says of a wheel beside what it moves and what it is called: faults there leave both as they are said. */
const besides = new Set<unknown>(["travel", "feed", "dial", "oldDial", "distances"]);

export function asIfMended(text: string, csv: CsvRead, problems: readonly Problem[]): AsIf {
  const errors = problems.filter(({ severity }) => severity === "error").map(({ path = [] }) => path);
  const wheels = [...new Set(errors.map(([part, wheel]) => (part === "handwheels" ? wheel : undefined)))];
  if (!wheels.every((wheel) => typeof wheel === "number") || csv.problems.length > 0)
    return { machines: [], waiting: [] };
  const { words } = nodesOf(text);
  const named = wheels.map((at) => {
    const of = (key: string) => words(["handwheels", at, key]);
    const name = of("name") || `handwheel ${at + 1}`;
    const sure = errors.every(([, wheel, key]) => wheel !== at || besides.has(key));
    const said = ["moves", "reads"].flatMap((key) => (of(key) === "" ? [] : [[key, of(key)]]));
    return { at, name, ...(sure && { said: Object.fromEntries(said) as Record<string, Plain> }) };
  });
  const stood = standIns.map(({ moves, ...sizes }) =>
    named.reduce((so, { at, name, said = moves === undefined ? {} : { moves } }) => {
      return withValue(so, ["handwheels", at], { name, ...said, ...sizes });
    }, text),
  );
  const asked = [...new Set(stood)];
  const machines = asked.flatMap((one) => ofText(one, csv).findings ?? []);
  return machines.length < asked.length
    ? { machines: [], waiting: [] }
    : { machines, waiting: named.map(({ name }) => name) };
}

/** What is printed; undefined where it needs what is to be mended. */
export function alikeFrom([first, ...others]: readonly Findings[], wish: Wish): Prints | undefined {
  if (first === undefined) return undefined;
  const made = printsOf(first, wish);
  const seen = JSON.stringify(made);
  return others.every((one) => JSON.stringify(printsOf(one, wish)) === seen) ? made : undefined;
}
