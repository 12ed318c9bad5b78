import { useSignal } from "@preact/signals";
import { type Kind, kindOf, type Schema, scalar } from "../../schema.js";
import { asideOf, plainAt } from "./aside.js";
import { idOf, keyOf, type PartProps, put, takeOut } from "./form.js";
import { wayWords } from "./saying.js";
import { turned } from "./turned.js";

/** What may be said in several ways: one value, or more about it. */
export function SeveralKinds({ form, way, schema, label, now }: PartProps & { readonly now: Schema }) {
  const { Part } = form;
  const options = optionsOf(schema);
  const wanted = useSignal<Kind | undefined>(undefined);
  const there = form.nodes.value.value(way) !== undefined;
  const standing = there || wanted.value === undefined ? groupOf(now) : wanted.value;
  const chosen = options.find(({ kind }) => kind === standing) ?? options[0];
  if (chosen === undefined) return null;
  const say = (kind: Kind): void => {
    const aside = asideOf(form.document);
    const [from, to] = [standing, kind].map((one) => keyOf([...way, one]));
    const said = there ? plainAt(form.nodes.peek(), way) : undefined;
    if (said !== undefined) aside.set(from ?? "", said);
    const next = turned(said, kind, aside.get(to ?? ""));
    if (next === undefined) takeOut(form, way);
    else put(form, way, next);
    wanted.value = kind;
  };
  return (
    <div class="kinds" data-way={keyOf(way)}>
      <fieldset class="which bare" aria-label={`${label}: how it is said`}>
        {options.map(({ kind }) => (
          <label key={kind}>
            <input type="radio" name={`${idOf(way)}-kind`} checked={kind === standing} onChange={() => say(kind)} />
            {wayWords(way, kind)}
          </label>
        ))}
      </fieldset>
      <Part
        form={form}
        way={way}
        schema={{ ...chosen.schema, ...(schema.description && { description: schema.description }) }}
        label={label}
        // What was chosen just now is to be filled in.
        open={!there && wanted.value === chosen.kind}
        key={chosen.kind}
      />
    </div>
  );
}

const groupOf = (schema: Schema): Kind => (scalar(schema) ? "field" : kindOf(schema));

function optionsOf(schema: Schema): { kind: Kind; schema: Schema }[] {
  const all = schema.anyOf ?? [];
  const kinds = [...new Set(all.map(groupOf))];
  return kinds.map((kind) => {
    const same = all.filter((one) => groupOf(one) === kind);
    return { kind, schema: same.length === 1 ? (same[0] as Schema) : { anyOf: same } };
  });
}
