/** The demo's pages as pictures for README: as any printer is handed them, so without the correction for the demo's own. */
import { execFileSync } from "node:child_process";
import { copyFileSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const printerOfDemo = ", printer: shop laser";

/** One strip alone, by a template: where it lies on its page is then known. */
const strip = `title: Strip
needs: dial
blocks:
  - dial pieces: { handwheel: Cross slide, copies: 1, index: false, places: false }
`;

/** Sheets that are printed on request alone: of each the first page, of one handwheel where it would be many. */
const onRequest = [
  ["measuring-form"],
  ["printer-check"],
  ["dial-choices", "--handwheel", "Cross slide"],
  ["start-readings"],
  ["ring-cutting", "--handwheel", "Cross slide"],
  ["engraving", "--handwheel", "Cross slide"],
  ["scales"],
  ["angle-scale"],
];

/** Of a page, mm: what README shows enlarged. */
const card = { left: 32, top: 18, width: 160, height: 122 };

/** The demo's machine in a folder, as for whatever printer. */
export function demoForAnyPrinter(folder) {
  const machine = readFileSync("templates/machines/boathouse.yaml", "utf8");
  if (!machine.includes(printerOfDemo)) throw new Error("the demo names no printer any more");
  const file = join(folder, "boathouse.yaml");
  writeFileSync(file, machine.replace(printerOfDemo, ""));
  return file;
}

/** Writes every page of the demo and its job, the first of each sheet on request, and the details, into a folder. */
export function writeSamples(out) {
  const folder = mkdtempSync(join(tmpdir(), "witnessmark-"));
  const file = demoForAnyPrinter(folder);
  const args = ["print", file, "--job", "templates/jobs/deck-pin.yaml", "--format", "svg", "--out", out, "--replace"];
  execFileSync(process.execPath, ["dist/witnessmark.cjs", ...args], { stdio: "pipe" });
  for (const [sheet, ...more] of onRequest) {
    const wanted = ["print", file, "--sheet", sheet, ...more, "--format", "svg", "--out", folder];
    execFileSync(process.execPath, ["dist/witnessmark.cjs", ...wanted], { stdio: "pipe" });
    const [page] = readdirSync(folder).filter((name) => new RegExp(`^boathouse-${sheet}\\b.*-1\\.svg$`).test(name));
    if (page === undefined) throw new Error(`${sheet} left no page`);
    copyFileSync(join(folder, page), join(out, `boathouse-${sheet}-1.svg`));
  }
  const own = join(folder, "strip.yaml");
  writeFileSync(own, strip);
  const alone = ["print", file, "--sheet", own, "--format", "svg", "--out", folder];
  execFileSync(process.execPath, ["dist/witnessmark.cjs", ...alone], { stdio: "pipe" });
  const stripPage = readFileSync(join(folder, "boathouse-strip-1.svg"), "utf8");
  rmSync(folder, { recursive: true });
  // What was printed here is nobody's page on a machine.
  rmSync(join(out, "boathouse-printed.json"), { force: true });
  const [, x, y] = /translate\(([\d.]+) ([\d.]+)\)">\s*<g>\s*<g class="strip">/.exec(stripPage) ?? [];
  if (x === undefined) throw new Error("there is no strip on its page");
  const top = Number(y) - 2;
  const around = {
    left: Number(x) - 2,
    top,
    width: 134,
    height: Math.ceil(lowestWords(stripPage, "caption") + 1 - top),
  };
  writeFileSync(join(out, "strip.svg"), cutFrom(stripPage, around));
  writeFileSync(join(out, "card.svg"), cutFrom(readFileSync(join(out, "boathouse-belt-card-1.svg"), "utf8"), card));
}

/** How far down the page the words of a group reach, letters like g as well, mm. */
export function lowestWords(page, name) {
  let lowest = Number.NaN;
  const above = [{ y: 0, within: false }];
  const parts = /<g\b([^>]*)>|<\/g>|<text\b[^>]* y="([-\d.]+)" font-size="([\d.]+)"/g;
  for (const [whole, attributes, y, size] of page.matchAll(parts)) {
    const own = above.at(-1);
    if (whole === "</g>") above.pop();
    else if (attributes !== undefined) {
      const [, down = 0] = /translate\([-\d.]+ ([-\d.]+)\)/.exec(attributes) ?? [];
      above.push({ y: own.y + Number(down), within: own.within || attributes.includes(`class="${name}"`) });
    } else if (own.within)
      lowest = Math.max(Number.isNaN(lowest) ? 0 : lowest, own.y + Number(y) + 0.26 * Number(size));
  }
  return lowest;
}

/** A part of a page, at twice its size. */
function cutFrom(page, { left, top, width, height }) {
  const part = page.replace(
    /width="[\d.]+mm" height="[\d.]+mm" viewBox="[^"]*"/,
    `width="${2 * width}mm" height="${2 * height}mm" viewBox="${left} ${top} ${width} ${height}"`,
  );
  if (part === page) throw new Error("the page has no size to be cut from");
  return part;
}
