import { MOST } from "../../../machine/bounds.js";
import { usualLabel } from "../../../machine/stepLabel.js";
import type { Way } from "../../file/edit.js";
import type { Nodes } from "../../file/nodes.js";
import { plainAt } from "./aside.js";
import { Notes } from "./Field.js";
import { type Form, idOf, keyOf, put } from "./form.js";

/** Where the belts lay: one of the positions that the machine has, which nobody has to spell. */
export function PositionPart({ form, way }: { readonly form: Form; readonly way: Way }) {
  const nodes = form.nodes.value;
  const said = nodes.value(way) === undefined ? [] : [plainAt(nodes, way)].flat().map(String);
  const all = positionsIn(nodes);
  const at = all.findIndex((one) => keyOf(one) === keyOf(said));
  return (
    <div class="field" data-way={keyOf(way)}>
      <label for={idOf(way)}>Position</label>
      <select
        id={idOf(way)}
        value={at < 0 ? "" : String(at)}
        onChange={({ currentTarget: { value } }) => {
          const labels = all[Number(value)] ?? [];
          if (value !== "") put(form, way, labels.length === 1 ? (labels[0] ?? "") : labels);
        }}
      >
        {at < 0 && (
          <option value="">{said.length > 0 ? `${wordsOf(said)}: no position of this drive` : "choose"}</option>
        )}
        {all.map((labels, index) => (
          <option key={keyOf(labels)} value={String(index)}>
            {wordsOf(labels)}
          </option>
        ))}
      </select>
      <p class="about">Where the belts and gears were, by the names of their steps</p>
      <Notes form={form} way={way} />
    </div>
  );
}

const wordsOf = (labels: readonly string[]): string => labels.join(" · ");

/** One label of each stage that offers a choice, the motor's speeds first. */
function positionsIn({ value, words }: Nodes): string[][] {
  const entries = (way: Way) => [value(way)].flat().flatMap((there, at) => (there === undefined ? [] : [[...way, at]]));
  const speeds = entries(["drive", "motor", "speeds"]).map(words);
  const stages = entries(["drive", "stages"]).map((stage) => {
    const steps = entries([...stage, "steps"]);
    return steps.map((step, at) => words([...step, "label"]) || usualLabel(at, steps.length));
  });
  return [speeds, ...stages]
    .filter((labels) => labels.length > 1)
    .reduce<string[][]>((so, labels) => so.flatMap((one) => labels.map((label) => [...one, label])), [[]])
    .filter((one) => one.length > 0)
    .slice(0, MOST.positions);
}
