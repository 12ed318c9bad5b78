import { wrapped } from "../answers/wrapped.js";
import { formats } from "../output/formats.js";
import { languages } from "../words/languages.generated.js";
import { inColumns, type Row } from "./inColumns.js";

/** What a command is for, how it is called, its options as they are typed, and how one uses it. */
type Help = {
  readonly call: string;
  readonly words: string;
  readonly options: readonly Row[];
  readonly examples: readonly Row[];
};

export const helps = {
  new: {
    call: "new [file]",
    words: "write a file to fill in, with a remark at every key; machine.yaml when no name is given",
    options: [
      [
        "--job FILE",
        "a job's file in place of a machine's, or beside it; one of holes where the machine that is named, or stands beside it, is a drill",
      ],
    ],
    examples: [
      ["witnessmark new lathe.yaml", "for your machine"],
      ["witnessmark new --job pin.yaml", "for a part"],
    ],
  },
  check: {
    call: "check <file>",
    words:
      "find the mistakes in a machine file, and show its speeds, feeds and dials; each mistake is one line, however long, by whose file:line:column an editor jumps to it",
    options: [
      ["--choices", "also lost motion, strips, and every way to divide each dial, with what it costs"],
      ["--job FILE", "also what stands against a job on this machine; may be given again"],
      [
        "--suppose CHANGE",
        'also the speeds with another drive: "60 Hz", "motor 1725 rpm", "motor belt 60 to 150", "belt flat, 3 mm"; may be given again',
      ],
      ["--out FOLDER", "where pages were printed to, out when left out: those out of date are named"],
      ["--json", "one JSON object instead, for programs"],
    ],
    examples: [
      ["witnessmark check lathe.yaml", "mistakes, speeds, feeds, dials"],
      ["witnessmark check lathe.yaml --job pin.yaml", "can it make this part?"],
    ],
  },
  explain: {
    call: "explain <file> [quantity]",
    words: "show where a number comes from; without a quantity, what can be asked",
    options: [["--of NAME", "one handwheel, position or material, by a part of its name; all when left out"]],
    examples: [["witnessmark explain lathe.yaml feed --of cross", "the feed of the cross slide"]],
  },
  verify: {
    call: "verify <file>",
    words: "lay a caliper on a printed dial, and hear whether it is good enough",
    options: [
      ["--handwheel NAME", "whose dial; a part of its name will do"],
      [
        "--measured SIZE",
        "what the caliper shows: a strip between its cut ends, a ring across, a bevel's outer edge; a bare number is in the file's unit",
      ],
      ["--by HOW", "where a dial has several sizes, which was measured: strip, ring, arc or chord"],
    ],
    examples: [['witnessmark verify lathe.yaml --handwheel "Cross slide" --measured 119.7', ""]],
  },
  print: {
    call: "print <file...>",
    words: "make the pages of one machine file or many",
    options: [
      ["--sheet NAME", "this sheet, or a template file of your own; all that the file has data for when left out"],
      ["--handwheel NAME", "only this handwheel; a part of its name will do"],
      ["--job FILE", "also the plan of this job"],
      ["--anyway", "also the plan of a refused job; every page of it says so"],
      ["--all", "also everything bound into one PDF, with contents and bookmarks"],
      ["--format KIND", `${formats.join(", ")}; ${formats[0]} when left out`],
      ["--dpi NUMBER", "how fine a png is drawn; 150 when left out"],
      ["--language CODE", `of the paper: ${languages.join(", ")}; before what the file says`],
      ["--watch", "print again at each save of a file that the pages come from; Ctrl-C ends it"],
      ["--out FOLDER", "where to; out when left out"],
      ["--replace", "also write over files of these names that witnessmark did not make"],
    ],
    examples: [
      ["witnessmark print lathe.yaml", "all sheets, into out/"],
      ['witnessmark print lathe.yaml --sheet dial --handwheel "Cross slide"', "one dial"],
    ],
  },
  page: {
    call: "page [file]",
    words: "write all of this as one page for a browser, to open by a double click; no network, no installing",
    options: [
      ["--job FILE", "also this job inside; may be given again"],
      ["--sheet FILE", "also this template of your own inside; may be given again"],
      ["--out FILE", "its name; page.html when left out"],
      ["--replace", "also write over a file of this name that is no such page"],
    ],
    examples: [["witnessmark page lathe.yaml --out class.html", "your machine inside, to hand to a class"]],
  },
  sheets: {
    call: "sheets [file]",
    words: "list the sheets and the blocks they are made of, or those a machine gets",
    options: [
      ["--copy SHEET", "write this sheet's template to the file, for you to change"],
      ["--blocks [BLOCK]", "every setting of every block, or of one"],
    ],
    examples: [["witnessmark sheets --copy belt-card mine.yaml", "a sheet to change"]],
  },
} as const satisfies Record<string, Help>;
export type Command = keyof typeof helps;

const isCommand = (word: string): word is Command => Object.hasOwn(helps, word);

/** The command of a command line, if it names one. */
export const commandOf = (argv: readonly string[]): Command | undefined => argv.find(isCommand);

/** Help for one command, or for all of them. */
export function helpLines(command: Command | undefined): string[] {
  if (command === undefined)
    return [
      "witnessmark makes dials, turn tables and belt cards that are true for one small",
      "manual machine, from one file about it.",
      "",
      ...inColumns(Object.values(helps).map(({ call, words }): Row => [call, words])),
      "",
      "More about one of them: witnessmark help print",
      "",
      "First steps:",
      "  witnessmark new lathe.yaml                          a file for your machine",
      "  witnessmark print lathe.yaml --sheet measuring-form a form to measure by",
      "  witnessmark check lathe.yaml                        mistakes, feeds, speeds",
      "  witnessmark print lathe.yaml                        every sheet, into out/",
      "",
      "Print at 100 %, never “fit to page”. A file whose name begins with a dash",
      "stands behind a lone --. Exit status: 0 fine, 1 something is wrong with the",
      "file or what was asked, 2 the command line is not understood.",
    ];
  const { call, words, options, examples }: Help = helps[command];
  return [
    `witnessmark ${call}`,
    ...wrapped(words, 76).map((line) => `  ${line}`),
    "",
    ...inColumns(options),
    "",
    "For example:",
    ...examples.flatMap(([line, note]) => [`  ${line}`, ...(note === "" ? [] : [`      ${note}`])]),
  ];
}
