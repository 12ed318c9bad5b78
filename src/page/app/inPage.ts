/** What the core says for who sits at the command line, and where in the page one does it instead: in the languages of the paper,
 *  which say what a sheet lacks. tests/page/inPage.test.ts finds words of the command that are missing here. */
const instead: readonly (readonly [command: RegExp, page: string])[] = [
  [
    /name the machine's file, and give this one to print with --job/g,
    "it belongs to the station Job: save its text under another name, and open it",
  ],
  [
    /name the machine's file, and give this one to print with --sheet/g,
    "it belongs to the station Own sheets: save its text under another name, and open it",
  ],
  [
    /name it before --job, and give --job the file that lists the steps/g,
    "it belongs to the station Machine; a job's file lists steps",
  ],
  [/see with --suppose ("[^"]*") what it does here/g, "see under Ask what $1 does here"],
  [/all there are: witnessmark sheets --blocks/g, "all there are stand below, under “All blocks”"],
  [/begin with one of: witnessmark sheets --copy/g, "begin with a copy of one of the program's, below"],
  [/print takes it without --sheet/g, "open it by itself"],
  [/name a job file with --job/g, "make one at the station Job, or open one"],
  [/^suppose: /g, ""],
  [/\bexplain (\w+) shows (it|each)\b/g, "see “$1”, here under Number"],
  [/drive\.motor\.mains is not given/g, "the mains frequency is not filled in"],
  [/give drive\.motor\.mains/g, "fill in “Mains” of the motor at the station Belts and gears"],
  [/check says why/g, "the station Handwheels says why"],
  [/mit --job eine Auftragsdatei nennen/g, "einen unter „Job“ anlegen oder öffnen"],
  [/check sagt, warum/g, "unter „Handwheels“ steht, warum"],
];

/** Words of the core, as they are said in the page. */
export const inPage = (words: string): string =>
  instead.reduce((so, [command, page]) => so.replace(command, page), words);
