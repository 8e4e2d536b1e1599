/**
 * `<film-pair>`: two films of one child side by side at one scale. Bringing one closer brings the other closer too, and
 * a landmark chosen anywhere is brought to the middle of both.
 *
 * | property | type          | meaning                                                              |
 * |----------|---------------|----------------------------------------------------------------------|
 * | `films`  | PairedFilm[]  | both films, the earlier first, with the landmarks read on each        |
 * | `texts`  | Texts         | the words in the reader's language                                   |
 *
 * For tests: `data-tiles` is `settled` when both films stand still and whole, `data-chosen` the key of the landmark
 * chosen.
 */
import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { arrow } from '../film-room/keys.js';
import type { Mark, PairedFilm, Texts } from './contract.js';
import { styles } from './film-pair.css.js';
import { Pane } from './pane.js';

const PAN_PX = 10;

@customElement('film-pair')
export class FilmPair extends LitElement {
  static override styles = styles;

  @property({ attribute: false }) films: PairedFilm[] = [];
  @property({ attribute: false }) texts!: Texts;

  @state() private chosen = '';

  private panes: Pane[] = [];

  override connectedCallback(): void {
    super.connectedCallback();
    this.dataset.tiles = 'loading';
    void this.updateComplete.then(() => this.raise());
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.panes.forEach(pane => pane.destroy());
    this.panes = [];
  }

  private async raise(): Promise<void> {
    if (!this.isConnected || this.panes.length) return;
    this.panes = this.films.map(
      (film, i) =>
        new Pane(this.renderRoot.querySelectorAll<HTMLElement>('.film')[i], film, {
          moved: () => this.follow(i),
          settled: () => this.tellTiles(),
        }),
    );
    await Promise.all(this.panes.map(pane => pane.open()));
    if (this.panes.every(pane => pane.stands)) this.fit();
    this.requestUpdate();
  }

  /** Both whole films, at one scale. */
  private fit(): void {
    const scale = Math.min(...this.panes.map(pane => pane.fitted()));
    this.panes.forEach(pane => pane.scaleTo(scale));
  }

  /** The film that is moved leads; the other takes its scale. */
  private follow(leader: number): void {
    const scale = this.panes[leader]?.scale;
    const other = this.panes[1 - leader];
    if (scale && other?.stands && this.panes[leader].leads) other.scaleTo(scale);
    this.requestUpdate();
  }

  private lead(leader: number): void {
    this.panes.forEach((pane, i) => (pane.leads = i === leader));
  }

  private zoom(direction: 1 | -1): void {
    this.lead(0);
    this.panes[0]?.zoom(direction);
  }

  private choose(key: string): void {
    this.chosen = key;
    this.dataset.chosen = key;
    this.panes.forEach((pane, i) => {
      const mark = this.films[i].marks.find(one => one.key === key);
      if (mark) pane.centre([mark.x, mark.y]);
    });
  }

  private tellTiles(): void {
    const whole = this.panes.length === 2 && this.panes.every(pane => pane.settled);
    this.dataset.tiles = whole ? 'settled' : 'loading';
  }

  private readonly key = (event: KeyboardEvent, i: number): void => {
    if (event.target !== event.currentTarget) return;
    const pressed = arrow(event);
    this.lead(i);
    if (pressed) this.panes[i].pan(pressed.way[0] * pressed.far * PAN_PX, pressed.way[1] * pressed.far * PAN_PX);
    else if (event.key === '+' || event.key === '=') this.panes[i].zoom(1);
    else if (event.key === '-') this.panes[i].zoom(-1);
    else if (event.key === '0') this.fit();
    else return;
    event.preventDefault();
  };

  protected override render(): TemplateResult {
    const { films, texts } = this;
    if (!films.length) return html`${nothing}`;
    return html`
      <div class="tools">
        <button @click=${() => this.zoom(1)}>${texts.closer}</button>
        <button @click=${() => this.zoom(-1)}>${texts.farther}</button>
        <button @click=${() => this.fit()}>${texts.whole}</button>
      </div>
      <div class="pair">${films.map((film, i) => this.pane(film, i))}</div>
      ${this.landmarks()}`;
  }

  private pane(film: PairedFilm, i: number): TemplateResult {
    const lead = () => this.lead(i);
    return html`
      <div
        class="pane"
        tabindex="0"
        role="group"
        aria-label=${this.texts.film.replace('{0}', film.caption)}
        @pointerdown=${lead}
        @wheel=${lead}
        @keydown=${(event: KeyboardEvent) => this.key(event, i)}
      >
        <div class="film"></div>
        <div class="marks">${film.marks.map(mark => this.mark(mark, i))}</div>
        <p class="caption">${film.caption}</p>
        ${this.panes[i]?.failed ? html`<p class="failed" role="alert">${this.texts.failed}</p>` : nothing}
      </div>`;
  }

  private mark(mark: Mark, i: number): TemplateResult | typeof nothing {
    const at = this.panes[i]?.placing?.toScreen([mark.x, mark.y]);
    if (!at) return nothing;
    const chosen = mark.key === this.chosen;
    return html`<span
      class="mark ${mark.side.toLowerCase()} ${chosen ? 'chosen' : ''}"
      style="transform:translate(${at[0]}px,${at[1]}px)"
      data-key=${mark.key}
      @click=${() => this.choose(mark.key)}
      >${chosen ? html`<span class="name">${mark.label}</span>` : nothing}</span
    >`;
  }

  /** Every landmark of either film as a button: the way by keyboard, and for a thumb. */
  private landmarks(): TemplateResult | typeof nothing {
    const marks = this.films.flatMap(film => film.marks);
    const keys = [...new Set(marks.map(({ key }) => key))];
    if (!keys.length) return nothing;
    return html`
      <div class="landmarks" role="group" aria-label=${this.texts.landmarks}>
        <p aria-hidden="true">${this.texts.landmarks}</p>
        ${keys.map(key => {
          const mark = marks.find(one => one.key === key)!;
          const everywhere = this.films.every(film => film.marks.some(one => one.key === key));
          return html`<button
            class=${mark.side.toLowerCase()}
            aria-pressed=${key === this.chosen}
            title=${everywhere ? nothing : this.texts.absent}
            @click=${() => this.choose(key)}
          >
            ${mark.label}${everywhere ? nothing : html` <span class="absent">${this.texts.absent}</span>`}
          </button>`;
        })}
      </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'film-pair': FilmPair;
  }
}
