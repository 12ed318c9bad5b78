import { useComputed } from "@preact/signals";
import { useEffect, useMemo } from "preact/hooks";
import { parseTurns } from "../../quantity/number.js";
import type { Way } from "../file/edit.js";
import type { Plain } from "../file/yamlText.js";
import { schemaAt } from "../schema.js";
import type { ReadingsAsked } from "../work/protocol.js";
import type { Desk } from "./desk.js";
import { isBad, Notes, notesId, TextField } from "./form/Field.js";
import { type Form, idOf, keyOf, put, takeOut, type } from "./form/form.js";
import { AT_ONCE, Between, pieceOf, show } from "./form/Pieces.js";
import { readingHeads as heads } from "./form/readingHeads.js";
import { Leftover } from "./Leftover.js";
import { nextTurn } from "./nextTurn.js";
import { newest } from "./worker.js";

const columns = ["turns", "travel", "return"] as const;
type Row = Readonly<Record<(typeof columns)[number], string>>;

/** Readings, typed at the machine: Enter goes on to what is read next, from a turn to its reading, down on the way out and up on the way
 *  back; what they say so far stands beside them. */
export function ReadingsGrid({ form, way, desk }: { readonly form: Form; readonly way: Way; readonly desk: Desk }) {
  const nodes = form.nodes;
  const rows = useComputed(() => rowsOf(form, way));
  const asked = useComputed<ReadingsAsked>(() => ({
    units: form.units.value,
    gauge: nodes.value.words([...way, "gauge"]),
    gaugeError: nodes.value.words([...way, "gaugeError"]),
    temperature: nodes.value.words([...way, "temperature"]),
    rows: rows.value.map(({ turns, travel, return: back }) => ({ turns, travel, back })),
  }));
  const { answer, stop } = useMemo(
    () => newest(desk.asker, "readings", () => ({ files: desk.files.peek(), asked: asked.value })),
    [desk],
  );
  useEffect(() => stop, [stop]);
  const record = (key: string) => schemaAt(form.root, [...way, key], () => ({})) ?? {};
  const count = rows.value.length;
  const shown = count + 1;
  const list = [...way, "turns"];
  const piece = pieceOf(form, list, shown, AT_ONCE.rows);
  const typed = (column: (typeof columns)[number], row: number, words: string): void => {
    const own = [...way, column, row];
    // A row begins with its turn: one step on from the last two.
    if (row === count && column !== "turns") type(form, [...way, "turns", row], nextTurn(rows.value), true, own);
    const others = rows.value.some((one, at) => at !== row && one[column] !== "");
    // Who changes his mind about the way back has taken none.
    if (column === "return" && words === "" && !others) type(form, [...way, column], "", false, own);
    else type(form, own, words, true);
    // A turn whose reading is still to come has an empty one.
    if (column === "turns" && nodes.peek().value([...way, "travel", row]) === undefined)
      type(form, [...way, "travel", row], "", true, own);
  };
  const places = columns.flatMap((column) => rows.value.map((row, at) => ({ column, at, typed: row[column] !== "" })));
  const begun = new Set(places.filter(({ typed }) => typed).map(({ column }) => column));
  const open = places.filter(({ column, typed }) => !typed && begun.has(column));
  const onKey = (event: KeyboardEvent, column: number, row: number): void => {
    const own = columns[column] ?? "turns";
    const goes: Readonly<Record<string, () => Place>> = {
      Enter: () => readNext(rows.value, own, row),
      ArrowDown: () => ({ column: own, row: row + 1 }),
      ArrowUp: () => ({ column: own, row: row - 1 }),
    };
    const to = goes[event.key]?.();
    if (to === undefined) return;
    event.preventDefault();
    const next = Math.max(0, to.row);
    const focus = () => {
      const cell = document.getElementById(cellId(way, to.column, next));
      if (!(cell instanceof HTMLInputElement)) return;
      cell.focus();
      // What is typed next takes the place of what stands there.
      cell.select();
    };
    if (next >= piece.from && next < piece.to) focus();
    else {
      // It lies in another piece of the grid, which is not drawn yet.
      show(form, [...list, next]);
      requestAnimationFrame(() => requestAnimationFrame(focus));
    }
  };
  const marked = answer.value?.places ?? [];
  const doubted = new Set(marked.filter(({ doubted, back }) => doubted || back !== undefined).map(({ row }) => row));
  return (
    <fieldset class="readings" data-way={keyOf(way)} id={idOf(way)}>
      <legend>Readings</legend>
      <p class="about">
        Come to the first turn from one side, set the gauge to nought, and go on without turning back; then the way
        back, from the last row up. Enter goes on to what is read next.
      </p>
      <Notes form={form} way={way} />
      <TextField form={form} way={[...way, "gauge"]} schema={record("gauge")} label="Gauge" />
      <Between form={form} way={list} count={shown} size={AT_ONCE.rows} />
      <div class="grid">
        <table>
          <thead>
            <tr>
              {columns.map((column) => (
                <th key={column} scope="col">
                  {heads[column]}
                  {column !== "turns" && <small> ({form.units.value})</small>}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {Array.from({ length: piece.to - piece.from }, (_, index) => piece.from + index).map((row) => (
              <tr key={row} class={doubted.has(row) ? "doubted" : undefined}>
                {columns.map((column, at) => (
                  <td key={column} data-way={keyOf([...way, column, row])}>
                    {/* Nobody comes back to a turn that he never went out to. */}
                    {(row < count || column !== "return") && (
                      <input
                        id={cellId(way, column, row)}
                        type="text"
                        inputMode="decimal"
                        autocomplete="off"
                        aria-label={`${heads[column]}, reading ${row + 1}`}
                        placeholder={row === count && column === "turns" ? nextTurn(rows.value) : ""}
                        aria-invalid={isBad(form, [...way, column, row])}
                        aria-describedby={
                          form.told.value.has(keyOf([...way, column, row])) ? notesId([...way, column, row]) : undefined
                        }
                        value={nodes.value.words([...way, column, row])}
                        onMouseDown={takenWhole}
                        onKeyDown={(event) => onKey(event, at, row)}
                        onInput={(event) => typed(column, row, event.currentTarget.value)}
                      />
                    )}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
        <Leftover so={answer.value} />
      </div>
      {open.length > 0 && (
        <p class="about">
          Still empty: {open.length} {open.length === 1 ? "place" : "places"} of “
          {[...new Set(open.map(({ column }) => heads[column]))].join("”, “")}”.
        </p>
      )}
      {turnedBack(rows.value).map((words) => (
        <div class="notes" key={words}>
          <p class="warning">
            <b>! </b>
            {words}
          </p>
        </div>
      ))}
      {[
        ...columns.map((column) => [...way, column]),
        ...places.filter(({ typed }) => typed).map(({ column, at }) => [...way, column, at]),
      ]
        .filter((at) => form.told.value.has(keyOf(at)))
        .map((at) => (
          <Notes form={form} way={at} key={keyOf(at)} />
        ))}
      <p class="more">
        {count > 0 && (
          <button type="button" onClick={() => takeOut(form, ...columns.map((column) => [...way, column, count - 1]))}>
            take the last row out
          </button>
        )}
        {Object.entries(further).map(([key, { label, first }]) =>
          nodes.value.value([...way, key]) === undefined ? (
            <button
              type="button"
              key={key}
              title={record(key).description}
              onClick={() => put(form, [...way, key], first)}
            >
              + {label.toLowerCase()}
            </button>
          ) : (
            <TextField key={key} form={form} way={[...way, key]} schema={record(key)} label={label} />
          ),
        )}
      </p>
    </fieldset>
  );
}

/** What is typed into a cell that was clicked takes the place of what stands there; a second click sets the caret. */
function takenWhole(event: MouseEvent & { readonly currentTarget: HTMLInputElement }): void {
  const cell = event.currentTarget;
  if (document.activeElement === cell) return;
  event.preventDefault();
  cell.focus();
  cell.select();
}

/** What may be said of readings beside their lists, and what stands there to begin with. */
const further: Readonly<Record<string, { label: string; first: Plain }>> = {
  gaugeError: { label: "Gauge error", first: 0.01 },
  temperature: { label: "Temperature", first: 20 },
  zeroAt: { label: "Place of turn 0", first: "line on the ways" },
};

type Place = { readonly column: (typeof columns)[number]; readonly row: number };

/** What is read after a place: its turn's reading; where the step from turn to turn is not told by two of them yet, the next turn. */
function readNext(rows: readonly Row[], column: Place["column"], row: number): Place {
  if (column === "return") return { column, row: row - 1 };
  if (column === "turns" && (rows[row]?.travel ?? "") === "") return { column: "travel", row };
  const asksTurn = column === "travel" && row === 0 && (rows[1]?.turns ?? "") === "";
  return { column: asksTurn ? "turns" : column, row: row + 1 };
}

/** Where a turn goes back behind the one before it, as a slip of the pen does; back at the first one a new run begins. */
function turnedBack(rows: readonly Row[]): string[] {
  const turns = rows.flatMap(({ turns: words }, row) => {
    const turn = parseTurns(words);
    return turn === undefined ? [] : [{ turn, words, row }];
  });
  const [first] = turns;
  if (first === undefined) return [];
  const sense = Math.sign((turns.find(({ turn }) => turn !== first.turn)?.turn ?? first.turn) - first.turn);
  return turns.flatMap(({ turn, words, row }, at) => {
    const before = turns[at - 1];
    if (before === undefined || turn === first.turn || (turn - before.turn) * sense >= 0) return [];
    return [
      `Turns go ${sense > 0 ? "up" : "down"}, but row ${row + 1} goes from ${before.words} back to ${words}: a slip of the pen, or the wheel was turned back, and what is lost in turning back is in the reading.`,
    ];
  });
}

const cellId = (way: Way, column: string, row: number): string => `${idOf(way)}-${column}-${row}`;

function rowsOf(form: Form, way: Way): Row[] {
  const { value, words } = form.nodes.value;
  const lengths = columns.map((column) => {
    const list = value([...way, column]);
    return Array.isArray(list) ? list.length : 0;
  });
  return Array.from({ length: Math.max(...lengths) }, (_, row) => ({
    turns: words([...way, "turns", row]),
    travel: words([...way, "travel", row]),
    return: words([...way, "return", row]),
  }));
}
