/**
 * `<cut-film>`: a film of one limb, cut across a bone and its lower part turned about a hinge, the axes drawn as they
 * were and as they would be.
 *
 * | property | type   | meaning                                       |
 * |----------|--------|-----------------------------------------------|
 * | `film`   | string | film id; its picture comes from `/api/films/` |
 * | `day`    | string | when it was taken, in words                   |
 * | `cut`    | Cut    | where the cut lies to begin with              |
 * | `starts` | Start[] | cuts to choose from                          |
 * | `texts`  | Texts  | the words in the reader's language            |
 *
 * Event `cut-kept`, detail `x1,y1,x2,y2,hx,hy,outwards,kind`: a handle was let go of, and what is shown belongs to it.
 * For tests: `data-sent` and `data-answered` are equal when the numbers belong to the handles.
 */
import { html, LitElement, nothing, svg, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { FilmFacts } from '../film-room/contract.js';
import { arrow } from '../film-room/keys.js';
import { Asking } from './asking.js';
import type { Answer, Cut, Handle, Place, Start, Texts } from './contract.js';
import { styles } from './cut-film.css.js';

const HANDLES: Handle[] = ['start', 'end', 'hinge'];
const PICTURE_PX = 1600;
const BESIDE = 0.12;
const CLOSER = 0.6;

interface Box {
  x: number;
  y: number;
  width: number;
  height: number;
}

@customElement('cut-film')
export class CutFilm extends LitElement {
  static override styles = styles;

  @property() film = '';
  @property() day = '';
  @property({ attribute: false }) cut!: Cut;
  @property({ attribute: false }) starts: Start[] = [];
  @property({ attribute: false }) texts!: Texts;

  @state() private facts?: FilmFacts;
  @state() private answer?: Answer;
  @state() private failed?: string;
  @state() private close = 0;
  @state() private bone = '';

  private sent = 0;
  private keep = false;
  private readonly asking = new Asking(() => `/api/films/${this.film}/cut`, {
    answered: answer => this.take(answer),
    failed: why => (this.failed = why ?? this.texts.failed),
  });

  override connectedCallback(): void {
    super.connectedCallback();
    void this.updateComplete.then(() => this.open());
  }

  private async open(): Promise<void> {
    const response = await fetch(`/api/films/${this.film}/info`, { headers: { Accept: 'application/json' } });
    if (response.ok) this.facts = (await response.json()) as FilmFacts;
    else this.failed = this.texts.failed;
    this.ask(false);
  }

  private ask(keep: boolean): void {
    this.keep ||= keep;
    this.sent++;
    this.dataset.sent = String(this.sent);
    this.asking.ask({ ...this.cut, seq: this.sent });
  }

  private take(answer: Answer): void {
    this.failed = undefined;
    this.answer = answer;
    if (answer.seq === this.sent) this.bone = answer.bone;
    this.dataset.answered = String(answer.seq);
    if (answer.seq === this.sent && this.keep) {
      this.keep = false;
      const { x1, y1, x2, y2, hx, hy, outwards, kind } = this.cut;
      const detail = [x1, y1, x2, y2, hx, hy, outwards, kind].join(',');
      this.dispatchEvent(new CustomEvent('cut-kept', { detail, bubbles: true, composed: true }));
    }
  }

  private at(handle: Handle): Place {
    const { x1, y1, x2, y2, hx, hy } = this.cut;
    return { start: [x1, y1] as Place, end: [x2, y2] as Place, hinge: [hx, hy] as Place }[handle];
  }

  private move(handle: Handle, [x, y]: Place): void {
    const moved = { start: { x1: x, y1: y }, end: { x2: x, y2: y }, hinge: { hx: x, hy: y } }[handle];
    this.cut = { ...this.cut, ...moved };
  }

  /** The limb with some film beside it; closer in, about the hinge. */
  private box(): Box {
    const points = this.answer?.lines.filter(line => line.kind.endsWith('before')).flatMap(line => line.points) ?? [];
    if (!points.length) return { x: 0, y: 0, width: this.facts!.width, height: this.facts!.height };
    const xs = points.map(point => point[0]);
    const ys = points.map(point => point[1]);
    const beside = BESIDE * (Math.max(...ys) - Math.min(...ys));
    const whole = {
      x: Math.min(...xs) - 2 * beside,
      y: Math.min(...ys) - beside,
      width: Math.max(...xs) - Math.min(...xs) + 4 * beside,
      height: Math.max(...ys) - Math.min(...ys) + 2 * beside,
    };
    const scale = CLOSER ** this.close;
    const [x, y] = this.close ? this.at('hinge') : [whole.x + whole.width / 2, whole.y + whole.height / 2];
    const width = whole.width * scale;
    const height = whole.height * scale;
    return { x: x - width / 2, y: y - height / 2, width, height };
  }

  private place(event: PointerEvent): Place {
    const glass = this.renderRoot.querySelector('.film')!.getBoundingClientRect();
    const box = this.box();
    return [
      box.x + ((event.clientX - glass.left) / glass.width) * box.width,
      box.y + ((event.clientY - glass.top) / glass.height) * box.height,
    ];
  }

  private grab(event: PointerEvent, handle: Handle): void {
    if (event.button !== 0) return;
    const button = event.currentTarget as HTMLElement;
    button.setPointerCapture(event.pointerId);
    const [x, y] = this.place(event);
    const [fromX, fromY] = this.at(handle);
    button.onpointermove = move => {
      const [toX, toY] = this.place(move);
      this.move(handle, [fromX + toX - x, fromY + toY - y]);
      this.ask(false);
    };
    button.onpointerup = button.onpointercancel = () => {
      button.onpointermove = button.onpointerup = button.onpointercancel = null;
      this.ask(true);
    };
  }

  private key(event: KeyboardEvent, handle: Handle): void {
    const pressed = arrow(event);
    if (!pressed) return;
    event.preventDefault();
    const [x, y] = this.at(handle);
    this.move(handle, [x + pressed.way[0] * pressed.far, y + pressed.way[1] * pressed.far]);
    this.ask(false);
  }

  private letGo(event: KeyboardEvent): void {
    if (arrow(event)) this.ask(true);
  }

  private turn(event: Event): void {
    const degrees = (event.target as HTMLInputElement).valueAsNumber;
    if (!(degrees >= -60 && degrees <= 60)) return;
    this.cut = { ...this.cut, outwards: degrees };
    this.ask(true);
  }

  private begin(event: Event): void {
    const start = this.starts[Number((event.target as HTMLSelectElement).value)];
    this.bone = start.bone;
    this.cut = { ...start.cut, outwards: this.cut.outwards };
    this.ask(true);
  }

  protected override render(): TemplateResult {
    const { facts, texts, answer } = this;
    if (!facts || !texts) return html`${this.failed ? html`<p role="alert">${this.failed}</p>` : nothing}`;
    const waiting = answer?.seq !== this.sent;
    return html`
      <div class="room ${waiting ? 'waiting' : ''}">
        ${this.tools()} ${this.glass(facts)} ${this.numbers(answer)}
      </div>`;
  }

  private tools(): TemplateResult {
    const { texts } = this;
    return html`
      <div class="tools">
        <label class="wide"
          >${texts.kind}
          <select @change=${(event: Event) => this.begin(event)}>
            ${this.starts.map(
              (start, at) => html`<option value=${at} .selected=${this.isShown(start)}>${start.name}</option>`,
            )}
          </select></label
        >
        <label
          >${texts.turn}
          <input
            type="number"
            min="-60"
            max="60"
            step="0.5"
            .valueAsNumber=${this.cut.outwards}
            aria-describedby="turn-help"
            @change=${(event: Event) => this.turn(event)}
        /></label>
        <button type="button" @click=${() => (this.close = Math.min(4, this.close + 1))}>${texts.closer}</button>
        <button type="button" @click=${() => (this.close = Math.max(0, this.close - 1))}>${texts.farther}</button>
        ${this.failed ? html`<p class="failed" role="alert">${this.failed}</p>` : nothing}
      </div>`;
  }

  private isShown(start: Start): boolean {
    return start.kind === this.cut.kind && start.bone === (this.bone || this.starts[0].bone);
  }

  private glass(facts: FilmFacts): TemplateResult {
    const box = this.box();
    const view = `${box.x} ${box.y} ${box.width} ${box.height}`;
    return html`
      <div
        class="film"
        role="group"
        aria-label=${this.texts.film}
        style="aspect-ratio: ${box.width} / ${box.height}; --shape: ${box.width / box.height}"
      >
        <svg viewBox=${view} preserveAspectRatio="none" aria-hidden="true">
          ${this.picture(facts)} ${this.answer ? this.moved(facts, this.answer, box) : nothing}
          ${this.cut.kind === 'STRAIGHT'
            ? svg`<polyline class="cut" points="${this.cut.x1},${this.cut.y1} ${this.cut.x2},${this.cut.y2}"></polyline>`
            : nothing}
        </svg>
        ${HANDLES.map(handle => this.handle(handle, box))}
      </div>`;
  }

  private picture(facts: FilmFacts) {
    const { c, w, fn } = facts.windows[0] ?? {};
    const window = facts.grey === false || c === undefined ? '' : `&window=${c},${w},${fn}`;
    const address = `/api/films/${this.film}/rendered?viewport=${PICTURE_PX},${PICTURE_PX}${window}`;
    return svg`<image href=${address} width=${facts.width} height=${facts.height} preserveAspectRatio="none"></image>`;
  }

  private moved(facts: FilmFacts, answer: Answer, box: Box) {
    const corners = answer.part.map(point => point.join(',')).join(' ');
    return svg`
      <clipPath id="below"><polygon points=${corners}></polygon></clipPath>
      <polygon class="gap" points=${corners}></polygon>
      <g transform="matrix(${answer.matrix.join(' ')})"><g clip-path="url(#below)">${this.picture(facts)}</g></g>
      ${answer.lines.filter(line => line.kind !== 'cut' || this.cut.kind === 'ROUND').map(
        line => svg`<polyline class=${line.kind} data-kind=${line.kind}
          points=${line.points.map(point => point.join(',')).join(' ')}></polyline>`,
      )}
      ${answer.centre
        ? svg`<circle class="centre" cx=${answer.centre[0]} cy=${answer.centre[1]} r=${box.height / 55}></circle>`
        : nothing}`;
  }

  private handle(handle: Handle, box: Box): TemplateResult {
    const [x, y] = this.at(handle);
    const left = ((x - box.x) / box.width) * 100;
    const top = ((y - box.y) / box.height) * 100;
    return html`<button
      type="button"
      class="handle ${handle}"
      style="left: ${left}%; top: ${top}%"
      aria-label=${this.texts[handle]}
      @pointerdown=${(event: PointerEvent) => this.grab(event, handle)}
      @keydown=${(event: KeyboardEvent) => this.key(event, handle)}
      @keyup=${(event: KeyboardEvent) => this.letGo(event)}
    ></button>`;
  }

  private numbers(answer: Answer | undefined): TemplateResult {
    const { texts } = this;
    return html`
      <div class="numbers" aria-live="polite">
        <table>
          <caption>
            ${this.day}
          </caption>
          <tr>
            <th scope="col">${texts.number}</th>
            <th scope="col">${texts.before}</th>
            <th scope="col">${texts.after}</th>
          </tr>
          ${answer?.numbers.map(
            number => html`<tr>
              <th scope="row">${number.label}</th>
              <td>${number.before}</td>
              <td>${number.after}</td>
            </tr>`,
          )}
        </table>
        <ul>
          ${answer?.notes.map(note => html`<li>${note}</li>`)}
        </ul>
        <p id="turn-help">${texts['turn-help']}</p>
        <p>${texts.help}</p>
      </div>`;
  }
}
