import { type Desk, putValues, remove } from "./desk.js";
import type { View } from "./view.js";

/** Tables of readings that no handwheel uses yet: each is put to use by a button. */
export function Unused({ desk, view }: { readonly desk: Desk; readonly view: View }) {
  const machine = desk.machine.value;
  const { value, words } = machine.nodes.value;
  const wheels = value(["handwheels"]);
  const unused = desk.documents.value.filter(
    ({ kind, name }) => kind === "readings" && !machine.text.value.includes(name.value),
  );
  const typedAt = (wheel: number): number => {
    const turns = value(["handwheels", wheel, "feed", "readings", "turns"]);
    return Array.isArray(turns) ? turns.length : 0;
  };
  const use = (name: string, wheel: number): void => {
    const feed = ["handwheels", wheel, "feed"];
    const parts = typeof value(feed) === "object";
    putValues(desk, parts ? [[...feed, "readings"], name] : [feed, { readings: name }]);
    view.to(machine, [...feed, "readings"]);
  };
  return (
    <>
      {unused.map((document) => (
        <p key={document.name.value}>
          “{document.name.value}” was taken for readings, and no handwheel uses it yet
          {Array.isArray(wheels) ? ": " : "; the machine has no handwheel yet, either. "}
          {Array.isArray(wheels) &&
            wheels.map((_, wheel) => (
              <button type="button" key={wheel} onClick={() => use(document.name.peek(), wheel)}>
                use it for {words(["handwheels", wheel, "name"]) || `handwheel ${wheel + 1}`}
                {typedAt(wheel) > 0 && `, in the place of its ${typedAt(wheel)} typed readings`}
              </button>
            ))}{" "}
          <button type="button" onClick={() => remove(desk, document)}>
            take it off the desk
          </button>
        </p>
      ))}
    </>
  );
}
