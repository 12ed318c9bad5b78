import { useSignal } from "@preact/signals";
import type { Way } from "../../file/edit.js";
import type { Schema } from "../../schema.js";
import { labelOf } from "./Field.js";
import type { Form } from "./form.js";
import { focusOn } from "./places.js";

type FieldsProps = {
  readonly form: Form;
  readonly way: Way;
  readonly schema: Schema;
  /** Only these of its keys. */
  readonly only?: readonly string[];
};

/** Every part of a record: what must be there or is there, then what may be added, each behind its name. */
export function Fields({ form, way, schema, only }: FieldsProps) {
  const opened = useSignal<readonly string[]>([]);
  const entries = Object.entries(schema.properties ?? {}).filter(([key]) => only === undefined || only.includes(key));
  const nodes = form.nodes.value;
  const { Part } = form;
  const shown = entries.filter(
    ([key]) =>
      entries.length <= MANY ||
      schema.required?.includes(key) ||
      opened.value.includes(key) ||
      nodes.value([...way, key]) !== undefined,
  );
  const hidden = entries.filter((entry) => !shown.includes(entry));
  return (
    <>
      {shown.map(([key, one]) => {
        const Special = form.special([...way, key]);
        return Special ? (
          <Special form={form} way={[...way, key]} key={key} />
        ) : (
          <Part
            form={form}
            way={[...way, key]}
            schema={one}
            label={labelOf(key)}
            open={opened.value.includes(key)}
            key={key}
          />
        );
      })}
      {hidden.length > 0 && (
        <p class="more">
          <span>May also say:</span>{" "}
          {hidden.map(([key, one]) => (
            <button
              type="button"
              key={key}
              title={one.description}
              onClick={() => {
                opened.value = [...opened.value, key];
                // What was asked for is where one goes on typing.
                requestAnimationFrame(() => focusOn([...way, key]));
              }}
            >
              + {labelOf(key).toLowerCase()}
            </button>
          ))}
        </p>
      )}
    </>
  );
}

/** With so few parts all of them stand open. */
const MANY = 5;
