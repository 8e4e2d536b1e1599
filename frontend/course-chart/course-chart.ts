/**
 * `<course-chart>`: one child's angles on one time axis, age above and date below, varus up and valgus down.
 * Properties, events and JSON are in `contract.ts`.
 */
import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { timeAxes } from './axes.js';
import type { CourseModel, Quantity, Side, Track, TrackPoint } from './contract.js';
import { styles } from './course-chart.css.js';
import { filmStrip } from './films.js';
import { ground, lastValues, line, pointKey, type Pointing } from './lane.js';
import { TimeScale, ValueScale } from './scale.js';
import { ENGLISH, sideName, type Texts } from './texts.js';

const SIDES: Side[] = ['RIGHT', 'LEFT'];
const AGE_AXIS = 26;
const DATE_AXIS = 22;
/** Sizes in pixels; a lane is the higher, the fewer there are. */
const WIDE = { gutter: 84, lastValue: 84, between: 8, lanes: [300, 210, 140] };
const NARROW = { gutter: 38, lastValue: 74, between: 28, lanes: [220, 160, 108] };
const NARROW_BELOW = 700;
/** So many lanes are open at first; the others wait for their buttons. */
const OPEN_AT_FIRST = 4;

@customElement('course-chart')
export class CourseChart extends LitElement {
  static override styles = styles;

  @property({ attribute: false }) model?: CourseModel;
  @property({ attribute: false }) texts: Partial<Texts> = {};

  @state() private width = 0;
  @state() private hiddenSides = new Set<Side>();
  @state() private hiddenQuantities = new Set<string>();
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

  private get words(): Texts {
    return { ...ENGLISH, ...this.texts };
  }

  private get quantities(): Quantity[] {
    return (this.model?.quantities ?? []).filter(({ id }) => !this.hiddenQuantities.has(id));
  }

  /** Tracks shown, lane by lane, right before left. */
  private get tracks(): Track[] {
    const { model } = this;
    if (!model) return [];
    const sides = SIDES.filter(side => !this.hiddenSides.has(side));
    return this.quantities.flatMap(({ id }) =>
      sides.flatMap(side => model.tracks.filter(track => track.quantity === id && track.side === side)),
    );
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('model') && !changed.get('model')) {
      const later = this.model?.quantities.slice(OPEN_AT_FIRST) ?? [];
      this.hiddenQuantities = new Set(later.map(({ id }) => id));
    }
  }

  protected override render(): TemplateResult {
    const { model, words } = this;
    if (!model) return html`${nothing}`;
    if (!model.tracks.some(track => track.points.length > 0)) return html`<p class="empty">${words.empty}</p>`;
    const { tracks, quantities } = this;
    return html`${this.toggles(model)}
      ${tracks.length && this.width ? this.chart(model, quantities, tracks) : nothing}
      ${tracks.length ? nothing : html`<p class="empty">${words.nothing}</p>`}`;
  }

  private toggles(model: CourseModel): TemplateResult {
    const { words } = this;
    const toggle = <T>(hidden: Set<T>, value: T, label: string, kind: string, keep: (next: Set<T>) => void) => html`
      <button
        class=${kind}
        aria-pressed=${!hidden.has(value)}
        @click=${() => {
          keep(new Set(hidden.has(value) ? [...hidden].filter(one => one !== value) : [...hidden, value]));
          this.tellShown();
        }}
      >
        ${label}
      </button>`;
    return html`
      <div class="toggles" role="group" aria-label=${words.shown}>
        ${SIDES.map(side =>
          toggle(this.hiddenSides, side, sideName(words, side), side.toLowerCase(), next => (this.hiddenSides = next)),
        )}
        <span class="gap"></span>
        ${model.quantities.map(({ id, label }) =>
          toggle(this.hiddenQuantities, id, label, 'quantity', next => (this.hiddenQuantities = next)),
        )}
        <span class="key"><i class="band"></i>${this.bandLabel(model)}</span>
        <span class="key">${words.unchanged}</span>
        <span class="key"><i class="bar"></i>${words.error}</span>
      </div>`;
  }

  private bandLabel(model: CourseModel): string {
    return model.quantities.find(quantity => quantity.bandLabel)?.bandLabel ?? this.words.normal;
  }

  private chart(model: CourseModel, quantities: Quantity[], tracks: Track[]): TemplateResult {
    const { words, width } = this;
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
    const pointing = this.pointing(tracks);
    return html`
      <div class="chart" role="group" aria-label=${words.chart}>
        <svg width=${width} height=${bottom + DATE_AXIS} viewBox="0 0 ${width} ${bottom + DATE_AXIS}">
          <g aria-hidden="true">
            ${lanes.map(({ quantity, values }) => ground(quantity, time, values, words))}
            ${timeAxes(model, time, AGE_AXIS, bottom, words)}
            ${lanes.map(({ own, values }) => lastValues(own, time, values))}
          </g>
          ${lanes.map(({ own, values }) => own.map(track => line(track, time, values, pointing)))}
        </svg>
        <div class="films" role="group" aria-label=${words.films}>${filmStrip(model.films, time)}</div>
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

  private tellShown(): void {
    const shown = this.model?.quantities.map(({ id }) => id).filter(id => !this.hiddenQuantities.has(id));
    this.tell('shown-changed', { sides: SIDES.filter(side => !this.hiddenSides.has(side)), quantities: shown });
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
