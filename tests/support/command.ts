import { execFile } from "node:child_process";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";

const run = promisify(execFile);

/** The real command, as a process of its own. */
export async function witnessmark(...args: string[]): Promise<{ code: number; out: string; err: string }> {
  try {
    const { stdout, stderr } = await run(process.execPath, ["dist/witnessmark.cjs", ...args], { maxBuffer: 1 << 26 });
    return { code: 0, out: stdout, err: stderr };
  } catch (error) {
    const { code, stdout, stderr } = error as { code: number; stdout: string; stderr: string };
    return { code, out: stdout, err: stderr };
  }
}

/** An empty folder of the test's own. */
export const folder = (): string => mkdtempSync(join(tmpdir(), "witnessmark-"));

/** A file of that text in such a folder; its path. */
export function file(text: string, name = "lathe.yaml"): string {
  const path = join(folder(), name);
  writeFileSync(path, text);
  return path;
}
