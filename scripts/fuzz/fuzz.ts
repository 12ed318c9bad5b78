import { CommandLines, commandLine } from "./commandLines.js";
import { mutated, throwsOf } from "./mutate.js";
import { targets } from "./targets.js";

/** The most CPU that one input may take, seconds. */
const MOST_SECONDS = 2;

export type Fault = { readonly target: string; readonly seed: string; readonly what: string; readonly text: string };
export type Fuzzed = {
  readonly reached: number;
  readonly printed: number;
  /** Command lines among them. */
  readonly commanded: number;
  readonly slowest: number;
  readonly faults: readonly Fault[];
};

/** Reads so many mutated files, and prints one in `deepEvery` of those that can be printed; nothing but messages with a place may
 *  come of it. `seed`: another one gives other files. */
export async function fuzz(count: number, { seed = "1", deepEvery = 20, most = 20 } = {}): Promise<Fuzzed> {
  const kinds = Object.keys(targets) as [string, ...string[]];
  const lines = new CommandLines();
  const faults: Fault[] = [];
  let [reached, printed, commanded, slowest] = [0, 0, 0, 0];
  for (let at = 0; at < count && faults.length < most; at++) {
    const thrown = `${seed}.${at}`;
    const throws = throwsOf(thrown);
    const target = throws.pick([...kinds, "machine", "machine", "job"] as [string, ...string[]]);
    const { seeds, run } = targets[target] as (typeof targets)[string];
    const pick = () => throws.pick(seeds as [string, ...string[]]);
    const deep = throws.whole(1, deepEvery) === 1;
    // A command line takes as long as a print, and is tried as often.
    const words = deep && throws.whole(1, 3) === 1 ? commandLine(throws) : undefined;
    const text = words?.join("\n") ?? mutated(pick(), throws, pick());
    const before = process.cpuUsage();
    try {
      if (words) await lines.run(words);
      else run(text, deep);
    } catch (error) {
      const what = error instanceof Error ? (error.stack ?? error.message) : String(error);
      faults.push({ target: words ? "command line" : target, seed: thrown, what, text });
    }
    const { user, system } = process.cpuUsage(before);
    const seconds = (user + system) / 1e6;
    slowest = Math.max(slowest, seconds);
    if (seconds > MOST_SECONDS)
      faults.push({
        target: words ? "command line" : target,
        seed: thrown,
        what: `took ${seconds.toFixed(1)} s`,
        text,
      });
    reached++;
    if (words) commanded++;
    else if (deep) printed++;
  }
  lines.close();
  return { reached, printed, commanded, slowest, faults };
}
