import { Notes } from "./Field.js";
import { Fields } from "./Fields.js";
import { idOf, isOpened, keyOf, type PartProps, setOpened, takeOut } from "./form.js";
import { focusOn } from "./places.js";

/** Named parts of one thing, in a frame; not there until one of them is filled in. */
export function RecordPart({ form, way, schema, label, open = false }: PartProps) {
  const there = form.nodes.value.value(way) !== undefined;
  const required = (schema.required ?? []).length > 0;
  // What is told of a part that is not there yet is told where it is filled in.
  const told = form.told.value.has(keyOf(way));
  if (!there && !told && !open && !isOpened(form, way) && (way.length > 1 || required))
    return (
      <button
        type="button"
        class="opener"
        data-way={keyOf(way)}
        onClick={() => {
          setOpened(form, way, true);
          // What was asked for is where one goes on typing.
          requestAnimationFrame(() => requestAnimationFrame(() => focusOn(way)));
        }}
      >
        + {label.toLowerCase()}
        {schema.description && <span class="about"> {schema.description}</span>}
      </button>
    );
  return (
    <fieldset data-way={keyOf(way)} id={idOf(way)}>
      <legend>{label}</legend>
      {schema.description && <p class="about">{schema.description}</p>}
      <Notes form={form} way={way} />
      <Fields form={form} way={way} schema={schema} />
      <button
        type="button"
        class="out"
        aria-label={`Take out ${label}`}
        onClick={() => {
          setOpened(form, way, false);
          takeOut(form, way);
        }}
      >
        take out
      </button>
    </fieldset>
  );
}
