import type { Measured } from "../answers/verified.js";
import type { CheckOptions } from "./check.js";
import { type Io, told } from "./io.js";
import type { PageArgs } from "./page.js";
import type { PrintArgs } from "./print.js";
import type { SheetsArgs } from "./sheets.js";

/** What stands behind the command line: a bundle of its own, which is loaded when a command line has been understood, so that
 *  help and wrong usage cost nothing of it. Each resolves to the exit status. */

export const newFile = (path: string | undefined, job: string | undefined, io: Io): Promise<number> =>
  told(io, async () => (await import("./new.js")).newFiles(path, job, io));

export const check = (path: string, options: CheckOptions, io: Io): Promise<number> =>
  told(io, async () => (await import("./check.js")).check(path, options, io));

export const explain = (path: string, quantity: string | undefined, of: string | undefined, io: Io): Promise<number> =>
  told(io, async () => (await import("./explain.js")).explain(path, quantity, of, io));

export const verify = (path: string, args: Measured, io: Io): Promise<number> =>
  told(io, async () => (await import("./verify.js")).verify(path, args, io));

export const print = (args: PrintArgs, io: Io): Promise<number> =>
  told(io, async () => (await import("./print.js")).print(args, io));

export const page = (args: PageArgs, io: Io): Promise<number> =>
  told(io, async () => (await import("./page.js")).page(args, io));

export const sheets = (args: SheetsArgs, io: Io): Promise<number> =>
  told(io, async () => (await import("./sheets.js")).sheets(args, io));

/** A thread's side of printing many machines. */
export const printThread = async (): Promise<void> => (await import("./printThread.js")).serve();
