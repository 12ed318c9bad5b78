import { effect, type Signal, signal } from "@preact/signals";
import type { Kept } from "../inside.js";
import { type Desk, keptOf } from "./desk.js";
import type { Lasting } from "./lasting.js";

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

/** What was kept, if it can be read, and how many times anything was: there is no clock that all tabs and copies go by. */
export type Last = { readonly files: Kept | undefined; readonly count: number };

/** Of both copies the one that was written later. */
export async function kept(key: string, lasting: Lasting): Promise<Last> {
  const here = { files: keptHere(key), count: countAt(key) };
  const { count, files } = ((await lasting.read()) ?? {}) as { readonly count?: unknown; readonly files?: unknown };
  return typeof count === "number" && count > here.count && isKept(files) ? { files, count } : here;
}

function keptHere(key: string): Kept | undefined {
  try {
    const value: unknown = JSON.parse(localStorage.getItem(key) ?? "null");
    return isKept(value) ? value : undefined;
  } catch {
    return undefined;
  }
}

function countAt(key: string): number {
  try {
    return Number(localStorage.getItem(`${key} count`) ?? 0);
  } catch {
    return 0;
  }
}

const isKept = (value: unknown): value is Kept => Array.isArray(value) && value.every(isFile);

const isFile = (value: unknown): boolean =>
  typeof value === "object" &&
  value !== null &&
  ["kind", "name", "text"].every((key) => typeof (value as Record<string, unknown>)[key] === "string");

/** Keeps what lies on the desk in this browser, soon after each change and when the page goes: where the other tabs see it, and where it
 *  outlives the browser. */
export function keep(desk: Desk, key: string, brought: Kept, lasting: Lasting, last: Last): Keeping {
  const refused = signal<string | undefined>(undefined);
  const elsewhere = signal<Kept | undefined>(undefined);
  const unsaved = signal(false);
  let written = JSON.stringify(keptOf(desk));
  let away = written;
  const another = brought.length > 0 && written !== JSON.stringify(brought);
  let { count } = last;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const write = (): void => {
    timer = undefined;
    const now = JSON.stringify(keptOf(desk));
    if (now === written || elsewhere.peek() !== undefined) return;
    try {
      count = Math.max(count, countAt(key)) + 1;
      localStorage.setItem(key, now);
      localStorage.setItem(`${key} count`, String(count));
      lasting.write({ count, files: keptOf(desk) });
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
    elsewhere.value = keptHere(key);
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
