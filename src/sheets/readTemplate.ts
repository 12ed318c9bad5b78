import { isMap, isScalar, isSeq, LineCounter, type Pair, parseDocument, visit } from "yaml";
import { type BlockName, blocks } from "../blocks/registry.js";
import type { Block } from "../blocks/shared/block.js";
import { type Use, uses } from "../findings/uses.js";
import { MOST } from "../machine/bounds.js";
import { keyText, repeatedKeys } from "../machine/document.js";
import { hiddenSign } from "../machine/hiddenSign.js";
import { yamlFault } from "../machine/yamlWords.js";
import { asGiven, lengthFault, readLength } from "./lengths.js";
import { type Margin, usualMargin } from "./margins.js";
import { checkKeys, type Reporter, readBlock } from "./readBlock.js";
import { type Need, needs, orientations, type Template } from "./template.js";

const keys = [
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

/** Nearer to the edge hardly a printer prints (common practice), mm. */
const LEAST_MARGIN = 5;

/** Reads a sheet template; problems are whole lines, `line:column: what; remedy`, all at once. `doubts`: the same of what can be, but
 *  may be a slip. */
export function readTemplate(
  text: string,
  name: string,
): { template?: Template; problems: string[]; doubts?: string[] } {
  if (text.length > MOST.letters)
    return { problems: [`1:1: the file has more than ${MOST.letters} letters; name the sheet template itself`] };
  const counter = new LineCounter();
  const document = parseDocument(text, { lineCounter: counter, uniqueKeys: false });
  const problems: string[] = [];
  const placeOf = (offset: number) => {
    const { line, col } = counter.linePos(offset);
    return `${line}:${col}`;
  };
  const place: Reporter["place"] = (node) =>
    placeOf((node as { range?: [number, number, number] } | null | undefined)?.range?.[0] ?? 0);
  const report: Reporter["report"] = (node, message) => void problems.push(`${place(node)}: ${message}`);
  for (const { code, message, pos } of document.errors.slice(0, 1)) {
    const { offset, what, remedy } = yamlFault(text, code, message, pos[0]);
    problems.push(`${placeOf(offset)}: ${what}; ${remedy}`);
  }
  visit(document, {
    Map(_, map) {
      for (const key of repeatedKeys(map)) report(key, `the key "${keyText(key)}" stands twice; keep one of them`);
    },
    Scalar(_, node) {
      const sign = typeof node.value === "string" ? hiddenSign(node.value) : undefined;
      if (sign !== undefined) report(node, `${sign} stands in this text; type the text anew`);
    },
    Alias: (_, node) => report(node, "the template refers back to an earlier part (*name); write the values out"),
  });
  if (problems.length > 0) return { problems };
  const root = document.contents;
  if (!isMap(root))
    return {
      problems: ["1:1: a sheet template is a list of keys and values; begin with one of: witnessmark sheets --copy"],
    };
  if (!root.has("blocks") && (root.has("handwheels") || root.has("drive")))
    return { problems: ["1:1: this is a machine file, not a sheet template; print takes it without --sheet"] };

  checkKeys(root.items as Pair[], keys, "a sheet", report);
  const value = (key: string): unknown => document.get(key);
  const node = (key: string): unknown => document.get(key, true) ?? root;
  const oneOf = <T extends string>(key: string, allowed: readonly T[], fallback: T): T => {
    const found = value(key) ?? fallback;
    if (!allowed.includes(found as T))
      report(node(key), `${key} cannot be ${asGiven(found)}; it is one of ${allowed.join(", ")}`);
    return found as T;
  };
  const flag = (key: string, fallback = false): boolean => {
    const found = value(key) ?? fallback;
    if (typeof found !== "boolean") report(node(key), `${key} cannot be ${asGiven(found)}; it is true or false`);
    return found === true;
  };

  const title = value("title");
  if (title === undefined) report(root, "title is missing; say what the sheet is called");
  else if (typeof title !== "string" || title.trim() === "")
    report(node("title"), `title cannot be ${asGiven(title)}; it is what the sheet is called, in words`);
  const cardNode = document.get("card", true);
  let card: Template["card"];
  if (isMap(cardNode)) card = lengthsOf(cardNode, "card", usualCard, ["most", "corner"], report);
  else if (cardNode) report(cardNode, "card needs a width and a height; for example { width: 130, height: 7 in }");

  const orientation = oneOf<Template["orientation"]>("orientation", orientations, "portrait");
  // What is measured across and down such a page stands in the file as the sheet's short and long side.
  if (value("uncorrected") === true && (orientation !== "portrait" || (card && card.width > card.height)))
    report(
      node("uncorrected"),
      "the page on which a printer is measured lies upright on its sheet; write orientation: portrait",
    );

  const blocksNode = document.get("blocks", true);
  const items = isSeq(blocksNode) ? blocksNode.items : [];
  if (items.length === 0)
    report(
      node("blocks"),
      `${document.has("blocks") ? "blocks lists nothing" : "blocks is missing"}; list what the sheet shows, as [positions, cautions]; all there are: witnessmark sheets --blocks`,
    );

  if (items.length > MOST.blocks)
    report(node("blocks"), `blocks lists ${items.length}, more than ${MOST.blocks}; make several sheets of it`);

  const shown = items.slice(0, MOST.blocks).flatMap((item) => readBlock(item, { report, place }) ?? []);
  const margin = readMargin(document.get("margin", true), report);
  const template: Template = {
    name,
    title: String(title),
    needs: oneOf<Need>("needs", needs, "nothing"),
    ...(value("for") !== undefined && { for: oneOf<Use>("for", uses, "turning") }),
    orientation,
    ...(margin && { margin }),
    ...(card && { card }),
    ...(value("each") !== undefined && { each: oneOf<"handwheel">("each", ["handwheel"], "handwheel") }),
    checkBars: flag("checkBars", value("bare") !== true && shown.some(({ block }) => isTrueSize(block))),
    bare: flag("bare"),
    uncorrected: flag("uncorrected"),
    onRequest: flag("onRequest"),
    blocks: shown,
  };
  if (problems.length > 0) return { problems };
  // A bare sheet goes to a machine that follows every line.
  const near = margin !== undefined && !template.bare && Math.min(margin.binding, margin.other) < LEAST_MARGIN - 1e-9;
  const doubts = near
    ? [
        `${place(node("margin"))}: mind: margin is less than ${LEAST_MARGIN} mm, and hardly a printer prints so near the edge; write margin: 10, or hold a print against the page`,
      ]
    : [];
  return { template, problems, doubts };
}

/** A piece cut from a page that nobody held a rule to fits nowhere. */
const isTrueSize = (name: BlockName): boolean => (blocks[name] as Block).trueSize === true;

const usualCard = { width: 130, height: 180, most: 0, corner: 3 };

/** One length for all four edges, or `{ binding: …, other: … }`: that of the punched edge alone. */
function readMargin(found: unknown, report: Reporter["report"]): Margin | undefined {
  if (found === undefined || found === null) return undefined;
  if (isMap(found)) return lengthsOf(found, "margin", usualMargin, ["binding", "other"], report);
  const given = isScalar(found) ? found.value : (found as { toJSON(): unknown }).toJSON();
  const fault = lengthFault(given, true);
  if (fault !== undefined)
    report(
      found,
      `margin cannot be ${asGiven(given)}; ${fault}; or apart for the punched edge: { binding: 20, other: 10 }`,
    );
  const all = readLength(given) ?? 0;
  return { binding: all, other: all };
}

/** Lengths by their keys, mm; those left out as usual. `zero`: those that may be none at all. */
function lengthsOf<T extends Readonly<Record<string, number>>>(
  map: { readonly items: unknown[]; get(key: string, keepScalar?: boolean): unknown },
  owner: string,
  usual: T,
  zero: readonly (keyof T & string)[],
  report: Reporter["report"],
): T {
  checkKeys(map.items as Pair[], Object.keys(usual), owner, report);
  const read = Object.entries(usual).map(([key, fallback]) => {
    const node = map.get(key, true) as { toJSON(): unknown } | undefined;
    if (node === undefined) return [key, fallback];
    const found = node.toJSON();
    const fault = lengthFault(found, zero.includes(key));
    if (fault !== undefined) report(node, `${owner} ${key} cannot be ${asGiven(found)}; ${fault}`);
    return [key, readLength(found) ?? fallback];
  });
  return Object.fromEntries(read) as T;
}
