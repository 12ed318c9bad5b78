import { feedDoubtOver } from "../feed/doubtOver.js";
import type { FeedFinding } from "../feed/finding.js";
import type { DialWish, Handwheel, Paper, Units } from "../machine/machine.js";
import { leastRow, rowsTooLow } from "./bandRoom.js";
import { choicesFor } from "./choices.js";
import { closings } from "./closing.js";
import { development } from "./development.js";
import type { DialChoice, DialFinding, RowsWithoutRoom } from "./finding.js";
import { graduations } from "./graduations.js";
import { labelling } from "./labelling.js";
import { MOST_MARKS } from "./penalty.js";
import { readingOf } from "./reading.js";
import { divisionWorth } from "./setting.js";
import { readingCircle, stripLength } from "./strip.js";
import { dialVernier, pitchAngle } from "./vernier.js";
import { type Wave, waveAngle } from "./wave.js";

/** The dial of one handwheel: the ways to divide it, the chosen one and its marks. Undefined where the file wishes for
 *  no dial, where the feed is not known or not above zero, and for a drum without diameter or wrap. `wave`: the
 *  once-per-turn error that the file asks to build in; the marks are then unevenly spaced on purpose. */
export function dialFinding(
  handwheel: Handwheel,
  feed: FeedFinding | undefined,
  paper: Pick<Paper, "thickness" | "adhesive">,
  units: Units,
  wave?: Wave,
): DialFinding | undefined {
  const wish = handwheel.dial;
  if (wish === undefined || feed === undefined || !(feed.perTurn > 0)) return undefined;
  const layers = { paper: paper.thickness, adhesive: paper.adhesive };
  const circle = readingCircle(wish, layers);
  if (circle === undefined || !(circle > 0)) return undefined;

  const flat = development(wish, layers);
  const options = {
    stripLength: circle,
    units,
    ...(handwheel.travel !== undefined && { travel: handwheel.travel }),
    ...(flat && { leastRow: leastRow(flat), round: flat.kind === "ring" }),
  };
  const choices = vernierFirst(choicesFor(feed, handwheel.reads, wish, options), wish);
  const [chosen] = choices;
  if (chosen === undefined) return undefined;
  const strip = stripLength(wish, layers);
  // It would meet the marks of the first row in every turn.
  const beside =
    wish.vernier === undefined || chosen.rows > 1
      ? undefined
      : dialVernier(chosen.divisionValue, chosen.spacing, wish.vernier, circle);
  const reading = readingOf(feed, handwheel).perTurn;
  const second = wish.second === undefined ? undefined : choiceOfSecond(wish.second);
  const secondScale = second && scaleOf(second);
  const rowsWithoutRoom = rowsForbidden();
  return {
    shape: wish.shape,
    ...scaleOf(chosen),
    forced: wish.divisions !== undefined || wish.closure !== undefined,
    choices,
    divisionWorth: divisionWorth(chosen, reading),
    pitch: pitchAngle(chosen, reading),
    closings: closings(reading, chosen.divisionValue),
    ...(flat && { flat }),
    ...(wave && { wave }),
    ...(strip !== undefined && { stripLength: strip }),
    increases: wish.increases,
    ...(secondScale && { second: secondScale }),
    ...(rowsWithoutRoom && { rowsWithoutRoom }),
    ...(beside !== undefined && { vernier: beside }),
  };

  function scaleOf(choice: DialChoice): NonNullable<DialFinding["second"]> {
    if (choice.divisions > MOST_MARKS) return { chosen: choice, rows: [] };
    const numbers = labelling(choice);
    const rows = graduations(choice, reading, numbers);
    return {
      chosen: choice,
      rows: wave === undefined ? rows : unevenly(rows, wave),
      labelUnit: numbers.labelUnit,
      labelWorth: numbers.labelWorth,
    };
  }

  /** Rows are left out of the choices by a rule of thumb for the height of their numbers; here their own numbers count. */
  function rowsForbidden(): RowsWithoutRoom | undefined {
    const inRows = (all: readonly DialChoice[]) => all.find(({ rows }) => rows > 1);
    if (chosen?.beginsAgain !== true || inRows(choices) !== undefined) return undefined;
    const { leastRow: _, ...anyHeight } = options;
    const choice = inRows(choicesFor(feed as FeedFinding, handwheel.reads, wish as DialWish, anyHeight));
    if (choice === undefined) return undefined;
    const low = rowsTooLow({ ...scaleOf(choice), ...(flat && { flat }), ...(secondScale && { second: secondScale }) });
    return { choice, ...(low && { width: low.least }) };
  }

  /** The best closure for the division value that a second scale must have. */
  function choiceOfSecond(divisions: number): DialChoice {
    const { closure: _, ...shape } = wish as DialWish;
    return choicesFor(feed as FeedFinding, handwheel.reads, { ...shape, divisions }, options)[0] as DialChoice;
  }
}

const unevenly = (rows: DialFinding["rows"], wave: Wave): DialFinding["rows"] =>
  rows.map((row) => row.map((mark) => ({ ...mark, angle: waveAngle(mark.angle, wave) })));

/** How far a dial is in doubt over the whole working travel, in what it reads; undefined where nothing says how good the feed is. */
export function workingDoubt(
  { overTravel }: DialChoice,
  { reads, travel = overTravel }: Handwheel,
  feed: FeedFinding,
): { readonly doubt: number; readonly travel: number } | undefined {
  const doubt = feedDoubtOver(travel / feed.perTurn, feed);
  return doubt === undefined ? undefined : { doubt: doubt * (reads === "diameter" ? 2 : 1), travel };
}

/** Where a vernier is asked for and no closure is, dials of one row before those of several, which it cannot read. */
const vernierFirst = (choices: readonly DialChoice[], { vernier, closure }: DialWish): readonly DialChoice[] =>
  vernier === undefined || closure !== undefined
    ? choices
    : [...choices.filter(({ rows }) => rows === 1), ...choices.filter(({ rows }) => rows > 1)];

/** True where that is more than a division: such a dial shows figures that nobody can trust. */
export const coarserThanItsDoubt = (chosen: DialChoice, handwheel: Handwheel, feed: FeedFinding): boolean =>
  (workingDoubt(chosen, handwheel, feed)?.doubt ?? 0) > chosen.divisionValue;
