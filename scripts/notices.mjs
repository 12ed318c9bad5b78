import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";

/** Licences of the packages of which the bundles hold anything, as their metafiles list them: a text that several bear
 *  stands once, under all of them. Throws where one has none. */
export function notices(metafiles) {
  const outputs = metafiles.flatMap((metafile) => Object.values(metafile.outputs));
  const held = outputs.flatMap(({ inputs }) => Object.entries(inputs));
  const files = held.filter(([, { bytesInOutput }]) => bytesInOutput > 0).map(([file]) => file);
  const folders = new Set(files.map(packageFolder).filter(Boolean));
  const bearing = new Map();
  for (const folder of [...folders].sort()) {
    const text = licenceText(folder);
    bearing.set(text, [...(bearing.get(text) ?? []), titleOf(folder)]);
  }
  return [...bearing].map(([text, titles]) => `${titles.join("\n")}\n\n${text}`).join("\n\n----------\n\n");
}

function packageFolder(file) {
  if (!file.includes("node_modules/")) return undefined;
  let folder = dirname(file);
  while (!existsSync(join(folder, "package.json")) || !readPackage(folder).version) folder = dirname(folder);
  return folder;
}

const readPackage = (folder) => JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));

function titleOf(folder) {
  const { name, version, license } = readPackage(folder);
  return `${name} ${version} (${license})`;
}

function licenceText(folder) {
  const file = readdirSync(folder).find((entry) => /^(licen[cs]e|copying)/i.test(entry));
  if (file === undefined) throw new Error(`${readPackage(folder).name} is bundled and brings no licence text`);
  return readFileSync(join(folder, file), "utf8").replaceAll("\r\n", "\n").trim();
}
