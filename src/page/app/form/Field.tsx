import type { ComponentChildren } from "preact";
import type { Way } from "../../file/edit.js";
import { inWords } from "../../schema.js";
import { choiceWords } from "./choices.js";
import { type Form, idOf, keyOf, type PartProps, put, takeOut, type } from "./form.js";
import { hint } from "./hint.js";
import { inForm } from "./inForm.js";
import { ofEntry } from "./placeWords.js";
import { bareUnit } from "./units.js";
import { usualWords } from "./usual.js";

export const notesId = (way: Way): string => `${idOf(way)}-notes`;

/** Whether what stands at a place is refused. */
export const isBad = (form: Form, way: Way): boolean =>
  (form.told.value.get(keyOf(way)) ?? []).some(({ severity }) => severity === "error");

/** What is told of a place, beneath it. */
export function Notes({ form, way }: { readonly form: Form; readonly way: Way }) {
  const told = form.told.value.get(keyOf(way)) ?? [];
  if (told.length === 0) return null;
  return (
    <div class="notes" id={notesId(way)}>
      {told.map(({ severity, what, remedy }) => (
        <p class={severity} key={what}>
          <b>{severity === "error" ? "✗ " : "! "}</b>
          {inForm(ofEntry(`${what}; ${remedy}`, way))}
        </p>
      ))}
    </div>
  );
}

/** What a bare number is taken for, beside the name of its field. */
export function Unit({ form, way, schema }: Pick<PartProps, "form" | "way" | "schema">) {
  const unit = bareUnit(way, schema, form.units.value);
  if (unit === undefined) return null;
  if (unit === form.units.value && form.unitsOpen.value)
    return (
      <span class="unit" title="the job does not say its units yet">
        {" "}
        in or mm?
      </span>
    );
  return (
    <span class="unit" title={`a bare number is in ${unit}`}>
      {" "}
      {unit}
    </span>
  );
}

type Labelled = PartProps & { readonly children: ComponentChildren };

function Labelled({ form, way, schema, label, children }: Labelled) {
  return (
    <div class={isBad(form, way) ? "field bad" : "field"} data-way={keyOf(way)}>
      <label for={idOf(way)}>
        {label}
        <Unit form={form} way={way} schema={schema} />
      </label>
      {children}
      {schema.description && (
        <p class="about" id={`${idOf(way)}-about`}>
          {hint(schema.description, form.units.value)}
        </p>
      )}
      <Notes form={form} way={way} />
    </div>
  );
}

const described = (form: Form, way: Way, description: string | undefined): string | undefined =>
  [...(form.told.value.has(keyOf(way)) ? [notesId(way)] : []), ...(description ? [`${idOf(way)}-about`] : [])].join(
    " ",
  ) || undefined;

export function TextField(props: PartProps) {
  const { form, way, schema } = props;
  const wheels = form.handwheels.value;
  const key = way.at(-1);
  const list = key === "material" ? "materials" : key === "handwheel" && wheels.length > 0 ? "wheels" : undefined;
  return (
    <Labelled {...props}>
      <input
        id={idOf(way)}
        type="text"
        autocomplete="off"
        spellcheck={false}
        list={list}
        value={form.nodes.value.words(way)}
        placeholder={usualWords(form, way)}
        aria-invalid={isBad(form, way)}
        aria-describedby={described(form, way, schema.description)}
        onInput={(event) => type(form, way, event.currentTarget.value)}
      />
    </Labelled>
  );
}

export function ChoiceField(props: PartProps) {
  const { form, way, schema } = props;
  const now = form.nodes.value.words(way);
  const words = (schema.enum ?? []).filter((word) => word === now || form.offers(way, word));
  return (
    <Labelled {...props}>
      <select
        id={idOf(way)}
        value={now}
        aria-describedby={described(form, way, schema.description)}
        onChange={(event) => put(form, way, event.currentTarget.value)}
      >
        <option value="">{choiceWords(way, "")}</option>
        {now !== "" && !words.includes(now) && <option value={now}>{now}</option>}
        {words.map((word) => (
          <option value={word} key={word}>
            {choiceWords(way, word)}
          </option>
        ))}
      </select>
    </Labelled>
  );
}

export function TickField(props: PartProps) {
  const { form, way, schema } = props;
  const now = form.nodes.value.value(way);
  return (
    <Labelled {...props}>
      <select
        id={idOf(way)}
        value={now === undefined ? "" : String(now)}
        aria-describedby={described(form, way, schema.description)}
        onChange={({ currentTarget: { value } }) =>
          value === "" ? takeOut(form, way) : put(form, way, value === "true")
        }
      >
        <option value="">left out</option>
        <option value="true">yes</option>
        <option value="false">no</option>
      </select>
    </Labelled>
  );
}

export const labelOf = (step: string | number): string =>
  typeof step === "number" ? String(step + 1) : inWords(step).replace(/^./, (letter) => letter.toUpperCase());
