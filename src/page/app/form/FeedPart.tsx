import { useSignal } from "@preact/signals";
import { type Way, without, withValue } from "../../file/edit.js";
import { kindFor, kindOf, schemaAt } from "../../schema.js";
import { asideOf, plainAt } from "./aside.js";
import { Notes, TextField } from "./Field.js";
import { Fields, Unknown } from "./Fields.js";
import { type Form, idOf, keyOf, put } from "./form.js";

/** How far a slide goes in a turn is known in one of these ways, the surest first. */
const ways = {
  readings: "measured: readings of a gauge",
  perTurn: "known: how far one turn moves it",
  screw: "by its screw: pitch, or threads to the inch",
  rack: "by its rack and pinion",
} as const;
type Known = keyof typeof ways;
const all = Object.keys(ways) as Known[];

/** What is said of a turn that is known goes with it. */
const keysOf = (way: Known): readonly string[] => (way === "perTurn" ? [way, "uncertainty"] : [way]);

export function FeedPart({ form, way }: { readonly form: Form; readonly way: Way }) {
  const { value } = form.nodes.value;
  const wanted = useSignal<Known | undefined>(undefined);
  const record = typeof value(way) === "object";
  const inFile: readonly Known[] = record
    ? all.filter((key) => value([...way, key]) !== undefined)
    : value(way) === undefined
      ? []
      : ["perTurn"];
  const shown: readonly Known[] = inFile.length > 0 ? inFile : [wanted.value ?? "perTurn"];
  const feed = schemaAt(form.root, way, () => ({})) ?? {};
  const parts = kindFor(feed, {});
  const choose = (next: Known): void => {
    wanted.value = next;
    const kept = asideOf(form.document);
    let text = form.document.text.peek();
    for (const key of inFile.flatMap(keysOf)) {
      const at = record ? [...way, key] : way;
      if (value(at) === undefined) continue;
      kept.set(keyOf([...way, key]), plainAt(form.nodes.peek(), at));
      text = without(text, at);
    }
    for (const key of keysOf(next)) {
      const before = kept.get(keyOf([...way, key]));
      if (before !== undefined) text = withValue(text, [...way, key], before);
    }
    form.document.write(text);
  };
  const { Part } = form;
  const Readings = form.special([...way, "readings"]);
  return (
    <fieldset data-way={keyOf(way)} id={record ? idOf(way) : undefined}>
      <legend>Feed</legend>
      <fieldset class="which bare" aria-label="Feed: how it is known">
        {all.map((key) => (
          <label key={key}>
            <input
              type="radio"
              name={`${idOf(way)}-known`}
              checked={shown.includes(key)}
              onChange={() => choose(key)}
            />
            {ways[key]}
          </label>
        ))}
      </fieldset>
      {record && <Notes form={form} way={way} />}
      {shown.map((key) =>
        key === "readings" && Readings ? (
          <Readings key={key} form={form} way={[...way, key]} />
        ) : key === "perTurn" && !record ? (
          <TextField
            key={key}
            form={form}
            way={way}
            schema={(feed.anyOf ?? []).find((one) => kindOf(one) !== "record") ?? feed}
            label="One turn moves it"
          />
        ) : (
          <Part
            key={key}
            form={form}
            way={[...way, key]}
            schema={parts.properties?.[key] ?? {}}
            label={key === "perTurn" ? "One turn moves it" : key === "screw" ? "Screw" : "Rack"}
            open
          />
        ),
      )}
      {record || !shown.includes("perTurn") ? (
        <Fields
          form={form}
          way={way}
          schema={parts}
          only={["nominal", ...(shown.includes("perTurn") ? ["uncertainty"] : [])]}
          closed
        />
      ) : (
        inFile.length > 0 && (
          <p class="more">
            <button type="button" onClick={() => put(form, way, { perTurn: form.nodes.peek().words(way) })}>
              + how far off it may be, or what the maker meant
            </button>
          </p>
        )
      )}
      <Unknown form={form} way={way} schema={parts} />
    </fieldset>
  );
}
