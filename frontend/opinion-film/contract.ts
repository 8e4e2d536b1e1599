/**
 * `<opinion-film>`: one film that is covered before it is shown, or drawn on by several people. Every number comes from
 * the server as text; coordinates are film pixels.
 *
 * | property  | type      | meaning                                                                        |
 * |-----------|-----------|--------------------------------------------------------------------------------|
 * | `film`    | string    | film id or address, as `<film-room>` takes it                                  |
 * | `mode`    | string    | `cover`, `draw`, or `look`                                                     |
 * | `covers`  | Cover[]   | rectangles that will be black in the copy                                      |
 * | `layers`  | Layer[]   | what each person drew                                                          |
 * | `texts`   | Texts     | the words in the reader's language                                             |
 *
 * | event           | detail     | when                                                                          |
 * |-----------------|------------|-------------------------------------------------------------------------------|
 * | `covers-drawn`  | {json}     | a rectangle was laid or taken away: all of them                               |
 * | `layer-drawn`   | {json}     | something was drawn or taken away: the whole own layer                        |
 *
 * For tests: `data-tiles` is `settled` when the film stands still and whole.
 */
export interface Cover {
  x: number;
  y: number;
  width: number;
  height: number;
}

export type Kind = 'POINT' | 'LINE' | 'ANGLE';

export interface Spot {
  x: number;
  y: number;
}

export interface Drawing {
  kind: Kind;
  points: Spot[];
  label: string;
}

export interface Layer {
  name: string;
  mine: boolean;
  drawn: { drawing: Drawing; text: string }[];
}

export interface Texts {
  film: string;
  closer: string;
  farther: string;
  whole: string;
  failed: string;
  cover: string;
  move: string;
  point: string;
  line: string;
  angle: string;
  label: string;
  remove: string;
  place: string;
  covered: string;
  next: string;
}
