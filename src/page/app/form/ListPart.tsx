import type { Way } from "../../file/edit.js";
import type { Plain } from "../../file/yamlText.js";
import { inWords, itemOf, kindFor, kindOf, type Schema, scalar } from "../../schema.js";
import { Notes } from "./Field.js";
import { Fields } from "./Fields.js";
import { type Form, idOf, keyOf, type PartProps, put, takeOut } from "./form.js";
import { AT_ONCE, Pieces, show } from "./Pieces.js";

/** A list: single values side by side, records one below the other, each to be taken out again. */
export function ListPart({ form, way, schema, label }: PartProps) {
  const { Part } = form;
  const nodes = form.nodes.value;
  const items = nodes.value(way);
  const count = Array.isArray(items) ? items.length : 0;
  const fixed = schema.prefixItems?.length;
  const shown = fixed ?? count;
  const one = singular(String(way.findLast((step) => typeof step === "string") ?? "entry"));
  const single = scalar(itemOf(schema, 0));
  return (
    <fieldset data-way={keyOf(way)} id={idOf(way)} class={single ? "row" : "list"}>
      <legend>{label}</legend>
      {schema.description && <p class="about">{schema.description}</p>}
      <Notes form={form} way={way} />
      <Pieces form={form} way={way} count={shown} size={single ? AT_ONCE.values : AT_ONCE.records}>
        {(index) => {
          const at = [...way, index];
          const item = itemOf(schema, index);
          if (single) return <Single form={form} way={at} key={index} label={`${label} ${index + 1}`} />;
          return (
            <section class="item" key={index} data-way={keyOf(at)}>
              <h3>
                {index + 1} {nameAt(form, at)}
              </h3>
              <Notes form={form} way={at} />
              {kindOf(kindFor(item, nodes.value(at))) === "record" ? (
                <Fields form={form} way={at} schema={kindFor(item, nodes.value(at))} />
              ) : (
                <Part form={form} way={at} schema={item} label={`${one} ${index + 1}`} />
              )}
              <button
                type="button"
                class="out"
                onClick={() => takeOut(form, at)}
                aria-label={`Take out ${one} ${index + 1}`}
              >
                take out
              </button>
            </section>
          );
        }}
      </Pieces>
      {fixed === undefined && (
        <button
          type="button"
          class="add"
          onClick={() => {
            put(form, [...way, count], fresh(itemOf(schema, count), one, count));
            show(form, [...way, count]);
          }}
        >
          + {one}
        </button>
      )}
    </fieldset>
  );
}

function Single({ form, way, label }: { readonly form: Form; readonly way: Way; readonly label: string }) {
  const words = form.nodes.value.words(way);
  return (
    <span class="single" data-way={keyOf(way)}>
      <input
        type="text"
        id={idOf(way)}
        aria-label={label}
        autocomplete="off"
        // As wide as what it holds: a name cut short is another name.
        size={Math.max(6, words.length)}
        value={words}
        onInput={(event) => put(form, way, event.currentTarget.value, true)}
      />
      <button type="button" aria-label={`Take out ${label}`} onClick={() => takeOut(form, way)}>
        ×
      </button>
      <Notes form={form} way={way} />
    </span>
  );
}

const nameAt = (form: Form, way: Way): string => {
  const { words } = form.nodes.value;
  return words([...way, "name"]) || words([...way, "label"]) || words([...way, "do"]);
};

/** What an added entry begins with: a name where it must have one. */
function fresh(schema: Schema, one: string, index: number): Plain {
  const own = schema.anyOf?.[0] ?? schema;
  if (scalar(own)) return 0;
  if (own.type === "array") return [];
  const first = own.required?.[0] ?? Object.keys(own.properties ?? {})[0];
  const enumerated = first === undefined ? undefined : own.properties?.[first]?.enum?.[0];
  return first === undefined ? {} : { [first]: enumerated ?? `${one} ${index + 1}` };
}

export function singular(key: string): string {
  const words = inWords(key);
  if (words.endsWith("ies")) return `${words.slice(0, -3)}y`;
  return words.endsWith("s") ? words.slice(0, -1) : words;
}
