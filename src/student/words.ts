import type { Use } from "../findings/uses.js";

/** The student's sheet in plain words, one idea a line. Common practice of training workshops. */
const neverAtAll = [
  "Never leave the key in the chuck.",
  "Never wear gloves, rings or loose sleeves.",
  "Never let long hair hang. Tie it back.",
  "Never work without eye cover.",
  "Never touch chips. They cut and burn. Use a brush.",
  "Never measure while it turns.",
  "Never move the belt while the plug is in.",
  "Never go faster than the chuck allows.",
  "Never breathe cast iron dust. Wipe it up, do not blow.",
] as const;

export const never: Readonly<Record<Use, readonly string[]>> = {
  turning: [...neverAtAll, "Never let a long bar stick out. It bends and whips."],
  drilling: ["Never hold the work in your hand. Clamp it.", ...neverAtAll],
};

export const beltSteps = [
  "Switch off. Wait until it stops.",
  "Pull the plug.",
  "Open the cover.",
  "Put the belt on the step you need.",
  "Turn the chuck once by hand. Take the key out.",
  "Close the cover. Then put the plug in.",
] as const;

export const lostMotionLines = [
  "Screws and gears fit loosely.",
  "When you turn back, the slide waits.",
  "That wait is lost motion.",
  "Always come to a line from the same side.",
  "Too far? Go back half a turn. Come on again.",
] as const;

export const askLines = [
  "Ask before you start. Ask when a sound is new. Ask when you are not sure.",
  "Your teacher, the maker's book and the rules of this shop come before this sheet.",
] as const;
