import { type Signal, useComputed } from "@preact/signals";
import { useMemo, useRef } from "preact/hooks";
import type { Desk } from "../desk.js";
import { inPage } from "../inPage.js";
import { newest, useStopped } from "../worker.js";
import { useAsked } from "./asked.js";
import { Choice } from "./fields.js";
import { Parts } from "./Parts.js";

/** Which number's working is shown. */
export type Explaining = {
  readonly quantity: Signal<string>;
  readonly of: Signal<string>;
  readonly heading: { readonly current: HTMLHeadingElement | null };
  readonly show: (quantity: string, of: string) => void;
};

export function useExplaining(desk: Desk): Explaining {
  const quantity = useAsked(desk, "quantity");
  const of = useAsked(desk, "of");
  const heading = useRef<HTMLHeadingElement>(null);
  return {
    ...{ quantity, of, heading },
    show(what, whose) {
      quantity.value = what;
      of.value = whose;
      heading.current?.focus();
      heading.current?.scrollIntoView({ block: "start" });
    },
  };
}

/** The formula, what was put in, where each came from. */
export function Explain({ desk, explaining }: { readonly desk: Desk; readonly explaining: Explaining }) {
  const { quantity, of, heading } = explaining;
  const asking = useMemo(() => {
    const all = newest(desk.asker, "explainable", () => ({ files: desk.files.value, asked: {} }));
    const explained = newest(desk.asker, "explain", () => {
      const one = all.answer.value?.find(({ name }) => name === quantity.value);
      if (one === undefined) return undefined;
      const whose = one.subjects.includes(of.value) ? { of: of.value } : {};
      return { files: desk.files.value, asked: { quantity: one.name, ...whose } };
    });
    return { all, explained };
  }, [desk]);
  useStopped(asking);
  const offered = useComputed(() => asking.all.answer.value ?? []);
  const one = offered.value.find(({ name }) => name === quantity.value);
  const answer = asking.explained.answer.value;
  return (
    <section class="card wide" aria-labelledby="worked-out">
      <h2 id="worked-out" tabIndex={-1} ref={heading}>
        How was this worked out?
      </h2>
      <p class="about">Every number on the sheets has its formula, and what was put in has its line in the file.</p>
      <div class="pair">
        <Choice
          id="quantity"
          label="Number"
          value={quantity}
          of={[
            { value: "", words: "choose" },
            ...offered.value.map(({ name, about, subjects }) => ({
              value: name,
              words: `${name}: ${about}${subjects.length === 0 ? " (nothing in this file)" : ""}`,
            })),
          ]}
        />
        {one !== undefined && one.subjects.length > 0 && (
          <Choice
            id="of"
            label="Of"
            value={of}
            of={[...(one.subjects.length > 1 ? [{ value: "", words: "all of them" }] : []), ...one.subjects]}
          />
        )}
      </div>
      {one !== undefined && answer?.refused !== undefined && <p class="big">{inPage(answer.refused)}</p>}
      {one !== undefined && answer !== undefined && answer.parts.length > 0 && (
        <Parts parts={answer.parts} label={`${one.name}, worked out`} />
      )}
    </section>
  );
}
