import type { EdgePoints, PlacedPoint, Side, Step } from './contract.js';
import type { Placed } from './measuring.js';
import type { Point } from './viewport.js';

/** One thing on the film that a hand can hold: a landmark, or one of the edge points of a circle. */
export interface Handle {
  key: string;
  side?: Side;
  landmark: string;
  /** Place among the edge points; absent for a landmark. */
  edge?: number;
  x: number;
  y: number;
}

const UNDO_DEPTH = 100;

export const keyOf = (side: Side | undefined, landmark: string, edge?: number): string =>
  [side ?? '', landmark, ...(edge === undefined ? [] : [edge])].join(' ');

/** The points placed on a film, and which step of the guided order is in hand. */
export class Points {
  guide: Step[] = [];
  current = 0;
  private points = new Map<string, PlacedPoint>();
  private edges = new Map<string, EdgePoints>();
  private past: (Placed & { current: number })[] = [];

  /** Takes what is placed from elsewhere; nothing of it can be undone. */
  adopt(placed: Placed): void {
    this.take(placed);
    this.past = [];
    this.current = this.handles.length ? this.firstOpen(0, true) : 0;
  }

  /** Takes another guided order; what is placed stays, even what the order no longer asks for. */
  follow(guide: Step[]): void {
    this.guide = guide;
    this.current = this.handles.length ? this.firstOpen(0, true) : 0;
  }

  get placed(): Placed {
    return { points: [...this.points.values()], edges: [...this.edges.values()] };
  }

  get step(): Step | undefined {
    return this.guide[this.current];
  }

  /** Everything placed, in the guided order. */
  get handles(): Handle[] {
    const handles: Handle[] = [];
    for (const { side, landmark, x, y } of this.points.values()) {
      handles.push({ key: keyOf(side, landmark), side, landmark, x, y });
    }
    for (const { side, landmark, points } of this.edges.values()) {
      points.forEach(([x, y], edge) => handles.push({ key: keyOf(side, landmark, edge), side, landmark, edge, x, y }));
    }
    const order = new Map(this.guide.map((step, i) => [keyOf(step.side, step.landmark), i]));
    const place = (handle: Handle) => order.get(keyOf(handle.side, handle.landmark)) ?? order.size;
    return handles.sort((one, other) => place(one) - place(other));
  }

  /** Every row of the table: what is placed, and an empty one where something may still be placed. */
  get rows(): Handle[] {
    const handles = this.handles;
    const rows = this.guide.flatMap(({ side, landmark, kind }) => {
      const key = keyOf(side, landmark);
      const placed = handles.filter(handle => keyOf(handle.side, handle.landmark) === key);
      if (placed.length && kind === 'point') return placed;
      const edge = kind === 'circle' ? placed.length : undefined;
      return [...placed, { key: keyOf(side, landmark, edge), side, landmark, edge, x: NaN, y: NaN }];
    });
    return [...rows, ...handles.filter(handle => !rows.some(row => row.key === handle.key))];
  }

  pointsOf(step: Step): Point[] {
    const point = this.points.get(keyOf(step.side, step.landmark));
    if (point) return [[point.x, point.y]];
    return this.edges.get(keyOf(step.side, step.landmark))?.points ?? [];
  }

  isDone(step: Step): boolean {
    return this.pointsOf(step).length >= (step.kind === 'circle' ? (step.least ?? 5) : 1);
  }

  get count(): number {
    return this.guide.filter(step => this.isDone(step)).length;
  }

  /** Puts the step in hand at a point; a landmark hands over to the next open step, a circle takes more points. */
  place(point: Point): Handle | undefined {
    const step = this.step;
    if (!step) return undefined;
    this.remember();
    const edge = step.kind === 'circle' ? this.pointsOf(step).length : undefined;
    this.put(step.side, step.landmark, edge, point);
    if (step.kind === 'point') this.current = this.firstOpen(this.current + 1);
    return { key: keyOf(step.side, step.landmark, edge), ...step, edge, x: point[0], y: point[1] };
  }

  /** Moves what is placed, or places it there. */
  move(handle: Handle, point: Point): void {
    this.put(handle.side, handle.landmark, handle.edge, point);
    const step = this.step;
    if (step?.kind === 'point' && this.isDone(step)) this.current = this.firstOpen(this.current);
  }

  remove(handle: Handle): void {
    this.remember();
    const key = keyOf(handle.side, handle.landmark);
    if (handle.edge === undefined) {
      this.points.delete(key);
    } else {
      const rest = this.edges.get(key)!.points.filter((_, i) => i !== handle.edge);
      if (rest.length) this.edges.set(key, { ...this.edges.get(key)!, points: rest });
      else this.edges.delete(key);
    }
    this.current = this.guide.findIndex(step => keyOf(step.side, step.landmark) === key);
  }

  /** Keeps the present state for `undo`. */
  remember(): void {
    this.past.push({ ...structuredClone(this.placed), current: this.current });
    if (this.past.length > UNDO_DEPTH) this.past.shift();
  }

  undo(): boolean {
    const before = this.past.pop();
    if (!before) return false;
    this.take(before);
    this.current = before.current;
    return true;
  }

  go(index: number): void {
    this.current = Math.max(0, Math.min(this.guide.length, index));
  }

  private put(side: Side | undefined, landmark: string, edge: number | undefined, [x, y]: Point): void {
    const key = keyOf(side, landmark);
    if (edge === undefined) {
      this.points.set(key, { side, landmark, x, y });
      return;
    }
    const points = [...(this.edges.get(key)?.points ?? [])];
    points[edge] = [x, y];
    this.edges.set(key, { side, landmark, points });
  }

  private take({ points, edges }: Placed): void {
    this.points = new Map(points.map(point => [keyOf(point.side, point.landmark), point]));
    this.edges = new Map(edges.map(edge => [keyOf(edge.side, edge.landmark), edge]));
  }

  /** The first step not done from here on; after the last, the end of the guide. */
  private firstOpen(from: number, needed = false): number {
    const index = this.guide.findIndex((step, i) => i >= from && !this.isDone(step) && !(needed && step.optional));
    return index < 0 ? this.guide.length : index;
  }
}
