/**
 * What the course chart is given. Element `<course-chart>`, one property:
 *
 * | property | type               | meaning                                                       |
 * |----------|--------------------|---------------------------------------------------------------|
 * | `model`  | CourseModel        | everything drawn, values and texts ready (`CourseModel.java`)  |
 * | `texts`  | Partial<Texts>     | the words of the chart in the reader's language               |
 *
 * Events: `point-chosen` {track, date, film} when a point is pressed and has no `href`; a point or film with `href` is a
 * link. Which limb and which quantity is shown stays in the browser, at first the first four quantities of the list;
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
  films: FilmMark[];
}

/** One lane of the chart. */
export interface Quantity {
  id: string;
  /** e.g. "HKA", "mLDFA". */
  label: string;
  /** e.g. "whole limb", "femur", "tibia". */
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
