import { useSignal } from "@preact/signals";
import { useEffect, useRef } from "preact/hooks";
import { type Desk, layInstead, putBack } from "./desk.js";
import type { Keeping } from "./keep.js";
import { Unused } from "./Unused.js";
import type { View } from "./view.js";

type NoticesProps = { readonly desk: Desk; readonly keeping: Keeping; readonly view: View };

/** What is to be said of the desk as a whole: it stays in view, however far one has scrolled. */
export function Notices({ desk, keeping, view }: NoticesProps) {
  const again = useSignal(keeping.another);
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => keepClear(place.current), []);
  return (
    <div class="notices" role="status" ref={place}>
      {[...desk.asker.troubles.value].map(([name, words]) => (
        <p key={name}>{words}</p>
      ))}
      {desk.refused.value.length > 0 && (
        <p>
          {desk.refused.value.join(" ")}{" "}
          <button type="button" onClick={() => (desk.refused.value = [])}>
            understood
          </button>
        </p>
      )}
      <Unused desk={desk} view={view} />
      {desk.takenOff.value.map((document) => (
        <p key={document.name.value}>
          “{document.name.value}” was taken off the desk, and waits beside it until this page is closed.{" "}
          <button type="button" onClick={() => putBack(desk, document)}>
            put it back
          </button>
        </p>
      ))}
      {again.value && (
        <p>
          This page stands as you left it in this browser, not as it came.{" "}
          <button
            type="button"
            onClick={() => {
              again.value = false;
              layInstead(desk, keeping.brought);
            }}
          >
            back to the file as it came
          </button>{" "}
          <button type="button" onClick={() => (again.value = false)}>
            go on with this
          </button>
        </p>
      )}
      {keeping.refused.value !== undefined && (
        <p>This browser keeps nothing ({keeping.refused.value}): take your files away before you close the page.</p>
      )}
      {keeping.elsewhere.value !== undefined && (
        <p>
          Another tab has changed these files. Until you choose which of the two goes on, nothing that is typed here is
          kept in this browser.{" "}
          <button
            type="button"
            onClick={() => {
              const theirs = keeping.elsewhere.peek();
              keeping.elsewhere.value = undefined;
              if (theirs) layInstead(desk, theirs);
            }}
          >
            take what it has
          </button>{" "}
          <button type="button" onClick={keeping.keepOurs}>
            keep what is here, in place of the other
          </button>
        </p>
      )}
    </div>
  );
}

/** Tells the style how much of the screen's top the notices take, and moves what is being filled in out from under them: there it is typed
 *  into unseen. */
function keepClear(notices: HTMLElement | null): () => void {
  if (notices === null) return () => undefined;
  const { style } = document.documentElement;
  const seen = new ResizeObserver(() => {
    const noted = notices.offsetHeight;
    const rule = document.querySelector<HTMLElement>(".rule");
    // Where the desk is narrow the rule lies across, below them.
    const strip = rule && rule.offsetHeight < innerHeight / 2 && getComputedStyle(rule).position === "sticky";
    const covered = noted === 0 ? 0 : noted + (strip ? rule.offsetHeight : 0);
    style.setProperty("--noted", `${noted}px`);
    style.setProperty("--covered", `${covered}px`);
    const field = document.activeElement;
    if (noted > 0 && field?.closest(".work, .paper")) field.scrollIntoView({ block: "nearest" });
  });
  seen.observe(notices);
  return () => seen.disconnect();
}
