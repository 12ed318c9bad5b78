import type { HandwheelFinding } from "../../src/findings/findings.js";
import { MEASURED, TOUCHED } from "../../src/plan/doubt.js";
import { ENTERED } from "../../src/plan/holes.js";
import type { Plan } from "../../src/plan/plan.js";
import type { PlannedStep } from "../../src/plan/plannedStep.js";
import type { Reading, Zero } from "../../src/plan/zero.js";

/** A lathe that cuts as its slides truly move, not as its file says; it follows a plan as its sheet tells, and knows nothing of
 *  how the plan was made. The work is a row of rings, each with a radius outside and inside. */

/** What a screw truly does, mm for turns: its feed, a wave in every turn, wear in the middle of its travel. `lost`: mm. */
export type Screw = {
  readonly feed: number;
  readonly wave: number;
  readonly phase: number;
  readonly worn: number;
  readonly travel: number;
  readonly lost: number;
};

export function along(screw: Screw, turns: number): number {
  const { feed, wave, phase, worn, travel } = screw;
  const place = feed * turns;
  const inWorn = Math.min(1, Math.max(0, place / travel));
  return place + wave * Math.sin(2 * Math.PI * turns + phase) + worn * Math.sin(Math.PI * inWorn) ** 2;
}

/** A slide on its screw, with play. */
class Slide {
  turns: number;
  place: number;
  constructor(
    private readonly screw: Screw,
    start: number,
  ) {
    this.turns = start;
    this.place = along(screw, start);
  }
  turnTo(turns: number): void {
    const nut = along(this.screw, turns);
    this.place = turns > this.turns ? Math.max(this.place, nut) : Math.min(this.place, nut + this.screw.lost);
    this.turns = turns;
  }
  /** Come to from one side, as every plan says: back beyond the play, then on. */
  comeTo(turns: number, sense: 1 | -1 = 1): void {
    this.turnTo(turns - sense * 0.9);
    this.turnTo(turns);
  }
}

/** Rings of this width, mm. */
const RING = 0.02;

export type Random = { readonly between: (low: number, high: number) => number };

export type Outcome = {
  /** Of each step: how much metal it took, mm² of half section, and its deepest pass, mm. */
  readonly taken: readonly number[];
  readonly deepest: readonly number[];
  /** By step, in the order of the plan's sizes: what came out. */
  readonly sizes: readonly (readonly (number | undefined)[])[];
  /** What must not happen. */
  readonly harm: readonly string[];
};

type Wheel = HandwheelFinding;

/** Zeros that a first part leaves for the others. */
export type Zeros = Map<string, number>;

export class VirtualLathe {
  private readonly slides = new Map<string, Slide>();
  private readonly zeros: Zeros = new Map();
  constructor(
    screws: ReadonlyMap<string, Screw>,
    private readonly random: Random,
  ) {
    for (const [name, screw] of screws) this.slides.set(name, new Slide(screw, (screw.travel / screw.feed) * 0.15 + 2));
  }

  private slide(wheel: Wheel): Slide {
    const found = this.slides.get(wheel.handwheel.name);
    if (found === undefined) throw new Error(`no slide ${wheel.handwheel.name}`);
    return found;
  }

  private error(size: number): number {
    return this.random.between(-size, size);
  }

  /** Turns that a reading stands for, as it is read off the printed dial, to a fifth of a division. */
  private turnsOf(wheel: Wheel, { setting, back }: Reading): number {
    const { dial, reading } = wheel;
    if (dial === undefined || reading === undefined) throw new Error("no dial to read");
    const division = dial.divisionWorth / reading.perTurn;
    const turns = setting.wholeTurns + (setting.divisions ?? 0) * division + this.error(division / 10);
    return back ? -turns : turns;
  }

  /** Makes a part; the first one touches off, later ones keep its zeros and measure nothing. */
  make(plan: Plan, first: boolean): Outcome {
    return new Making(this, plan, first).run();
  }

  // What a part in the making uses.
  readonly hands = {
    slide: (wheel: Wheel) => this.slide(wheel),
    error: (size: number) => this.error(size),
    turnsOf: (wheel: Wheel, reading: Reading) => this.turnsOf(wheel, reading),
    zeros: this.zeros,
  };
}

const keyOf = (step: PlannedStep, zero: Zero): string => `${step.number} ${zero.wheel.handwheel.name} ${zero.of}`;

class Making {
  /** Radii by ring, in the machine's own frame: place 0 is where the raw end stands. */
  private outside: Float64Array = new Float64Array();
  private inside: Float64Array = new Float64Array();
  /** True place of the finished face, and of the jaws. */
  private face = 0;
  private jaws = 0;
  private readonly taken: number[] = [];
  private readonly deepest: number[] = [];
  private readonly sizes: (number | undefined)[][] = [];
  private readonly harm: string[] = [];
  /** Turn at which the dial of a wheel reads 0 now, and where the tip then is: across as a radius, along as a place. */
  private readonly zero = new Map<string, number>();
  private readonly tip = new Map<string, number>();
  private raw = 0;

  constructor(
    private readonly lathe: VirtualLathe,
    private readonly plan: Plan,
    private readonly first: boolean,
  ) {
    const { bar } = plan.job;
    if (bar === undefined) throw new Error("nothing to turn");
    const length = bar.length ?? bar.out + 60;
    const rings = Math.round(length / RING);
    this.outside = new Float64Array(rings).fill(bar.diameter / 2);
    this.inside = new Float64Array(rings).fill((bar.bore ?? 0) / 2);
    this.jaws = bar.out;
  }

  run(): Outcome {
    for (const step of this.plan.steps) this.step(step);
    return { taken: this.taken, deepest: this.deepest, sizes: this.sizes, harm: this.harm };
  }

  private ring(place: number): number {
    return Math.min(this.outside.length, Math.max(0, Math.round(place / RING)));
  }

  private metal(): number {
    let sum = 0;
    for (let ring = 0; ring < this.outside.length; ring++)
      sum += Math.max(0, (this.outside[ring] as number) - (this.inside[ring] as number));
    return sum * RING;
  }

  private step(step: PlannedStep): void {
    const before = this.metal();
    this.deepest.push(0);
    for (const zero of step.zeros) this.touch(step, zero);
    const sizes = this.cut(step);
    for (const zero of step.zerosAfter) {
      const slide = this.lathe.hands.slide(zero.wheel);
      this.setZero(zero.wheel, slide.turns, zero.of === "end" ? this.face : 0, keyOf(step, zero));
    }
    this.sizes.push(sizes);
    this.taken.push(before - this.metal());
  }

  /** The tip is brought to what is touched, then the dial is set to 0. On later parts the zero stays where it was. */
  private touch(step: PlannedStep, zero: Zero): void {
    const { wheel, of, at } = zero;
    const { hands } = this.lathe;
    const slide = hands.slide(wheel);
    slide.comeTo(slide.turns, of === "bore" ? -1 : 1);
    const key = keyOf(step, zero);
    const felt = hands.error(of === "mouth" ? ENTERED : of === "begin" ? 0 : TOUCHED);
    // A diameter that measures other than the plan says is made up for; here all stock is as it says.
    const place =
      of === "diameter" || of === "bore"
        ? at / 2 + felt
        : of === "raw end"
          ? this.raw + felt
          : of === "begin"
            ? 0
            : this.face + at + felt;
    this.setZero(wheel, slide.turns, place, key);
  }

  /** `place`: where the tip truly is while the dial reads 0. */
  private setZero(wheel: Wheel, turns: number, place: number, key: string): void {
    const { name } = wheel.handwheel;
    const { zeros, slide } = this.lathe.hands;
    const kept = this.first ? undefined : zeros.get(key);
    if (kept === undefined) zeros.set(key, turns);
    this.zero.set(name, kept ?? turns);
    const moved = slide(wheel).place;
    const held = this.first ? undefined : zeros.get(`${key} tip`);
    if (held === undefined) zeros.set(`${key} tip`, place - moved * this.sense(wheel));
    this.tip.set(name, held ?? place - moved * this.sense(wheel));
  }

  /** Across goes inward, so that the tip's radius falls while the slide goes on. */
  private sense(wheel: Wheel): 1 | -1 {
    return /cross/i.test(wheel.handwheel.name) ? -1 : 1;
  }

  /** Where the tip truly is. */
  private tipOf(wheel: Wheel): number {
    return (this.tip.get(wheel.handwheel.name) ?? 0) + this.lathe.hands.slide(wheel).place * this.sense(wheel);
  }

  private goTo(wheel: Wheel, reading: Reading): number {
    const { hands } = this.lathe;
    const turns = (this.zero.get(wheel.handwheel.name) ?? 0) + hands.turnsOf(wheel, reading);
    hands.slide(wheel).comeTo(turns, reading.back ? -1 : 1);
    return this.tipOf(wheel);
  }

  private cut(step: PlannedStep): (number | undefined)[] {
    const { step: asked } = step.stage;
    switch (asked.do) {
      case "face":
        return this.faced(step);
      case "turn":
      case "shoulder":
      case "bore":
        return this.reduced(step, asked.do === "bore");
      case "groove":
      case "part":
        return this.plunged(step, asked.blade, asked.do === "part");
      case "drill":
      case "ream":
        return this.drilled(step, asked.diameter);
      case "centre drill":
        return this.centred(step.stage.shaping.inside[0]?.start ?? 0);
      case "tap":
      case "die":
        return this.threaded(step);
      case "chamfer":
        return this.chamfered(step, asked.at);
      case "taper":
        return this.tapered(step, asked);
      case "turn round":
      case "hold":
        return this.heldAnew(asked.out, asked.do === "turn round");
      default:
        return step.sizes.map(() => undefined);
    }
  }

  private faced(step: PlannedStep): (number | undefined)[] {
    const { depthWheel, passes } = step;
    if (depthWheel === undefined) throw new Error("nothing sets the face");
    let place = this.raw;
    for (const pass of passes) {
      if (pass.reading === undefined) throw new Error("no reading");
      const before = place;
      place = this.goTo(depthWheel, pass.reading);
      this.deep(place - before);
      for (let ring = 0; ring < this.ring(place); ring++) this.outside[ring] = this.inside[ring] = 0;
    }
    this.face = place;
    this.raw = place;
    // What is measured with a micrometer does not hang on the dial; its promise is for the dial alone.
    return step.sizes.map(() => undefined);
  }

  private deep(depth: number): void {
    const last = this.deepest.length - 1;
    this.deepest[last] = Math.max(this.deepest[last] ?? 0, depth);
  }

  /** Cuts every ring between two places down (or up) to a radius. */
  private sweep(from: number, to: number, radius: (place: number) => number, bore = false): void {
    if (to > this.jaws + 1e-6)
      this.harm.push(`the tool comes to ${to.toFixed(2)}, the jaws begin at ${this.jaws.toFixed(2)}`);
    let deepest = 0;
    for (let ring = this.ring(from); ring < this.ring(to); ring++) {
      const wanted = radius((ring + 0.5) * RING);
      const list = bore ? this.inside : this.outside;
      const now = list[ring] as number;
      const solid = (this.outside[ring] as number) > (this.inside[ring] as number);
      const takes = bore ? wanted - now : now - wanted;
      if (takes <= 0 || !solid) continue;
      deepest = Math.max(deepest, takes);
      list[ring] = Math.max(0, wanted);
    }
    this.deep(deepest);
  }

  private span(step: PlannedStep): { from: number; to: number; stop: number } {
    const begin = step.places.find(({ what }) => what === "begin");
    const stop = step.places.find(({ what }) => what === "stop");
    const from = begin ? this.goTo(begin.wheel, begin.reading) : 0;
    const to = stop ? this.goTo(stop.wheel, stop.reading) : 0;
    return { from, to, stop: to };
  }

  private reduced(step: PlannedStep, bore: boolean): (number | undefined)[] {
    const { depthWheel, passes, stage } = step;
    const { step: asked } = stage;
    if (depthWheel === undefined || !("to" in asked) || !("cut" in asked)) throw new Error("nothing sets the depth");
    const { hands } = this.lathe;
    const { from, to } = this.span(step);
    const measured = passes.some(({ kind }) => kind === "rough");
    const sense = bore ? -1 : 1;
    let radius = 0;
    for (const pass of passes) {
      if (pass.reading === undefined) throw new Error("no reading");
      if (pass.kind !== "spring") {
        if (pass.kind === "finish" && measured && this.first) {
          // Measured as it stands, then gone on by what is left, to the tenth of a division.
          const gauge = 2 * radius + hands.error(MEASURED.mm);
          const left = Math.abs(gauge - asked.to.aim) / (depthWheel.handwheel.reads === "diameter" ? 1 : 2);
          const tenth = (depthWheel.dial?.divisionWorth ?? Number.NaN) / 10;
          const steps = Math.round(left / tenth);
          const slide = hands.slide(depthWheel);
          const division = (depthWheel.dial?.divisionWorth ?? Number.NaN) / (depthWheel.reading?.perTurn ?? Number.NaN);
          const on = (steps / 10) * division + hands.error(division / 10) + hands.error(division / 10);
          slide.comeTo(slide.turns + sense * on, sense);
          radius = this.tipOf(depthWheel);
          this.mendZero(step, depthWheel, pass.reading);
          // What the dial reads at the right size is written down, as it is read.
          const zero = this.zero.get(depthWheel.handwheel.name) ?? 0;
          hands.zeros.set(`${step.number} right`, slide.turns - zero + hands.error(division / 10));
        } else if (pass.kind === "finish" && measured) {
          const right = hands.zeros.get(`${step.number} right`) ?? Number.NaN;
          const division = (depthWheel.dial?.divisionWorth ?? Number.NaN) / (depthWheel.reading?.perTurn ?? Number.NaN);
          const zero = this.zero.get(depthWheel.handwheel.name) ?? 0;
          hands.slide(depthWheel).comeTo(zero + right + hands.error(division / 10), sense);
          radius = this.tipOf(depthWheel);
        } else radius = this.goTo(depthWheel, pass.reading);
      }
      this.sweep(from, to, () => radius, bore);
    }
    const list = bore ? this.inside : this.outside;
    const middle = this.ring((Math.max(from, this.face) + to) / 2);
    return step.sizes.map(({ what }) => (what === "diameter" ? 2 * (list[middle] as number) : to - this.face));
  }

  /** At the first measured cut from a zero the dial is set to the printed reading where the slide stands, so that later readings are
   *  true. */
  private mendZero(step: PlannedStep, wheel: Wheel, reading: Reading): void {
    const { zeros, slide } = this.lathe.hands;
    if (
      this.plan.steps.find(
        ({ depthZero, passes }) => depthZero === step.depthZero && passes.some(({ kind }) => kind === "rough"),
      ) !== step
    )
      return;
    const turns = reading.travel / (wheel.feed?.perTurn ?? Number.NaN);
    const at = slide(wheel).turns - turns;
    this.zero.set(wheel.handwheel.name, at);
    if (step.depthZero === undefined) return;
    const owner = this.plan.steps.find((one) => one.zeros.includes(step.depthZero as Zero));
    if (owner) zeros.set(keyOf(owner, step.depthZero), at);
  }

  private plunged(step: PlannedStep, blade: number, through: boolean): (number | undefined)[] {
    const depth = step.places.find(({ what }) => what === "depth");
    if (depth === undefined) throw new Error("no depth");
    let end = 0;
    let radius = 0;
    for (const { wheel, reading } of step.places.filter(({ what }) => what === "plunge")) {
      end = this.goTo(wheel, reading);
      radius = this.goTo(depth.wheel, depth.reading);
      const floor = through ? 0 : radius;
      this.sweep(end - blade, end, () => floor);
    }
    if (!through) return step.sizes.map(() => 2 * radius);
    const cut = this.ring(end - blade);
    this.outside = this.outside.slice(0, cut);
    this.inside = this.inside.slice(0, cut);
    return step.sizes.map(() => end - blade - this.face);
  }

  private drilled(step: PlannedStep, diameter: number): (number | undefined)[] {
    const depth = step.places.find(({ what }) => what === "depth");
    if (depth === undefined) return step.sizes.map(() => undefined);
    const to = this.goTo(depth.wheel, depth.reading);
    for (let ring = this.ring(this.face); ring < this.ring(to); ring++)
      this.inside[ring] = Math.max(this.inside[ring] as number, Math.min(diameter / 2, this.outside[ring] as number));
    return step.sizes.map(() => to - this.face);
  }

  /** By eye, until the mouth is as wide as the plan says. */
  private centred(mouth: number): [] {
    for (let ring = this.ring(this.face); ring < this.ring(this.face + mouth / 2); ring++)
      this.inside[ring] = Math.max(this.inside[ring] as number, mouth / 4);
    return [];
  }

  private threaded(step: PlannedStep): (number | undefined)[] {
    const depth = step.places.find(({ what }) => what === "depth");
    if (depth === undefined) return step.sizes.map(() => undefined);
    const to = this.goTo(depth.wheel, depth.reading);
    const { step: asked } = step.stage;
    if (asked.do === "die" && to > this.jaws) this.harm.push("the die runs into the jaws");
    if (asked.do !== "tap") return step.sizes.map(() => to - this.face);
    if ((this.inside[this.ring(to) - 1] as number) === 0) this.harm.push("the tap breaks on the floor");
    return step.sizes.map(() => to - this.face - this.leadOf(asked.thread));
  }

  /** A bottoming tap's first two threads are not full; pitches of ISO 261. */
  private leadOf(thread: string): number {
    const pitch = { M3: 0.5 }[thread];
    if (pitch === undefined) throw new Error(`no pitch of ${thread}`);
    return 2 * pitch;
  }

  /** Touched on the edge, gone on by its size at 45°. */
  private chamfered(step: PlannedStep, at: number): (number | undefined)[] {
    const [place] = step.places;
    if (place === undefined) throw new Error("no reading");
    const size = Math.abs(this.goTo(place.wheel, place.reading) - (this.face + at));
    const edge = this.ring(this.face + at);
    const radius = this.outside[edge] as number;
    this.sweep(this.face + at, this.face + at + size, (z) => radius - size + (z - this.face - at));
    return step.sizes.map(() => undefined);
  }

  private tapered(
    step: PlannedStep,
    asked: { large: number; small: number; length: number; at: number; smallAt: "end" | "chuck" },
  ): (number | undefined)[] {
    const { depthWheel, passes } = step;
    if (depthWheel === undefined) throw new Error("nothing sets the depth");
    const { error } = this.lathe.hands;
    const begin = step.places.find(({ what }) => what === "begin");
    const from = begin ? this.goTo(begin.wheel, begin.reading) : this.face + asked.at + error(TOUCHED);
    const rise = (asked.large - asked.small) / 2 / asked.length;
    // The slope was proved by a micrometer at both ends, and is off by what that leaves.
    const proved = error(2 * MEASURED.mm) / 2 / asked.length;
    const slope = (asked.smallAt === "end" ? rise : -rise) + proved;
    let start = 0;
    for (const pass of passes) {
      if (pass.kind === "spring" || pass.reading === undefined) continue;
      start = this.goTo(depthWheel, pass.reading);
      this.sweep(from, from + asked.length, (place) => start + slope * (place - from));
    }
    // What a micrometer finds where the drawing has the two ends.
    const over = (place: number) => 2 * (start + slope * (this.face + place - from));
    const [free, chuck] = [over(asked.at), over(asked.at + asked.length)];
    return step.sizes.map(({ what }) => ((what === "small end") === (asked.smallAt === "end") ? free : chuck));
  }

  private heldAnew(out: number, round: boolean): [] {
    if (round) {
      // The face that was finished is now in the chuck; what is before it is gone.
      const begin = this.ring(this.face);
      this.outside = this.outside.slice(begin).reverse();
      this.inside = this.inside.slice(begin).reverse();
      this.raw = 0;
      this.face = 0;
      this.jaws = out;
    } else this.jaws = this.raw + out;
    return [];
  }
}
