import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { AnyMachine } from "./anyMachine.js";
import { faultLine, type SheetFault } from "./measureSheets.js";

/** What faults were found in machines made at random, by sheet and kind. */
export class FaultFiles {
  private readonly groups = new Map<
    string,
    { faults: number; machines: number; smallest: AnyMachine; number: number; example: SheetFault }
  >();

  /** `number`: which of the machines. */
  add(machine: AnyMachine, number: number, faults: readonly SheetFault[]): void {
    const counted = new Set<string>();
    for (const fault of faults) {
      const key = `${fault.sheet}: ${fault.kind}`;
      const known = this.groups.get(key);
      if (known === undefined)
        this.groups.set(key, { faults: 1, machines: 1, smallest: machine, number, example: fault });
      else {
        known.faults++;
        if (!counted.has(key)) known.machines++;
        if (sizeOf(machine) < sizeOf(known.smallest))
          Object.assign(known, { smallest: machine, number, example: fault });
      }
      counted.add(key);
    }
  }

  /** A line for each sheet and kind of fault, that of most machines first. */
  lines(): string[] {
    return this.sorted().map(
      ([key, { faults, machines, number, example }]) =>
        `${key}: ${faults} in ${machines} machines; the smallest is ${number} (${fileOf(key)}): ${faultLine(example)}`,
    );
  }

  /** Into a folder: those lines, and for each the smallest machine that shows it, ready to print. */
  write(folder: string, head: string): void {
    mkdirSync(folder, { recursive: true });
    writeFileSync(join(folder, "summary.txt"), `${[head, ...this.lines()].join("\n")}\n`);
    for (const [key, { smallest, example }] of this.groups) {
      const file = join(folder, fileOf(key));
      const { job } = smallest;
      writeFileSync(file, `# ${faultLine(example)}\n${smallest.text}`);
      if (job !== undefined) writeFileSync(file.replace(/\.yaml$/, "-job.yaml"), job);
    }
  }

  private sorted() {
    return [...this.groups].sort(([, a], [, b]) => b.machines - a.machines || b.faults - a.faults);
  }
}

const sizeOf = ({ text, job = "" }: AnyMachine): number => text.length + job.length;
const fileOf = (key: string): string => `${key.replace(/[ :]+/g, "-")}.yaml`;
