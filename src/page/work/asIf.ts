import type { Findings } from "../../findings/findings.js";
import type { CsvRead } from "../../findings/ofText.js";
import { ofText } from "../../findings/ofText.js";
import type { Path, Problem } from "../../machine/problem.js";
import { type Prints, printsOf, type Wish } from "../../printing/prints.js";
import { without, withValue } from "../file/edit.js";
import { type Nodes, nodesOf } from "../file/nodes.js";
import type { Plain } from "../file/yamlText.js";

/** While parts of a machine have something to mend, others stand in for them, as unlike each other as such parts are: a sheet that comes
 *  out the same with each of them does not need them, and goes on. */
export type AsIf = {
  /** The machine with each of them, the emptiest first; the one machine itself where nothing is to be mended. Empty where no sheet goes on. */
  readonly machines: readonly Findings[];
  /** What waits, in words. */
  readonly waiting: readonly string[];
  /** Whether the printer in use is among that: what it makes of a length is not known, and no piece that must be true is made. */
  readonly printer: boolean;
  /** Whether all that is told of handwheels and their dials is the file's own. */
  readonly wheelsSure: boolean;
};

const noSheet: AsIf = { machines: [], waiting: [], printer: false, wheelsSure: false };

/** Something of the file that holds a fault, and the texts of a file with what stands in for it. */
type Part = {
  readonly words?: string;
  readonly standIns: readonly ((text: string) => string)[];
  readonly printer?: boolean;
  readonly wheelsSure?: boolean;
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

/** From no belt at all to gears, and all that a card or a form tells of either. */
const drives: readonly Plain[] = [
  {
    motor: { speed: 1425, mains: 50 },
    stages: [
      {
        name: "belt",
        steps: [
          { label: "A", driver: "40 mm", driven: "120 mm" },
          { label: "B", driver: "120 mm", driven: "40 mm" },
        ],
      },
    ],
  },
  {
    motor: { speed: [300, 3000] },
    belt: "vee, A",
    reverses: true,
    clutch: true,
    stages: [
      { name: "first", centres: "300 mm", steps: [{ driver: "60 mm", driven: "160 mm" }] },
      { name: "gear", steps: [{ label: "open" }, { label: "geared", teeth: [[20, 60]] }] },
    ],
    tachometer: [{ position: ["open"], speed: 1000 }],
  },
];

const thicknesses = [
  { thickness: "0.05 mm", adhesive: "0 mm" },
  { thickness: "0.4 mm", adhesive: "0.3 mm" },
] as const;

export function asIfMended(text: string, csv: CsvRead, problems: readonly Problem[]): AsIf {
  const nodes = nodesOf(text);
  const own = problems.filter(({ severity, file }) => severity === "error" && file === undefined);
  // A table that cannot be read is no more than one that is not there.
  const inTables = [...new Set(csv.problems.map(({ file }) => file))].map((file) => readingsFrom(file, nodes));
  if (inTables.some((wheels) => wheels.length === 0)) return noSheet;
  const errors = [...own.map(({ path = [] }) => path), ...inTables.flat()];
  if (errors.length === 0) return noSheet;
  const parts = partsOf(errors, nodes);
  if (parts === undefined) return noSheet;
  const count = Math.max(...parts.map(({ standIns }) => standIns.length));
  const stood = Array.from({ length: count }, (_, at) =>
    parts.reduce((so, { standIns }) => (standIns[at % standIns.length] ?? same)(so), text),
  );
  const asked = [...new Set(stood)];
  const machines = asked.flatMap((one) => ofText(one, { ...csv, problems: [] }).findings ?? []);
  return machines.length < asked.length
    ? noSheet
    : {
        machines,
        waiting: parts.flatMap(({ words }) => words ?? []),
        printer: parts.some(({ printer = false }) => printer),
        wheelsSure: parts.every(({ wheelsSure = false }) => wheelsSure),
      };
}

/** Where the readings of a table are taken for a handwheel's. */
function readingsFrom(file: string | undefined, { value, words }: Nodes): Path[] {
  const wheels = value(["handwheels"]);
  return (Array.isArray(wheels) ? wheels : [])
    .map((_, at) => ["handwheels", at, "feed", "readings"])
    .filter((way) => file !== undefined && [words(way), words([...way, "file"])].includes(file));
}

const same = (text: string): string => text;

/** The parts in which the faults lie; undefined where one lies in none of these. */
function partsOf(errors: readonly Path[], nodes: Nodes): Part[] | undefined {
  const parts = new Map<string, Part>();
  for (const [part, at, ...within] of errors) {
    const own = JSON.stringify(part === "drive" ? [part] : [part, at]);
    if (parts.has(own)) continue;
    if (part === "handwheels" && typeof at === "number") parts.set(own, wheelPart(errors, at, nodes));
    else if (part === "drive")
      parts.set(own, {
        words: "the belts and gears",
        standIns: [
          (so) => without(so, ["drive"]),
          ...drives.map((one) => (so: string) => withValue(so, ["drive"], one)),
        ],
        wheelsSure: true,
      });
    else if (part === "printers" && typeof at === "string") parts.set(own, printerPart(at, nodes));
    else if (part === "paper" && at === "printer")
      parts.set(own, printerPart(nodes.words(["paper", "printer"]), nodes));
    else if (part === "paper" && at === "size")
      // No sheet comes out the same on each; but dial, Ask and figures do not ask for paper.
      parts.set(own, {
        words: "the paper’s size",
        standIns: ["A4", "A5"].map((size) => (so: string) => withValue(so, ["paper", "size"], size)),
        wheelsSure: true,
      });
    else if (part === "paper" && (at === "thickness" || at === "adhesive") && within.length === 0)
      parts.set(own, {
        words: `the paper’s ${at}`,
        standIns: thicknesses.map(
          ({ [at]: mm }) =>
            (so: string) =>
              withValue(so, ["paper", at], mm),
        ),
      });
    else return undefined;
  }
  return [...parts.values()];
}

function wheelPart(errors: readonly Path[], at: number, { words }: Nodes): Part {
  const of = (key: string) => words(["handwheels", at, key]);
  const name = of("name") || `handwheel ${at + 1}`;
  const sure = errors.every(([part, wheel, key]) => part !== "handwheels" || wheel !== at || besides.has(key));
  const said = ["moves", "reads"].flatMap((key) => (of(key) === "" ? [] : [[key, of(key)]]));
  const own = sure && (Object.fromEntries(said) as Record<string, Plain>);
  return {
    words: `"${name}"`,
    standIns: standIns.map(({ moves, ...sizes }) => (so: string) => {
      const named = own || (moves === undefined ? {} : { moves });
      return withValue(so, ["handwheels", at], { name, ...named, ...sizes });
    }),
  };
}

/** Without it: as on a file that names no printer. One that is not in use stops nothing. */
function printerPart(name: string, { words }: Nodes): Part {
  const inUse = words(["paper", "printer"]) === name;
  const taken = (so: string) => without(so, ["printers", name]);
  return {
    ...(inUse && { words: `the printer "${name}"`, printer: true }),
    standIns: [(so) => (inUse ? without(taken(so), ["paper", "printer"]) : taken(so))],
    wheelsSure: true,
  };
}

/** What is printed; undefined where it needs what is to be mended. */
export function alikeFrom([first, ...others]: readonly Findings[], wish: Wish): Prints | undefined {
  if (first === undefined) return undefined;
  const made = printsOf(first, wish);
  const seen = JSON.stringify(made);
  return others.every((one) => JSON.stringify(printsOf(one, wish)) === seen) ? made : undefined;
}
