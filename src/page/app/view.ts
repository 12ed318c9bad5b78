import { computed, type ReadonlySignal, type Signal, signal } from "@preact/signals";
import type { Way } from "../file/edit.js";
import type { FileDocument } from "./document.js";
import { stationOf, stations } from "./stations.js";

/** Where one is on the desk. */
export type View = {
  readonly at: Signal<string>;
  /** The sheet that lies beside it: the one that was chosen, wherever one goes; else the station's. */
  readonly sheet: ReadonlySignal<string>;
  /** Chosen by hand; undefined while the stations choose. */
  readonly chosen: Signal<string | undefined>;
  /** A sheet that comes of what is done at a station. */
  readonly bring: (sheet: string) => void;
  readonly go: (name: string) => void;
  /** Whether the paper lies on top, where there is no room for both. */
  readonly paperUp: Signal<boolean>;
  readonly turnOver: () => void;
  /** A place of a file that is to be brought up, with the caret in it. */
  readonly wanted: Signal<{ readonly document: FileDocument; readonly way: Way } | undefined>;
  /** Goes to where a place of a file is filled in. */
  readonly to: (document: FileDocument, way: Way) => void;
};

type KeptView = {
  readonly at: string;
  readonly sheet: string;
  readonly chosen?: string;
  readonly scrolled: readonly (readonly [string, number])[];
};

/** The place, and how far each was scrolled, as they were before a reload of this tab. */
export function viewOf(key: string): View {
  const kept = keptView(key);
  const at = signal(kept?.at ?? stations[0]?.name ?? "");
  const brought = signal(kept?.sheet ?? stations[0]?.sheet ?? "");
  const chosen = signal(kept?.chosen);
  const sheet = computed(() => chosen.value ?? brought.value);
  const bring = (name: string): void => {
    brought.value = name;
  };
  const wanted: View["wanted"] = signal(undefined);
  const scrolled = new Map(kept?.scrolled);
  // Who goes to the paper wants to see it.
  const paperUp = signal(at.peek() === "Paper");
  /** What is seen: a place, or the paper in front of it. */
  const seen = (): string => (paperUp.peek() ? `${at.peek()}, paper` : at.peek());
  const see = (change: () => void): void => {
    scrolled.set(seen(), scrollY);
    change();
    const now = seen();
    requestAnimationFrame(() => scrollBackTo(scrolled.get(now) ?? 0));
  };
  const go = (name: string): void => {
    // Whoever is at the station already, with the paper in front of it, wants the station.
    if (name === at.peek() && paperUp.peek() === (name === "Paper")) return;
    see(() => {
      bring(stations.find((one) => one.name === name)?.sheet ?? brought.peek());
      at.value = name;
      paperUp.value = name === "Paper";
    });
  };
  const turnOver = (): void => see(() => (paperUp.value = !paperUp.peek()));
  history.scrollRestoration = "manual";
  requestAnimationFrame(() => scrollBackTo(scrolled.get(seen()) ?? 0));
  addEventListener("pagehide", () => {
    scrolled.set(seen(), scrollY);
    try {
      const hand = chosen.peek();
      const now: KeptView = {
        at: at.peek(),
        sheet: brought.peek(),
        ...(hand !== undefined && { chosen: hand }),
        scrolled: [...scrolled],
      };
      sessionStorage.setItem(key, JSON.stringify(now));
    } catch {
      // A browser that keeps nothing says so elsewhere; it begins at the first station again.
    }
  });
  return {
    ...{ at, sheet, chosen, bring, go, paperUp, turnOver, wanted },
    to(document, way) {
      const place = document.kind === "machine" ? stationOf(way).name : at.peek();
      go(place);
      wanted.value = { document, way };
    },
  };
}

/** What is worked out comes later and makes the page longer: until it is long enough, or somebody scrolls, types or points. */
function scrollBackTo(wanted: number): void {
  const given = ["wheel", "touchstart", "keydown", "pointerdown"];
  const growing = new ResizeObserver(() => {
    scrollTo(0, wanted);
    if (Math.abs(scrollY - wanted) < 1) stop();
  });
  const stop = (): void => {
    growing.disconnect();
    for (const name of given) removeEventListener(name, stop);
  };
  for (const name of given) addEventListener(name, stop);
  growing.observe(document.body);
}

function keptView(key: string): KeptView | undefined {
  try {
    const value = JSON.parse(sessionStorage.getItem(key) ?? "null") as KeptView | null;
    return value !== null && typeof value.at === "string" && Array.isArray(value.scrolled) ? value : undefined;
  } catch {
    return undefined;
  }
}
