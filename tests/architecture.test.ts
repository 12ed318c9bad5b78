import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, normalize, relative } from "node:path";
import { describe, expect, test } from "vitest";

/** The folders of src/ in the order of the flow (read, compute, arrange, render): each may import only from those before it. */
const flow = [
  "words",
  "quantity",
  "taper",
  "machine",
  "drawing",
  "feed",
  "drive",
  "cutting",
  "dial",
  "dividing",
  "thread",
  "part",
  "job",
  "findings",
  "plan",
  "student",
  "working",
  "paper",
  "blocks",
  "sheets",
  "output",
  "printing",
  "answers",
  "page",
  "cli",
];

const folders = readdirSync("src", { withFileTypes: true }).filter((entry) => entry.isDirectory());
const files = readdirSync("src", { recursive: true, encoding: "utf8" }).filter((file) => /\.tsx?$/.test(file));
const imports = files.flatMap((file) =>
  [...readFileSync(join("src", file), "utf8").matchAll(/(?:from|import\()\s*"(\.[^"]+)"/g)].map((match) => ({
    file,
    to: relative("src", normalize(join("src", dirname(file), match[1] ?? ""))).replaceAll("\\", "/"),
  })),
);
const sourceOf = (path: string): string =>
  [".ts", ".tsx"].map((ending) => path.replace(/\.js$/, ending)).find((file) => files.includes(file)) ?? path;
/** What users get beside the program: the page's form reads it as they do. */
const outside = imports.filter(({ to }) => to.startsWith("../"));
const folderOf = (path: string): string => path.split("/")[0] ?? "";

describe("imports point one way", () => {
  test("there are imports to look at", () => expect(imports.length).toBeGreaterThan(100));

  test.each(folders.map(({ name }) => name))("%s imports only what stands before it", (folder) => {
    expect(flow).toContain(folder);
    const allowed = flow.slice(0, flow.indexOf(folder) + 1);
    const strays = imports.filter(
      ({ file, to }) =>
        folderOf(file) === folder && !outside.some((one) => one.to === to) && !allowed.includes(folderOf(to)),
    );
    expect(strays).toEqual([]);
  });

  test("only the page's form looks outside, at the published schemas", () =>
    expect(
      outside.filter(({ file, to }) => file !== "page/schema.ts" || !/^\.\.\/templates\/\w+\.schema\.json$/.test(to)),
    ).toEqual([]));

  test("no file imports itself by way of others", () => {
    const edges = new Map<string, string[]>();
    for (const { file, to } of imports) edges.set(file, [...(edges.get(file) ?? []), sourceOf(to)]);
    const circles: string[] = [];
    const done = new Set<string>();
    const visit = (file: string, trail: readonly string[]): void => {
      if (trail.includes(file)) circles.push([...trail.slice(trail.indexOf(file)), file].join(" → "));
      else if (!done.has(file)) for (const next of edges.get(file) ?? []) visit(next, [...trail, file]);
      done.add(file);
    };
    for (const file of files) visit(file, []);
    expect(circles).toEqual([]);
  });
});

describe("each room of blocks draws one subject", () => {
  const roomOf = (path: string): string => path.split("/")[1] ?? "";
  const rooms = readdirSync("src/blocks", { withFileTypes: true }).flatMap((entry) =>
    entry.isDirectory() ? [entry.name] : [],
  );

  test("only the registry knows all rooms", () =>
    expect(files.filter((file) => /^blocks\/[^/]+$/.test(file))).toEqual(["blocks/registry.ts"]));

  test.each(rooms)("%s imports, of all blocks, only itself and what all share", (room) => {
    const strays = imports.filter(
      ({ file, to }) =>
        file.startsWith(`blocks/${room}/`) && folderOf(to) === "blocks" && ![room, "shared"].includes(roomOf(to)),
    );
    expect(strays).toEqual([]);
  });
});

test("only the command line touches files, processes or the clock", () => {
  const banned = /from "node:|\bprocess\.|new Date\(\)|Date\.now|Math\.random/;
  const strays = files.filter(
    (file) => folderOf(file) !== "cli" && banned.test(readFileSync(join("src", file), "utf8")),
  );
  expect(strays).toEqual([]);
});

/** What a file loads before it has done anything: late imports are left out. */
function loadedBy(file: string, found = new Set<string>()): Set<string> {
  if (found.has(file)) return found;
  found.add(file);
  const source = readFileSync(join("src", file), "utf8");
  for (const [, to = ""] of source.matchAll(/^(?:import|export)(?! type)[^;]*?from "(\.[^"]+)"/gm))
    loadedBy(
      relative("src", normalize(join("src", dirname(file), to)))
        .replaceAll("\\", "/")
        .replace(/\.js$/, ".ts"),
      found,
    );
  return found;
}

test.each([
  ["check", "cli/check.ts", ["paper", "blocks", "sheets", "output", "plan", "student"]],
  ["the command line", "cli/main.ts", ["findings", "feed", "dial", "drive", "blocks", "sheets"]],
])("%s loads nothing of what it does not need", (_, file, unneeded) => {
  const loaded = [...loadedBy(file)];
  expect(loaded.length).toBeGreaterThan(5);
  expect(loaded.filter((other) => unneeded.includes(folderOf(other)))).toEqual([]);
});
