import { add, type Desk, isBeginning } from "../desk.js";
import { beginnings } from "./texts.js";

/** What an empty file may begin with. */
export function Beginning({ desk }: { readonly desk: Desk }) {
  const { machine } = desk;
  if (!isBeginning(machine.value.text.value)) return null;
  const lay = (text: string): void => void add(desk, "machine", machine.peek().name.peek(), text);
  return (
    <fieldset class="begin" aria-label="Begin with">
      <span>
        Nothing stands here yet. Type a name below: with it alone the measuring form can be printed, to take to the
        machine. Or begin with
      </span>
      <button type="button" class="add" onClick={() => lay(beginnings().machine)}>
        a file with a remark at every key
      </button>
      <button
        type="button"
        class="add"
        onClick={() => {
          const { example } = beginnings();
          lay(example.machine);
          add(desk, "job", "deck-pin.yaml", example.job);
        }}
      >
        an example: a whole machine, and a job on it
      </button>
    </fieldset>
  );
}
