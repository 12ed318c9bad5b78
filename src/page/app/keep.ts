import { effect, type Signal, signal } from "@preact/signals";
import type { Kept } from "../inside.js";
import { type Desk, keptOf } from "./desk.js";

export type Keeping = {
  /** Why what is typed cannot be kept in this browser; undefined while it is. */
  readonly refused: Signal<string | undefined>;
  /** What another tab has written over ours; while it is not decided which of the two goes on, nothing typed here is kept. */
  readonly elsewhere: Signal<Kept | undefined>;
  /** What lies here goes on, and is written over the other tab's. */
  readonly keepOurs: () => void;
  /** Whether anything was typed since it was last taken away as files. */
  readonly unsaved: Signal<boolean>;
  readonly takenAway: () => void;
  /** The files that the page came with, and whether it was opened with others of them. */
  readonly brought: Kept;
  readonly another: boolean;
};

const DELAY = 250;

/** What was kept under a key, if it can be read. */
export function kept(key: string): Kept | undefined {
  try {
    const value: unknown = JSON.parse(localStorage.getItem(key) ?? "null");
    return Array.isArray(value) && value.every(isFile) ? value : undefined;
  } catch {
    return undefined;
  }
}

const isFile = (value: unknown): boolean =>
  typeof value === "object" &&
  value !== null &&
  ["kind", "name", "text"].every((key) => typeof (value as Record<string, unknown>)[key] === "string");

/** Keeps what lies on the desk in this browser, soon after each change and when the page goes. */
export function keep(desk: Desk, key: string, brought: Kept): Keeping {
  const refused = signal<string | undefined>(undefined);
  const elsewhere = signal<Kept | undefined>(undefined);
  const unsaved = signal(false);
  let written = JSON.stringify(keptOf(desk));
  let away = written;
  const another = brought.length > 0 && written !== JSON.stringify(brought);
  let timer: ReturnType<typeof setTimeout> | undefined;
  const write = (): void => {
    timer = undefined;
    const now = JSON.stringify(keptOf(desk));
    if (now === written || elsewhere.peek() !== undefined) return;
    try {
      localStorage.setItem(key, now);
      written = now;
      refused.value = undefined;
    } catch (fault) {
      refused.value = fault instanceof Error ? fault.name : String(fault);
    }
  };
  effect(() => {
    unsaved.value = JSON.stringify(keptOf(desk)) !== away;
    if (timer === undefined) timer = setTimeout(write, DELAY);
  });
  addEventListener("pagehide", write);
  document.addEventListener("visibilitychange", write);
  addEventListener("storage", (event) => {
    if (event.key !== key || event.newValue === null || event.newValue === JSON.stringify(keptOf(desk))) return;
    elsewhere.value = kept(key);
  });
  addEventListener("beforeunload", (event) => {
    if (unsaved.peek()) event.preventDefault();
  });
  return {
    ...{ refused, elsewhere, unsaved, brought, another },
    keepOurs() {
      elsewhere.value = undefined;
      written = "";
      write();
    },
    takenAway() {
      away = JSON.stringify(keptOf(desk));
      unsaved.value = false;
    },
  };
}
