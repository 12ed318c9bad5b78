import { readdirSync, readFileSync } from "node:fs";
import { basename } from "node:path";
import { readTemplate } from "../../src/sheets/readTemplate.js";

/** The sheets that come with the program as data, from path to text; throws with the problems of their templates. */
export const sheets = (): Readonly<Record<string, string>> => ({ "src/sheets/builtIn.generated.ts": builtIn() });

function builtIn(folder = "templates/sheets"): string {
  const names = readdirSync(folder).map((file) => basename(file, ".yaml"));
  const templates = names.sort().map((name) => {
    const { template, problems } = readTemplate(readFileSync(`${folder}/${name}.yaml`, "utf8"), name);
    if (template === undefined) throw new Error(problems.map((problem) => `${name}:${problem}`).join("\n"));
    return `  ${JSON.stringify(template)},`;
  });
  return `import type { Template } from "./template.js";

/** The sheets that come with the program, by name; written by \`npm run generate\` from templates/sheets, never by hand. */
export const builtIn: readonly Template[] = [
${templates.join("\n")}
];
`;
}
