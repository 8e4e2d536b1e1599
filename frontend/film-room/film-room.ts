/**
 * `<film-room>`: one film in the dark, landmarks placed in a guided order, the numbers beside it at once.
 * Properties, events, addresses and JSON are in `contract.ts`.
 */
import { html, LitElement, nothing, render, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import type { EdgePoints, Measured, PlacedPoint, Step } from './contract.js';
import { Draft, type Given } from './draft.js';
import { styles } from './film-room.css.js';
import { Hand } from './hand.js';
import { isOfAnyFocus, stageKey } from './keys.js';
import { Looking } from './looking.js';
import { drawn, marks } from './overlay.js';
import { below, landmarkTable, numbers, savingState, stepCard, warnings } from './panel.js';
import type { Texts } from './texts.js';
import { failure, toolbar, windowBox } from './tools.js';

const TELL_AFTER_MS = 500;

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
  @property({ attribute: false }) texts!: Texts;

  @query('.stage') private stageElement!: HTMLElement;
  @query('.film') filmElement!: HTMLElement;
  @query('.overlay') private overlay!: HTMLElement;
  @query('.loupe') private loupe!: HTMLCanvasElement;

  private readonly reading = new Draft(this, () => this.tellLater());
  private readonly looking = new Looking(this, {
    moved: () => this.drawOverlay(),
    pressed: point => this.pressed(point),
  });
  private readonly hand = new Hand(this.reading, {
    stage: () => this.looking.stage,
    idle: () => this.fixed || this.looking.windowing,
    overlay: () => this.overlay,
    glass: () => this.loupe,
    leave: () => this.stageElement.focus(),
  });
  private telling?: ReturnType<typeof setTimeout>;

  get given(): Given {
    const { draft, revision, points, edges, guide, fixed, answer, texts } = this;
    return { draft, revision, points, edges, guide, fixed, answer, texts };
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.telling);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('film') && this.film) void this.looking.open();
    if (changed.has('draft') || changed.has('fixed')) this.reading.adopt();
    else if (changed.has('points') || changed.has('edges')) this.reading.takeNewer();
    else if (changed.has('guide') || changed.has('revision') || changed.has('answer')) this.reading.settle();
  }

  protected override updated(): void {
    this.dataset.sent = String(this.reading.sent);
    this.dataset.answered = String(this.reading.answered);
    this.dataset.saved = String(this.reading.settled);
    this.drawOverlay();
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
    if (this.looking.windowing || this.looking.takenAsPlace(point)) return;
    const handle = this.reading.place(point);
    if (handle) void this.updateComplete.then(() => this.hand.focus(handle));
  }

  private readonly stageKey = (event: KeyboardEvent): void => {
    const { stage, flip, turn, nudge } = this.looking;
    if (!stage || (event.target !== event.currentTarget && !isOfAnyFocus(event))) return;
    const acted = stageKey(event, stage, {
      place: this.placeAtCross,
      undo: () => this.reading.undo(),
      next: () => this.reading.go(1),
      back: () => this.reading.go(-1),
      look: this.looking.look,
      flip,
      turn,
      nudgeWindow: nudge,
    });
    if (acted) event.preventDefault();
  };

  private readonly placeAtCross = (): void => {
    const point = this.looking.stage?.centre;
    if (point) this.reading.place(point);
  };

  private drawOverlay(): void {
    const placing = this.looking.stage?.placing;
    const { reading, texts, fixed, hand } = this;
    const { label, held, measured, placed, waiting } = reading;
    const { reached, grab, key, released } = hand;
    const holding = { texts, label, held, fixed, reached, grab, key, released };
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
    const { texts, looking } = this;
    const { facts, window, windowing } = looking;
    return html`
      <div class="stage" tabindex="0" role="group" aria-label=${texts.stage} @keydown=${this.stageKey}>
        <div
          class="film ${windowing ? 'windowing' : ''}"
          @pointerdown=${{ handleEvent: looking.byDrag, capture: true }}
          @pointermove=${looking.over}
          @contextmenu=${(event: Event) => event.preventDefault()}
        ></div>
        <div class="overlay"></div>
        <div class="cross" aria-hidden="true"></div>
        <canvas class="loupe" width="150" height="150" hidden aria-hidden="true"></canvas>
        <div class="caption">
          ${[...this.caption, facts?.calibration].map(line => (line ? html`<p>${line}</p>` : nothing))}
          <p class=${looking.flipped || looking.turned ? 'soon' : ''}>${looking.facing(texts)}</p>
        </div>
        ${toolbar(texts, looking, this.fixed ? undefined : () => this.reading.undo())}
        ${windowing && facts && window ? windowBox(texts, facts, window, looking.show) : nothing}
        ${looking.failed ? failure(texts, looking.open) : nothing}
      </div>`;
  }

  private panelTemplate(): TemplateResult {
    const { texts, reading, fixed } = this;
    return html`
      <div class="panel">
        ${fixed
          ? nothing
          : stepCard(reading.placed, texts, {
              back: () => reading.go(-1),
              next: () => reading.go(1),
              placeAtCross: this.placeAtCross,
            })}
        <section class="facts">
          ${warnings(reading.measured, ['harm'], texts)} ${numbers(reading.measured, reading.waiting, texts)}
          ${below(reading.measured, texts)}
          ${warnings(reading.measured, ['soon', 'note'], texts)}
          ${landmarkTable(fixed ? reading.placed.handles : reading.placed.rows, texts, {
            label: reading.label,
            fixed,
            typed: (handle, x, y) => reading.typed(handle, x, y),
            remove: handle => reading.remove(handle),
            reached: this.hand.reached,
          })}
        </section>
        ${fixed ? nothing : this.footTemplate()}
      </div>`;
  }

  private footTemplate(): TemplateResult {
    const { texts, reading } = this;
    const ready = reading.settled && reading.placed.handles.length > 0;
    const { again, keepMine: mine, takeTheirs: theirs } = reading;
    return html`
      <footer>
        ${savingState(reading.saving, texts, { again, mine, theirs })}
        <button
          class="strong"
          aria-disabled=${!ready}
          title=${ready ? nothing : texts.signWait}
          @click=${() => ready && this.tell('sign-requested', { revision: reading.revision })}
        >
          ${texts.sign}
        </button>
      </footer>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'film-room': FilmRoom;
  }
}
