import { useSignal } from "@preact/signals";
import type { Way } from "../../file/edit.js";
import { itemOf, kindFor, kindOf, scalar } from "../../schema.js";
import { forgetAside } from "./aside.js";
import { isBad, Notes, notesId, Unit } from "./Field.js";
import { Fields } from "./Fields.js";
import { type Form, idOf, keyOf, type PartProps, takeOut, type } from "./form.js";
import { hint } from "./hint.js";
import { isOrdered, Order } from "./Order.js";
import { AT_ONCE, Pieces, show } from "./Pieces.js";
import { focusOn } from "./places.js";
import { nameAt, singular } from "./placeWords.js";
import { entryWords } from "./saying.js";

/** A list: single values side by side, records one below the other, each to be taken out again. */
export function ListPart({ form, way, schema, label }: PartProps) {
  const { Part } = form;
  const nodes = form.nodes.value;
  const items = nodes.value(way);
  const count = Array.isArray(items) ? items.length : 0;
  const fixed = schema.prefixItems?.length;
  // An entry that was asked for stands in the form alone until something is typed into it.
  const begun = useSignal<number | undefined>(undefined);
  const shown = fixed ?? (begun.value === count ? count + 1 : count);
  const one = singular(String(way.findLast((step) => typeof step === "string") ?? "entry"));
  const single = scalar(itemOf(schema, 0));
  return (
    <fieldset data-way={keyOf(way)} id={idOf(way)} class={single ? "row" : "list"}>
      <legend>
        {label}
        {single && <Unit form={form} way={[...way, 0]} schema={itemOf(schema, 0)} />}
      </legend>
      {schema.description && <p class="about">{hint(schema.description, form.units.value)}</p>}
      <Notes form={form} way={way} />
      <Pieces form={form} way={way} count={shown} size={single ? AT_ONCE.values : AT_ONCE.records}>
        {(index) => {
          const at = [...way, index];
          const item = itemOf(schema, index);
          const out = () => {
            begun.value = undefined;
            if (index < count) takeOut(form, at);
            if (!single) forgetAside(form.document);
          };
          if (single)
            return (
              <Single
                form={form}
                way={at}
                key={index}
                label={`${label} ${index + 1}`}
                words={fixed === undefined ? undefined : entryWords(way, index)}
                onOut={fixed ? undefined : out}
              />
            );
          return (
            <section class="item" key={index} data-way={keyOf(at)}>
              <h3>{headOf(index, nameAt(nodes, at))}</h3>
              {isOrdered(way) && index < count && (
                <Order form={form} list={way} index={index} count={count} one={one} />
              )}
              <Notes form={form} way={at} />
              {kindOf(kindFor(item, nodes.value(at))) === "record" ? (
                <Fields form={form} way={at} schema={kindFor(item, nodes.value(at))} />
              ) : (
                <Part form={form} way={at} schema={item} label={`${one} ${index + 1}`} />
              )}
              <button type="button" class="out" onClick={out} aria-label={`Take out ${one} ${index + 1}`}>
                take out
              </button>
            </section>
          );
        }}
      </Pieces>
      {fixed !== undefined && single && count > 0 && (
        <button type="button" class="out" aria-label={`Take out ${label}`} onClick={() => takeOut(form, way)}>
          take out
        </button>
      )}
      {fixed === undefined && (
        <button
          type="button"
          class="add"
          onClick={() => {
            begun.value = count;
            show(form, [...way, count]);
            requestAnimationFrame(() => focusOn([...way, count]));
          }}
        >
          + {one}
        </button>
      )}
    </fieldset>
  );
}

type SingleProps = {
  readonly form: Form;
  readonly way: Way;
  readonly label: string;
  /** What stands beside it. */
  readonly words: string | undefined;
  /** None where it cannot go without the others. */
  readonly onOut: (() => void) | undefined;
};

function Single({ form, way, label, words: beside, onOut }: SingleProps) {
  const words = form.nodes.value.words(way);
  return (
    <span class="single" data-way={keyOf(way)}>
      {beside && <label for={idOf(way)}>{beside}</label>}
      <input
        type="text"
        id={idOf(way)}
        aria-label={beside ? undefined : label}
        autocomplete="off"
        // As wide as what it holds: a name cut short is another name.
        size={Math.max(6, words.length)}
        value={words}
        aria-invalid={isBad(form, way)}
        aria-describedby={form.told.value.has(keyOf(way)) ? notesId(way) : undefined}
        onInput={(event) => type(form, way, event.currentTarget.value, true)}
      />
      {onOut && (
        <button type="button" aria-label={`Take out ${label}`} onClick={onOut}>
          ×
        </button>
      )}
      <Notes form={form} way={way} />
    </span>
  );
}

/** Its place and its name; where it is called by its place, as steps of a belt are, once. */
const headOf = (index: number, name: string): string => (name === `${index + 1}` ? name : `${index + 1} ${name}`);
