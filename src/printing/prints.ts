import type { Print } from "../drawing/page.js";
import { compute } from "../findings/compute.js";
import type { Findings } from "../findings/findings.js";
import { bind } from "../sheets/binder.js";
import { type Absent, type NamedJob, pack } from "../sheets/pack.js";
import type { Template } from "../sheets/template.js";
import { inLanguage } from "../words/language.js";
import type { LanguageCode } from "../words/languages.generated.js";

/** What is to be printed of a machine. */
export type Wish = {
  readonly templates: readonly Template[];
  readonly jobs?: readonly NamedJob[] | undefined;
  /** Of the paper, before what the machine file says. */
  readonly language?: LanguageCode | undefined;
  /** Names of those whose sheets are wanted; all of them where none are named. */
  readonly handwheels?: readonly string[] | undefined;
};

export type Prints = {
  readonly prints: readonly Print[];
  readonly absent: readonly Absent[];
  readonly language: LanguageCode;
  /** All of it bound into one print, with its front page. */
  readonly binder: () => Print;
};

/** The sheets of a machine as pages, those that can be made, in their language: what they say is written as they are made. Pure. */
export function printsOf(findings: Findings, { templates, jobs = [], handwheels, ...wish }: Wish): Prints {
  const language = wish.language ?? findings.machine.language ?? "en";
  const made = <T>(make: () => T): T => inLanguage(language, make);
  const told = made(() => withHandwheels(language === "en" ? findings : compute(findings.machine), handwheels));
  const { prints, absent } = made(() => pack(told, templates, jobs));
  return { prints, absent, language, binder: () => made(() => bind(told, prints, absent)) };
}

/** Sheets that are not made, and why, in English, in which the terminal speaks. One that only longer words of the paper's language leave
 *  no room for would be made in English: it is told in those words. */
export function absentInEnglish(findings: Findings, wish: Wish, { absent, language }: Prints): readonly Absent[] {
  if (language === "en" || absent.length === 0) return absent;
  const templates = wish.templates.filter(({ name }) => absent.some((one) => one.name === name));
  const english = printsOf(findings, { ...wish, templates, language: "en" }).absent;
  return absent.map((own) => english.find(({ name, of }) => name === own.name && of === own.of) ?? own);
}

/** What single sheets were made without, in English, in which the terminal speaks. */
export function leftOutInEnglish(findings: Findings, wish: Wish, { prints, language }: Prints) {
  const lacking = prints.filter(({ leftOut }) => leftOut !== undefined);
  if (lacking.length === 0 || language === "en") return lacking;
  const templates = wish.templates.filter(({ name }) => lacking.some(({ sheet }) => sheet === name));
  return printsOf(findings, { ...wish, templates, language: "en" }).prints;
}

/** Only of the handwheels named, whatever their case; all of them where none are. */
export function withHandwheels(findings: Findings, names: readonly string[] | undefined): Findings {
  if (names === undefined) return findings;
  const wanted = new Set(names.map((name) => name.toLowerCase()));
  return {
    ...findings,
    onlyWheels: true,
    handwheels: findings.handwheels.filter(({ handwheel }) => wanted.has(handwheel.name.toLowerCase())),
  };
}
