import type { FilmFacts, FilmWindow } from './contract.js';
import type { Stage } from './stage.js';
import type { Point } from './viewport.js';

/** The window after a drag across the film: across for contrast, up and down for brightness. */
export function draggedWindow(from: FilmWindow, facts: FilmFacts, dx: number, dy: number): FilmWindow {
  const range = facts.maxValue - facts.minValue;
  const perPixel = range / 500;
  return {
    ...from,
    name: '',
    c: Math.round(Math.max(facts.minValue, Math.min(facts.maxValue, from.c + dy * perPixel))),
    w: Math.round(Math.max(range / 200, Math.min(range * 2, from.w + dx * perPixel))),
  };
}

const ARROWS: Record<string, Point> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** Where an arrow key points on the screen, and how far: 1, with Shift 10, with Alt a tenth. */
export function arrow(event: KeyboardEvent): { way: Point; far: number } | undefined {
  const way = ARROWS[event.key];
  return way && { way, far: event.shiftKey ? 10 : event.altKey ? 0.1 : 1 };
}

export interface Actions {
  place: () => void;
  undo: () => void;
  next: () => void;
  back: () => void;
  look: () => void;
  flip: () => void;
  turn: (degrees: number) => void;
  nudgeWindow: (dx: number, dy: number) => void;
}

/** Keys that mean the same while a landmark has the focus. */
export const isOfAnyFocus = (event: KeyboardEvent): boolean =>
  !(event.target instanceof HTMLInputElement) && ['z', 'n', 'b', '+', '-', '0'].includes(event.key);

const PAN_PX = 10;
const NUDGE_PX = 10;

/** Keys while the film itself has the focus. */
export function stageKey(event: KeyboardEvent, stage: Stage, actions: Actions): boolean {
  const pressed = arrow(event);
  if (pressed) {
    const far = pressed.far * PAN_PX;
    stage.pan(pressed.way[0] * far, pressed.way[1] * far);
    return true;
  }
  if (event.ctrlKey || event.metaKey) {
    if (event.key !== 'z') return false;
    actions.undo();
    return true;
  }
  const act: Record<string, () => void> = {
    Enter: actions.place,
    ' ': actions.place,
    '+': () => stage.zoom(1),
    '=': () => stage.zoom(1),
    '-': () => stage.zoom(-1),
    '0': () => stage.fit(),
    z: actions.look,
    f: actions.flip,
    r: () => actions.turn(90),
    R: () => actions.turn(-90),
    n: actions.next,
    b: actions.back,
    '[': () => actions.nudgeWindow(0, NUDGE_PX),
    ']': () => actions.nudgeWindow(0, -NUDGE_PX),
    '{': () => actions.nudgeWindow(NUDGE_PX, 0),
    '}': () => actions.nudgeWindow(-NUDGE_PX, 0),
  };
  act[event.key]?.();
  return event.key in act;
}
