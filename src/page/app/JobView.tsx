import { useMemo } from "preact/hooks";
import { jobSchema } from "../schema.js";
import { beginnings } from "./begin/texts.js";
import { add, type Desk, freeName, remove } from "./desk.js";
import { FileView } from "./FileView.js";
import { Fields } from "./form/Fields.js";
import type { View } from "./view.js";
import { newest, useStopped } from "./worker.js";

/** Jobs of this machine, each a file of its own; one of them lies open. */
export function JobView({ desk, view }: { readonly desk: Desk; readonly view: View }) {
  const jobs = desk.documents.value.filter(({ kind }) => kind === "job");
  const open = desk.job.value;
  const fresh = (text: string) => {
    const free = jobs.map((_, at) => `job-${at + 1}.yaml`).find((name) => freeName(desk, name) === name);
    desk.openJob(add(desk, "job", free ?? freeName(desk, `job-${jobs.length + 1}.yaml`), text));
  };
  // What one leaves out is millimetres: on an inch machine that is to be said.
  const units = desk.machine.value.nodes.value.words(["units"]) === "in" ? "units: in\n" : "";
  const isDrill = desk.machine.value.nodes.value.words(["kind"]) === "drill";
  const asking = useMemo(
    () => ({ choices: newest(desk.asker, "choices", () => ({ files: desk.files.value, asked: {} })) }),
    [desk],
  );
  useStopped(asking);
  return (
    <>
      <datalist id="materials">
        {asking.choices.answer.value?.materials.map((name) => (
          <option key={name} value={name} />
        ))}
      </datalist>
      {jobs.length > 1 && (
        <fieldset class="bare" aria-label="Which job lies open">
          {jobs.map((document) => (
            <button
              type="button"
              key={document.name.value}
              aria-pressed={document === open}
              onClick={() => desk.openJob(document)}
            >
              {document.name.value}
            </button>
          ))}
        </fieldset>
      )}
      {open && (
        <section key={open}>
          <FileView desk={desk} view={view} document={open} root={jobSchema}>
            {(form) => <Fields form={form} way={[]} schema={jobSchema} />}
          </FileView>
          <button type="button" class="out" onClick={() => remove(desk, open)}>
            take {open.name.value} off the desk
          </button>
        </section>
      )}
      <button type="button" class="add" onClick={() => fresh(`name: \n${units}material: \nsteps:\n`)}>
        + job
      </button>
      <button type="button" class="add" onClick={() => fresh(isDrill ? beginnings().drillingJob : beginnings().job)}>
        + job with a remark at every key
      </button>
    </>
  );
}
