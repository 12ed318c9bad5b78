import type { Way } from "../file/edit.js";
import type { Schema } from "../schema.js";
import { machineSchema } from "../schema.js";

/** The stations of the work, in the order in which one goes through it. */
export type Station = {
  readonly name: string;
  /** Keys of the machine's file that are filled in here. */
  readonly keys: readonly string[];
  /** The sheet that one sees grow meanwhile. */
  readonly sheet?: string;
  readonly lead: string;
};

export const stations: readonly Station[] = [
  {
    name: "Machine",
    keys: ["name", "kind", "units", "revision", "measured", "language", "limits"],
    sheet: "measuring-form",
    lead: "Only a name is asked for. Print the measuring form, take it to the machine, and come back with its figures.",
  },
  {
    name: "Belts and gears",
    keys: ["drive"],
    sheet: "belt-card",
    lead: "From motor to spindle, one stage after the other: pulley diameters as the caliper finds them. Plug out while you measure.",
  },
  {
    name: "Handwheels",
    keys: ["handwheels"],
    sheet: "dial",
    lead: "One for each wheel that moves a slide: how far it goes in a turn, and what its dial is stuck on.",
  },
  {
    name: "Pieces",
    keys: ["scales", "angleScales", "dividing", "gears"],
    sheet: "dial",
    lead: "Straight scales, angle scales, dividing: all of it may stay empty.",
  },
  {
    name: "Stops and tapers",
    keys: ["stops", "tapers"],
    sheet: "stops",
    lead: "Lengths to come back to, and cones to swivel for.",
  },
  {
    name: "Printer and paper",
    keys: ["paper", "printers"],
    sheet: "printer-check",
    lead: "Print the printer check at 100 %, measure its bars, and put in what they measured: the pieces then come out true.",
  },
  {
    name: "Work",
    keys: ["work"],
    sheet: "drilling-card",
    lead: "What you cut, with what, how thick. Speeds are chosen for it.",
  },
  {
    name: "Job",
    keys: [],
    sheet: "plan",
    lead: "A part, step by step: what to set each wheel to, where the belt goes, what to mind.",
  },
  {
    name: "Own sheets",
    keys: [],
    lead: "A sheet of the program's copied and changed to your liking: its size, its blocks, what they show.",
  },
];

/** Where a place of the machine's file is filled in; what belongs nowhere is told at the first station. */
export const stationOf = ([key]: Way): Station =>
  stations.find(({ keys }) => keys.includes(String(key))) ?? (stations[0] as Station);

export const places = ["Paper", "Dial", "Ask", "Take away"] as const;
export type Place = (typeof places)[number];

/** Every key of the machine's file is filled in at some station. */
export const keysOnForms = (): string[] => stations.flatMap(({ keys }) => keys);
export const keysOfFile = (): string[] => Object.keys((machineSchema as Required<Schema>).properties);
