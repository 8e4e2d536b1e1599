/**
 * What the cut film is given by the server (`CutFilmElement.java`) and what it asks it (`POST /api/films/{film}/cut`). The server
 * computes every number, line and turn; the browser moves handles, asks, and draws the answer. Coordinates are film pixels as
 * stored.
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
}

/** `CutAnswer.java`. */
export interface Answer {
  seq: number;
  part: Place[];
  matrix: number[];
  lines: { kind: string; points: Place[] }[];
  centre?: Place;
  numbers: { label: string; before: string; after: string }[];
  notes: string[];
}

export type Handle = 'start' | 'end' | 'hinge';

export type Texts = Record<Handle | 'film' | 'turn' | 'turn-help' | 'number' | 'before' | 'after' | 'failed' | 'closer' | 'farther' | 'help', string>;
