import { nothing, svg, type SVGTemplateResult } from 'lit';
import type { Fan, Quantity, Side, Track, TrackPoint } from './contract.js';
import { reach, type Reach } from './fan.js';
import type { TimeScale, ValueScale } from './scale.js';
import type { Texts } from './texts.js';

/** Right a little to the left and left a little to the right, as on the film, so that equal dates do not hide. */
const APART: Record<Side, number> = { RIGHT: -4, LEFT: 4 };
const REACH = 12;
const DOT = 4.5;
const SMALL_DOT = 3;
const NAME_LETTERS = 13;
const NAME_LINE = 17;
const VALUE_LINE = 15;
const VALUE_WIDTH = 92;
/** Closer than this the marks shrink. */
const CROWDED_PX = 11;

export interface Pointing {
  /** The point that takes the keyboard. */
  focusable: string;
  choose: (track: Track, point: TrackPoint) => void;
  show: (track: Track, point: TrackPoint, x: number, y: number) => void;
  hide: () => void;
  key: (event: KeyboardEvent, track: Track, index: number) => void;
}

export const pointKey = (track: Track, point: TrackPoint): string => `${track.id} ${point.date}`;

/** Axis, normal band and zero of one quantity. */
export function ground(quantity: Quantity, time: TimeScale, values: ValueScale, texts: Texts): SVGTemplateResult {
  const edge = time.left - 8;
  return svg`
    <rect
      class="lane"
      x=${time.left}
      y=${values.top}
      width=${time.right - time.left}
      height=${values.bottom - values.top}
    ></rect>
    ${quantity.bands.map(normal => svg`<polygon class="band" points=${outline(normal, time, values)}></polygon>`)}
    ${values.ticks().map(
      tick => svg`
        <line
          class=${tick.strong ? 'zero' : 'grid'}
          x1=${time.left}
          x2=${time.right}
          y1=${tick.at}
          y2=${tick.at}
        ></line>
        <text class="value" x=${edge} y=${tick.at + 4}>${tick.label}</text>`,
    )}
    ${time.narrow ? namesInside(quantity, time, values, texts) : namesBeside(quantity, values, texts)}`;
}

function outline(normal: Quantity['bands'][number], time: TimeScale, values: ValueScale): string {
  const along = (pick: 'low' | 'high') => normal.map(at => `${time.x(at.date)},${values.y(at[pick])}`);
  return [...along('low'), ...along('high').reverse()].join(' ');
}

function namesBeside(quantity: Quantity, values: ValueScale, texts: Texts): SVGTemplateResult {
  const name = lines(quantity.label);
  const first = (values.top + values.bottom - name.length * NAME_LINE) / 2 + 6;
  return svg`
    <text class="direction" x="0" y=${values.top + 12}>▲ ${quantity.up ?? texts.varus}</text>
    ${name.map((text, i) => svg`<text class="quantity" x="0" y=${first + i * NAME_LINE}>${text}</text>`)}
    <text class="part" x="0" y=${first + name.length * NAME_LINE - 1}>${quantity.part}</text>
    <text class="direction" x="0" y=${values.bottom - 3}>▼ ${quantity.down ?? texts.valgus}</text>`;
}

/** A name broken where it would meet the numbers of the axis. */
function lines(name: string): string[] {
  return name.split(' ').reduce<string[]>((broken, word) => {
    const line = broken.at(-1);
    const fits = line !== undefined && line.length + 1 + word.length <= NAME_LETTERS;
    return fits ? [...broken.slice(0, -1), `${line} ${word}`] : [...broken, word];
  }, []);
}

function namesInside(quantity: Quantity, time: TimeScale, values: ValueScale, texts: Texts): SVGTemplateResult {
  const x = time.left + 5;
  return svg`
    <text class="name" x="0" y=${values.top - 10}>
      <tspan class="quantity">${quantity.label}</tspan> <tspan>${quantity.part}</tspan>
    </text>
    <text class="direction inside" x=${x} y=${values.top + 13}>▲ ${quantity.up ?? texts.varus}</text>
    <text class="direction inside" x=${x} y=${values.bottom - 5}>▼ ${quantity.down ?? texts.valgus}</text>`;
}

/** One limb's points with their error, joined where the server says so. */
export function line(track: Track, time: TimeScale, values: ValueScale, pointing: Pointing): SVGTemplateResult {
  const crowded = track.points.length * CROWDED_PX > time.right - time.left;
  const at = track.points.map(point => [time.x(point.date) + APART[track.side], values.y(point.value)] as const);
  return svg`
    <g class="track ${track.side.toLowerCase()}">
      ${track.points.map((point, i) =>
        i > 0 && point.join
          ? svg`<line class="joined" x1=${at[i - 1][0]} y1=${at[i - 1][1]} x2=${at[i][0]} y2=${at[i][1]}></line>`
          : nothing,
      )}
      ${track.points.map((point, i) =>
        i > 0 && point.unchanged
          ? svg`<text
              class="unchanged"
              x=${(at[i - 1][0] + at[i][0]) / 2}
              y=${(at[i - 1][1] + at[i][1]) / 2 - 5}
            >≈</text>`
          : nothing,
      )}
      ${track.points.map((point, i) => mark(track, point, i, at[i], crowded ? SMALL_DOT : DOT, values, pointing))}
    </g>`;
}

function mark(
  track: Track,
  point: TrackPoint,
  index: number,
  [x, y]: readonly [number, number],
  size: number,
  values: ValueScale,
  pointing: Pointing,
): SVGTemplateResult {
  const high = values.y(point.value + point.error);
  const low = values.y(point.value - point.error);
  const key = pointKey(track, point);
  return svg`
    <a
      class="point ${point.kind.toLowerCase()}"
      href=${point.href ?? nothing}
      role=${point.href ? nothing : 'button'}
      tabindex=${key === pointing.focusable ? 0 : -1}
      data-key=${key}
      aria-label=${point.text}
      @focus=${() => pointing.show(track, point, x, y)}
      @blur=${pointing.hide}
      @pointerenter=${() => pointing.show(track, point, x, y)}
      @pointerleave=${pointing.hide}
      @click=${() => point.href || pointing.choose(track, point)}
      @keydown=${(event: KeyboardEvent) => pointing.key(event, track, index)}
    >
      <circle class="reach" cx=${x} cy=${y} r=${REACH}></circle>
      <path class="error" d="M${x} ${low}V${high}M${x - 3} ${low}h6M${x - 3} ${high}h6"></path>
      ${track.side === 'RIGHT'
        ? svg`<circle class="dot" cx=${x} cy=${y} r=${size}></circle>`
        : svg`<rect class="dot" x=${x - size} y=${y - size} width=${size * 2} height=${size * 2}></rect>`}
    </a>`;
}

/** The newest value of each limb, written beside its mark, apart from each other and from a fan, inside its lane. */
export function lastValues(
  tracks: Track[],
  fans: Fan[],
  time: TimeScale,
  values: ValueScale,
  texts: Texts,
): SVGTemplateResult[] {
  const newest = tracks
    .filter(track => track.points.length > 0)
    .map(track => ({ track, point: track.points[track.points.length - 1] }))
    .sort((one, other) => values.y(one.point.value) - values.y(other.point.value));
  let above = -Infinity;
  return newest.map(({ track, point }, i) => {
    const x = time.x(point.date) + 13;
    const taken = fans.flatMap(one => reach(one, x, x + VALUE_WIDTH, time, values));
    const lowest = values.bottom - 3 - (newest.length - 1 - i) * VALUE_LINE;
    const highest = Math.max(above + VALUE_LINE, values.top + VALUE_LINE - 4);
    const foot = besides(values.y(point.value) + 5, taken, i === 0 && newest.length > 1);
    const y = Math.min(Math.max(foot, highest), lowest);
    above = y;
    return svg`<text class="last ${track.side.toLowerCase()}" x=${x} y=${y}>
      ${track.side === 'RIGHT' ? texts.rightLetter : texts.leftLetter} ${point.shortText}
    </text>`;
  });
}

/** The foot of a line of text that would lie on what is taken: above that when it is the upper one, or nearer there. */
function besides(foot: number, taken: Reach[], upper: boolean): number {
  const top = Math.min(...taken.map(one => one.top)) - 4;
  const bottom = Math.max(...taken.map(one => one.bottom)) + VALUE_LINE - 2;
  if (taken.length === 0 || foot < top || foot > bottom) return foot;
  return upper || foot - top < bottom - foot ? top : bottom;
}
