import { useMemo } from "preact/hooks";
import { type Desk, unitOf } from "../desk.js";
import { newest, useStopped } from "../worker.js";
import { useAsked } from "./asked.js";
import type { Explaining } from "./Explain.js";
import { Choice, chosenOf, Typed } from "./fields.js";
import { Said } from "./Said.js";

/** A material and a diameter: which position. */
export function WhereBelt({ desk, explaining }: { readonly desk: Desk; readonly explaining: Explaining }) {
  const material = useAsked(desk, "material");
  const operation = useAsked(desk, "operation");
  const diameter = useAsked(desk, "diameter");
  const asking = useMemo(() => {
    const choices = newest(desk.asker, "choices", () => ({ files: desk.files.value, asked: {} }));
    const speed = newest(desk.asker, "speed", () => {
      const offered = choices.answer.value;
      if (diameter.value === "" || offered === undefined) return undefined;
      const asked = {
        material: chosenOf(material.value, offered.materials),
        operation: chosenOf(operation.value, offered.operations),
        diameter: diameter.value,
      };
      return { files: desk.files.value, asked };
    });
    return { choices, speed };
  }, [desk]);
  useStopped(asking);
  const offered = asking.choices.answer.value;
  return (
    <section class="card" aria-labelledby="where">
      <h2 id="where">Where does the belt go?</h2>
      <Choice id="operation" label="What" value={operation} of={offered?.operations ?? []} />
      <Choice id="material" label="Material" value={material} of={offered?.materials ?? []} />
      <Typed
        id="diameter"
        label="Diameter"
        unit={unitOf(desk)}
        value={diameter}
        words={offered?.holes.includes(chosenOf(operation.value, offered.operations)) ?? false}
      />
      {diameter.value !== "" && <Said answer={asking.speed.answer.value} explaining={explaining} />}
    </section>
  );
}
