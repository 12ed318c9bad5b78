import { useMemo } from "preact/hooks";
import type { Desk } from "../desk.js";
import { inPage } from "../inPage.js";
import { newest, useStopped } from "../worker.js";
import { useAsked } from "./asked.js";
import { Typed } from "./fields.js";
import { Parts } from "./Parts.js";

/** Speeds with another motor, belt or pulley; the file stays as it is. */
export function Suppose({ desk }: { readonly desk: Desk }) {
  const changes = useAsked(desk, "change");
  const asking = useMemo(() => {
    const wishes = newest(desk.asker, "wishes", () => ({ files: desk.files.value, asked: {} }));
    const supposed = newest(desk.asker, "suppose", () => {
      const all = wishesIn(changes.value);
      return all.length === 0 ? undefined : { files: desk.files.value, asked: { wishes: all } };
    });
    return { wishes, supposed };
  }, [desk]);
  useStopped(asking);
  const offered = asking.wishes.answer.value ?? [];
  const answer = wishesIn(changes.value).length === 0 ? undefined : asking.supposed.answer.value;
  return (
    <section class="card wide" aria-labelledby="supposed">
      <h2 id="supposed">What if another motor, belt or pulley?</h2>
      <p class="about">All speeds before and after. The file stays as it is.</p>
      <div class="pair">
        <Typed
          id="change"
          label="Change"
          words
          value={changes}
          about="Several: a semicolon between them."
          refused={answer?.refused && inPage(answer.refused)}
        />
        <p class="field">
          <label for="wish">Of this machine</label>
          <select
            id="wish"
            value=""
            onChange={({ currentTarget }) => {
              changes.value = [...wishesIn(changes.value), currentTarget.value].join("; ");
              currentTarget.value = "";
              document.getElementById("change")?.focus();
            }}
          >
            <option value="">put one in, then alter its figures</option>
            {offered.map((one) => (
              <option key={one}>{one}</option>
            ))}
          </select>
        </p>
      </div>
      {answer !== undefined && answer.parts.length > 0 && <Parts parts={answer.parts} label="Before and after" />}
    </section>
  );
}

const wishesIn = (words: string): string[] =>
  words
    .split(";")
    .map((one) => one.trim())
    .filter((one) => one !== "");
