import type { Way } from "../../file/edit.js";
import type { Schema } from "../../schema.js";
import { labelOf, Notes } from "./Field.js";
import { type Form, isOpened, keyOf, setOpened, takeOut } from "./form.js";
import { focusOn } from "./places.js";
import { placeWords } from "./placeWords.js";

type FieldsProps = {
  readonly form: Form;
  readonly way: Way;
  readonly schema: Schema;
  /** Only these of its keys. */
  readonly only?: readonly string[];
  /** However few they are, what is not there yet stands behind its name. */
  readonly closed?: boolean;
};

/** Every part of a record: what must be there or is there, then what may be added, each behind its name. */
export function Fields({ form, way, schema, only, closed = false }: FieldsProps) {
  const nodes = form.nodes.value;
  const takes = form.takes(way);
  const told = (key: string): boolean => form.told.value.has(keyOf([...way, key]));
  const entries = Object.entries(schema.properties ?? {})
    .filter(
      ([key]) =>
        (only === undefined || only.includes(key)) &&
        (takes === undefined ||
          [...takes.needs, ...takes.may].includes(key) ||
          nodes.value([...way, key]) !== undefined),
    )
    .map(([key, one]): [string, Schema] => [key, form.asked([...way, key], one)]);
  const { Part } = form;
  const shown = entries.filter(
    ([key]) =>
      (entries.length <= MANY && !closed) ||
      (takes?.needs ?? schema.required)?.includes(key) ||
      told(key) ||
      isOpened(form, [...way, key]) ||
      form.asksFor([...way, key]) ||
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
            open={form.asksFor([...way, key])}
            key={key}
          />
        );
      })}
      {only === undefined && <Unknown form={form} way={way} schema={schema} />}
      {hidden.length > 0 && (
        <p class="more">
          <span>{way.length === 0 ? "May" : `${capital(placeWords(way, nodes))} may`} also say:</span>{" "}
          {hidden.map(([key, one]) => (
            <button
              type="button"
              key={key}
              title={one.description}
              aria-label={way.length === 0 ? undefined : `+ ${labelOf(key).toLowerCase()} of ${placeWords(way, nodes)}`}
              onClick={() => {
                setOpened(form, [...way, key], true);
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

/** Keys that stand there and mean nothing to the program: told of, and to be taken out. */
export function Unknown({ form, way, schema }: Omit<FieldsProps, "only" | "closed">) {
  const there = form.nodes.value.value(way);
  const known = schema.properties;
  if (known === undefined || typeof there !== "object" || there === null || Array.isArray(there)) return null;
  return (
    <>
      {Object.keys(there)
        .filter((key) => !Object.hasOwn(known, key))
        .map((key) => (
          <div class="field bad" key={key} data-way={keyOf([...way, key])}>
            <b>“{key}”</b> {form.nodes.value.words([...way, key])}{" "}
            <button type="button" class="out" onClick={() => takeOut(form, [...way, key])}>
              take “{key}” out
            </button>
            <Notes form={form} way={[...way, key]} />
          </div>
        ))}
    </>
  );
}

const capital = (words: string): string => words.replace(/^./, (letter) => letter.toUpperCase());

/** With so few parts all of them stand open. */
const MANY = 5;
