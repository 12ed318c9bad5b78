import type { OwnCuttingSpeed, Work } from "../machine/machine.js";
import { MM_PER_FOOT } from "../quantity/length.js";
import { cuttingSpeeds } from "./data.js";
import type { CuttingSpeed, Factor } from "./finding.js";
import { findMaterial } from "./materials.js";
import { findOperation, type Operation } from "./operations.js";
import { knurling, operationFactors, type PublishedFactor, toolFactors } from "./published/factors.js";
import { highSpeedSteel, type PublishedSpeed } from "./published/source.js";
import { metresPerMinuteAt } from "./rates.js";
import { findTool } from "./tools.js";

/** `cuttingSpeeds`: the machine file's own rows; one that fits overrides all published ones. `derating`: a light machine's
 *  factor on every published speed; own rows stand as they are. The file's whole `work` will do. */
export type CuttingSpeedOptions = Partial<Pick<Work, "cuttingSpeeds" | "derating">> & {
  /** mm; needed where a source goes by spindle speed (knurling, wood), or by size of the stock. */
  readonly diameter?: number;
};

/** The range that the sources span for a material, tool and operation, m/min; undefined where none has a figure. Where
 *  sources disagree the range says so: from the least to the greatest. A figure from memory counts only where none was
 *  read; an operation or a tool without figures is taken from its nearest with a published factor. */
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
  if (own !== undefined) return own;
  if (operation.name === "knurling") return knurlingSpeed(asked, options.diameter);
  const found = publishedSpeed(asked, options.diameter);
  return found && derated(found, options.derating ?? 1);
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
  const { slowest, fastest, asGiven, source = "the machine file" } = row;
  // With its figures as they were understood: a bare number in an inch file is feet a minute, and paper says so.
  const sources = [asGiven === undefined ? source : `${source} (${material}, ${asGiven})`];
  return {
    ...{ material, tool, operation: operation.name, slowest, fastest, most: fastest },
    ...{ sources, confidence: "read", rows: [], factors: [] },
  };
}

/** Rows for just this tool and operation, or the nearest ones times a factor. */
function publishedSpeed({ material, tool, operation }: Asked, diameter: number | undefined): CuttingSpeed | undefined {
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
  const ways: { rows: PublishedSpeed[]; factors: Factor[] }[] = [
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
  if (way === undefined) return undefined;
  const { rows, factors } = way;
  const least = factors.reduce((product, { from }) => product * from, 1);
  const greatest = factors.reduce((product, { to }) => product * to, 1);
  const froms = rows.map((row) => metresPerMinute(row, row.from, diameter) * least);
  const tos = rows.map((row) => metresPerMinute(row, row.to, diameter) * greatest);
  const [slowest, fastest] = [Math.min(...froms), Math.max(...tos)];
  const byRpm = rows.find(({ unit }) => unit === "rpm");
  return {
    ...{ material, tool, operation: operation.name, slowest, fastest, rows, factors },
    most: operation.cautious ? Math.max(slowest, Math.min(...tos)) : fastest,
    sources: [...new Set([...rows, ...factors].map(({ source }) => source))],
    confidence: [...rows, ...factors].every(({ confidence }) => confidence === "read") ? "read" : "memory",
    ...(byRpm && { rpm: { slowest: byRpm.from, fastest: byRpm.to } }),
  };
}

const trusted = (rows: PublishedSpeed[]): PublishedSpeed[] => {
  const read = rows.filter(({ confidence }) => confidence === "read");
  return read.length > 0 ? read : rows;
};

/** One factor out of all that were published: from the least to the least of their upper ends, the safe side. */
function factorsOf(what: string, rows: readonly PublishedFactor[]): Factor[] {
  const from = Math.min(...rows.map((row) => row.from));
  const to = Math.max(from, Math.min(...rows.map((row) => row.to)));
  const [first] = rows;
  if (first === undefined || (from === 1 && to === 1)) return [];
  const source = rows.find((row) => row.to === to)?.source ?? first.source;
  return [{ what, from, to, source, confidence: rows.every((row) => row.confidence === "read") ? "read" : "memory" }];
}

function knurlingSpeed({ material, tool, operation }: Asked, diameter: number | undefined): CuttingSpeed | undefined {
  if (diameter === undefined || findMaterial(material) === undefined) return undefined;
  const { slowestRpm, fastestRpm, source, confidence } = knurling;
  const fastest = metresPerMinuteAt(fastestRpm, diameter);
  return {
    ...{ material, tool, operation: operation.name, fastest, most: fastest, confidence, rows: [], factors: [] },
    slowest: metresPerMinuteAt(slowestRpm, diameter),
    sources: [source],
    rpm: { slowest: slowestRpm, fastest: fastestRpm },
  };
}

function derated(speed: CuttingSpeed, derating: number): CuttingSpeed {
  if (derating === 1) return speed;
  const [slowest, fastest, most] = [speed.slowest, speed.fastest, speed.most].map((value) => value * derating);
  const factor: Factor = {
    what: "light machine",
    from: derating,
    to: derating,
    source: "the machine file",
    confidence: "read",
  };
  return {
    ...speed,
    ...{ slowest: slowest ?? 0, fastest: fastest ?? 0, most: most ?? 0, factors: [...speed.factors, factor] },
    ...(speed.rpm && { rpm: { slowest: speed.rpm.slowest * derating, fastest: speed.rpm.fastest * derating } }),
  };
}

function metresPerMinute({ unit }: PublishedSpeed, value: number, diameter: number | undefined): number {
  if (unit === "rpm") return metresPerMinuteAt(value, diameter ?? 0);
  return unit === "ft/min" ? (value * MM_PER_FOOT) / 1000 : value;
}
