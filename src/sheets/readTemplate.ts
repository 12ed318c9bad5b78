import { isMap, isScalar, isSeq, LineCounter, type Pair, parseDocument } from "yaml";
import { type BlockName, blocks } from "../blocks/registry.js";
import type { Block } from "../blocks/shared/block.js";
import { type Use, uses } from "../findings/uses.js";
import { closest } from "../machine/closest.js";
import { yamlFault } from "../machine/yamlWords.js";
import { type Need, needs, type Template, type TemplateBlock } from "./template.js";

/** Reads a sheet template; problems are whole lines, `line:column: what; remedy`, all at once. */
export function readTemplate(text: string, name: string): { template?: Template; problems: string[] } {
  const counter = new LineCounter();
  const document = parseDocument(text, { lineCounter: counter });
  const problems: string[] = [];
  const report = (node: unknown, message: string) => {
    const offset = (node as { range?: [number, number, number] } | null | undefined)?.range?.[0] ?? 0;
    const { line, col } = counter.linePos(offset);
    problems.push(`${line}:${col}: ${message}`);
  };
  for (const { code, message, pos } of document.errors.slice(0, 1)) {
    const { offset, what, remedy } = yamlFault(text, code, message, pos[0]);
    const { line, col } = counter.linePos(offset);
    problems.push(`${line}:${col}: ${what}; ${remedy}`);
  }
  if (problems.length > 0) return { problems };
  const root = document.contents;
  if (!isMap(root))
    return { problems: ["1:1: a sheet template is a list of keys and values; copy one from templates/sheets"] };

  const known = [
    "title",
    "needs",
    "for",
    "orientation",
    "margin",
    "card",
    "each",
    "checkBars",
    "bare",
    "uncorrected",
    "onRequest",
    "blocks",
  ];
  checkKeys(root.items as Pair[], known, "a sheet", report);
  const value = (key: string): unknown => document.get(key);
  const node = (key: string): unknown => document.get(key, true) ?? root;
  const oneOf = <T extends string>(key: string, allowed: readonly T[], fallback: T): T => {
    const found = value(key) ?? fallback;
    if (!allowed.includes(found as T))
      report(node(key), `${key} cannot be ${JSON.stringify(found)}; it is one of ${allowed.join(", ")}`);
    return found as T;
  };
  const size = (at: unknown, key: string, found: unknown, fallback: number): number => {
    if (found === undefined) return fallback;
    if (typeof found === "number" && found >= 0 && found <= 1000) return found;
    report(at, `${key} cannot be ${JSON.stringify(found)}; it is a number of millimetres`);
    return fallback;
  };

  const flag = (key: string): boolean => {
    const found = value(key) ?? false;
    if (typeof found !== "boolean") report(node(key), `${key} cannot be ${JSON.stringify(found)}; it is true or false`);
    return found === true;
  };

  const title = value("title");
  if (typeof title !== "string") report(node("title"), "title is missing; say what the sheet is called");
  const cardNode = document.get("card", true);
  let card: Template["card"];
  if (isMap(cardNode)) {
    checkKeys(cardNode.items as Pair[], ["width", "height", "corner"], "card", report);
    const part = (key: string, fallback: number) =>
      size(cardNode.get(key, true) ?? cardNode, `card ${key}`, cardNode.get(key), fallback);
    card = { width: part("width", 130), height: part("height", 180), corner: part("corner", 3) };
  } else if (cardNode) report(cardNode, "card needs a width and a height; for example { width: 130, height: 180 }");

  const orientation = oneOf("orientation", ["portrait", "landscape"], "portrait");
  // What is measured across and down such a page stands in the file as the sheet's short and long side.
  if (value("uncorrected") === true && (orientation === "landscape" || (card && card.width > card.height)))
    report(
      node("uncorrected"),
      "the page on which a printer is measured lies upright on its sheet; write orientation: portrait",
    );

  const list: TemplateBlock[] = [];
  const blocksNode = document.get("blocks", true);
  if (isSeq(blocksNode)) for (const item of blocksNode.items) addBlock(item, list, report);
  else report(node("blocks"), `blocks is missing; list what the sheet shows, of ${Object.keys(blocks).join(", ")}`);

  const template: Template = {
    name,
    title: String(title),
    needs: oneOf<Need>("needs", needs, "nothing"),
    ...(value("for") !== undefined && { for: oneOf<Use>("for", uses, "turning") }),
    orientation,
    margin: size(node("margin"), "margin", value("margin"), 12),
    ...(card && { card }),
    ...(value("each") !== undefined && { each: oneOf<"handwheel">("each", ["handwheel"], "handwheel") }),
    checkBars: flag("checkBars"),
    bare: flag("bare"),
    uncorrected: flag("uncorrected"),
    onRequest: flag("onRequest"),
    blocks: list,
  };
  return problems.length > 0 ? { problems } : { template, problems };
}

type Report = (node: unknown, message: string) => void;

/** A block stands as its name alone, or as `name: { settings }`. */
function addBlock(item: unknown, list: TemplateBlock[], report: Report): void {
  const pair = isMap(item) && item.items.length === 1 ? (item.items[0] as Pair) : undefined;
  const nameNode = pair ? pair.key : item;
  const name = isScalar(nameNode) ? String(nameNode.value) : undefined;
  if (name === undefined || !(name in blocks)) {
    const nearest = name && closest(name, Object.keys(blocks));
    report(
      nameNode,
      `there is no block ${JSON.stringify(name ?? "")}; ${nearest ? `did you mean ${nearest}?` : `there are ${Object.keys(blocks).join(", ")}`}`,
    );
    return;
  }
  const { defaults, allowed } = blocks[name as BlockName] as Block;
  const settings: Record<string, unknown> = { ...defaults };
  let use: Use | undefined;
  if (isMap(pair?.value)) {
    checkKeys(pair.value.items as Pair[], [...Object.keys(defaults), "for"], `block ${name}`, report);
    for (const entry of pair.value.items as Pair[]) {
      const key = isScalar(entry.key) ? String(entry.key.value) : "";
      const found = (entry.value as { toJSON(): unknown } | null)?.toJSON() ?? null;
      if (key === "for") {
        use = uses.find((one) => one === found);
        if (use === undefined)
          report(entry.value ?? entry.key, `for cannot be ${JSON.stringify(found)}; it is one of ${uses.join(", ")}`);
        continue;
      }
      const model = defaults[key];
      const fault = model === undefined ? undefined : settingFault(found, model, allowed[key]);
      if (fault !== undefined) report(entry.value ?? entry.key, `${key} cannot be ${JSON.stringify(found)}; ${fault}`);
      settings[key] = found;
    }
  }
  // A choice that has no usual one must be made.
  for (const [key, words] of Object.entries(allowed))
    if (words !== undefined && defaults[key] === "" && settings[key] === "")
      report(nameNode, `block ${name} needs its ${key}; it is one of ${words.join(", ")}`);
  list.push({ block: name as BlockName, settings, ...(use && { for: use }) });
}

/** Larger than any size, count or per cent that a block is set to. */
const most = 1000;

/** What a setting should be instead; undefined where it may stand. `model`: its value when the template says nothing. */
function settingFault(found: unknown, model: unknown, allowed: readonly string[] | undefined): string | undefined {
  if (kindOf(found) !== kindOf(model)) return `it is ${kindOf(model)}, for example ${JSON.stringify(model)}`;
  if (Array.isArray(found) && Array.isArray(model)) {
    if (found.length === 0) return `give one entry at least, for example ${JSON.stringify(model)}`;
    const faults = found.map((one) => settingFault(one, model[0], allowed));
    const index = faults.findIndex((fault) => fault !== undefined);
    return index < 0 ? undefined : `of entry ${JSON.stringify(found[index])}: ${faults[index]}`;
  }
  if (typeof found === "number" && !(found <= most && (model === 0 ? found >= 0 : found > 0)))
    return `it is a number ${model === 0 ? "from 0" : "above 0,"} up to ${most}, for example ${model}`;
  if (typeof found !== "string" || allowed === undefined || allowed.includes(found)) return undefined;
  const nearest = closest(found, allowed);
  return nearest ? `did you mean ${nearest}?` : `it is one of ${allowed.join(", ")}`;
}

function checkKeys(pairs: readonly Pair[], known: readonly string[], owner: string, report: Report): void {
  for (const { key } of pairs) {
    const name = isScalar(key) ? String(key.value) : "";
    if (known.includes(name)) continue;
    const nearest = closest(name, known);
    report(
      key,
      `"${name}" is not a key of ${owner}; ${nearest ? `did you mean "${nearest}"?` : known.length > 0 ? `there are ${known.join(", ")}` : "it takes none"}`,
    );
  }
}

function kindOf(value: unknown): string {
  if (Array.isArray(value)) return "a list";
  return { number: "a number", string: "a word", boolean: "true or false" }[typeof value as string] ?? "something else";
}
