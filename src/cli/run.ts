import yargs from "yargs";
import { formats } from "../output/formats.js";
import { languages } from "../words/languages.generated.js";
import { commandOf, helpLines, helps } from "./help.js";
import { type Io, Refusal } from "./io.js";
import { packageVersion } from "./packageFiles.js";
import {
  asHelp,
  asksHelp,
  filesAsPaths,
  languageAsCode,
  pastedDash,
  repeated,
  shortOptions,
  unknownOption,
  usageWords,
} from "./usage.js";

/** Runs one command line; resolves to the exit status: 0 fine, 1 something wrong with the file or request, 2 wrong usage. */
export async function run(words: readonly string[], io: Io): Promise<number> {
  const argv = languageAsCode(asHelp(shortOptions(filesAsPaths(words))));
  const refuse = (what: string): never => {
    throw new Refusal(`${what}\nFor help: witnessmark --help`, 2);
  };
  const wrong = pastedDash(argv) ?? unknownOption(argv) ?? repeated(argv);
  if (wrong !== undefined) refuse(wrong);
  if (asksHelp(argv)) {
    for (const line of helpLines(commandOf(argv))) io.out(line);
    return 0;
  }
  let status = 0;
  const parser = yargs(argv)
    .scriptName("witnessmark")
    .help(false)
    .version(packageVersion())
    .command(
      "new [file]",
      helps.new.words,
      (y) => y.positional("file", { type: "string" }).option("job", { type: "string", requiresArg: true }),
      async (args) => {
        status = await (await import("./commands.js")).newFile(args.file, args.job, io);
      },
    )
    .command(
      "check <file>",
      helps.check.words,
      (y) =>
        y
          .positional("file", { type: "string", demandOption: true })
          .option("json", { type: "boolean", default: false })
          .option("choices", { type: "boolean", default: false })
          .option("suppose", { type: "string", array: true, requiresArg: true })
          .option("job", { type: "string", array: true, requiresArg: true })
          .option("out", { type: "string", requiresArg: true, default: "out" }),
      async ({ file, json, choices, suppose, out, job: jobs }) => {
        status = await (await import("./commands.js")).check(file, { json, choices, suppose, out, jobs }, io);
      },
    )
    .command(
      "explain <file> [quantity]",
      helps.explain.words,
      (y) =>
        y
          .positional("file", { type: "string", demandOption: true })
          .positional("quantity", { type: "string" })
          .option("of", { type: "string", requiresArg: true }),
      async (args) => {
        status = await (await import("./commands.js")).explain(args.file, args.quantity, args.of, io);
      },
    )
    .command(
      "verify <file>",
      helps.verify.words,
      (y) =>
        y
          .positional("file", { type: "string", demandOption: true })
          .option("handwheel", { type: "string", demandOption: true, requiresArg: true })
          .option("measured", { type: "string", demandOption: true, requiresArg: true })
          .option("by", { choices: ["strip", "ring", "arc", "chord"] as const, requiresArg: true }),
      async (args) => {
        status = await (await import("./commands.js")).verify(args.file, args, io);
      },
    )
    .command(
      "print <file...>",
      helps.print.words,
      (y) =>
        y
          .positional("file", { type: "string", array: true, demandOption: true })
          .option("sheet", { type: "string", array: true, requiresArg: true })
          .option("handwheel", { type: "string", array: true, requiresArg: true })
          .option("job", { type: "string", array: true, requiresArg: true })
          .option("anyway", { type: "boolean", default: false })
          .option("all", { type: "boolean", default: false })
          .option("format", { choices: formats, default: formats[0], requiresArg: true })
          .option("language", { choices: languages, requiresArg: true })
          .option("dpi", { type: "number", requiresArg: true })
          .option("watch", { type: "boolean", default: false })
          .option("out", { type: "string", requiresArg: true, default: "out" })
          .option("replace", { type: "boolean", default: false }),
      async ({ file: files, sheet: sheets, handwheel: handwheels, job: jobs, ...rest }) => {
        const { anyway, all, format, dpi, watch, language, out, replace } = rest;
        const asked = { files, sheets, handwheels, jobs, anyway, all, format, dpi, watch, language, out, replace };
        status = await (await import("./commands.js")).print(asked, io);
      },
    )
    .command(
      "page [file]",
      helps.page.words,
      (y) =>
        y
          .positional("file", { type: "string" })
          .option("job", { type: "string", array: true, requiresArg: true })
          .option("sheet", { type: "string", array: true, requiresArg: true })
          .option("out", { type: "string", requiresArg: true, default: "page.html" })
          .option("replace", { type: "boolean", default: false }),
      async ({ file, job: jobs, sheet: sheets, out, replace }) => {
        status = await (await import("./commands.js")).page({ file, jobs, sheets, out, replace }, io);
      },
    )
    .command(
      "sheets [file]",
      helps.sheets.words,
      (y) =>
        y
          .positional("file", { type: "string" })
          .option("copy", { type: "string", requiresArg: true })
          .option("blocks", { type: "string" }),
      async ({ file, copy, blocks }) => {
        status = await (await import("./commands.js")).sheets({ file, copy, blocks }, io);
      },
    )
    .demandCommand(1, "Say what to do, for example: witnessmark print lathe.yaml")
    .strict()
    .recommendCommands()
    .parserConfiguration({ "greedy-arrays": false, "boolean-negation": false, "camel-case-expansion": false })
    .exitProcess(false)
    .showHelpOnFail(false)
    .fail((message, error) => {
      // yargs' own complaints are wrong usage; anything else is not its business.
      if (error && error.name !== "YError") throw error;
      refuse(usageWords(message, argv));
    });
  await parser.parseAsync();
  return status;
}
