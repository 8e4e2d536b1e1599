/** What the pair of films is given by the server (`FilmPair.java`). Coordinates are film pixels as stored. */

export type Side = 'RIGHT' | 'LEFT';

export interface PairedFilm {
  /** Film id; tiles and facts come from `/api/films/{film}/…`. */
  film: string;
  /** Day and age, written over the film. */
  caption: string;
  /** Absent when a film of the pair has no scale: then both are shown at the same height. */
  mmPerPx?: number;
  marks: Mark[];
}

/** A landmark; the same key on both films. */
export interface Mark {
  key: string;
  side: Side;
  label: string;
  x: number;
  y: number;
}

export interface Texts {
  landmarks: string;
  film: string;
  closer: string;
  farther: string;
  whole: string;
  absent: string;
  failed: string;
}
