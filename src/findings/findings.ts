import type { DialFinding } from "../dial/finding.js";
import type { Reading } from "../dial/reading.js";
import type { DriveFinding } from "../drive/finding.js";
import type { FeedFinding } from "../feed/finding.js";
import type { FeedStudy } from "../feed/study.js";
import type { Job } from "../job/job.js";
import type { Handwheel, Machine } from "../machine/machine.js";

/** Everything computed from one machine; what the sheets and `check` are made from. */
export type Findings = {
  readonly machine: Machine;
  readonly handwheels: readonly HandwheelFinding[];
  /** True where `handwheels` are only those that were asked for: what belongs to none of them is not wanted. */
  readonly onlyWheels?: true;
  readonly drive?: DriveFinding;
  /** What is to be made, where a job file was given. */
  readonly job?: Job;
};

export type HandwheelFinding = {
  readonly handwheel: Handwheel;
  readonly feed?: FeedFinding;
  /** In place of `feed` where a turn was miscounted in the readings: to be looked at, never to cut by. */
  readonly miscounted?: FeedFinding;
  /** What its dial shows, whether it has one or not; present with the feed. */
  readonly reading?: Reading;
  /** What the readings say beyond their straight line, where there are readings. */
  readonly study?: FeedStudy;
  readonly dial?: DialFinding;
  /** In place of `dial`: one whose divisions are finer than the feed is known over the travel, and that nobody asked for. */
  readonly doubtful?: DialFinding;
};
