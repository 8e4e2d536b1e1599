/**
 * `<film-room>`: one film in the dark, landmarks placed in a guided order, the numbers beside it at once.
 * Properties, events, addresses and JSON are in `contract.ts`.
 */
import { html, LitElement, nothing, render, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { EdgePoints, FilmFacts, FilmWindow, Measured, PlacedPoint, Step } from './contract.js';
import { Draft, type Given } from './draft.js';
import { styles } from './film-room.css.js';
import { Hand } from './hand.js';
import { draggedWindow, stageKey } from './keys.js';
import { drawn, marks } from './overlay.js';
import { landmarkTable, numbers, savingState, stepCard, warnings } from './panel.js';
import type { Stage } from './stage.js';
import { ENGLISH, fill, type Texts } from './texts.js';
import { toolbar, windowBox } from './tools.js';

const TELL_AFTER_MS = 500;
const DRAFT_PROPERTIES = ['draft', 'revision', 'points', 'edges', 'guide', 'answer', 'fixed'] as const;

@customElement('film-room')
export class FilmRoom extends LitElement {
  static override styles = styles;

  @property() film = '';
  @property() draft = '';
  @property({ type: Number }) revision = 0;
  @property({ attribute: false }) points: PlacedPoint[] = [];
  @property({ attribute: false }) edges: EdgePoints[] = [];
  @property({ attribute: false }) guide: Step[] = [];
  @property({ attribute: false }) caption: string[] = [];
  @property({ type: Boolean }) fixed = false;
  @property({ attribute: false }) answer?: Measured;
  @property({ attribute: false }) texts: Partial<Texts> = {};

  @state() private facts?: FilmFacts;
  @state() private failed = false;
  @state() private window?: FilmWindow;
  @state() private windowing = false;
  @state() private flipped = false;
  @state() private turned = 0;

  @query('.stage') private stageElement!: HTMLElement;
  @query('.film') private filmElement!: HTMLElement;
  @query('.overlay') private overlay!: HTMLElement;
  @query('.loupe') private loupe!: HTMLCanvasElement;

  private readonly reading = new Draft(this, () => this.tellLater());
  private stage?: Stage;
  private readonly hand = new Hand(this.reading, {
    stage: () => this.stage,
    idle: () => this.fixed || this.windowing,
    overlay: () => this.overlay,
    glass: () => this.loupe,
    leave: () => this.stageElement.focus(),
  });
  private telling?: ReturnType<typeof setTimeout>;

  get given(): Given {
    const { draft, revision, points, edges, guide, fixed, answer, words } = this;
    return { draft, revision, points, edges, guide, fixed, answer, words };
  }

  private get words(): Texts {
    return { ...ENGLISH, ...this.texts };
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.telling);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('film') && this.film) void this.open();
    if (DRAFT_PROPERTIES.some(name => changed.has(name))) this.reading.adopt();
  }

  protected override async firstUpdated(): Promise<void> {
    const { Stage } = await import('./stage.js');
    this.stage = new Stage(this.filmElement, {
      moved: () => this.drawOverlay(),
      pressed: point => this.pressed(point),
      tiles: shown => (this.dataset.tiles = shown),
    });
    this.showFilm();
  }

  protected override updated(): void {
    this.dataset.sent = String(this.reading.sent);
    this.dataset.answered = String(this.reading.answered);
    this.dataset.saved = String(this.reading.settled);
    this.drawOverlay();
  }

  private readonly open = async (): Promise<void> => {
    this.dataset.tiles = 'loading';
    this.failed = false;
    try {
      const response = await fetch(`/api/films/${this.film}/info`, { headers: { Accept: 'application/json' } });
      if (!response.ok) throw new Error(String(response.status));
      this.facts = (await response.json()) as FilmFacts;
      this.window = this.facts.windows[0];
      this.showFilm();
    } catch {
      this.failed = true;
    }
  };

  private showFilm(): void {
    if (this.stage && this.facts && this.window) this.stage.open(this.film, this.facts, this.window);
  }

  /** Tells the page once the hand has been still for a moment. */
  private tellLater(): void {
    clearTimeout(this.telling);
    this.telling = setTimeout(() => {
      const { placed, revision } = this.reading;
      this.tell('points-changed', { placed: placed.count, total: placed.guide.length, revision });
    }, TELL_AFTER_MS);
  }

  private tell(type: string, detail: object): void {
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }

  private pressed(point: [number, number]): void {
    if (this.windowing) return;
    const handle = this.reading.place(point);
    if (handle) void this.updateComplete.then(() => this.hand.focus(handle));
  }

  private readonly stageKey = (event: KeyboardEvent): void => {
    if (event.target !== event.currentTarget || !this.stage) return;
    const acted = stageKey(event, this.stage, {
      place: this.placeAtCross,
      undo: () => this.reading.undo(),
      next: () => this.reading.go(1),
      back: () => this.reading.go(-1),
      flip: this.flip,
      turn: this.turn,
      nudgeWindow: (dx, dy) => this.window && this.facts && this.show(draggedWindow(this.window, this.facts, dx, dy)),
    });
    if (acted) event.preventDefault();
  };

  private readonly placeAtCross = (): void => {
    const point = this.stage?.centre;
    if (point) this.reading.place(point);
  };

  private readonly flip = (): void => {
    this.flipped = this.stage?.flip() ?? false;
  };

  private readonly turn = (degrees: number): void => {
    this.turned = this.stage?.rotate(degrees) ?? 0;
  };

  private readonly show = (window: FilmWindow): void => {
    this.window = window;
    this.stage?.show(window);
  };

  /** The right button, or any press while windowing, changes the window instead of moving the film. */
  private readonly windowByDrag = (event: PointerEvent): void => {
    const { window, facts } = this;
    if (!window || !facts || !(event.button === 2 || (this.windowing && event.button === 0))) return;
    event.stopPropagation();
    const film = event.currentTarget as HTMLElement;
    film.setPointerCapture(event.pointerId);
    film.onpointermove = move =>
      this.show(draggedWindow(window, facts, move.clientX - event.clientX, move.clientY - event.clientY));
    film.onpointerup = film.onpointercancel = () => (film.onpointermove = film.onpointerup = null);
  };

  private drawOverlay(): void {
    const placing = this.stage?.placing;
    const { reading, words: texts, fixed, hand } = this;
    const { label, held, measured, placed, waiting } = reading;
    const { grab, key, released } = hand;
    const holding = { texts, label, held, fixed, grab, key, released };
    render(
      html`${drawn(measured, placed.handles, placing, { waiting, texts })}${marks(placed.handles, placing, holding)}`,
      this.overlay,
      { host: this },
    );
  }

  protected override render(): TemplateResult {
    return html`${this.stageTemplate()}${this.panelTemplate()}
      <p class="screen-reader-only" role="status">${this.reading.said}</p>`;
  }

  private stageTemplate(): TemplateResult {
    const { words, facts, window } = this;
    return html`
      <div class="stage" tabindex="0" role="group" aria-label=${words.stage} @keydown=${this.stageKey}>
        <div
          class="film ${this.windowing ? 'windowing' : ''}"
          @pointerdown=${{ handleEvent: this.windowByDrag, capture: true }}
          @contextmenu=${(event: Event) => event.preventDefault()}
        ></div>
        <div class="overlay"></div>
        <div class="cross" aria-hidden="true"></div>
        <canvas class="loupe" width="150" height="150" hidden aria-hidden="true"></canvas>
        <div class="caption">
          ${this.caption.map(line => html`<p>${line}</p>`)}
          ${facts?.calibration ? html`<p>${facts.calibration}</p>` : nothing}
          <p class=${this.flipped ? 'soon' : ''}>${this.flipped ? words.flipped : words.facing}</p>
          ${this.turned ? html`<p class="soon">${fill(words.turned, this.turned)}</p>` : nothing}
        </div>
        ${this.toolsTemplate()}
        ${this.windowing && facts && window ? windowBox(words, facts, window, this.show) : nothing}
        ${this.failed
          ? html`<div class="failed" role="alert">
              <p>${words.filmFailed}</p>
              <button @click=${this.open}>${words.again}</button>
            </div>`
          : nothing}
      </div>`;
  }

  private toolsTemplate(): TemplateResult {
    const { windowing, flipped, fixed } = this;
    return toolbar(this.words, { windowing, flipped, fixed }, {
      zoom: direction => this.stage?.zoom(direction),
      fit: () => this.stage?.fit(),
      toggleWindow: () => (this.windowing = !this.windowing),
      flip: this.flip,
      turn: this.turn,
      undo: () => this.reading.undo(),
    });
  }

  private panelTemplate(): TemplateResult {
    const { words, reading, fixed } = this;
    return html`
      <div class="panel">
        ${fixed
          ? nothing
          : stepCard(reading.placed, words, {
              back: () => reading.go(-1),
              next: () => reading.go(1),
              placeAtCross: this.placeAtCross,
            })}
        <section class="facts">
          ${warnings(reading.measured, ['harm'], words)} ${numbers(reading.measured, reading.waiting, words)}
          ${warnings(reading.measured, ['soon', 'note'], words)}
          ${landmarkTable(fixed ? reading.placed.handles : reading.placed.rows, words, {
            label: reading.label,
            fixed,
            typed: (handle, x, y) => reading.typed(handle, x, y),
            remove: handle => reading.remove(handle),
          })}
        </section>
        ${fixed ? nothing : this.footTemplate()}
      </div>`;
  }

  private footTemplate(): TemplateResult {
    const { words, reading } = this;
    const ready = reading.settled && reading.placed.handles.length > 0;
    const { again, keepMine: mine, takeTheirs: theirs } = reading;
    return html`
      <footer>
        ${savingState(reading.saving, words, { again, mine, theirs })}
        <button
          class="strong"
          aria-disabled=${!ready}
          title=${ready ? nothing : words.signWait}
          @click=${() => ready && this.tell('sign-requested', { revision: reading.revision })}
        >
          ${words.sign}
        </button>
      </footer>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'film-room': FilmRoom;
  }
}
