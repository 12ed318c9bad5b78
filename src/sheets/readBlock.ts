import { isMap, isScalar, type Pair } from "yaml";
import { type BlockName, blocks } from "../blocks/registry.js";
import type { Block } from "../blocks/shared/block.js";
import { type Use, uses } from "../findings/uses.js";
import { closest } from "../machine/closest.js";
import { parseNumber } from "../quantity/number.js";
import { guideOf, type SettingGuide } from "./blockGuide.js";
import { asGiven, lengthFault, most, readLength } from "./lengths.js";
import type { TemplateBlock } from "./template.js";

/** Where a template's faults are told, by the node of the text. */
export type Reporter = {
  readonly report: (node: unknown, message: string) => void;
  /** line:column */
  readonly place: (node: unknown) => string;
};

/** A name in a table of ours; what every object inherits is none. */
const isBlock = (name: string): name is BlockName => Object.hasOwn(blocks, name);

/** A block stands as its name alone, or as `name: { settings }`. */
export function readBlock(item: unknown, { report, place }: Reporter): TemplateBlock | undefined {
  const pairs = isMap(item) ? (item.items as Pair[]) : [];
  const [pair] = pairs;
  const nameNode = pair ? pair.key : item;
  const name = isScalar(nameNode) ? String(nameNode.value) : undefined;
  if (name === undefined || name === "null") {
    report(nameNode ?? item, `a block is its name alone, or its name with what is set of it: ${braces("positions")}`);
    return undefined;
  }
  if (!isBlock(name)) {
    const names = Object.keys(blocks);
    const nearest = closest(name, names);
    report(
      nameNode,
      `there is no block ${asGiven(name)}; ${nearest ? `did you mean ${nearest}?` : "all there are: witnessmark sheets --blocks"}`,
    );
    return undefined;
  }
  if (pairs.length > 1) {
    report(
      pairs[1]?.key,
      `what is set of ${name} stands four spaces further in than its -, or in braces: ${braces(name)}`,
    );
    return undefined;
  }
  const { defaults, allowed } = blocks[name] as Block;
  const { settings: guide, wheels } = guideOf(name);
  const settings: Record<string, unknown> = { ...defaults };
  let use: Use | undefined;
  let handwheel: TemplateBlock["handwheel"];
  const given = pair?.value;
  if (given !== undefined && given !== null && !isMap(given) && !(isScalar(given) && given.value === null))
    report(given, `what is set of ${name} stands in braces: ${braces(name)}`);
  const entries = isMap(given) ? (given.items as Pair[]) : [];
  const known = [...new Set([...Object.keys(defaults), "for", ...(wheels ? ["handwheel"] : [])])];
  checkKeys(entries, known, `block ${name}`, report);
  for (const entry of entries) {
    const key = isScalar(entry.key) ? String(entry.key.value) : "";
    if (!known.includes(key)) continue;
    const at = entry.value ?? entry.key;
    const found = (entry.value as { toJSON(): unknown } | null)?.toJSON() ?? null;
    if (key === "for") {
      use = uses.find((one) => one === found);
      if (use === undefined) report(at, `for cannot be ${asGiven(found)}; it is one of ${uses.join(", ")}`);
    } else if (key === "handwheel") {
      const none = Object.hasOwn(defaults, key) && found === "";
      if (typeof found === "string" && found.trim() !== "") handwheel = { name: found.trim(), at: place(at) };
      else if (!none) report(at, `handwheel cannot be ${asGiven(found)}; it is the name of one in the machine file`);
    } else {
      const meant = inFractions(found, defaults[key]);
      const fault = settingFault(meant, defaults[key], allowed[key], guide[key]);
      if (fault !== undefined) report(at, `${key} cannot be ${asGiven(found)}; ${fault}`);
      settings[key] = guide[key]?.is === "length" ? readLength(found) : meant;
    }
  }
  // A choice that has no usual one must be made.
  for (const [key, words] of Object.entries(allowed))
    if (words !== undefined && defaults[key] === "" && settings[key] === "")
      report(nameNode, `block ${name} needs its ${key}; it is one of ${words.join(", ")}`);
  for (const [key, { needed }] of Object.entries(guide))
    if (needed && String(settings[key]).trim() === "")
      report(nameNode, `block ${name} needs its ${key}; for example ${braces(name)}`);
  return { block: name, settings, ...(use && { for: use }), ...(handwheel && { handwheel }) };
}

/** Where a number or a list of them belongs, 1/2 is one half. */
function inFractions(found: unknown, model: unknown): unknown {
  if (Array.isArray(found) && Array.isArray(model)) return found.map((one) => inFractions(one, model[0]));
  return typeof found === "string" && typeof model === "number" && found.includes("/")
    ? (parseNumber(found) ?? found)
    : found;
}

/** An example of the block's own. */
function braces(name: BlockName): string {
  const { defaults, allowed } = blocks[name] as Block;
  const [key = "for", value = "turning"] = Object.entries(defaults)[0] ?? [];
  const example = guideOf(name).settings[key]?.needed;
  if (example !== undefined) return `${name}: { ${key}: ${asGiven(example)} }`;
  return `${name}: { ${key}: ${value === "" ? (allowed[key]?.[0] ?? '""') : asGiven(value).replaceAll('"', "")} }`;
}

/** What a setting should be instead; undefined where it may stand. `model`: its value when the template says nothing. */
function settingFault(
  found: unknown,
  model: unknown,
  allowed: readonly string[] | undefined,
  guide: SettingGuide | undefined,
): string | undefined {
  if (guide?.is === "length") return lengthFault(found, model === 0);
  if (kindOf(found) !== kindOf(model)) return `it is ${kindOf(model)}, for example ${asGiven(model)}`;
  if (Array.isArray(found) && Array.isArray(model)) {
    if (found.length === 0) return `give one entry at least, for example ${asGiven(model)}`;
    const faults = found.map((one) => settingFault(one, model[0], allowed, guide));
    const index = faults.findIndex((fault) => fault !== undefined);
    return index < 0 ? undefined : `of entry ${asGiven(found[index])}: ${faults[index]}`;
  }
  if (typeof found === "number") {
    const whole = guide?.is === "count";
    const largest = guide?.most ?? most;
    const fits = found <= largest && (model === 0 ? found >= 0 : found > 0);
    if (fits && (!whole || Number.isInteger(found))) return undefined;
    return `it is a ${whole ? "whole " : ""}number ${model === 0 ? "from 0" : "above 0,"} up to ${largest}, for example ${asGiven(model)}`;
  }
  if (typeof found !== "string" || allowed === undefined || allowed.includes(found)) return undefined;
  const nearest = closest(found, allowed);
  return nearest ? `did you mean ${nearest}?` : `it is one of ${allowed.join(", ")}`;
}

export function checkKeys(
  pairs: readonly Pair[],
  known: readonly string[],
  owner: string,
  report: Reporter["report"],
): void {
  for (const { key } of pairs) {
    const name = isScalar(key) ? String(key.value) : "";
    if (known.includes(name)) continue;
    const nearest = closest(name, known);
    report(
      key,
      `"${name}" is not a key of ${owner}; ${nearest ? `did you mean "${nearest}"?` : `there are ${known.join(", ")}`}`,
    );
  }
}

function kindOf(value: unknown): string {
  if (Array.isArray(value)) return "a list";
  return { number: "a number", string: "a word", boolean: "true or false" }[typeof value as string] ?? "something else";
}
