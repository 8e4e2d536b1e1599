/**
 * What the course chart is given. Element `<course-chart>`, two properties:
 *
 * | property | type               | meaning                                                       |
 * |----------|--------------------|---------------------------------------------------------------|
 * | `model`  | CourseModel        | everything drawn, values and texts ready (`CourseModel.java`)  |
 * | `texts`  | Texts              | the words of the chart in the reader's language (`texts.ts`)  |
 *
 * Events: `point-chosen` {track, date, film} when a point is pressed and has no `href`; a point or film with `href` is
 * a link. Which limb and which quantity is shown stays in the browser, at first the first four quantities of the list;
 * `shown-changed` {sides, quantities} says so.
 *
 * The chart places values on a scale and nothing more: directions, changes, bands and all texts are the server's.
 */

export type Side = 'RIGHT' | 'LEFT';

export interface CourseModel {
  /** ISO dates. Ages on the upper axis are counted from `birth`. */
  birth: string;
  from: string;
  to: string;
  today: string;
  quantities: Quantity[];
  tracks: Track[];
  /** Where limbs are going, by track. */
  fans: Fan[];
  /** What else happened, one row each along the foot of the chart. */
  rows: Row[];
  films: FilmMark[];
}

/** One lane of the chart. */
export interface Quantity {
  id: string;
  /** e.g. "HKA", "mLDFA". */
  label: string;
  /** e.g. "whole limb", "femur", "tibia": quantities of one part are shown and hidden together. */
  part: string;
  /** Written behind each number of the axis: "°". */
  unit: string;
  /** Lane's ends in the quantity's own unit; every value and band lies between. */
  min: number;
  max: number;
  /** Whether varus is the higher or the lower value: varus is drawn up in every lane. */
  varus: 'HIGHER' | 'LOWER';
  /** Words at the ends of the axis; default varus and valgus. */
  up?: string;
  down?: string;
  /** Normal for age: low and high at dates, in order; one band for each stretch of age with a known norm. */
  bands: { date: string; low: number; high: number }[][];
  /** e.g. "normal for age", with the source. */
  bandLabel?: string;
}

/** One quantity of one limb over time. */
export interface Track {
  id: string;
  quantity: string;
  side: Side;
  points: TrackPoint[];
}

export interface TrackPoint {
  date: string;
  value: number;
  /** Half length of the error bar in the quantity's unit. */
  error: number;
  /** All of it in words: "14-Jul-2025, age 6y 0m: mLDFA right 94.1° varus, ± 2.1°". */
  text: string;
  /** Value with its direction as written beside the newest mark: "94.1° varus". */
  shortText: string;
  kind: 'SIGNED' | 'DRAFT' | 'IMPORTED';
  /** Joined by a line to the point before. */
  join: boolean;
  /** "No measurable change" since the point before, as the server judged. */
  unchanged?: boolean;
  film?: string;
  href?: string;
}

/** A forecast from the last film on: where half and where nine in ten of such limbs are found. */
export interface Fan {
  track: string;
  /** All of it in words, with its interval and the chance that the target is never reached. */
  text: string;
  days: { date: string; low90: number; low50: number; middle: number; high50: number; high90: number }[];
}

/** One row along the foot: the plates of a limb, its procedures, visits, examinations, bone ages. */
export interface Row {
  id: string;
  label: string;
  /** Absent when it concerns the whole child; a row of a hidden limb is hidden. */
  side?: Side;
  marks: RowMark[];
}

export interface RowMark {
  date: string;
  /** Last day of a bar; a bar without one still goes on. */
  to?: string;
  look: 'PLATE' | 'PLATE_PARKED' | 'PROCEDURE' | 'VISIT' | 'VISIT_MISSED' | 'VISIT_DUE' | 'EXAMINED' | 'BONE_AGE';
  /** All of it in words. */
  text: string;
  /** Written at the mark where there is room: "9y 6m". */
  shortText?: string;
  href?: string;
}

/** A film under the axis. */
export interface FilmMark {
  id: string;
  date: string;
  /** Small picture. */
  src: string;
  href: string;
  /** e.g. "Film of 14-Jul-2025, standing, both limbs". */
  label: string;
}
