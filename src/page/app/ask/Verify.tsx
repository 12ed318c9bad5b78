import { useSignal } from "@preact/signals";
import { useMemo } from "preact/hooks";
import type { Desk } from "../desk.js";
import { newest, useStopped } from "../worker.js";
import { Choice, chosenOf, Typed } from "./fields.js";

/** A caliper laid on what was printed. */
export function Verify({ desk }: { readonly desk: Desk }) {
  const wheel = useSignal("");
  const measured = useSignal("");
  const by = useSignal("");
  const asking = useMemo(() => {
    const dials = newest(desk.asker, "measures", () => ({ files: desk.files.value, asked: {} }));
    const verdict = newest(desk.asker, "verify", () => {
      const handwheel = chosenOf(wheel.value, desk.handwheels.value);
      if (measured.value === "" || dials.answer.value === undefined) return undefined;
      const offered = waysOf(dials.answer.value, handwheel);
      const how = offered.length > 1 ? { by: chosenOf(by.value, offered) } : {};
      return { files: desk.files.value, asked: { handwheel, measured: measured.value, ...how } };
    });
    return { dials, verdict };
  }, [desk]);
  useStopped(asking);
  const dials = asking.dials.answer.value ?? [];
  const named = dials.find((one) => one.wheel === chosenOf(wheel.value, desk.handwheels.value));
  const measures = named?.measures ?? [];
  const units = desk.machine.value.nodes.value.words(["units"]) === "in" ? "in" : "mm";
  const answer = measured.value === "" ? undefined : asking.verdict.answer.value;
  return (
    <section class="card" aria-labelledby="right">
      <h2 id="right">Did the piece come out right?</h2>
      <p class="about">Cut it out, lay a caliper on it before the glue, and type what it says.</p>
      <Choice id="verifiedWheel" label="Handwheel" value={wheel} of={desk.handwheels.value} />
      {measures.length > 1 && (
        <Choice
          id="by"
          label="Measured"
          value={by}
          of={measures.map(({ by: how, what }) => ({ value: how, words: what }))}
        />
      )}
      <Typed
        id="measured"
        label="The caliper says"
        value={measured}
        unit={units}
        about={measures.length === 1 ? `Of ${measures[0]?.what}` : undefined}
        refused={answer?.refused}
      />
      {answer !== undefined && answer.lines.length > 0 && (
        <div class="said" role="status">
          {answer.lines.map((line) => (
            <p key={line} class={/^(Not g|G)ood enough/.test(line) ? "verdict" : undefined}>
              {line}
            </p>
          ))}
        </div>
      )}
    </section>
  );
}

const waysOf = (
  dials: readonly { readonly wheel: string; readonly measures: readonly { readonly by: string }[] }[],
  wheel: string,
): string[] => dials.find((one) => one.wheel === wheel)?.measures.map(({ by }) => by) ?? [];
