/**
 * Where a film pixel stands on the screen. The only file of the browser that turns coordinates: everything a clinician
 * reads as a number comes from the server.
 */

export type Point = [x: number, y: number];

/** An affine map from film pixels to screen pixels, in the order of SVG's `matrix(a b c d e f)`. */
export class Placing {
  constructor(
    readonly a: number,
    readonly b: number,
    readonly c: number,
    readonly d: number,
    readonly e: number,
    readonly f: number,
  ) {}

  /** From where the film's origin, one pixel right of it and one pixel below it stand, mirrored or not. */
  static of(origin: Point, right: Point, below: Point, mirrorWidth?: number): Placing {
    const mirror = ([x, y]: Point): Point => (mirrorWidth === undefined ? [x, y] : [mirrorWidth - x, y]);
    const [ox, oy] = mirror(origin);
    const [rx, ry] = mirror(right);
    const [bx, by] = mirror(below);
    return new Placing(rx - ox, ry - oy, bx - ox, by - oy, ox, oy);
  }

  toScreen([x, y]: Point): Point {
    return [this.a * x + this.c * y + this.e, this.b * x + this.d * y + this.f];
  }

  toFilm([x, y]: Point): Point {
    const determinant = this.a * this.d - this.b * this.c;
    const dx = x - this.e;
    const dy = y - this.f;
    return [(this.d * dx - this.c * dy) / determinant, (this.a * dy - this.b * dx) / determinant];
  }

  /** Screen pixels to one film pixel. */
  get scale(): number {
    return Math.sqrt(Math.abs(this.a * this.d - this.b * this.c));
  }

  /** The step of one film pixel that goes this way on the screen, however the film is turned or mirrored. */
  filmStep([dx, dy]: Point): Point {
    const [ox, oy] = this.toFilm([0, 0]);
    const [x, y] = this.toFilm([dx, dy]);
    const length = Math.sqrt((x - ox) ** 2 + (y - oy) ** 2);
    return [(x - ox) / length, (y - oy) / length];
  }

  toString(): string {
    return `matrix(${this.a} ${this.b} ${this.c} ${this.d} ${this.e} ${this.f})`;
  }
}
