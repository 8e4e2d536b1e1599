import type { Draft } from './draft.js';
import { arrow } from './keys.js';
import { paintLoupe } from './loupe.js';
import type { Handle } from './points.js';
import type { Stage } from './stage.js';
import type { Point } from './viewport.js';

/** A landmark held by a pointer, keeping the distance between pointer and landmark. */
class Drag {
  moved = false;
  private readonly dx: number;
  private readonly dy: number;

  constructor(
    readonly handle: Handle,
    from: Point,
  ) {
    this.dx = handle.x - from[0];
    this.dy = handle.y - from[1];
  }

  to([x, y]: Point): Point {
    this.moved = true;
    return [x + this.dx, y + this.dy];
  }
}

interface Room {
  stage: () => Stage | undefined;
  /** Nothing may be moved now. */
  idle: () => boolean;
  overlay: () => HTMLElement;
  glass: () => HTMLCanvasElement;
  /** Gives the focus back to the film. */
  leave: () => void;
}

/** The hand on a landmark: pointer, finger with a loupe, or keys. */
export class Hand {
  private drag?: Drag;

  constructor(
    private readonly reading: Draft,
    private readonly room: Room,
  ) {}

  focus(handle: Handle): void {
    const mark = this.room.overlay().querySelector<HTMLElement>(`[data-key="${handle.key}"]`);
    mark?.focus({ preventScroll: true });
  }

  /** A landmark reached by keys, on the film or in the table, is in hand and in sight. */
  readonly reached = (handle: Handle): void => {
    if (Number.isNaN(handle.x)) return;
    this.reading.hold(handle);
    this.room.stage()?.show([handle.x, handle.y]);
  };

  readonly grab = (event: PointerEvent, handle: Handle): void => {
    const from = this.room.stage()?.at(event);
    if (this.room.idle() || !from || event.button !== 0) return;
    const mark = event.currentTarget as HTMLElement;
    mark.setPointerCapture(event.pointerId);
    this.drag = new Drag(handle, from);
    this.reading.hold(handle);
    mark.onpointermove = move => this.dragTo(move);
    mark.onpointerup = mark.onpointercancel = () => this.letGo(mark);
  };

  readonly key = (event: KeyboardEvent, handle: Handle): void => {
    const placing = this.room.stage()?.placing;
    if (this.room.idle() || !placing) return;
    const pressed = arrow(event);
    if (pressed) {
      event.preventDefault();
      if (!event.repeat) this.reading.remember();
      const [dx, dy] = placing.filmStep(pressed.way);
      this.reading.move(handle, [handle.x + dx * pressed.far, handle.y + dy * pressed.far], false);
    } else if (event.key === 'Delete' || event.key === 'Backspace') {
      event.preventDefault();
      this.reading.remove(handle);
      this.room.leave();
    }
  };

  readonly released = (event: KeyboardEvent): void => {
    if (arrow(event) && !this.room.idle()) this.reading.commit();
  };

  private dragTo(event: PointerEvent): void {
    const point = this.room.stage()?.at(event);
    if (!this.drag || !point) return;
    if (!this.drag.moved) this.reading.remember();
    this.reading.move(this.drag.handle, this.drag.to(point), false);
    if (event.pointerType === 'touch') this.showLoupe(event);
  }

  private letGo(mark: HTMLElement): void {
    mark.onpointermove = mark.onpointerup = mark.onpointercancel = null;
    this.room.glass().hidden = true;
    if (this.drag?.moved) this.reading.commit();
    this.drag = undefined;
  }

  private showLoupe(event: PointerEvent): void {
    const film = this.room.stage()?.canvas;
    if (!film) return;
    const box = this.room.overlay().getBoundingClientRect();
    const glass = this.room.glass();
    glass.hidden = false;
    glass.classList.toggle('far', event.clientX - box.left < box.width / 2);
    paintLoupe(glass, film, event.clientX - box.left, event.clientY - box.top);
  }
}
