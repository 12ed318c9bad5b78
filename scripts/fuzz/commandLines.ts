import { cpSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { told } from "../../src/cli/io.js";
import { asksForJson, unreadJson } from "../../src/cli/nothingKnown.js";
import { run } from "../../src/cli/run.js";
import { options } from "../../src/cli/usage.js";
import type { Throws } from "./mutate.js";
import { inside } from "./targets.js";

/** Files that a command line may name, and names of files that are none. */
const files = ["lathe.yaml", "lathe.yaml", "pin.yaml", "wall.yaml", "slide.csv", "broken.yaml", "a b.yaml"] as const;
const noFiles = ["nothing.yaml", ".", "", "-", "--", "-x.yaml", "..yaml", "/dev/null", "x".repeat(300), "lathe.yaml/x"];

/** What may be written after an option, right or wrong. */
const values = [
  ...["dial", "belt-card", "plan", "dail", "turns,dial", "constructor", "__proto__", "all"],
  ...["Cross slide", "cross", "Nobody", "1", "0", "-1", "1e999", "NaN", "119.7", "119,7 mm", "5/8 in", "½"],
  ...["pdf", "svg", "dxf", "png", "de", "en", "xx", "strip", "ring", "60 Hz", "motor 900", "out", "pages/a/b"],
  ...["speeds", "feed", "toString", "\u202eab", "<b>", "名前", "a\nb", " ", ...noFiles],
] as [string, ...string[]];

/** A line of words as a shell hands them over: a command, files, options with and without values, in any order. */
export function commandLine(throws: Throws): string[] {
  const commands = Object.keys(options) as (keyof typeof options)[] as [
    keyof typeof options,
    ...(keyof typeof options)[],
  ];
  const command = throws.pick(commands);
  const own = options[command].map((option) => option.replace("+", ""));
  const foreign = Object.values(options)
    .flat()
    .map((option) => option.replace("+", ""));
  const words: string[] = throws.whole(1, 25) === 1 ? [throws.pick(values)] : [command];
  for (let left = throws.pick([0, 1, 1, 1, 2]); left > 0; left--)
    words.push(throws.whole(1, 6) === 1 ? throws.pick(noFiles as [string, ...string[]]) : throws.pick([...files]));
  for (let left = throws.pick([0, 0, 1, 1, 2, 4]); left > 0; left--) {
    const among = throws.whole(1, 8) === 1 ? foreign : own;
    // What goes on until somebody ends it has tests of its own.
    const option = throws.pick(among.filter((name) => name !== "watch") as [string, ...string[]]);
    const value = throws.pick([...values, ...files] as [string, ...string[]]);
    words.push(...throws.pick([[`--${option}`, value], [`--${option}=${value}`], [`--${option}`], [`-${option}`]]));
  }
  // Where an example asks for a file by its kind, most lines should get that far.
  if (command === "print" && throws.whole(1, 2) === 1) words.push("--job", "pin.yaml");
  return throws.whole(1, 10) === 1 ? words.toSorted(() => throws.pick([-1, 1])) : words;
}

/** A folder with those files in it. */
function bench(): string {
  const place = mkdtempSync(join(tmpdir(), "witnessmark-fuzz-"));
  cpSync("templates/machines/boathouse.yaml", join(place, "lathe.yaml"));
  cpSync("templates/machines/starter.yaml", join(place, "a b.yaml"));
  cpSync("templates/jobs/deck-pin.yaml", join(place, "pin.yaml"));
  cpSync("tests/sheets/wallCard.yaml", join(place, "wall.yaml"));
  writeFileSync(join(place, "slide.csv"), "turns;travel\n0;0\n5;9,98\n10;19,97\n");
  writeFileSync(join(place, "broken.yaml"), "name: L\nhandwheels:\n  - { name: S, feed: [2\n");
  mkdirSync(join(place, "out"));
  return place;
}

/** Runs command lines in a folder that holds a machine, a job, a sheet and readings, in this very process. */
export class CommandLines {
  private readonly home = process.cwd();
  private readonly place = bench();

  /** Runs one. Throws where a promise is broken: a status that says nothing, a refusal without a word, insides shown, JSON that is
   *  none, a temporary file left. */
  async run(words: readonly string[]): Promise<void> {
    const [out, err]: [string[], string[]] = [[], []];
    const io = {
      out: (text: string) => void out.push(text),
      err: (text: string) => void err.push(text),
      colour: false,
    };
    process.chdir(this.place);
    try {
      const status = await told(io, () => run(words, io));
      if (status !== 0 && out.length === 0 && asksForJson(words)) io.out(unreadJson("refused", err));
      if (![0, 1, 2].includes(status)) throw new Error(`status ${status}`);
      if (status !== 0 && out.length + err.length === 0) throw new Error(`status ${status} without a word`);
      if (status === 0 && asksForJson(words)) JSON.parse(out.join("\n"));
      for (const line of err) {
        if (/fault of its own/.test(line)) throw new Error(line);
        // What is the line's own is no inside of ours.
        inside(
          words
            .flatMap((word) => word.split("="))
            .reduce((rest, word) => (word === "" ? rest : rest.replaceAll(word, "")), line),
        );
      }
      const left = readdirSync(this.place, { recursive: true }).filter((name) => String(name).endsWith(".part"));
      if (left.length > 0) throw new Error(`left behind: ${left.join(", ")}`);
    } finally {
      process.chdir(this.home);
      // What a print does on a signal it ends doing on the next round of the loop.
      await new Promise((done) => setImmediate(done));
    }
  }

  close(): void {
    rmSync(this.place, { recursive: true, force: true });
  }
}
