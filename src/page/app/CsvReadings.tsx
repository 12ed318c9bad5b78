import { useComputed } from "@preact/signals";
import { useMemo } from "preact/hooks";
import { type Way, without, withValue } from "../file/edit.js";
import type { Plain } from "../file/yamlText.js";
import { schemaAt } from "../schema.js";
import type { Desk } from "./desk.js";
import { Notes, TextField } from "./form/Field.js";
import { type Form, idOf, keyOf, takeOut } from "./form/form.js";
import { AT_ONCE, Between, pieceOf } from "./form/Pieces.js";
import { Leftover } from "./Leftover.js";
import { csvAt, withItsLine } from "./tables.js";
import { newest, useStopped } from "./worker.js";

/** Readings that lie in a CSV: to be looked at, and brought into the file where they are to be typed on. */
export function CsvReadings({ form, way, desk }: { readonly form: Form; readonly way: Way; readonly desk: Desk }) {
  const nodes = form.nodes.value;
  const named = csvAt(nodes, way) ?? way;
  const name = useComputed(() => form.nodes.value.words(csvAt(form.nodes.value, way) ?? way));
  const asking = useMemo(() => {
    const table = newest(desk.asker, "table", () => ({
      files: desk.files.value,
      asked: { name: name.value, units: form.units.value },
    }));
    const words = (key: string) => form.nodes.value.words([...way, key]);
    const so = newest(desk.asker, "readings", () => ({
      files: desk.files.peek(),
      asked: {
        ...{ units: form.units.value, gauge: words("gauge") },
        ...{ gaugeError: words("gaugeError"), temperature: words("temperature") },
        rows: (table.answer.value?.rows ?? []).map(({ turns, travel, return: back = "" }) => ({ turns, travel, back })),
      },
    }));
    return { table, so };
  }, [desk]);
  useStopped(asking);
  // It has no view of its own: what is wrong in it is told where it is used.
  const faults = useComputed(() => desk.told.value.filter(({ file }) => file === name.value));
  const { there = true, rows = [] } = asking.table.answer.value ?? {};
  const record = (key: string) => schemaAt(form.root, [...way, key], () => ({})) ?? {};
  const piece = pieceOf(form, way, rows.length, AT_ONCE.rows);
  const bringIn = (): void => {
    const back = rows.flatMap((row) => row.return ?? []);
    const lists: Readonly<Record<string, Plain>> = {
      turns: rows.map(({ turns }) => turns),
      travel: rows.map(({ travel }) => travel),
      ...(back.length > 0 && { return: back }),
    };
    const text = form.document.text.peek();
    const brought =
      named === way
        ? withValue(text, way, lists)
        : Object.entries(lists).reduce((so, [key, list]) => withValue(so, [...way, key], list), without(text, named));
    form.document.write(brought);
  };
  return (
    <fieldset class="readings" data-way={keyOf(way)} id={named === way ? undefined : idOf(way)}>
      <legend>Readings</legend>
      {named !== way && <Notes form={form} way={way} />}
      <TextField form={form} way={named} schema={record("file")} label="File" />
      {named !== way && <TextField form={form} way={[...way, "gauge"]} schema={record("gauge")} label="Gauge" />}
      {faults.value.length > 0 && (
        <ul class="messages" aria-label={`What is told of ${name.value}`}>
          {faults.value.map((one) => (
            <li key={`${one.line}:${one.column}:${one.what}`} class={one.severity}>
              {withItsLine(one)}
            </li>
          ))}
        </ul>
      )}
      {!there && <p class="lacking">“{name.value}” does not lie on the desk: open it.</p>}
      {rows.length > 0 && (
        <>
          <Between form={form} way={way} count={rows.length} size={AT_ONCE.rows} />
          <div class="grid">
            <table>
              <caption>Readings of “{name.value}”</caption>
              <thead>
                <tr>
                  <th scope="col">turns</th>
                  <th scope="col">out ({form.units.value})</th>
                  <th scope="col">back ({form.units.value})</th>
                </tr>
              </thead>
              <tbody>
                {rows.slice(piece.from, piece.to).map((row, index) => (
                  <tr key={piece.from + index}>
                    <td>{row.turns}</td>
                    <td>{row.travel}</td>
                    <td>{row.return}</td>
                  </tr>
                ))}
              </tbody>
            </table>
            <Leftover so={asking.so.answer.value} />
          </div>
        </>
      )}
      <p class="more">
        {rows.length > 0 && (
          <button type="button" onClick={bringIn}>
            bring them into the machine’s file, to type on
          </button>
        )}
        <button type="button" onClick={() => takeOut(form, named)}>
          use no CSV
        </button>
      </p>
    </fieldset>
  );
}
