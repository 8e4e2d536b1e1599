/**
 * `<course-chart>`: one child's angles on one time axis, age above and date below, varus up and valgus down.
 * Properties, events and JSON are in `contract.ts`.
 */
import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { timeAxes } from './axes.js';
import type { CourseModel, Quantity, Row, Track, TrackPoint } from './contract.js';
import { styles } from './course-chart.css.js';
import { fan } from './fan.js';
import { filmStrip } from './films.js';
import { foot, footHeight } from './foot.js';
import { ground, lastValues, line, pointKey, type Pointing } from './lane.js';
import { TimeScale, ValueScale } from './scale.js';
import type { Texts } from './texts.js';
import { Shown, toggles } from './toggles.js';

const AGE_AXIS = 26;
const DATE_AXIS = 22;
/** Between the lowest lane and the rows along the foot. */
const FOOT_GAP = 28;
/** Sizes in pixels; a lane is the higher, the fewer there are. */
const WIDE = { gutter: 132, lastValue: 96, between: 14, lanes: [280, 180, 130, 98] };
const NARROW = { gutter: 38, lastValue: 94, between: 28, lanes: [220, 160, 108] };
const NARROW_BELOW = 700;

@customElement('course-chart')
export class CourseChart extends LitElement {
  static override styles = styles;

  @property({ attribute: false }) model?: CourseModel;
  @property({ attribute: false }) texts!: Texts;

  @state() private width = 0;
  @state() private shown = Shown.of([]);
  @state() private focusable = '';
  @state() private tip?: { text: string; x: number; y: number };

  private readonly sizes = new ResizeObserver(([entry]) => (this.width = Math.floor(entry.contentRect.width)));

  override connectedCallback(): void {
    super.connectedCallback();
    this.sizes.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.sizes.disconnect();
  }

  /** Tracks shown, lane by lane, right before left. */
  private get tracks(): Track[] {
    const { model, shown } = this;
    if (!model) return [];
    return shown.lanes.flatMap(({ id }) =>
      shown.sides.flatMap(side => model.tracks.filter(track => track.quantity === id && track.side === side)),
    );
  }

  /** Rows along the foot: those of the limbs shown, and those of the whole child. */
  private get rows(): Row[] {
    return (this.model?.rows ?? []).filter(({ side }) => !side || this.shown.has(side));
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('model') || !this.model) return;
    const { quantities } = this.model;
    this.shown = changed.get('model') ? this.shown.with(quantities) : Shown.of(quantities);
  }

  protected override render(): TemplateResult {
    const { model, texts } = this;
    if (!model) return html`${nothing}`;
    if (!model.tracks.some(track => track.points.length > 0)) return html`<p class="empty">${texts.empty}</p>`;
    const { tracks, shown } = this;
    return html`${toggles(shown, texts, next => this.choose(next))}
      ${tracks.length && this.width ? this.chart(model, shown.lanes, tracks) : nothing}
      ${tracks.length ? this.keys(model) : html`<p class="empty">${texts.nothing}</p>`}`;
  }

  private keys(model: CourseModel): TemplateResult {
    const { texts } = this;
    const band = model.quantities.find(quantity => quantity.bandLabel)?.bandLabel ?? texts.normal;
    return html`
      <p class="keys">
        <span class="key"><i class="band"></i>${band}</span>
        <span class="key">${texts.unchanged}</span>
        <span class="key"><i class="bar"></i>${texts.error}</span>
        ${model.fans.length ? html`<span class="key"><i class="fan"></i>${texts.forecast}</span>` : nothing}
      </p>`;
  }

  private chart(model: CourseModel, quantities: Quantity[], tracks: Track[]): TemplateResult {
    const { texts, width } = this;
    const narrow = width < NARROW_BELOW;
    const { gutter, lastValue, between, lanes: heights } = narrow ? NARROW : WIDE;
    const laneHeight = heights[Math.min(quantities.length, heights.length) - 1];
    const time = new TimeScale(model, gutter, width - lastValue, narrow);
    const first = AGE_AXIS + (narrow ? between - 8 : 0);
    const lanes = quantities.map((quantity, i) => {
      const top = first + i * (laneHeight + between);
      const own = tracks.filter(track => track.quantity === quantity.id);
      return { quantity, own, values: new ValueScale(quantity, top, top + laneHeight) };
    });
    const bottom = lanes[lanes.length - 1].values.bottom;
    const { rows } = this;
    const feet = bottom + (rows.length ? FOOT_GAP : DATE_AXIS);
    const height = feet + footHeight(rows, narrow);
    const pointing = this.pointing(tracks);
    return html`
      <div class="chart" role="group" aria-label=${texts.chart}>
        <svg width=${width} height=${height} viewBox="0 0 ${width} ${height}">
          <g aria-hidden="true">
            ${lanes.map(({ quantity, values }) => ground(quantity, time, values, texts))}
            ${timeAxes(model, time, AGE_AXIS, bottom, texts)}
          </g>
          ${lanes.map(({ own, values }) =>
            own.map(track =>
              model.fans.filter(one => one.track === track.id).map(one => fan(one, track.side, time, values)),
            ),
          )}
          <g aria-hidden="true">
            ${lanes.map(({ own, values }) => {
              const fans = model.fans.filter(one => own.some(track => track.id === one.track));
              return lastValues(own, fans, time, values, texts);
            })}
          </g>
          ${lanes.map(({ own, values }) => own.map(track => line(track, time, values, pointing)))}
          ${foot(rows, time, model.today, feet, {
            show: (mark, x, y) => (this.tip = { text: mark.text, x, y }),
            hide: () => (this.tip = undefined),
          })}
        </svg>
        <div class="films" role="group" aria-label=${texts.films}>${filmStrip(model.films, time)}</div>
        ${this.tip ? this.tipTemplate(this.tip) : nothing}
      </div>`;
  }

  private tipTemplate({ text, x, y }: { text: string; x: number; y: number }): TemplateResult {
    const right = x > this.width / 2;
    return html`<div
      class="tip ${right ? 'to-left' : ''}"
      aria-hidden="true"
      style="top:${y}px;${right ? `right:${this.width - x + 14}px` : `left:${x + 14}px`}"
    >
      ${text}
    </div>`;
  }

  private pointing(tracks: Track[]): Pointing {
    const keys = tracks.flatMap(track => track.points.map(point => pointKey(track, point)));
    const [firstTrack] = tracks.filter(track => track.points.length > 0);
    const newest = firstTrack && pointKey(firstTrack, firstTrack.points[firstTrack.points.length - 1]);
    return {
      focusable: keys.includes(this.focusable) ? this.focusable : (newest ?? ''),
      choose: ({ id }, { date, film }) => this.tell('point-chosen', { track: id, date, film }),
      show: (track, point, x, y) => (this.tip = { text: point.text, x, y }),
      hide: () => (this.tip = undefined),
      key: (event, track, index) => this.walk(event, tracks, track, index),
    };
  }

  /** Left and right along a line, up and down to the nearest film of the next line. */
  private walk(event: KeyboardEvent, tracks: Track[], track: Track, index: number): void {
    const along = { ArrowLeft: -1, ArrowRight: 1 }[event.key];
    const across = { ArrowUp: -1, ArrowDown: 1 }[event.key];
    let next: TrackPoint | undefined;
    let nextTrack: Track | undefined = track;
    if (along) {
      next = track.points[index + along];
    } else if (across) {
      nextTrack = tracks[tracks.indexOf(track) + across];
      const { date } = track.points[index];
      next = nextTrack?.points.find(point => point.date >= date) ?? nextTrack?.points.at(-1);
    } else if (event.key === 'Enter' || event.key === ' ') {
      if (!track.points[index].href) this.tell('point-chosen', { track: track.id, ...track.points[index] });
      return;
    }
    if (!next || !nextTrack) return;
    event.preventDefault();
    this.focusable = pointKey(nextTrack, next);
    void this.updateComplete.then(() => this.focusPoint());
  }

  private focusPoint(): void {
    this.renderRoot.querySelector<SVGAElement>(`[data-key="${this.focusable}"]`)?.focus();
  }

  private choose(next: Shown): void {
    this.shown = next;
    this.tell('shown-changed', { sides: next.sides, quantities: next.lanes.map(({ id }) => id) });
  }

  private tell(type: string, detail: object): void {
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'course-chart': CourseChart;
  }
}
