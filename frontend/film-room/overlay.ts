import { html, nothing, svg, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import type { Circle, Line, Measured, Side } from './contract.js';
import type { Handle } from './points.js';
import { fill, sideText, type Texts } from './texts.js';
import type { Placing } from './viewport.js';

/** Below this many screen pixels to a film pixel the marks shrink, so that they do not hide the bone. */
const SMALL_BELOW = 0.3;

const sideClass = (side: string | undefined) => (side ?? 'none').toLowerCase();

/** Lines and circles as the server gave them, laid over the film. */
export function drawn(
  measured: Measured | undefined,
  handles: Handle[],
  placing: Placing | undefined,
  { waiting, texts }: { waiting: boolean; texts: Texts },
): TemplateResult {
  if (!placing) return html`${nothing}`;
  const { lines, circles } = measured ?? { lines: [], circles: [] };
  return html`
    <svg class="drawn ${waiting ? 'waiting' : ''}" aria-hidden="true">
      <g transform=${placing.toString()}>${lines.map(polyline)}${circles.map(ellipse)}</g>
      ${lines.filter(line => line.label).map(line => lineLabel(line, placing))}
      ${circles.map(circle => centreCross(circle, placing))}
      ${sideLetter(handles, 'RIGHT', texts.rightLetter, placing)}
      ${sideLetter(handles, 'LEFT', texts.leftLetter, placing)}
    </svg>`;
}

/** The limb's letter above its highest landmark. */
function sideLetter(handles: Handle[], side: Side, letter: string, placing: Placing) {
  const points = handles.filter(handle => handle.side === side).map(({ x, y }) => placing.toScreen([x, y]));
  if (!points.length) return nothing;
  const [x, y] = points.reduce((highest, point) => (point[1] < highest[1] ? point : highest));
  return svg`<text class="letter ${sideClass(side)}" x=${x} y=${y - 18}>${letter}</text>`;
}

function polyline({ kind, side, points }: Line) {
  return svg`<polyline class="${kind} ${sideClass(side)}" points=${points.map(p => p.join(',')).join(' ')}></polyline>`;
}

function ellipse({ side, x, y, rx, ry }: Circle) {
  return svg`<ellipse class="fitted ${sideClass(side)}" cx=${x} cy=${y} rx=${rx} ry=${ry}></ellipse>`;
}

function lineLabel(line: Line, placing: Placing) {
  const [x, y] = placing.toScreen(line.points[line.points.length - 1]);
  return svg`<text class=${sideClass(line.side)} x=${x + 8} y=${y + 4}>${line.label}</text>`;
}

function centreCross(circle: Circle, placing: Placing) {
  const [x, y] = placing.toScreen([circle.x, circle.y]);
  return svg`<path class="centre ${sideClass(circle.side)}" d="M${x - 6} ${y}h12M${x} ${y - 6}v12"></path>`;
}

interface Holding {
  texts: Texts;
  label: (handle: Handle) => string;
  /** Key of the handle in hand. */
  held: string | undefined;
  fixed: boolean;
  reached: (handle: Handle) => void;
  grab: (event: PointerEvent, handle: Handle) => void;
  key: (event: KeyboardEvent, handle: Handle) => void;
  released: (event: KeyboardEvent, handle: Handle) => void;
}

/** The landmarks as buttons over the film: round for a right limb, square for a left one. */
export function marks(handles: Handle[], placing: Placing | undefined, holding: Holding): TemplateResult {
  if (!placing) return html`${nothing}`;
  return html`
    <div class="marks ${placing.scale < SMALL_BELOW ? 'small' : ''}" role="group" aria-label=${holding.texts.landmarks}>
      ${repeat(handles, handle => handle.key, handle => mark(handle, placing, holding))}
    </div>`;
}

function mark(handle: Handle, placing: Placing, holding: Holding): TemplateResult {
  const [left, top] = placing.toScreen([handle.x, handle.y]);
  const kind = `${sideClass(handle.side)} ${handle.edge === undefined ? '' : 'edge'}`;
  const name = holding.label(handle);
  return html`
    <button
      class="mark ${kind} ${holding.held === handle.key ? 'held' : ''}"
      style="transform:translate(${left}px,${top}px)"
      data-key=${handle.key}
      aria-label=${fill(holding.texts.at, name, handle.x.toFixed(1), handle.y.toFixed(1))}
      aria-disabled=${holding.fixed}
      @focus=${() => holding.reached(handle)}
      @pointerdown=${(event: PointerEvent) => holding.grab(event, handle)}
      @keydown=${(event: KeyboardEvent) => holding.key(event, handle)}
      @keyup=${(event: KeyboardEvent) => holding.released(event, handle)}
    ><span class="name" aria-hidden="true">${name}</span></button>`;
}

/** Label of a handle: side, name and, on a circle, which edge point. */
export function handleLabel(handle: Handle, name: string, texts: Texts): string {
  const label = handle.edge === undefined ? name : fill(texts.edgePoint, name, handle.edge + 1);
  return sideText(texts, handle.side, label);
}
