import { computed, effect, type ReadonlySignal, type Signal, signal } from "@preact/signals";
import { type Way, withValue } from "../file/edit.js";
import type { Plain } from "../file/yamlText.js";
import type { DocumentKind, Kept } from "../inside.js";
import { machineSchema } from "../schema.js";
import type { Files, Named, SheetNamed, SheetState, Told } from "../work/protocol.js";
import { FileDocument } from "./document.js";
import { inForm } from "./form/inForm.js";
import { inPage } from "./inPage.js";
import { type Asker, newest } from "./worker.js";

/** What lies on the desk: the machine's file, and what goes with it. All that is worked out comes from these texts. */
export type Desk = {
  readonly documents: Signal<readonly FileDocument[]>;
  readonly machine: ReadonlySignal<FileDocument>;
  readonly files: ReadonlySignal<Files>;
  readonly told: ReadonlySignal<readonly Told[]>;
  readonly sound: ReadonlySignal<boolean>;
  readonly handwheels: ReadonlySignal<readonly string[]>;
  /** The unit in which each handwheel is read. */
  readonly readIn: ReadonlySignal<readonly ("mm" | "in")[]>;
  readonly sheets: ReadonlySignal<readonly SheetState[]>;
  readonly asker: Asker;
  /** What is to be said of files that were opened: those not taken, and why; what another took the place of. */
  readonly refused: Signal<readonly string[]>;
  /** The job that lies open, of several the one that was chosen or came last: its plan lies on the paper. */
  readonly job: ReadonlySignal<FileDocument | undefined>;
  readonly openJob: (job: FileDocument) => void;
  /** Files that were taken off, the last one last. */
  readonly takenOff: Signal<readonly FileDocument[]>;
};

export function deskOf(kept: Kept, asker: Asker): Desk {
  const documents = signal(documentsOf(kept));
  const machine = computed(() => documents.value.find(({ kind }) => kind === "machine") as FileDocument);
  const named = (kind: DocumentKind): Named[] =>
    documents.value
      .filter((one) => one.kind === kind)
      .map(({ name, text }) => ({ name: name.value, text: text.value }));
  const files = computed<Files>(() => ({
    machine: { name: machine.value.name.value, text: machine.value.text.value },
    jobs: named("job"),
    readings: named("readings"),
    sheets: named("sheet"),
  }));
  const read = newest(asker, "read", () => ({ files: files.value, asked: {} })).answer;
  const sheets = computed(() => listed.value ?? []);
  const listed = newest(asker, "sheets", () => ({ files: files.value, asked: {} })).answer;
  const opened = signal<FileDocument | undefined>(undefined);
  const lacking = lackingOf(asker, files, sheets);
  return {
    ...{ documents, machine, files, asker },
    refused: signal([]),
    takenOff: signal([]),
    job: computed(() => {
      const jobs = documents.value.filter(({ kind }) => kind === "job");
      return jobs.find((one) => one === opened.value) ?? jobs.at(-1);
    }),
    openJob: (job) => (opened.value = job),
    told: computed(() =>
      (read.value?.told ?? [])
        .filter(({ file }) => !documents.value.some(({ name, text }) => name.value === file && isBeginning(text.value)))
        .map((one) => ({ ...one, what: inPage(one.what), remedy: inPage(one.remedy) })),
    ),
    sound: computed(() => read.value?.sound ?? false),
    handwheels: computed(() => read.value?.handwheels ?? []),
    readIn: computed(() => read.value?.readIn ?? []),
    sheets: computed(() =>
      sheets.value.map((one) => {
        const why = lacking.value === undefined ? NOT_LOOKED_AT : lacking.value.get(one.name);
        return { ...one, ...(why !== undefined && { why: inForm(inPage(why)) }) };
      }),
    ),
  };
}

/** Whether nothing is filled in yet: such a file has no faults, it is to be begun. */
export const isBeginning = (text: string): boolean =>
  text.split("\n").every((line) => /^\s*(?:\w+:\s*|units:\s*(?:in|mm)\s*)?(?:#.*)?$/.test(line));

/** Why of a sheet that nobody has laid out yet. */
export const NOT_LOOKED_AT = "not looked at yet";

/** How long the files must have stood before every sheet is laid out to see what it lacks, ms. */
const QUIET = 400;

/** What each sheet lacks, by its name: looked at one by one, while nothing else is asked and nobody types. */
function lackingOf(
  asker: Asker,
  files: ReadonlySignal<Files>,
  sheets: ReadonlySignal<readonly SheetNamed[]>,
): ReadonlySignal<ReadonlyMap<string, string> | undefined> {
  const lacking = signal<ReadonlyMap<string, string> | undefined>(undefined);
  const look = async (now: Files, names: readonly string[]): Promise<void> => {
    const found = new Map<string, string>();
    for (const sheet of names) {
      try {
        const { why } = await asker.ask("lacks", now, { sheet }, "later");
        if (why !== undefined) found.set(sheet, why);
      } catch (fault) {
        found.set(sheet, fault instanceof Error ? fault.message : String(fault));
      }
      if (files.peek() !== now) return;
    }
    lacking.value = found;
  };
  effect(() => {
    const [now, names] = [files.value, sheets.value.map(({ name }) => name)];
    if (names.length === 0) return undefined;
    const timer = setTimeout(() => void look(now, names), lacking.peek() === undefined ? 0 : QUIET);
    return () => clearTimeout(timer);
  });
  return lacking;
}

const documentsOf = (kept: Kept): FileDocument[] => {
  const documents = kept.map(({ kind, name, text }) => new FileDocument(kind, name, text));
  return documents.some(({ kind }) => kind === "machine")
    ? documents
    : [new FileDocument("machine", "lathe.yaml", ""), ...documents];
};

/** Adds a file, or puts it in the place of one of its kind and name; a machine's file takes the place of the machine's. */
export function add(desk: Desk, kind: DocumentKind, name: string, text: string): FileDocument {
  const now = desk.documents.peek();
  const same = now.find((one) => one.kind === kind && (kind === "machine" || one.name.peek() === name));
  if (same) {
    same.write(text, name);
    return same;
  }
  const document = new FileDocument(kind, name, text);
  desk.documents.value = [...now, document];
  return document;
}

/** Takes a file off; it waits beside the desk, with all that can be undone in it, until it is put back. */
export function remove(desk: Desk, document: FileDocument): void {
  desk.documents.value = desk.documents.peek().filter((one) => one !== document);
  desk.takenOff.value = [...desk.takenOff.peek(), document];
}

export function putBack(desk: Desk, document: FileDocument): void {
  const name = freeName(desk, document.name.peek());
  if (name !== document.name.peek()) document.rename(name);
  desk.takenOff.value = desk.takenOff.peek().filter((one) => one !== document);
  desk.documents.value = [...desk.documents.peek(), document];
}

/** This name, or the first with a number behind it that no file bears yet. */
export function freeName(desk: Desk, name: string): string {
  const taken = new Set(desk.documents.peek().map((one) => one.name.peek()));
  const [, stem, ending] = /^(.*?)(\.[^.]*)?$/.exec(name) ?? [];
  let free = name;
  for (let n = 2; taken.has(free); n++) free = `${stem}-${n}${ending ?? ""}`;
  return free;
}

/** Begins another machine. What stood there is an undo away; jobs and own sheets stay on the desk. */
export function beginAnew(desk: Desk): void {
  const old = desk.machine.peek().name.peek();
  const others = desk.documents.peek().filter(({ kind }) => kind !== "machine");
  add(desk, "machine", freeName(desk, "lathe.yaml"), "");
  const stay = others.map(({ name }) => `“${name.peek()}”`).join(", ");
  desk.refused.value = [
    `A new machine: until this page is closed, “undo” beside its name brings “${old}” back.`,
    ...(stay === ""
      ? []
      : [`From before there lie still on the desk ${stay}: take off what is none of the new machine’s.`]),
  ];
}

/** Puts other files in the place of all; each way back is there: undo, and what was taken off. */
export function layInstead(desk: Desk, files: Kept): void {
  const isAmong = ({ kind, name }: FileDocument): boolean =>
    files.some((one) => one.kind === kind && one.name === name.peek());
  // One that was taken off is on the desk again, not a second time.
  for (const document of desk.takenOff.peek().filter(isAmong)) if (isFree(desk, document)) putBack(desk, document);
  for (const document of desk.documents.peek())
    if (document.kind !== "machine" && !isAmong(document)) remove(desk, document);
  for (const { kind, name, text } of files) add(desk, kind, name, text);
}

const isFree = (desk: Desk, { name }: FileDocument): boolean => freeName(desk, name.peek()) === name.peek();

/** Puts values into the machine's file, to be undone together. @throws Error where its text is no YAML */
export function putValues(desk: Desk, ...values: readonly (readonly [Way, Plain])[]): void {
  const machine = desk.machine.peek();
  const order = Object.keys(machineSchema.properties ?? {});
  machine.write(values.reduce((so, [way, value]) => withValue(so, way, value, order), machine.text.peek()));
}

/** What a bare length is in. */
export const unitOf = ({ machine }: Pick<Desk, "machine">): "mm" | "in" =>
  machine.value.nodes.value.words(["units"]) === "in" ? "in" : "mm";

/** What a bare length is in that a wheel's dial is to show. */
export const unitAt = (desk: Desk, wheel: string): "mm" | "in" =>
  desk.readIn.value[desk.handwheels.value.indexOf(wheel)] ?? unitOf(desk);

export const keptOf = (desk: Desk): Kept =>
  desk.documents.value.map(({ kind, name, text }) => ({ kind, name: name.value, text: text.value }));
