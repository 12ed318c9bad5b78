import type { Units } from "../machine/machine.js";
import { threadNamed } from "../thread/thread.js";

/** Small threads that a workshop has taps for, of the machine's own unit. Common practice. */
const usual: Readonly<Record<Units, readonly string[]>> = {
  mm: ["M3", "M4", "M5", "M6", "M8", "M10", "M12"],
  in: ["#6-32", "#8-32", "#10-24", "1/4-20 UNC", "5/16-18 UNC", "3/8-16 UNC", "1/2-13 UNC"],
};

/** With their outside diameters, mm, smallest first. */
export const usualThreads = (units: Units): { readonly name: string; readonly diameter: number }[] =>
  usual[units].flatMap((name) => {
    const thread = threadNamed(name);
    return thread === undefined ? [] : [{ name, diameter: thread.major }];
  });
