import type { Firmness, OwnCuttingSpeed, Work } from "../machine/machine.js";
import { largestOf, smallestOf } from "../quantity/extremes.js";
import { trimmed } from "../quantity/format.js";
import { MM_PER_FOOT } from "../quantity/length.js";
import { say } from "../words/say.js";
import { type SourceRange, weigh } from "./agreement.js";
import { cuttingSpeeds } from "./data.js";
import type { CuttingSpeed, Factor } from "./finding.js";
import { hazardOf } from "./hazards.js";
import { findMaterial } from "./materials.js";
import { findOperation, type Operation } from "./operations.js";
import { knurling, operationFactors, type PublishedFactor, toolFactors } from "./published/factors.js";
import { highSpeedSteel, type PublishedSpeed } from "./published/source.js";
import { metresPerMinuteAt, rpmFor } from "./rates.js";
import { findTool } from "./tools.js";

/** `cuttingSpeeds`: the machine file's own rows; one that fits overrides all published ones. `firmness`, light when left
 *  out, and `derating`, a factor, go on every published speed; own rows stand as they are. The file's whole `work` will
 *  do. */
export type CuttingSpeedOptions = Partial<Pick<Work, "cuttingSpeeds" | "derating" | "firmness">> & {
  /** mm; needed where a source goes by spindle speed (knurling, wood), or by size of the stock. */
  readonly diameter?: number;
};

/** The range for a material, tool and operation, m/min, of the sources that agree; undefined where none has a figure. What
 *  to choose at most goes by the source nearest to the cut. A figure from memory counts only where none was read; an
 *  operation or a tool without figures is taken from its nearest with a published factor. */
export function cuttingSpeed(
  material: string,
  tool: string,
  operationName: string,
  options: CuttingSpeedOptions = {},
): CuttingSpeed | undefined {
  const operation = findOperation(operationName);
  if (operation === undefined) return undefined;
  const asked = { material, tool: findTool(tool) ?? tool.trim().toLowerCase(), operation };
  const own = ownSpeed(asked, options.cuttingSpeeds ?? []);
  const published = () =>
    operation.name === "knurling" ? knurlingSpeed(asked, options) : publishedSpeed(asked, options);
  const found = own ?? derated(published(), options.derating ?? 1);
  return found && withoutFire(found);
}

/** Nothing beyond the speed above which the material's chips are the likelier to catch fire, whatever a tool would bear. */
function withoutFire(speed: CuttingSpeed): CuttingSpeed {
  const limit = hazardOf(speed.material)?.fastest ?? Number.POSITIVE_INFINITY;
  if (speed.fastest <= limit) return speed;
  const below = (metresPerMinute: number) => Math.min(metresPerMinute, limit);
  return { ...speed, slowest: below(speed.slowest), fastest: below(speed.fastest), most: below(speed.most) };
}

type Asked = { readonly material: string; readonly tool: string; readonly operation: Operation };

function ownSpeed({ material, tool, operation }: Asked, own: readonly OwnCuttingSpeed[]): CuttingSpeed | undefined {
  const same = (a: string, b: string) => a.trim().toLowerCase() === b.trim().toLowerCase();
  const standard = findMaterial(material);
  const row = own.find(
    (one) =>
      (same(one.material, material) || (standard !== undefined && findMaterial(one.material) === standard)) &&
      same(findTool(one.tool ?? highSpeedSteel) ?? one.tool ?? "", tool) &&
      findOperation(one.operation ?? "turning") === operation,
  );
  if (row === undefined) return undefined;
  const { slowest, fastest, asGiven, source = say("materials and hazards.machine file") } = row;
  // With its figures as they were understood: a bare number in an inch file is feet a minute, and paper says so.
  const sources = [asGiven === undefined ? source : `${source} (${material}, ${givenWords(asGiven)})`];
  return {
    ...{ material, tool, operation: operation.name, slowest, fastest, most: fastest },
    ...{ sources, confidence: "read", apart: [], rows: [], factors: [] },
  };
}

/** "80–100 ft/min". */
const givenWords = ({ from, to }: NonNullable<OwnCuttingSpeed["asGiven"]>): string =>
  from.unit === to.unit
    ? `${trimmed(from.value, 4)}–${trimmed(to.value, 4)} ${to.unit}`
    : `${trimmed(from.value, 4)} ${from.unit} – ${trimmed(to.value, 4)} ${to.unit}`;

type Way = { readonly rows: readonly PublishedSpeed[]; readonly factors: readonly Factor[] };

/** Rows for just this tool and operation, or the nearest ones times a factor. */
function wayTo({ material, tool, operation }: Asked, diameter: number | undefined): Way | undefined {
  const standard = findMaterial(material);
  const rowsFor = (forTool: string, forOperation: string) =>
    trusted(
      cuttingSpeeds.filter(
        (row) =>
          row.material === standard &&
          row.tool === forTool &&
          row.operation === forOperation &&
          (row.upTo === undefined || (diameter !== undefined && diameter <= row.upTo)),
      ),
    );
  const toolFactor = toolFactors[tool]?.[operation.like];
  const other = operationFactors[operation.name];
  const ways: Way[] = [
    { rows: rowsFor(tool, operation.name), factors: [] },
    ...(toolFactor && operation.name !== "tapping"
      ? [{ rows: rowsFor(highSpeedSteel, operation.name), factors: factorsOf(tool, toolFactor) }]
      : []),
    ...(other ? [{ rows: rowsFor(tool, other.of), factors: factorsOf(operation.name, other.rows) }] : []),
    ...(other && toolFactor
      ? [
          {
            rows: rowsFor(highSpeedSteel, other.of),
            factors: [...factorsOf(tool, toolFactor), ...factorsOf(operation.name, other.rows)],
          },
        ]
      : []),
  ];
  const way = ways.find(({ rows }) => rows.length > 0);
  // A spindle speed is what the machine runs at, whatever the tool is of.
  return way?.rows.every(({ unit }) => unit === "rpm")
    ? { rows: way.rows, factors: way.factors.filter(({ what }) => what !== tool) }
    : way;
}

function publishedSpeed(asked: Asked, { diameter, firmness }: CuttingSpeedOptions): CuttingSpeed | undefined {
  const way = wayTo(asked, diameter);
  const weighed = way && weigh(rangesOf(way, diameter), asked.operation.cautious);
  if (way === undefined || weighed === undefined) return undefined;
  const { material, tool, operation } = asked;
  const { rows, factors } = way;
  const { nearest, agreeing, apart } = weighed;
  const most = mostOf(nearest.slowest, nearest.fastest, firmness);
  const bySpindle = nearest.rows.every(({ unit }) => unit === "rpm") && diameter !== undefined;
  const served = [...agreeing.flatMap((one) => one.rows), ...factors];
  return {
    ...{ material, tool, operation: operation.name, rows, factors, nearest: nearest.source, apart },
    slowest: smallestOf(agreeing.map(({ slowest }) => slowest)),
    fastest: largestOf(agreeing.map(({ fastest }) => fastest)),
    most,
    sources: [...new Set(served.map(({ source }) => source))],
    confidence: served.every(({ confidence }) => confidence === "read") ? "read" : "memory",
    ...(bySpindle && { rpm: { slowest: rpmFor(nearest.slowest, diameter), most: rpmFor(most, diameter) } }),
  };
}

/** Upper end of what is aimed at: a light machine keeps to the lower half of the range. */
const mostOf = (slowest: number, fastest: number, firmness: Firmness = "light"): number =>
  firmness === "light" ? (slowest + fastest) / 2 : fastest;

/** What each source gives, all its rows for the cut as one, in the order of `sources`. */
function rangesOf({ rows, factors }: Way, diameter: number | undefined): SourceRange[] {
  const least = factors.reduce((product, { from }) => product * from, 1);
  const greatest = factors.reduce((product, { to }) => product * to, 1);
  return [...new Set(rows.map(({ source }) => source))].map((source) => {
    const own = rows.filter((row) => row.source === source);
    return {
      source,
      slowest: smallestOf(own.map((row) => metresPerMinute(row, row.from, diameter) * least)),
      fastest: largestOf(own.map((row) => metresPerMinute(row, row.to, diameter) * greatest)),
      rows: own,
    };
  });
}

const trusted = (rows: readonly PublishedSpeed[]): readonly PublishedSpeed[] => {
  const read = rows.filter(({ confidence }) => confidence === "read");
  return read.length > 0 ? read : rows;
};

/** One factor out of all that were published: from the least to the least of their upper ends, the safe side. */
function factorsOf(what: string, rows: readonly PublishedFactor[]): Factor[] {
  const from = smallestOf(rows.map((row) => row.from));
  const to = Math.max(from, smallestOf(rows.map((row) => row.to)));
  const [first] = rows;
  if (first === undefined || (from === 1 && to === 1)) return [];
  const source = rows.find((row) => row.to === to)?.source ?? first.source;
  return [{ what, from, to, source, confidence: rows.every((row) => row.confidence === "read") ? "read" : "memory" }];
}

function knurlingSpeed(
  { material, tool, operation }: Asked,
  { diameter, firmness }: CuttingSpeedOptions,
): CuttingSpeed | undefined {
  if (diameter === undefined || findMaterial(material) === undefined) return undefined;
  const { slowestRpm, fastestRpm, source, confidence } = knurling;
  const mostRpm = mostOf(slowestRpm, fastestRpm, firmness);
  return {
    ...{ material, tool, operation: operation.name, confidence, nearest: source, apart: [], rows: [], factors: [] },
    slowest: metresPerMinuteAt(slowestRpm, diameter),
    fastest: metresPerMinuteAt(fastestRpm, diameter),
    most: metresPerMinuteAt(mostRpm, diameter),
    sources: [source],
    rpm: { slowest: slowestRpm, most: mostRpm },
  };
}

function derated(speed: CuttingSpeed | undefined, derating: number): CuttingSpeed | undefined {
  if (speed === undefined || derating === 1) return speed;
  const factor: Factor = {
    what: "derating",
    from: derating,
    to: derating,
    source: "the machine file",
    confidence: "read",
  };
  const less = <Range extends { readonly slowest: number; readonly fastest: number }>(range: Range): Range => ({
    ...range,
    slowest: range.slowest * derating,
    fastest: range.fastest * derating,
  });
  return {
    ...less(speed),
    most: speed.most * derating,
    apart: speed.apart.map(less),
    factors: [...speed.factors, factor],
    ...(speed.rpm && { rpm: { slowest: speed.rpm.slowest * derating, most: speed.rpm.most * derating } }),
  };
}

function metresPerMinute({ unit }: PublishedSpeed, value: number, diameter: number | undefined): number {
  if (unit === "rpm") return metresPerMinuteAt(value, diameter ?? 0);
  return unit === "ft/min" ? (value * MM_PER_FOOT) / 1000 : value;
}
