import { useSignal } from "@preact/signals";
import { type Kind, kindOf, type Schema, scalar } from "../../schema.js";
import { idOf, keyOf, type PartProps, takeOut } from "./form.js";

/** What may be said in several ways: one value, or more about it. */
export function SeveralKinds({ form, way, schema, label, now }: PartProps & { readonly now: Schema }) {
  const { Part } = form;
  const options = optionsOf(schema);
  const wanted = useSignal<Kind | undefined>(undefined);
  const there = form.nodes.value.value(way) !== undefined;
  const standing = there || wanted.value === undefined ? groupOf(now) : wanted.value;
  const chosen = options.find(({ kind }) => kind === standing) ?? options[0];
  if (chosen === undefined) return null;
  return (
    <div class="kinds" data-way={keyOf(way)}>
      <fieldset class="which bare" aria-label={`${label}: how it is said`}>
        {options.map(({ kind }) => (
          <label key={kind}>
            <input
              type="radio"
              name={`${idOf(way)}-kind`}
              checked={kind === standing}
              onChange={() => {
                takeOut(form, way);
                wanted.value = kind;
              }}
            />
            {label.toLowerCase()} {kindWords[kind]}
          </label>
        ))}
      </fieldset>
      <Part
        form={form}
        way={way}
        schema={{ ...chosen.schema, ...(schema.description && { description: schema.description }) }}
        label={label}
        key={chosen.kind}
      />
    </div>
  );
}

const kindWords: Readonly<Record<Kind, string>> = {
  field: "as one value",
  choice: "as one value",
  tick: "yes or no",
  record: "in parts",
  named: "by name",
  list: "as a list",
  "several kinds": "otherwise",
};

const groupOf = (schema: Schema): Kind => (scalar(schema) ? "field" : kindOf(schema));

function optionsOf(schema: Schema): { kind: Kind; schema: Schema }[] {
  const all = schema.anyOf ?? [];
  const kinds = [...new Set(all.map(groupOf))];
  return kinds.map((kind) => {
    const same = all.filter((one) => groupOf(one) === kind);
    return { kind, schema: same.length === 1 ? (same[0] as Schema) : { anyOf: same } };
  });
}
