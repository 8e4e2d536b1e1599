/**
 * What the cut film is given by the server (`CutFilmElement.java`) and what it asks it
 * (`POST /api/films/{film}/cut`). The server computes every number, line and turn; the browser moves handles, asks, and
 * draws the answer. Coordinates are film pixels as stored.
 */

export type Place = [x: number, y: number];

/** `CutRequest.java`. */
export interface Cut {
  seq: number;
  side: 'RIGHT' | 'LEFT';
  x1: number;
  y1: number;
  x2: number;
  y2: number;
  hx: number;
  hy: number;
  outwards: number;
  kind: Kind;
}

/** `CutKind.java`. */
export type Kind = 'STRAIGHT' | 'ROUND';

/** `CutFilmElement.Start`: a cut to start from. */
export interface Start {
  bone: string;
  kind: Kind;
  name: string;
  cut: Cut;
}

/** `CutAnswer.java`. */
export interface Answer {
  seq: number;
  bone: string;
  part: Place[];
  matrix: number[];
  lines: { kind: string; points: Place[] }[];
  centre?: Place;
  numbers: { label: string; before: string; after: string }[];
  notes: string[];
}

export type Handle = 'start' | 'end' | 'hinge';

export interface Texts {
  film: string;
  start: string;
  end: string;
  hinge: string;
  kind: string;
  turn: string;
  'turn-help': string;
  number: string;
  before: string;
  after: string;
  failed: string;
  closer: string;
  farther: string;
  help: string;
}
