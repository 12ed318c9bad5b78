import { largestOf } from "../quantity/extremes.js";
import { trimmed } from "../quantity/format.js";
import { fromMm, MM_PER_INCH } from "../quantity/length.js";
import { assembleRack, FARTHEST_RACK } from "./assembleRack.js";
import type { Context, Raw } from "./context.js";
import type { LengthText } from "./fields.js";
import type { Feed, Readings, Units } from "./machine.js";
import { nominalSlip } from "./nominalSlip.js";
import type { Path } from "./problem.js";
import { rackTravel } from "./rackTravel.js";

type RawFeed = NonNullable<Raw<"handwheels">[number]["feed"]>;
type RawReadings = NonNullable<Exclude<RawFeed, { value: number }>["readings"]>;

/** Undefined where an error was told. */
export function assembleFeed(raw: RawFeed, path: Path, context: Context): Feed | undefined {
  const feed = "value" in raw ? scalar(raw, context) : compound(raw, path, context);
  if (feed === undefined) return undefined;
  const perTurn = roughly(feed);
  if (perTurn === undefined) return feed;
  const slip = feed.nominal === undefined ? undefined : nominalSlip(perTurn, feed.nominal, changedAbout(feed, context));
  // A rack that goes too far is told of with its likely slip.
  const told = feed.from === "rack" && perTurn > FARTHEST_RACK;
  if (slip) context.warn(path, slip.code, slip.what, slip.remedy);
  else if ((perTurn < 0.05 || perTurn > 100) && !told)
    context.warn(
      path,
      "unlikely-feed",
      `a feed of ${context.said(perTurn, 4)} a turn is unusual for a small machine`,
      "check the unit and the count of turns",
    );
  if (feed.from === "readings" && !("value" in raw))
    coarseGauge(feed, raw.readings, perTurn, [...path, "readings", "gauge"], context);
  return feed;
}

/** A gauge should part a turn into ten at least; one that does not is most often written in the other unit, or a place off. */
function coarseGauge(
  { gauge }: Readings,
  raw: RawReadings | undefined,
  perTurn: number,
  path: Path,
  { units, said, warn }: Context,
): void {
  if (gauge === undefined || gauge <= perTurn / 10) return;
  const bare = typeof raw === "object" && raw.gauge?.unit === "file" ? raw.gauge.value : undefined;
  warn(
    path,
    "coarse-gauge",
    `a gauge of ${said(gauge, 4)} can hardly show a turn of about ${said(perTurn)}`,
    units === "in" && bare !== undefined && bare <= perTurn / 10
      ? `a bare number is in inches here: if the gauge is metric, write ${trimmed(bare, 4)} mm`
      : "gauge is its smallest graduation, most often 0.01 mm or 0.001 in: check the decimal point and the unit",
  );
}

/** "16 tpi" is a screw; a plain length is the maker's word or a measurement, as stated. */
const scalar = (feed: Extract<RawFeed, { value: number }>, { feedMm }: Context): Feed =>
  feed.unit === "tpi"
    ? { from: "screw", pitch: feedMm(feed), starts: 1, ...tpiOf(feed) }
    : { from: "stated", perTurn: feedMm(feed) };

const tpiOf = ({ value, unit }: { readonly value: number; readonly unit: string }) =>
  unit === "tpi" ? { tpi: value } : {};

function compound(feed: Exclude<RawFeed, { value: number }>, path: Path, context: Context): Feed | undefined {
  const { mm, feedMm, error } = context;
  const forms = (["perTurn", "screw", "rack", "readings"] as const).filter((key) => feed[key] !== undefined);
  if (forms.length !== 1) {
    error(
      path,
      forms.length === 0 ? "missing" : "two-forms",
      forms.length === 0 ? "the feed is not given" : `the feed is given ${forms.length} times: ${forms.join(", ")}`,
      "give one of perTurn, screw, rack or readings; what the maker meant goes under nominal",
    );
    return undefined;
  }
  if (feed.uncertainty !== undefined && feed.perTurn === undefined)
    error(
      [...path, "uncertainty"],
      "not-here",
      "uncertainty belongs to perTurn",
      "readings tell their own uncertainty",
    );
  const nominal = feed.nominal === undefined ? {} : { nominal: feedMm(feed.nominal) };
  if (feed.perTurn)
    return {
      from: "stated",
      perTurn: feedMm(feed.perTurn),
      ...(feed.uncertainty && { uncertainty: mm(feed.uncertainty) }),
      ...nominal,
    };
  if (feed.screw) {
    const { pitch, starts = 1 } = feed.screw;
    return { from: "screw", pitch: feedMm(pitch), starts, ...tpiOf(pitch), ...nominal };
  }
  if (feed.rack) {
    const rack = assembleRack(feed.rack, [...path, "rack"], context);
    return rack && { ...rack, ...nominal };
  }
  const readings = feed.readings !== undefined && assembleReadings(feed.readings, [...path, "readings"], context);
  return readings === undefined || readings === false ? undefined : { from: "readings", ...readings, ...nominal };
}

type Lists = Pick<Readings, "turns" | "file"> & {
  readonly travel: readonly (number | undefined)[];
  readonly back?: readonly (number | undefined)[];
};

/** The lists of a file, or those of a CSV beside it; undefined in them where none was taken. Undefined where an error was told. */
function listsOf(raw: RawReadings, path: Path, { mm, csv, error }: Context): Lists | undefined {
  const name = typeof raw === "string" ? raw : raw.file;
  if (name !== undefined) {
    if (typeof raw !== "string" && (raw.turns || raw.travel || raw.return))
      error(path, "two-forms", "readings are given both here and in a file", "keep the lists, or file");
    const found = csv.get(name);
    if (found === undefined) {
      if (csv.has(name)) return undefined;
      error(
        typeof raw === "string" ? path : [...path, "file"],
        "no-csv",
        `readings cannot be taken from "${name}"`,
        "name a CSV beside this file, with columns turns, travel and, if taken, return",
      );
      return undefined;
    }
    const back = found.back?.map(mm);
    return { turns: found.turns, travel: found.travel.map(mm), ...(back && { back }), file: name };
  }
  if (typeof raw === "string") return undefined;
  const missing = (["turns", "travel"] as const).filter((key) => raw[key] === undefined);
  for (const key of missing)
    error(
      path,
      "missing",
      `the readings have no ${key}`,
      `add ${key}: with one entry for each reading, or file: with a CSV`,
    );
  if (raw.turns === undefined || raw.travel === undefined) return undefined;
  const taken = (one: LengthText | undefined) => one && mm(one);
  return { turns: raw.turns, travel: raw.travel.map(taken), ...(raw.return && { back: raw.return.map(taken) }) };
}

/** Without the rows of which nothing was read on the way out; a way back that was not read all along tells no lost motion yet. */
function readSoFar({ turns, travel, back, file }: Lists, path: Path, { warn }: Context): Omit<Readings, "gauge"> {
  const rows = travel.flatMap((out, row) => (out === undefined ? [] : [{ row, out }]));
  const returned = rows.flatMap(({ row }) => back?.[row] ?? []);
  const alone = travel.flatMap((out, row) => (out === undefined && back?.[row] !== undefined ? [row + 1] : []));
  if (alone.length > 0)
    warn(
      [...path, "return", (alone[0] ?? 1) - 1],
      "return-alone",
      `read on the way back alone, and not counted: ${alone.length === 1 ? "entry" : "entries"} ${alone.join(", ")}`,
      "read the same places on the way out too",
    );
  if (back !== undefined && returned.length > 0 && returned.length < rows.length)
    warn(
      [...path, "return"],
      "half-way-back",
      `the way back is read at ${returned.length} of ${rows.length} places`,
      "read it at the others too; until then no sheet tells a lost motion",
    );
  return {
    turns: rows.map(({ row }) => turns[row] ?? 0),
    travel: rows.map(({ out }) => out),
    ...(returned.length > 0 && returned.length === rows.length && { back: returned }),
    ...(rows.length < travel.length && { places: rows.map(({ row }) => row) }),
    ...(file !== undefined && { file }),
  };
}

function assembleReadings(raw: RawReadings, path: Path, context: Context): Readings | undefined {
  const { mm, units, error } = context;
  const lists = listsOf(raw, path, context);
  if (lists === undefined) return undefined;
  let sound = true;
  const refuse = (key: string, code: string, what: string, remedy: string) => {
    sound = false;
    error([...path, key], code, what, remedy);
  };
  if (lists.turns.some((turn) => !Number.isFinite(turn)))
    refuse("turns", "bad-value", "a turn is not a number", "write plain numbers");
  if (lists.travel.length !== lists.turns.length)
    refuse(
      "travel",
      "unequal-lists",
      `${lists.turns.length} turns but ${lists.travel.length} readings`,
      `give one reading for each entry of turns${commaSlip(lists.travel)}`,
    );
  if (lists.back && lists.back.length > lists.turns.length)
    refuse(
      "return",
      "unequal-lists",
      `${lists.turns.length} turns but ${lists.back.length} return readings`,
      `give one for each entry of turns, in the order of turns${commaSlip(lists.back)}`,
    );
  const read = readSoFar(lists, path, context);
  const { turns, travel, back } = read;
  if (turns.length < 3)
    refuse(
      "turns",
      "too-few-readings",
      `${turns.length === 1 ? "one reading tells" : `${turns.length} readings tell`} no feed with its doubt`,
      "take at least 3, better 8 or more, spread over the travel",
    );
  else if (new Set(turns).size < 2)
    refuse(
      "turns",
      "all-equal",
      "all readings are at the same turn",
      "turn the handwheel between readings and write how far",
    );
  if (!sound) return undefined;
  if (travel.every((reading) => reading === travel[0]))
    refuse(
      "travel",
      "all-equal",
      "all readings are the same",
      "the gauge did not move: check that it touches the slide",
    );
  else if (trend(turns, travel) < 0)
    refuse(
      "travel",
      "falling",
      "travel falls while turns rise",
      `write how far the slide has gone from where it started: each as so much less than the largest: ${fromLargest(travel, units)}`,
    );
  if (back?.every((reading) => reading === back[0]))
    refuse(
      "return",
      "all-equal",
      "all return readings are the same",
      "the gauge did not move: check that it touches the slide, or leave return out",
    );
  else if (back && sound && trend(turns, back) < 0)
    refuse(
      "return",
      "falling",
      "the return readings run against turns",
      "write each return reading beside the turn at which it was taken, not in the order of taking",
    );
  const about = typeof raw === "string" ? {} : raw;
  const { temperature } = about;
  if (temperature !== undefined && (temperature < coldest || temperature > warmest))
    refuse(
      "temperature",
      "bad-value",
      `nobody measures at ${temperature} °C`,
      temperature > warmest
        ? `if it is in Fahrenheit, write ${trimmed(((temperature - 32) * 5) / 9, 0)}`
        : "give degrees Celsius, from -20 to 60",
    );
  const told = {
    ...(about.gauge && { gauge: mm(about.gauge) }),
    ...(about.gaugeError && { gaugeError: mm(about.gaugeError) }),
    ...(about.temperature !== undefined && { temperature: about.temperature }),
    ...(about.zeroAt && { zeroAt: about.zeroAt }),
  };
  return sound ? { ...told, ...read, ...(units === "in" && { unit: MM_PER_INCH }) } : undefined;
}

/** Whole numbers alone look like decimals that their commas cut in two. */
const commaSlip = (readings: readonly (number | undefined)[]): string =>
  readings.length > 1 && readings.every(Number.isInteger)
    ? "; in a list a comma parts entries: write 0.99, not 0,99"
    : "";

/** °C between which a machine is measured; beyond them a number was meant in another unit. Common practice. */
const coldest = -20;
const warmest = 60;

/** Sign of how readings go with turns. */
function trend(turns: readonly number[], readings: readonly number[]): number {
  const middle = turns.reduce((sum, turn) => sum + turn, 0) / turns.length;
  return turns.reduce((sum, turn, index) => sum + (turn - middle) * (readings[index] ?? 0), 0);
}

/** Near enough to see a wrong unit; the true fit comes later. */
function roughly(feed: Feed): number | undefined {
  if (feed.from === "stated") return feed.perTurn;
  if (feed.from === "screw") return feed.pitch * feed.starts;
  if (feed.from === "rack") return rackTravel(feed);
  return middleSlope(feed);
}

/** The feed that readings would give with turns and travel changed about; their slope is then in turns per unit of the file. */
function changedAbout(feed: Feed, { mm }: Context): number | undefined {
  const slope = feed.from === "readings" ? middleSlope(feed) : undefined;
  const unit = mm({ value: 1, unit: "file" });
  return slope === undefined ? undefined : unit ** 2 / slope;
}

/** Middle one of the slopes between readings half the travel apart: one wild reading does not move it. */
function middleSlope({ turns, travel }: Readings): number | undefined {
  const every = Math.ceil(turns.length / 1000);
  const places = turns
    .flatMap((turn, index) => (index % every === 0 ? [{ turn, reading: travel[index] ?? 0 }] : []))
    .sort((a, b) => a.turn - b.turn);
  const half = Math.floor(places.length / 2);
  const slopes = places
    .slice(half)
    .flatMap((far, index) => {
      const near = places[index] ?? far;
      return far.turn > near.turn ? [Math.abs((far.reading - near.reading) / (far.turn - near.turn))] : [];
    })
    .sort((a, b) => a - b);
  return slopes[Math.floor(slopes.length / 2)];
}

/** Readings that fall, as they are to be written: the first three. */
function fromLargest(travel: readonly number[], units: Units): string {
  const largest = largestOf(travel);
  const figures = travel
    .slice(0, 3)
    .map((reading) => trimmed(fromMm(largest - reading, units), units === "in" ? 5 : 4));
  return `${figures.join(", ")} …`;
}
