import { jobSchema } from "../schema.js";
import { beginnings } from "./begin/texts.js";
import { add, type Desk, remove } from "./desk.js";
import { FileView } from "./FileView.js";
import { Fields } from "./form/Fields.js";

/** Jobs of this machine, each a file of its own. */
export function JobView({ desk }: { readonly desk: Desk }) {
  const jobs = desk.documents.value.filter(({ kind }) => kind === "job");
  const fresh = (text: string) => {
    const taken = new Set(jobs.map(({ name }) => name.value));
    let n = 1;
    while (taken.has(`job-${n}.yaml`)) n++;
    add(desk, "job", `job-${n}.yaml`, text);
  };
  // What one leaves out is millimetres: on an inch machine that is to be said.
  const units = desk.machine.value.nodes.value.words(["units"]) === "in" ? "units: in\n" : "";
  return (
    <>
      {jobs.map((document) => (
        <section key={document.name.value}>
          <FileView desk={desk} document={document} root={jobSchema}>
            {(form) => <Fields form={form} way={[]} schema={jobSchema} />}
          </FileView>
          <button type="button" class="out" onClick={() => remove(desk, document)}>
            take {document.name.value} off the desk
          </button>
        </section>
      ))}
      <button type="button" class="add" onClick={() => fresh(`name: \n${units}material: \nsteps:\n`)}>
        + job
      </button>
      <button type="button" class="add" onClick={() => fresh(beginnings().job)}>
        + job with a remark at every key
      </button>
    </>
  );
}
