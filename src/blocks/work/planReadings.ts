import type { HandwheelFinding } from "../../findings/findings.js";
import type { Units } from "../../machine/machine.js";
import type { Place, PlannedStep, SizedPass } from "../../plan/plannedStep.js";
import type { Show } from "../../plan/words.js";
import type { Reading } from "../../plan/zero.js";
import { formatFixed } from "../../quantity/format.js";
import { fromMm } from "../../quantity/length.js";
import type { Run } from "../shared/block.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, table } from "../shared/table.js";
import { isFixed, readingWords, wheelWords } from "./planWords.js";

/** The letter of the blank that a wheel's readings are added to, where its dial cannot be set to 0. */
export type LabelOf = (wheel: HandwheelFinding) => string;

type Row = {
  readonly what: string;
  readonly size: string;
  readonly wheel: HandwheelFinding | undefined;
  readonly reading: Reading | undefined;
  /** Instead of a reading of its own. */
  readonly instead?: string;
  readonly measured: boolean;
};

/** Every reading of a step, in the order of work: where to stop, each pass, how deep; with a box to tick and room to write. */
export function readingsTable(planned: PlannedStep, units: Units, show: Show, label: LabelOf, width: number): Run[] {
  const rows = rowsOf(planned, units, show);
  if (rows.length === 0) return [];
  const fixed = new Set(rows.flatMap(({ wheel, instead }) => (wheel && isFixed(wheel) && !instead ? [wheel] : [])));
  const measured = rows.some((row) => row.measured);
  const columns: Column[] = [
    { heading: ["done"], align: "middle", stretch: 0 },
    { heading: ["what"], align: "start", stretch: 1 },
    { heading: ["comes to", units], align: "decimal", stretch: 0.4 },
    { heading: ["wheel"], align: "start", stretch: 0.6 },
    {
      heading: [fixed.size > 0 ? "go on by" : "whole turns", fixed.size > 0 ? "whole turns" : "from its zero"],
      align: "end",
      stretch: 0.3,
    },
    { heading: fixed.size > 0 ? ["and"] : ["then the", "dial reads"], align: "end", stretch: 0.3 },
    ...(fixed.size > 0 ? [{ heading: ["so that it reads"], align: "start", stretch: 1.2 } as const] : []),
    ...(measured ? [{ heading: ["measured"], align: "middle", stretch: 1.2 } as const] : []),
  ];
  let above: HandwheelFinding | undefined;
  const cells = rows.map((row): Cell[] => {
    const words = row.wheel && row.reading ? readingWords(row.wheel, row.reading) : { turns: "", figure: "" };
    // A name stands where the wheel changes: some are long.
    const named = row.wheel !== above || row.wheel === undefined;
    above = row.wheel;
    const wheel = row.wheel === undefined ? "set by measuring" : named ? wheelWords(row.wheel) : "same wheel";
    return [
      { text: "", drawn: "box" },
      { text: row.what },
      { text: row.size, weight: "bold" },
      { text: row.instead ?? wheel },
      { text: row.instead ? "" : words.turns, weight: "bold" },
      { text: row.instead ? "" : words.figure, weight: "bold" },
      ...(fixed.size > 0 ? [sumCell(row, label, words.figure)] : []),
      ...(measured ? [row.measured ? ({ text: "", drawn: "line" } as const) : { text: "" }] : []),
    ];
  });
  return table(columns, cells, { width, size: size.body });
}

/** "S1 + 2.40 = ____": the sum is written out at the machine. */
function sumCell({ wheel, reading, instead }: Row, label: LabelOf, figure: string): Cell {
  if (wheel === undefined || reading === undefined || instead !== undefined || !isFixed(wheel)) return { text: "" };
  return { text: `${label(wheel)} ${reading.back ? "−" : "+"} ${figure} =`, drawn: "line" };
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
        ? `feed in at, ${++count}`
        : what === "stop" && stops > 1
          ? `go on to, ${++count}`
          : placeNames[what],
    size: figure(at, units),
    wheel,
    reading,
    measured: false,
  });
  if (drills.length > 1)
    return drills.flatMap(({ diameter, depth }, index) =>
      last.map((one) => ({
        ...place(one),
        what: `drill ${show(diameter)}, to ${show(depth)}`,
        measured: index === drills.length - 1,
      })),
    );
  // A groove wider than its blade is fed in to the same depth at every place.
  const around = plunges > 1 ? first.flatMap((one) => [place(one), ...last.map(place)]) : [...first.map(place)];
  return [...around, ...passRows(planned, units), ...(plunges > 1 ? [] : last.map(place))];
}

const placeNames: Readonly<Record<Place["what"], string>> = {
  begin: "begin at",
  stop: "stop at",
  plunge: "feed in at",
  depth: "in to",
};

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
      what: pass.kind === "rough" ? `rough ${++rough}` : spring ? "once more" : "last cut",
      size: formatFixed(fromMm(pass.size, units), places),
      wheel: depthWheel,
      reading: pass.reading,
      ...(spring && { instead: "same reading" }),
      measured: index === last - 1 || index >= last,
    };
  });
}
