import { useSignal } from "@preact/signals";
import type { PageFormat } from "../work/protocol.js";
import { type Desk, keptOf } from "./desk.js";
import { hand } from "./hand.js";
import type { Keeping } from "./keep.js";

/** Everything that one carries off: sheets to print, the files themselves. */
export function TakeAway({ desk, keeping }: { readonly desk: Desk; readonly keeping: Keeping }) {
  const busy = useSignal(false);
  const told = useSignal<readonly string[]>([]);
  const picked = useSignal<readonly string[]>([]);
  const format = useSignal<PageFormat>("pdf");
  const print = async (bound: boolean, all: boolean): Promise<void> => {
    busy.value = true;
    told.value = [];
    try {
      const sheets = all ? {} : { sheets: picked.value };
      const asked = { ...sheets, bound, format: bound ? "pdf" : format.value } as const;
      const { files, why } = await desk.asker.ask("print", desk.files.peek(), asked);
      hand(files, stemOf(desk));
      told.value = [`${files.length} ${files.length === 1 ? "file" : "files"} made.`, ...why];
    } catch (fault) {
      told.value = [fault instanceof Error ? fault.message : String(fault)];
    }
    busy.value = false;
  };
  return (
    <section class="taking" aria-label="Take away">
      <div class="card">
        <h2>Sheets</h2>
        <p class="about">Print at 100 %, never “fit to page”. What is not ready says what it lacks.</p>
        <ul class="sheets">
          {desk.sheets.value.map(({ name, title, why, onRequest }) => (
            <li key={name} class={onRequest ? "request" : undefined}>
              <label>
                <input
                  type="checkbox"
                  value={name}
                  disabled={why !== undefined}
                  checked={picked.value.includes(name)}
                  onChange={({ currentTarget: { checked } }) => {
                    picked.value = checked ? [...picked.value, name] : picked.value.filter((one) => one !== name);
                  }}
                />
                {title}
              </label>
              {why !== undefined && <span class="about"> {why}</span>}
            </li>
          ))}
        </ul>
        <p>
          <label for="format">As</label>{" "}
          <select
            id="format"
            value={format.value}
            onChange={(event) => (format.value = event.currentTarget.value as PageFormat)}
          >
            <option value="pdf">PDF, to print</option>
            <option value="svg">SVG, a file a page</option>
            <option value="dxf">DXF, a file a page</option>
          </select>{" "}
          <button type="button" disabled={busy.value || picked.value.length === 0} onClick={() => print(false, false)}>
            take the ticked ones
          </button>{" "}
          <button
            type="button"
            class="chief"
            disabled={busy.value || !desk.sound.value}
            onClick={() => print(true, true)}
          >
            take all, bound in one PDF
          </button>
        </p>
        <div role="status">
          {told.value.map((words) => (
            <p key={words}>{words}</p>
          ))}
        </div>
      </div>
      <div class="card">
        <h2>Files</h2>
        <p class="about">They are yours: plain text, the same that the command line reads.</p>
        <ul>
          {desk.documents.value.map((document) => (
            <li key={document.name.value}>
              <button
                type="button"
                onClick={() => {
                  hand([{ name: document.name.peek(), bytes: document.text.peek() }], "");
                  if (keptOf(desk).length === 1) keeping.takenAway();
                }}
              >
                {document.name.value}
              </button>
            </li>
          ))}
        </ul>
        <button
          type="button"
          onClick={() => {
            const files = desk.documents.peek().map(({ name, text }) => ({ name: name.peek(), bytes: text.peek() }));
            hand(files, stemOf(desk));
            keeping.takenAway();
          }}
        >
          take all files
        </button>
      </div>
    </section>
  );
}

/** What the files of a machine are called together. */
const stemOf = (desk: Desk): string =>
  desk.machine
    .peek()
    .name.peek()
    .replace(/\.[^.]*$/, "");
