import yargs from "yargs";
import { formats } from "../output/formats.js";
import { languages } from "../words/languages.generated.js";
import { type Io, Refusal } from "./io.js";
import { packageVersion } from "./packageFiles.js";
import { asHelp, filesAsPaths, repeated, usageWords } from "./usage.js";

/** Runs one command line; resolves to the exit status: 0 fine, 1 something wrong with the file or request, 2 wrong usage. */
export async function run(words: readonly string[], io: Io): Promise<number> {
  const argv = asHelp(filesAsPaths(words));
  const refuse = (what: string): never => {
    throw new Refusal(`${what}\nFor help: witnessmark --help`, 2);
  };
  const again = repeated(argv);
  if (again !== undefined) refuse(again);
  let status = 0;
  const parser = yargs(argv)
    .scriptName("witnessmark")
    .version(packageVersion())
    .usage("$0 <command>\n\nTrue dials, turn tables and speed cards for one small manual machine, from one file.")
    .command(
      "new [file]",
      "write a commented starter file to fill in: a machine's, or with --job a job's",
      (y) =>
        y
          .positional("file", { type: "string", describe: "where to write the machine's; machine.yaml when left out" })
          .option("job", { type: "string", requiresArg: true, describe: "where to write a job's" }),
      async (args) => {
        status = await (await import("./commands.js")).newFile(args.file, args.job, io);
      },
    )
    .command(
      "check <file>",
      "read a machine file, report every problem, and show what follows from it",
      (y) =>
        y
          .positional("file", { type: "string", demandOption: true, describe: "the machine file" })
          .option("json", { type: "boolean", default: false, describe: "print one JSON object instead" })
          .option("choices", {
            type: "boolean",
            default: false,
            describe: "also the other ways to divide each dial, with what each costs",
          })
          .option("suppose", {
            type: "string",
            array: true,
            describe:
              'also show speeds with a changed drive, as "60 Hz", "motor 1725 rpm", "motor belt 60 to 150", "belt flat, 3 mm"',
          })
          .option("job", {
            type: "string",
            array: true,
            requiresArg: true,
            describe: "also a job file: what stands against it on this machine; give it again for another",
          })
          .option("out", {
            type: "string",
            requiresArg: true,
            default: "out",
            describe: "folder that pages were printed to: those out of date are named",
          }),
      async (args) => {
        const suppose = args.suppose ?? [];
        const { json, choices, out, job: jobs = [] } = args;
        status = await (await import("./commands.js")).check(args.file, { json, choices, suppose, out, jobs }, io);
      },
    )
    .command(
      "explain <file> [quantity]",
      "show how a number came about: formula, inputs, sources, result",
      (y) =>
        y
          .positional("file", { type: "string", demandOption: true, describe: "the machine file" })
          .positional("quantity", { type: "string", describe: "feed, speed, dial…; a list of them when left out" })
          .option("of", {
            type: "string",
            describe: "of what: a handwheel, a position, a material; all when left out",
          }),
      async (args) => {
        status = await (await import("./commands.js")).explain(args.file, args.quantity, args.of, io);
      },
    )
    .command(
      "verify <file>",
      "say whether a printed dial is good enough, as a caliper finds it",
      (y) =>
        y
          .positional("file", { type: "string", demandOption: true, describe: "the machine file" })
          .option("handwheel", { type: "string", demandOption: true, describe: "whose dial, by name" })
          .option("measured", {
            type: "string",
            demandOption: true,
            describe:
              "length of the strip between its cut ends, outside diameter of a face dial, arc or chord of a bevel's; a bare number is in the file's unit",
          })
          .option("by", {
            choices: ["strip", "ring", "arc", "chord"] as const,
            requiresArg: true,
            describe: "what was measured, where a dial has several lengths: a bevel's outer edge by arc or by chord",
          }),
      async (args) => {
        status = await (await import("./commands.js")).verify(args.file, args, io);
      },
    )
    .command(
      "print <file...>",
      "make the printed pages",
      (y) =>
        y
          .positional("file", { type: "string", array: true, demandOption: true, describe: "machine files" })
          .option("sheet", {
            requiresArg: true,
            type: "string",
            array: true,
            describe:
              "sheets to make, by name or a template file of your own; all that the file has data for when left out",
          })
          .option("handwheel", {
            type: "string",
            array: true,
            requiresArg: true,
            describe: "only these handwheels, by name",
          })
          .option("job", {
            type: "string",
            array: true,
            requiresArg: true,
            describe: "a job file: makes its plan; give it again for another",
          })
          .option("anyway", {
            type: "boolean",
            default: false,
            describe: "make the plan of a refused job too; every page of it says so",
          })
          .option("all", {
            type: "boolean",
            default: false,
            describe: "also bind every sheet into one PDF with contents and bookmarks",
          })
          .option("format", {
            choices: formats,
            default: formats[0],
            describe: "kind of file",
          })
          .option("language", {
            choices: languages,
            requiresArg: true,
            describe: "of the paper, before what the machine file says; English when neither says",
          })
          .option("dpi", { type: "number", requiresArg: true, describe: "how fine a png is drawn; 150 when left out" })
          .option("watch", {
            type: "boolean",
            default: false,
            describe: "go on, and print again whenever a file that the pages come from is saved; Ctrl-C ends it",
          })
          .option("out", { type: "string", requiresArg: true, default: "out", describe: "folder to write to" })
          .option("replace", {
            type: "boolean",
            default: false,
            describe: "also replace files of these names that witnessmark did not make",
          }),
      async (args) => {
        const { file, sheet, handwheel, job, anyway, all, format, dpi, watch, language, out, replace } = args;
        status = await (await import("./commands.js")).print(
          {
            files: file,
            sheets: sheet,
            handwheels: handwheel,
            jobs: job,
            anyway,
            all,
            format,
            dpi,
            watch,
            language,
            out,
            replace,
          },
          io,
        );
      },
    )
    .command(
      "sheets [file]",
      "list the sheets and the blocks they are made of, those of a machine, or get one to change",
      (y) =>
        y
          .positional("file", { type: "string", describe: "a machine file; with --copy where the copy goes" })
          .option("copy", { type: "string", requiresArg: true, describe: "write the template of this sheet" })
          .option("blocks", {
            type: "string",
            describe: "show every setting of every block, or of the one named",
          }),
      async ({ file, copy, blocks }) => {
        status = await (await import("./commands.js")).sheets({ file, copy, blocks }, io);
      },
    )
    .example("$0 new lathe.yaml", "start a file for your machine")
    .example("$0 new --job pin.yaml", "start a file for a part")
    .example("$0 check lathe.yaml --job pin.yaml", "what stands against making it on this machine")
    .example("$0 check lathe.yaml", "find mistakes; see feeds, speeds and dials")
    .example("$0 explain lathe.yaml feed --of 'Cross slide'", "where a number comes from")
    .example("$0 verify lathe.yaml --handwheel 'Cross slide' --measured 119.7", "check a printed strip")
    .example("$0 print lathe.yaml", "all sheets as PDF, into out/")
    .example("$0 print lathe.yaml --sheet dial --handwheel 'Cross slide'", "one dial")
    .example("$0 sheets --copy belt-card mine.yaml", "a sheet to change")
    .epilogue(
      "Print at 100 %, never “fit to page”. Exit status: 0 fine, 1 something wrong with the file or request, 2 wrong usage.",
    )
    .demandCommand(1, "Say what to do, for example: witnessmark print lathe.yaml")
    .strict()
    .recommendCommands()
    .parserConfiguration({ "greedy-arrays": false, "camel-case-expansion": false })
    .wrap(Math.min(100, process.stdout.columns ?? 100))
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
