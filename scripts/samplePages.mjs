/** The demo's pages as pictures for README: as any printer is handed them, so without the correction for the demo's own. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const printerOfDemo = ", printer: shop laser";

/** Of a page, mm: what README shows enlarged. */
const details = {
  "strip.svg": { page: "boathouse-dial-1.svg", left: 6, top: 128.5, width: 138, height: 40.5 },
  "card.svg": { page: "boathouse-belt-card-1.svg", left: 32, top: 18, width: 160, height: 122 },
};

/** Writes every page of the demo and its job, and the details, into a folder. */
export function writeSamples(out) {
  const folder = mkdtempSync(join(tmpdir(), "witnessmark-"));
  const machine = readFileSync("templates/machines/boathouse.yaml", "utf8");
  if (!machine.includes(printerOfDemo)) throw new Error("the demo names no printer any more");
  const file = join(folder, "boathouse.yaml");
  writeFileSync(file, machine.replace(printerOfDemo, ""));
  const args = ["print", file, "--job", "templates/jobs/deck-pin.yaml", "--format", "svg", "--out", out, "--replace"];
  execFileSync(process.execPath, ["dist/witnessmark.cjs", ...args], { stdio: "pipe" });
  rmSync(folder, { recursive: true });
  // What was printed here is nobody's page on a machine.
  rmSync(join(out, "boathouse-printed.json"), { force: true });
  for (const [name, { page, left, top, width, height }] of Object.entries(details)) {
    const whole = readFileSync(join(out, page), "utf8");
    const part = whole.replace(
      /width="[\d.]+mm" height="[\d.]+mm" viewBox="[^"]*"/,
      `width="${2 * width}mm" height="${2 * height}mm" viewBox="${left} ${top} ${width} ${height}"`,
    );
    if (part === whole) throw new Error(`${page} has no size to be cut from`);
    writeFileSync(join(out, name), part);
  }
}
