import { isMap, isScalar, isSeq, LineCounter, type Pair, parseDocument } from "yaml";
import { type BlockName, blocks } from "../blocks/registry.js";
import { closest } from "../machine/closest.js";
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
  for (const error of document.errors)
    problems.push(
      `${error.linePos?.[0].line ?? 1}:${error.linePos?.[0].col ?? 1}: ${error.message.split("\n")[0]}; mend the YAML`,
    );
  if (problems.length > 0) return { problems };
  const root = document.contents;
  if (!isMap(root))
    return { problems: ["1:1: a sheet template is a list of keys and values; copy one from templates/sheets"] };

  const known = [
    "title",
    "needs",
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
    orientation,
    margin: size(node("margin"), "margin", value("margin"), 12),
    ...(card && { card }),
    ...(value("each") !== undefined && { each: oneOf<"handwheel">("each", ["handwheel"], "handwheel") }),
    checkBars: value("checkBars") === true,
    bare: value("bare") === true,
    uncorrected: value("uncorrected") === true,
    onRequest: value("onRequest") === true,
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
  const defaults: Readonly<Record<string, unknown>> = blocks[name as BlockName].defaults;
  const settings: Record<string, unknown> = { ...defaults };
  if (isMap(pair?.value)) {
    checkKeys(pair.value.items as Pair[], Object.keys(defaults), `block ${name}`, report);
    for (const entry of pair.value.items as Pair[]) {
      const key = isScalar(entry.key) ? String(entry.key.value) : "";
      const found = (entry.value as { toJSON(): unknown } | null)?.toJSON() ?? null;
      const model = defaults[key];
      if (model !== undefined && kindOf(found) !== kindOf(model))
        report(
          entry.value ?? entry.key,
          `${key} cannot be ${JSON.stringify(found)}; it is ${kindOf(model)}, for example ${JSON.stringify(model)}`,
        );
      settings[key] = found;
    }
  }
  list.push({ block: name as BlockName, settings });
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
