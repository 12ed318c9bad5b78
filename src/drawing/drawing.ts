/** The scene between sheets and renderers: plain data, in millimetres, origin top left, y down.
 *  Angles are radians, clockwise on paper, zero along +x. Print it, compare it, store it. */

export type Point = { readonly x: number; readonly y: number };

export type Drawing = { readonly width: number; readonly height: number; readonly marks: readonly Mark[] };

export type Mark = PathMark | TextMark | GroupMark;

export type PathMark = {
  readonly kind: "path";
  readonly segments: readonly Segment[];
  /** Absent: no stroke. */
  readonly pen?: Pen;
  /** Absent: no fill. Even-odd rule. */
  readonly fill?: Ink;
};

export type Segment =
  | { readonly to: "move" | "line"; readonly x: number; readonly y: number }
  /** A circular arc from the angle `start` to `end`; its first point joins on by a straight line, or begins a
   *  subpath where nothing came before. `end > start` runs clockwise on paper. */
  | {
      readonly to: "arc";
      readonly centre: Point;
      readonly radius: number;
      readonly start: number;
      readonly end: number;
    }
  | {
      readonly to: "curve";
      readonly x1: number;
      readonly y1: number;
      readonly x2: number;
      readonly y2: number;
      readonly x: number;
      readonly y: number;
    }
  | { readonly to: "close" };

/** `accent` is for warnings alone; `grey` and `pale` must not carry meaning by themselves. */
export type Ink = "black" | "grey" | "pale" | "white" | "accent";

export type Pen = { readonly width: number; readonly ink: Ink; readonly dash?: readonly number[] };

export type Anchor = "start" | "middle" | "end";
export type Weight = "regular" | "bold";

export type TextMark = {
  readonly kind: "text";
  /** On the baseline, at the anchor. */
  readonly at: Point;
  readonly text: string;
  /** Em size in mm (5 pt = 1.764 mm is the least that a sheet may use). */
  readonly size: number;
  readonly anchor: Anchor;
  readonly weight: Weight;
  readonly ink: Ink;
  /** Turned about `at`, clockwise on paper. */
  readonly turn?: number;
};

export type GroupMark = {
  readonly kind: "group";
  /** Where the group's own origin lies in its parent. */
  readonly at: Point;
  /** Turned about its own origin, clockwise on paper. */
  readonly turn?: number;
  /** What the group is, as `graduations` or `cut`; renderers keep it as a class, layer or bookmark. */
  readonly name?: string;
  readonly marks: readonly Mark[];
};
