import type { Signal } from "@preact/signals";

export type Option = { readonly value: string; readonly words: string };

type ChoiceProps = {
  readonly id: string;
  readonly label: string;
  readonly value: Signal<string>;
  readonly of: readonly (string | Option)[];
};

/** One of several. What is chosen but no longer offered counts as the first that is, as the browser shows it. */
export function Choice({ id, label, value, of }: ChoiceProps) {
  const options = of.map((one) => (typeof one === "string" ? { value: one, words: one } : one));
  return (
    <p class="field">
      <label for={id}>{label}</label>
      <select
        id={id}
        value={chosenOf(
          value.value,
          options.map((one) => one.value),
        )}
        onChange={(event) => (value.value = event.currentTarget.value)}
      >
        {options.map((one) => (
          <option key={one.value} value={one.value}>
            {one.words}
          </option>
        ))}
      </select>
    </p>
  );
}

/** What a choice shows, whatever was chosen before its list changed. */
export const chosenOf = (value: string, offered: readonly string[]): string =>
  offered.includes(value) ? value : (offered[0] ?? "");

type TypedProps = {
  readonly id: string;
  readonly label: string;
  readonly value: Signal<string>;
  /** What stands beneath it. */
  readonly about?: string | undefined;
  readonly unit?: string | undefined;
  /** Letters, not figures alone. */
  readonly words?: boolean;
  /** Why what stands in it has no answer. */
  readonly refused?: string | undefined;
};

export function Typed({ id, label, value, about, unit, words = false, refused }: TypedProps) {
  return (
    <div class={refused === undefined ? "field" : "field bad"}>
      <label for={id}>{label}</label>
      <span class="typed">
        <input
          id={id}
          type="text"
          inputMode={words ? "text" : "decimal"}
          autocomplete="off"
          aria-describedby={`${id}-about`}
          aria-invalid={refused !== undefined}
          value={value.value}
          onInput={(event) => (value.value = event.currentTarget.value)}
        />
        {unit !== undefined && <span class="unit">{unit}</span>}
      </span>
      <div id={`${id}-about`} class="notes">
        {refused !== undefined && <p class="error">{refused}</p>}
        {about !== undefined && refused === undefined && <span class="about">{about}</span>}
      </div>
    </div>
  );
}
