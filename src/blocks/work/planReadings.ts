import type { HandwheelFinding } from "../../findings/findings.js";
import type { Units } from "../../machine/machine.js";
import type { Place, PlannedStep, SizedPass } from "../../plan/plannedStep.js";
import type { Show } from "../../plan/words.js";
import type { Reading } from "../../plan/zero.js";
import { formatFixed, unitName } from "../../quantity/format.js";
import { fromMm } from "../../quantity/length.js";
import { say } from "../../words/say.js";
import type { Run } from "../shared/block.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, table, tableWidth } from "../shared/table.js";
import { correctedReadings } from "./correctedReadings.js";
import { isFixed, readingsOf, readingWords, type ZeroOf } from "./planWords.js";

type Row = {
  readonly what: string;
  readonly size: string;
  readonly wheel: HandwheelFinding | undefined;
  readonly reading: Reading | undefined;
  /** At the reading of the row before it. */
  readonly again?: boolean;
  /** On a worn slide: what is dialled stands below, by the place where the zero was touched. */
  readonly corrected?: boolean;
  readonly measured: boolean;
};

/** Every reading of a step as a table: `titles` name the wheel where it changes. */
export type Readings = {
  readonly columns: readonly Column[];
  readonly cells: readonly (readonly Cell[])[];
  readonly titles: ReadonlyMap<number, string>;
};

/** Every reading of a step, in the order of work: where to stop, each pass, how deep; with a box to tick and room to write, which one that
 *  is refused lacks. Undefined where it has none. */
export function readings(
  planned: PlannedStep,
  refused: boolean,
  units: Units,
  show: Show,
  zeroOf: ZeroOf,
): Readings | undefined {
  const rows = rowsOf(planned, units, show);
  if (rows.length === 0) return undefined;
  const told = rows.map(({ wheel, reading }) => (wheel && reading ? readingWords(wheel, reading) : undefined));
  const summed = rows.map((row, index) => sumCell(row, zeroOf, told[index]?.figure ?? ""));
  const sums = summed.some(({ drawn }) => drawn !== undefined);
  const inRows = told.some((words) => words?.row);
  const measured = !refused && rows.some((row) => row.measured);
  const columns: Column[] = [
    { heading: [""], align: "middle" },
    { heading: [""], align: "start", key: true },
    { heading: [unitName(units)], align: "decimal" },
    { heading: [say("plan.column turns")], align: "end" },
    { heading: [say(sums ? "plan.column and" : "plan.column dial")], align: "decimal" },
    ...(inRows ? [{ heading: [""], align: "start" } as const] : []),
    ...(sums ? [{ heading: [say("plan.column so that it reads")], align: "start" } as const] : []),
    ...(measured ? [{ heading: [say("plan.column measured")], align: "middle" } as const] : []),
  ];
  const cells = rows.map((row, index): Cell[] => {
    const { turns = "", figure = "", row: on = "" } = row.corrected ? {} : (told[index] ?? {});
    return [
      refused ? { text: "" } : { text: "", drawn: "box" },
      { text: row.what },
      { text: row.size },
      { text: turns, weight: row.reading?.back ? "bold" : "regular" },
      row.corrected ? { text: say("plan.by the rule") } : { text: figure, weight: "bold", size: size.card },
      ...(inRows ? [{ text: on }] : []),
      ...(sums ? [summed[index] ?? { text: "" }] : []),
      ...(measured ? [row.measured ? ({ text: "", drawn: "line" } as const) : { text: "" }] : []),
    ];
  });
  const titles = new Map<number, string>();
  for (const [index, { wheel }] of rows.entries())
    if (index === 0 || wheel !== rows[index - 1]?.wheel)
      titles.set(
        index,
        wheel === undefined ? say("plan.set by measuring") : readingsOf(wheel, zeroOf(wheel), planned, units),
      );
  return { columns, cells, titles };
}

const set = (width: number, titles?: ReadonlyMap<number, string>) => ({
  ...{ width, size: size.text },
  ...(titles && { titles }),
});

export const readingsTable = ({ columns, cells, titles }: Readings, width: number): Run[] =>
  table(columns, cells, set(width, titles));

/** As wide as it would be on paper of any width, mm; 0 for none. */
export const readingsWidth = (readings: Readings | undefined): number =>
  readings === undefined ? 0 : tableWidth(readings.columns, readings.cells, set(1e6));

/** "S1 + 2.40 = ____": the sum is written out at the machine. */
function sumCell({ wheel, reading, again, corrected }: Row, zeroOf: ZeroOf, figure: string): Cell {
  if (wheel === undefined || reading === undefined || again || !isFixed(wheel)) return { text: "" };
  const added = corrected ? "…" : figure;
  return { text: `${zeroOf(wheel)?.label ?? ""} ${reading.back ? "−" : "+"} ${added} =`, drawn: "line" };
}

function rowsOf(planned: PlannedStep, units: Units, show: Show): Row[] {
  const { places, drills } = planned;
  const first = places.filter(({ what }) => what !== "depth");
  const last = places.filter(({ what }) => what === "depth");
  const plunges = first.filter(({ what }) => what === "plunge").length;
  const stops = first.filter(({ what }) => what === "stop").length;
  let count = 0;
  const place = ({ what, at, wheel, reading }: Place): Row => ({
    what:
      what === "plunge" && plunges > 1
        ? say("plan.feed in at, number", { number: ++count })
        : what === "stop" && stops > 1
          ? say("plan.go on to, number", { number: ++count })
          : say(`plan.place ${what}`),
    size: figure(at, units),
    wheel,
    reading,
    corrected: isCorrected(wheel, reading.travel, units),
    measured: false,
  });
  if (drills.length > 1)
    return drills.flatMap(({ name, depth }, index) =>
      last.map((one) => ({
        ...place(one),
        what: say("plan.drill to", { diameter: name, depth: show(depth) }),
        measured: index === drills.length - 1,
      })),
    );
  // A groove wider than its blade is fed in to the same depth at every place.
  const depth = (one: Place): Row => (plunges > 1 ? { ...place(one), what: say("plan.each time in to") } : place(one));
  return [...first.map(place), ...passRows(planned, units), ...last.map(depth)];
}

/** Whether corrected readings stand below the table, one of which is to be dialled. */
const isCorrected = (wheel: HandwheelFinding, travel: number, units: Units): boolean =>
  correctedReadings({ wheel, travel }, units) !== undefined;

const figure = (mm: number, units: Units): string => formatFixed(fromMm(mm, units), usualPlaces[units]);
const usualPlaces: Readonly<Record<Units, number>> = { mm: 2, in: 4 };

function passRows({ passes, depthWheel, sizes }: PlannedStep, units: Units): Row[] {
  const wanted = sizes.find(({ what }) => what === "diameter");
  const tolerance = wanted?.least === undefined || wanted.most === undefined ? undefined : wanted.most - wanted.least;
  // As many places as its tolerance needs, so that what is measured can be compared.
  const needed = tolerance === undefined ? 0 : Math.ceil(-Math.log10(fromMm(tolerance, units) / 5) - 1e-9);
  const places = Math.min(5, Math.max(usualPlaces[units], needed));
  let rough = 0;
  const last = passes.findLastIndex(({ kind }) => kind !== "spring");
  return passes.map((pass: SizedPass, index): Row => {
    const spring = pass.kind === "spring";
    return {
      what:
        pass.kind === "rough"
          ? say("plan.rough cut", { number: ++rough })
          : say(spring ? "plan.once more" : "plan.last cut"),
      size: formatFixed(fromMm(pass.size, units), places),
      wheel: depthWheel,
      reading: pass.reading,
      corrected: index >= last && depthWheel !== undefined && isCorrected(depthWheel, pass.travel, units),
      ...(spring && { again: true }),
      measured: index === last - 1 || index >= last,
    };
  });
}
