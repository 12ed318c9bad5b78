import type { WorkName } from "../work/protocol.js";

/** A question that was still at work when it was given up. */
export class TookTooLong extends Error {
  constructor(
    readonly question: WorkName,
    ms: number,
  ) {
    super(`${inWords[question] ?? "That"} took longer than ${ms / 1000} seconds and was stopped`);
  }
}

/** One that was given up since the files that it was about have changed. */
export class Superseded extends Error {}

const inWords: Readonly<Partial<Record<WorkName, string>>> = {
  read: "Working out what the files say",
  sheets: "Looking at which sheets there are",
  lacks: "Looking at what a sheet lacks",
  sheet: "Drawing the sheet",
  print: "Making the files to print",
  readings: "Working out the readings",
  table: "Reading the CSV",
  dial: "Drawing the dial in your hand",
  standing: "Working out where the wheel stands",
  distance: "Working out how far to turn",
  choices: "Looking up the materials",
  speed: "Looking for the belt's place",
};

/** What a question that failed is told as. */
export function failedWords(name: WorkName, fault: unknown): string {
  if (fault instanceof TookTooLong)
    return `${fault.message}. Undo, or take out what is very long or very many; it is tried again with the next change.`;
  // Nothing a reader writes may lead here: whoever mends the program finds it in the console as well.
  console.error(fault);
  const words = fault instanceof Error ? fault.message : String(fault);
  return `${inWords[name] ?? "An answer"} failed: ${words}. Your files are whole, and can be taken away.`;
}
