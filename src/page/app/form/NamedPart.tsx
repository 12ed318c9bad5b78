import { useSignal } from "@preact/signals";
import { Notes } from "./Field.js";
import { Fields } from "./Fields.js";
import { idOf, keyOf, type PartProps, put, takeOut } from "./form.js";
import { AT_ONCE, Pieces } from "./Pieces.js";
import { singular } from "./placeWords.js";

/** Entries under names of one's own. */
export function NamedPart({ form, way, schema, label }: PartProps) {
  const name = useSignal("");
  const entries = form.nodes.value.value(way);
  const names = typeof entries === "object" && entries !== null ? Object.keys(entries) : [];
  const one = singular(String(way.at(-1)));
  const inner = typeof schema.additionalProperties === "object" ? schema.additionalProperties : {};
  return (
    <fieldset data-way={keyOf(way)} id={idOf(way)} class="list">
      <legend>{label}</legend>
      {schema.description && <p class="about">{schema.description}</p>}
      <Notes form={form} way={way} />
      <Pieces form={form} way={way} count={names.length} size={AT_ONCE.records}>
        {(index) => {
          const entry = names[index] ?? "";
          return (
            <section class="item" key={entry} data-way={keyOf([...way, entry])}>
              <h3>{entry}</h3>
              <Notes form={form} way={[...way, entry]} />
              <Fields form={form} way={[...way, entry]} schema={inner} />
              {way[0] === "printers" && form.nodes.value.words(["paper", "printer"]) !== entry && (
                <button type="button" onClick={() => put(form, ["paper", "printer"], entry)}>
                  print with “{entry}”, corrected by this
                </button>
              )}
              <button
                type="button"
                class="out"
                aria-label={`Take out ${entry}`}
                onClick={() => takeOut(form, [...way, entry])}
              >
                take out
              </button>
            </section>
          );
        }}
      </Pieces>
      <form
        class="adding"
        onSubmit={(event) => {
          event.preventDefault();
          if (name.value.trim() !== "") put(form, [...way, name.value.trim()], {});
          name.value = "";
        }}
      >
        <label for={`${idOf(way)}-new`}>Name of a {one}</label>
        <input
          id={`${idOf(way)}-new`}
          type="text"
          value={name.value}
          onInput={(event) => {
            name.value = event.currentTarget.value;
          }}
        />
        <button type="submit">+ {one}</button>
      </form>
    </fieldset>
  );
}
