import { closest } from "../machine/closest.js";
import { type Command, commandOf } from "./help.js";
import { unquotedPath } from "./io.js";

/** Wrong usage in our own words, with the likely remedy; the command-line library's never reach the user. */

/** Options of every command; `+` may be given again. */
export const options = {
  new: ["job"],
  explain: ["of"],
  verify: ["handwheel", "measured", "by"],
  check: ["json", "choices", "suppose+", "job+", "out"],
  print: ["sheet+", "handwheel+", "job+", "anyway", "all", "format", "dpi", "watch", "language", "out", "replace"],
  page: ["job+", "sheet+", "out", "replace"],
  sheets: ["copy", "blocks"],
} as const satisfies Record<Command, readonly string[]>;

const examples: Readonly<Record<Command, string>> = {
  new: "witnessmark new lathe.yaml",
  explain: "witnessmark explain lathe.yaml feed",
  verify: 'witnessmark verify lathe.yaml --handwheel "Cross slide" --measured 119.7',
  check: "witnessmark check lathe.yaml",
  print: "witnessmark print lathe.yaml",
  page: "witnessmark page lathe.yaml",
  sheets: "witnessmark sheets lathe.yaml",
};
const exampleOf: Readonly<Record<string, string>> = {
  of: '--of "Cross slide"',
  handwheel: '--handwheel "Cross slide"',
  measured: "--measured 119.7",
  by: "--by arc",
  suppose: '--suppose "60 Hz"',
  sheet: "--sheet dial",
  job: "--job deck-pin.yaml",
  format: "--format svg",
  copy: "--copy belt-card mine.yaml",
  dpi: "--dpi 300",
  out: "--out pages",
};

const plain = (option: string): string => option.replace("+", "");
const known = (command: Command | undefined): string[] => [
  ...(command === undefined ? [] : options[command].map(plain)),
  "help",
  "version",
];

/** Whether help is asked for, as an option; behind a lone -- stand files. */
export const asksHelp = (argv: readonly string[]): boolean => {
  const end = argv.indexOf("--");
  return (end < 0 ? argv : argv.slice(0, end)).some((word) => word === "--help" || word === "-h");
};

/** `help new` asks what `new --help` does. */
export const asHelp = (argv: readonly string[]): string[] =>
  argv[0] !== "help"
    ? [...argv]
    : argv[1] === undefined || Object.hasOwn(options, argv[1])
      ? [...argv.slice(1), "--help"]
      : argv.slice(1);

/** Files whose names begin with a dash, as no option of ours does that ends so, and whatever stands behind a lone --. */
export function filesAsPaths(argv: readonly string[]): string[] {
  const end = argv.indexOf("--");
  const before = end < 0 ? argv : argv.slice(0, end);
  const behind = end < 0 ? [] : argv.slice(end + 1).map((word) => (word.startsWith("-") ? `./${word}` : word));
  return [...before.map((word) => (/^-[^-=][^=]*\.(ya?ml|csv)$/i.test(word) ? `./${word}` : word)), ...behind];
}

const beforeDashes = (argv: readonly string[]): readonly string[] =>
  argv.includes("--") ? argv.slice(0, argv.indexOf("--")) : argv;

/** The two that every command line has short. */
export const shortOptions = (argv: readonly string[]): string[] => {
  const end = beforeDashes(argv).length;
  const long = new Map([
    ["-h", "--help"],
    ["-v", "--version"],
  ]);
  return argv.map((word, index) => (index < end ? (long.get(word) ?? word) : word));
};

/** The code of a language, which is written small, however it is typed. */
export const languageAsCode = (argv: readonly string[]): string[] =>
  argv.map((word, index) =>
    argv[index - 1] === "--language" || word.startsWith("--language=") ? word.toLowerCase() : word,
  );

/** An option whose dashes a word processor has made one long one; undefined where there is none. */
export function pastedDash(argv: readonly string[]): string | undefined {
  const word = beforeDashes(argv).find((one) => /^[–—−][a-z]/i.test(one));
  return word && `"${word}" begins with a long dash, as pasted text has it; write --${word.slice(1)}`;
}

/** An option that is given again though it has one value; undefined where there is none. */
export function repeated(argv: readonly string[]): string | undefined {
  const command = commandOf(argv);
  const given = argv
    .slice(0, argv.includes("--") ? argv.indexOf("--") : argv.length)
    .flatMap((word) => /^--([^=]+)/.exec(word)?.[1] ?? []);
  const single: string[] = command === undefined ? [] : options[command].filter((option) => !option.endsWith("+"));
  const twice = given.find((option, index) => single.includes(option) && given.indexOf(option) !== index);
  return twice && `--${twice} is given twice; keep one of them`;
}

/** An option that the command does not have, in words; undefined where there is none. A number may be less than nought. */
export function unknownOption(argv: readonly string[]): string | undefined {
  const command = commandOf(argv);
  const end = argv.indexOf("--");
  const [first] = (end < 0 ? argv : argv.slice(0, end)).flatMap((word) => {
    const name = /^-+([^-\d=][^=]*)/.exec(word)?.[1];
    return name === undefined || (word.startsWith("--") && known(command).includes(name)) ? [] : [{ word, name }];
  });
  if (first === undefined || (command === undefined && argv.some((word) => !word.startsWith("-")))) return undefined;
  const { name, word } = first;
  const begun = known(command).filter((option) => name.length > 2 && option.startsWith(name));
  const nearest = begun.length === 1 ? begun[0] : closest(name, known(command));
  const all = known(command).map((option) => `--${option}`);
  return `${command ?? "witnessmark"} has no option ${word.split("=")[0]}; ${nearest ? `did you mean --${nearest}?` : `it has ${all.join(", ")}`}`;
}

/** `message`: the library's. */
export function usageWords(message: string, argv: readonly string[]): string {
  const command = commandOf(argv);
  const example = command === undefined ? "witnessmark print lathe.yaml" : examples[command];
  if (message.startsWith("Not enough non-option")) return `the machine file is missing; for example: ${example}`;
  const [, needed] = /^Missing required arguments?: (.*)/.exec(message) ?? [];
  if (needed !== undefined)
    return `${command} needs ${needed
      .split(", ")
      .map((option) => `--${option}`)
      .join(" and ")}; for example: ${example}`;
  const [, empty] = /^Not enough arguments following: (\S+)/.exec(message) ?? [];
  if (empty !== undefined)
    return `--${empty} needs a value behind it${exampleOf[empty] === undefined ? "" : `; for example: ${exampleOf[empty]}`}`;
  const [, option, value, choices] = /Argument: (\S+), Given: (.*), Choices: (.*)/.exec(message) ?? [];
  if (option !== undefined) return `--${option} cannot be ${value}; it is one of ${choices?.replaceAll('"', "")}`;
  const [, unknown] = /^Unknown arguments?: ([^,]+)/.exec(message) ?? [];
  if (unknown !== undefined && command !== undefined) return unknownWords(unknown, command, argv);
  const word = argv.find((other) => !other.startsWith("-"));
  if (word !== undefined && command === undefined) {
    if (/\.ya?ml$/i.test(word))
      return `say what to do with ${word}: witnessmark check ${word}, or witnessmark print ${word}`;
    const nearest = closest(word, Object.keys(options));
    return `there is no command "${word}"; ${nearest ? `did you mean ${nearest}?` : `there are ${Object.keys(options).join(", ")}`}`;
  }
  return /^Say what/.test(message) ? message : `this is not understood; for example: ${example}`;
}

function unknownWords(unknown: string, command: Command, argv: readonly string[]): string {
  const path = unquotedPath(unknown, argv);
  if (path !== undefined) return `a path with a space needs quotes: "${path}"`;
  return `"${unknown}" is one word too many; for example: ${examples[command]}; a path with a space needs quotes`;
}
