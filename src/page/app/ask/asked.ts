import { type Signal, signal } from "@preact/signals";
import { useMemo } from "preact/hooks";
import type { Desk } from "../desk.js";

const ofDesk = new WeakMap<Desk, Map<string, Signal<string>>>();

/** What was typed into a field here, or chosen in it: it stays while one looks at another place of the page, of each machine's file by
 *  itself. */
export function useAsked(desk: Desk, field: string): Signal<string> {
  const file = desk.machine.value.name.value;
  return useMemo(() => {
    const fields = ofDesk.get(desk) ?? new Map<string, Signal<string>>();
    ofDesk.set(desk, fields);
    const key = JSON.stringify([file, field]);
    const kept = fields.get(key) ?? signal("");
    fields.set(key, kept);
    return kept;
  }, [desk, file, field]);
}
