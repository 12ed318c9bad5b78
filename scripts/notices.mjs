import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";

/** Licences of the packages of which the bundles hold anything, as their metafiles list them. Throws where one has none. */
export function notices(metafiles) {
  const outputs = metafiles.flatMap((metafile) => Object.values(metafile.outputs));
  const held = outputs.flatMap(({ inputs }) => Object.entries(inputs));
  const files = held.filter(([, { bytesInOutput }]) => bytesInOutput > 0).map(([file]) => file);
  const folders = new Set(files.map(packageFolder).filter(Boolean));
  return [...folders].sort().map(notice).join("\n\n----------\n\n");
}

function packageFolder(file) {
  if (!file.includes("node_modules/")) return undefined;
  let folder = dirname(file);
  while (!existsSync(join(folder, "package.json")) || !readPackage(folder).version) folder = dirname(folder);
  return folder;
}

const readPackage = (folder) => JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));

function notice(folder) {
  const { name, version, license } = readPackage(folder);
  const file = readdirSync(folder).find((entry) => /^(licen[cs]e|copying)/i.test(entry));
  if (file === undefined) throw new Error(`${name} is bundled and brings no licence text`);
  return `${name} ${version} (${license})\n\n${readFileSync(join(folder, file), "utf8").trim()}`;
}
