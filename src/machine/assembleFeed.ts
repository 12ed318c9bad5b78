import { trimmed } from "../quantity/format.js";
import { inMm, MM_PER_INCH } from "../quantity/length.js";
import { assembleRack, FARTHEST_RACK } from "./assembleRack.js";
import type { Context, Raw } from "./context.js";
import type { Feed, Readings } from "./machine.js";
import type { Path } from "./problem.js";
import { rackTravel } from "./rackTravel.js";

type RawFeed = NonNullable<Raw<"handwheels">[number]["feed"]>;
type RawReadings = NonNullable<Exclude<RawFeed, { value: number }>["readings"]>;

/** Undefined where an error was told. */
export function assembleFeed(raw: RawFeed, path: Path, context: Context): Feed | undefined {
  const feed = "value" in raw ? scalar(raw, context) : compound(raw, path, context);
  if (feed === undefined) return undefined;
  const perTurn = roughly(feed);
  // A rack that goes too far is told of with its likely slip.
  const told = feed.from === "rack" && perTurn !== undefined && perTurn > FARTHEST_RACK;
  if (perTurn !== undefined && (perTurn < 0.05 || perTurn > 100) && !told)
    context.warn(
      path,
      "unlikely-feed",
      `a feed of ${trimmed(perTurn, 4)} mm a turn is unusual for a small machine`,
      "check the unit and the count of turns",
    );
  if (feed.from === "readings" && perTurn !== undefined && !("value" in raw))
    coarseGauge(feed, raw.readings, perTurn, [...path, "readings", "gauge"], context);
  const { nominal } = feed;
  if (nominal !== undefined && perTurn !== undefined) {
    for (const ratio of [perTurn / nominal, nominal / perTurn])
      if (Math.abs(ratio / MM_PER_INCH - 1) < 0.2)
        context.warn(
          path,
          "unit-mix",
          "feed and nominal differ by about 25.4",
          "one of them seems to be in inches: write the unit beside it",
        );
  }
  return feed;
}

/** A gauge should part a turn into ten at least; one that does not is most often written in the other unit, or a place off. */
function coarseGauge(
  { gauge }: Readings,
  raw: RawReadings | undefined,
  perTurn: number,
  path: Path,
  { units, warn }: Context,
): void {
  if (gauge === undefined || gauge <= perTurn / 10) return;
  const bare = typeof raw === "object" && raw.gauge?.unit === "file" ? raw.gauge.value : undefined;
  warn(
    path,
    "coarse-gauge",
    `a gauge of ${trimmed(gauge, 4)} mm can hardly show a turn of about ${trimmed(perTurn, 3)} mm`,
    units === "in" && bare !== undefined && bare <= perTurn / 10
      ? `a bare number is in inches here: if the gauge is metric, write ${trimmed(bare, 4)} mm`
      : "gauge is its smallest graduation, most often 0.01 mm or 0.001 in: check the decimal point and the unit",
  );
}

/** "16 tpi" is a screw; a plain length is the maker's word or a measurement, as stated. */
const scalar = (feed: Extract<RawFeed, { value: number }>, { feedMm }: Context): Feed =>
  feed.unit === "tpi" ? { from: "screw", pitch: feedMm(feed), starts: 1 } : { from: "stated", perTurn: feedMm(feed) };

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
  if (feed.screw) return { from: "screw", pitch: feedMm(feed.screw.pitch), starts: feed.screw.starts ?? 1, ...nominal };
  if (feed.rack) {
    const rack = assembleRack(feed.rack, [...path, "rack"], context);
    return rack && { ...rack, ...nominal };
  }
  const readings = feed.readings !== undefined && assembleReadings(feed.readings, [...path, "readings"], context);
  return readings === undefined || readings === false ? undefined : { from: "readings", ...readings, ...nominal };
}

/** The lists of a file, or those of a CSV beside it. Undefined where an error was told. */
function listsOf(
  raw: RawReadings,
  path: Path,
  { mm, csv, units, error }: Context,
): Omit<Readings, "gauge"> | undefined {
  const name = typeof raw === "string" ? raw : raw.file;
  if (name !== undefined) {
    if (typeof raw !== "string" && (raw.turns || raw.travel || raw.return))
      error(path, "two-forms", "readings are given both here and in a file", "keep the lists, or file");
    const found = csv.get(name);
    if (found === undefined) {
      error(
        typeof raw === "string" ? path : [...path, "file"],
        "no-csv",
        `readings cannot be taken from "${name}"`,
        "name a CSV beside this file, with columns turns, travel and, if taken, return",
      );
      return undefined;
    }
    const list = (values: readonly number[]) => values.map((value) => inMm(value, units));
    return { turns: found.turns, travel: list(found.travel), ...(found.back && { back: list(found.back) }) };
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
  return { turns: raw.turns, travel: raw.travel.map(mm), ...(raw.return && { back: raw.return.map(mm) }) };
}

function assembleReadings(raw: RawReadings, path: Path, context: Context): Readings | undefined {
  const { mm, error } = context;
  const lists = listsOf(raw, path, context);
  if (lists === undefined) return undefined;
  const { turns, travel, back } = lists;
  let sound = true;
  const refuse = (key: string, code: string, what: string, remedy: string) => {
    sound = false;
    error([...path, key], code, what, remedy);
  };
  if (turns.some((turn) => !Number.isFinite(turn)))
    refuse("turns", "bad-value", "a turn is not a number", "write plain numbers");
  if (travel.length !== turns.length)
    refuse(
      "travel",
      "unequal-lists",
      `${turns.length} turns but ${travel.length} readings`,
      "give one reading for each entry of turns",
    );
  if (back && back.length !== turns.length)
    refuse(
      "return",
      "unequal-lists",
      `${turns.length} turns but ${back.length} return readings`,
      "give one for each entry of turns, in the order of turns",
    );
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
      "change the sign of the readings, so that travel grows with turns",
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
  const gauge = {
    ...(about.gauge && { gauge: mm(about.gauge) }),
    ...(about.gaugeError && { gaugeError: mm(about.gaugeError) }),
    ...(about.temperature !== undefined && { temperature: about.temperature }),
  };
  return sound ? { ...gauge, turns, travel, ...(back && { back }) } : undefined;
}

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
  const { turns, travel } = feed;
  const last = turns.indexOf(Math.max(...turns.slice(0, 1000)));
  const first = turns.indexOf(Math.min(...turns.slice(0, 1000)));
  return Math.abs(((travel[last] ?? 0) - (travel[first] ?? 0)) / ((turns[last] ?? 1) - (turns[first] ?? 0)));
}
