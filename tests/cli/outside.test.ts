import { execFileSync, spawnSync } from "node:child_process";
import { closeSync, openSync, rmdirSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { folder } from "../support/command.js";

const program = resolve("dist/witnessmark.cjs");
const demo = resolve("templates/machines/boathouse.yaml");

describe.runIf(process.platform === "linux")("what the outside refuses is told without a stack trace", () => {
  test("a full standard output", () => {
    const full = openSync("/dev/full", "w");
    const { status, stderr } = spawnSync(process.execPath, [program, "check", demo], {
      stdio: ["ignore", full, "pipe"],
      encoding: "utf8",
    });
    closeSync(full);
    expect({ status, stderr }).toEqual({
      status: 1,
      stderr: "what was to be shown could not be written (the disk is full)\n",
    });
  });

  test("a full standard error as well", () => {
    const full = openSync("/dev/full", "w");
    const { status } = spawnSync(process.execPath, [program, "check", "nowhere.yaml"], {
      stdio: ["ignore", full, full],
    });
    closeSync(full);
    expect(status).toBe(1);
  });

  test("a reader that hears nothing", () =>
    expect(
      execFileSync(
        "bash",
        ["-c", `"${process.execPath}" "${program}" check "${demo}" 2>&1 | true; echo "\${PIPESTATUS[0]}"`],
        {
          encoding: "utf8",
        },
      ),
    ).toBe("0\n"));

  test("a working folder that is no more", () => {
    const gone = folder();
    const script = `cd "${gone}" && rmdir "${gone}" && "${process.execPath}" "${program}" new`;
    const { status, stderr } = spawnSync("bash", ["-c", script], { encoding: "utf8" });
    expect({ status, stderr }).toEqual({
      status: 1,
      stderr: "the folder that this was called in is no more; change into one that is there\n",
    });
    expect(() => rmdirSync(gone)).toThrow("ENOENT");
  });
});
