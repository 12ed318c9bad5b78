import { useMemo } from "preact/hooks";
import { type Desk, unitAt } from "../desk.js";
import { newest, useStopped } from "../worker.js";
import { useAsked } from "./asked.js";
import type { Explaining } from "./Explain.js";
import { Choice, chosenOf, Typed } from "./fields.js";
import { Said } from "./Said.js";

/** A distance: turns, and what the dial then shows. */
export function HowFar({ desk, explaining }: { readonly desk: Desk; readonly explaining: Explaining }) {
  const wheel = useAsked(desk, "askedWheel");
  const distance = useAsked(desk, "askedDistance");
  const asking = useMemo(() => {
    const turns = newest(desk.asker, "distance", () =>
      distance.value === ""
        ? undefined
        : {
            files: desk.files.value,
            asked: { wheel: chosenOf(wheel.value, desk.handwheels.value), distance: distance.value },
          },
    );
    return { turns };
  }, [desk]);
  useStopped(asking);
  return (
    <section class="card" aria-labelledby="far">
      <h2 id="far">How far do I turn?</h2>
      <Choice id="askedWheel" label="Handwheel" value={wheel} of={desk.handwheels.value} />
      <Typed
        id="askedDistance"
        label="On the dial"
        value={distance}
        unit={unitAt(desk, chosenOf(wheel.value, desk.handwheels.value))}
      />
      {distance.value !== "" && <Said answer={asking.turns.answer.value} explaining={explaining} />}
    </section>
  );
}
