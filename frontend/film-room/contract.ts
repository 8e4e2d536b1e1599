/**
 * What the film room is given and what it says back. The server computes every number, line and circle; the browser
 * places points, asks, and draws the answer. All coordinates are film pixels as stored: x right, y down, from the
 * upper left corner of the upper left pixel. Landmark and drawing names are opaque words the server chose.
 *
 * Element `<film-room>`, properties set by the server:
 *
 * | property   | type                     | meaning                                                                  |
 * |------------|--------------------------|--------------------------------------------------------------------------|
 * | `film`     | string                   | film id; tiles and facts come from `/api/films/{film}/…`, or an address   |
 * | `draft`    | string                   | draft id; measuring goes to `/api/readings/{draft}/measure`, or an address |
 * | `revision` | number                   | the draft's revision these points belong to                              |
 * | `points`   | PlacedPoint[]            | points already in the draft                                              |
 * | `edges`    | EdgePoints[]             | edge points of circles already in the draft                              |
 * | `guide`    | Step[]                   | the landmarks in the order in which to place them                        |
 * | `caption`  | string[]                 | lines written over the film: who this is, when and how it was taken       |
 * | `fixed`    | boolean                  | a signed reading: shown, never edited; `answer` is drawn as given         |
 * | `answer`   | Measured                 | numbers and lines to show before the first answer, or of a signed reading |
 * | `texts`    | Texts                    | the words of the room in the reader's language (`texts.ts`)              |
 *
 * Another `draft` or `fixed` starts the room over. Other `points` or `edges` of the same draft are taken when everything
 * here is saved, else what is here stays. Another `guide`, `revision` or `answer` changes nothing that is placed.
 *
 * Events (all bubble, composed):
 *
 * | event            | detail                            | when                                                    |
 * |------------------|-----------------------------------|---------------------------------------------------------|
 * | `points-changed` | {placed, total, revision}         | half a second after the last committed answer           |
 * | `sign-requested` | {revision}                        | the Sign button; only while everything placed is saved   |
 *
 * `GET  /api/films/{film}/info` → FilmFacts.
 * `GET  /api/films/{film}/rendered?viewport=vw,vh,sx,sy,sw,sh&window=c,w,fn&quality=q` → image/jpeg.
 * `POST /api/readings/{draft}/measure` MeasureRequest → 200 Measured; 409 Conflict when `revision` is not the draft's;
 * anything else keeps the points, says "not saved yet" and tries again.
 *
 * Attributes for tests: `data-sent` and `data-answered` hold the sequence number of the last change made and of the
 * last answer shown; they are equal when the numbers belong to the points. `data-saved` is `true` when the last
 * change is committed. `data-tiles` is `loading` or `settled`.
 */

export type Side = 'RIGHT' | 'LEFT';

/** One landmark in one limb. `side` is absent for what belongs to the film as a whole. */
export interface PlacedPoint {
  side?: Side;
  landmark: string;
  x: number;
  y: number;
}

/** Points clicked on the edge of something round; the server fits the circle. */
export interface EdgePoints {
  side?: Side;
  landmark: string;
  points: [x: number, y: number][];
}

/** One step of the guided order. */
export interface Step {
  side?: Side;
  landmark: string;
  /** Short name, e.g. "Plafond, medial end". */
  label: string;
  /** One sentence: where to put it. */
  sentence: string;
  /** Name of the small drawing, see `drawings.ts`. */
  drawing: string;
  /** `circle` collects at least `least` edge points; `point` is one click. */
  kind: 'point' | 'circle';
  least?: number;
  /** May be passed over without the reading being incomplete. */
  optional?: boolean;
}

/** Facts about a film, from `/api/films/{film}/info`. */
export interface FilmFacts {
  width: number;
  height: number;
  tileSize: number;
  /** Number of halvings available besides the full size. */
  levels: number;
  windows: FilmWindow[];
  minValue: number;
  maxValue: number;
  /** How lengths come about on this film, in words. */
  calibration?: string;
  /** Whether windows have an effect; absent means yes. */
  grey?: boolean;
}

/** A grey-scale window: centre and width in stored values, and the function of PS3.3 C.11.2. */
export interface FilmWindow {
  c: number;
  w: number;
  fn: 'linear' | 'linear-exact' | 'sigmoid';
  name: string;
}

export interface MeasureRequest {
  seq: number;
  /** The draft's revision this change was made on. */
  revision: number;
  points: PlacedPoint[];
  edges: EdgePoints[];
  /** Save this as the draft's next revision. */
  commit?: true;
}

export interface Measured {
  seq: number;
  /** The draft's revision after this request: one more than before when it was committed. */
  revision: number;
  numbers: ShownNumber[];
  lines: Line[];
  circles: Circle[];
  warnings: Warning[];
  /** Right against left, each by the name of its definition. */
  comparisons: Comparison[];
  /** Where the norms shown were printed, and how far they were checked. */
  sources: string[];
}

export interface Comparison {
  label: string;
  text: string;
  note?: string;
}

/** One quantity of one limb, all as text: the browser never rounds or names a direction. */
export interface ShownNumber {
  id: string;
  side: Side;
  /** e.g. "mLDFA". */
  label: string;
  /** Value with unit and direction, e.g. "94.1° varus". */
  text: string;
  /** Normal for age, e.g. "85 to 90°". */
  range?: string;
  /** Mean and spread of each study for age and sex, or that there is no norm for this age. */
  norm?: string;
  /** Method, uncertainty, or why there is no value. */
  note?: string;
  state: 'in' | 'out' | 'none';
  /** Shown in grey: how the film was taken makes it doubtful. */
  doubtful: boolean;
}

/** A polyline to draw. */
export interface Line {
  side?: Side;
  /** `axis` and `shaft` are drawn full, `joint`, `physis` and `help` fine, `arc` marks an angle. */
  kind: 'axis' | 'shaft' | 'joint' | 'physis' | 'help' | 'arc';
  points: [x: number, y: number][];
  /** Written at the line's end. */
  label?: string;
}

/** A fitted circle; on a film whose pixels are not square it is an ellipse along the film's axes. */
export interface Circle {
  side?: Side;
  landmark: string;
  x: number;
  y: number;
  rx: number;
  ry: number;
}

export interface Warning {
  side?: Side;
  text: string;
  severity: 'note' | 'soon' | 'harm';
}

/** Body of a 409: what the server holds instead. */
export interface Conflict {
  message: string;
  revision: number;
  points: PlacedPoint[];
  edges: EdgePoints[];
}
