import { type Signal, useComputed, useSignal } from "@preact/signals";
import { useMemo } from "preact/hooks";
import type { Answered } from "../work/protocol.js";
import type { Desk } from "./desk.js";
import { newest, useStopped } from "./worker.js";

/** Two questions asked at the machine: where does the belt go, and how far do I turn? */
export function AskView({ desk }: { readonly desk: Desk }) {
  const material = useSignal("");
  const operation = useSignal("turning");
  const diameter = useSignal("");
  const wheel = useSignal("");
  const distance = useSignal("");
  const asking = useMemo(() => {
    const files = () => desk.files.value;
    return {
      choices: newest(desk.asker, "choices", () => ({ files: files(), asked: {} })),
      speed: newest(desk.asker, "speed", () =>
        diameter.value === ""
          ? undefined
          : {
              files: files(),
              asked: { material: material.value, operation: operation.value, diameter: diameter.value },
            },
      ),
      turns: newest(desk.asker, "distance", () =>
        distance.value === ""
          ? undefined
          : {
              files: files(),
              asked: { wheel: wheel.value || (desk.handwheels.value[0] ?? ""), distance: distance.value },
            },
      ),
    };
  }, [desk]);
  useStopped(asking);
  const materials = useComputed(() => asking.choices.answer.value?.materials ?? []);
  if (material.value === "" && materials.value[0] !== undefined) material.value = materials.value[0];
  return (
    <section class="asking" aria-label="Ask">
      <div class="card">
        <h2>Where does the belt go?</h2>
        <Choice id="operation" label="What" value={operation} of={asking.choices.answer.value?.operations ?? []} />
        <Choice id="material" label="Material" value={material} of={materials.value} />
        <Typed id="diameter" label="Diameter" value={diameter} />
        {diameter.value !== "" && <Said answer={asking.speed.answer.value} />}
      </div>
      <div class="card">
        <h2>How far do I turn?</h2>
        <Choice id="askedWheel" label="Handwheel" value={wheel} of={desk.handwheels.value} />
        <Typed id="askedDistance" label="On the dial" value={distance} />
        {distance.value !== "" && <Said answer={asking.turns.answer.value} />}
      </div>
    </section>
  );
}

function Said({ answer }: { readonly answer: Answered | undefined }) {
  const [first, ...others] = answer?.said ?? [];
  return (
    <div class="said" role="status">
      <p class="big">{first}</p>
      {others.map((words) => (
        <p key={words}>{words}</p>
      ))}
      {answer !== undefined && answer.working.length > 0 && (
        <details>
          <summary>how it came about</summary>
          {answer.working.map((words) => (
            <p key={words}>{words}</p>
          ))}
        </details>
      )}
    </div>
  );
}

type ChoiceProps = {
  readonly id: string;
  readonly label: string;
  readonly value: Signal<string>;
  readonly of: readonly string[];
};

function Choice({ id, label, value, of }: ChoiceProps) {
  return (
    <p class="field">
      <label for={id}>{label}</label>
      <select id={id} value={value.value} onChange={(event) => (value.value = event.currentTarget.value)}>
        {of.map((one) => (
          <option key={one}>{one}</option>
        ))}
      </select>
    </p>
  );
}

function Typed({ id, label, value }: Omit<ChoiceProps, "of">) {
  return (
    <p class="field">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="text"
        inputMode="decimal"
        autocomplete="off"
        value={value.value}
        onInput={(event) => (value.value = event.currentTarget.value)}
      />
    </p>
  );
}
