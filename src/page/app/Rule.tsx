import { useComputed, useSignal } from "@preact/signals";
import { useEffect, useRef } from "preact/hooks";
import { placesOf } from "../file/nodes.js";
import type { Desk } from "./desk.js";
import { places, stationOf, stations } from "./stations.js";
import type { View } from "./view.js";

/** The stations at which something is wrong. */
function faultyStations({ told, documents }: Desk): ReadonlySet<string> {
  const found = new Set<string>();
  for (const one of told.value) {
    const document = documents.value.find(({ name }) => name.value === one.file);
    if (one.severity !== "error" || document === undefined) continue;
    if (document.kind === "machine") found.add(stationOf(placesOf(one, document.nodes.value)).name);
    else found.add(document.kind === "sheet" ? "Own sheets" : document.kind === "job" ? "Job" : "Handwheels");
  }
  return found;
}

/** The way through the work as a graduated rule: the stations of the file are its long marks, the places to look at it its end. Where the
 *  desk is narrow only a length of it is seen, which is unfolded to the whole. */
export function Rule({ desk, view }: { readonly desk: Desk; readonly view: View }) {
  const faulty = useComputed(() => faultyStations(desk));
  const unfolded = useSignal(false);
  const strip = useRef<HTMLOListElement>(null);
  const at = view.at.value;
  useEffect(() => {
    const all = strip.current;
    const here = all?.querySelector<HTMLElement>("[aria-current]")?.closest("li");
    // Only the strip moves: a page that jumped to it would lose its place. As much of what is before it is seen as its name leaves room for.
    if (all && here)
      all.scrollLeft = here.offsetLeft - Math.max(0, Math.min(all.clientWidth / 3, all.clientWidth - here.offsetWidth));
  }, [at, unfolded.value]);
  const stop = (name: string, rank: string) => (
    <li key={name} class={faulty.value.has(name) ? `${rank} faulty` : rank}>
      <button
        type="button"
        aria-current={at === name ? "step" : undefined}
        title={faulty.value.has(name) ? "something to mend here" : undefined}
        onClick={() => {
          unfolded.value = false;
          view.go(name);
        }}
      >
        {name}
      </button>
    </li>
  );
  return (
    <nav class={unfolded.value ? "rule unfolded" : "rule"} aria-label="The way through the work">
      <ol ref={strip} id="rule">
        {stations.map(({ name }) => stop(name, "station"))}
        {places.map((name) => stop(name, "place"))}
      </ol>
      <button
        type="button"
        class="fold"
        aria-expanded={unfolded.value}
        aria-controls="rule"
        onClick={() => (unfolded.value = !unfolded.value)}
      >
        {unfolded.value ? "fold" : `all ${stations.length + places.length}`}
      </button>
    </nav>
  );
}
