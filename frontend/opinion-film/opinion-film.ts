/** `<opinion-film>`: properties and events are in `contract.ts`. */
import { html, LitElement, nothing, svg, type PropertyValues, type SVGTemplateResult, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { arrow } from '../film-room/keys.js';
import { Looking } from '../film-room/looking.js';
import type { Placing, Point } from '../film-room/viewport.js';
import type { Cover, Drawing, Kind, Layer, Spot, Texts } from './contract.js';
import { styles } from './opinion-film.css.js';

const PAN_PX = 10;
const NEEDED: Record<Kind, number> = { POINT: 1, LINE: 2, ANGLE: 3 };
const COLOURS = ['#ffe08a', '#6cc3dd', '#e79ac8', '#9fd68b', '#f4a77a', '#c4b5fd'];
const DASHES = ['', '8 4', '2 4', '10 3 2 3', '5 5', '12 6'];

type Tool = Kind | 'COVER' | 'MOVE';

@customElement('opinion-film')
export class OpinionFilm extends LitElement {
  static override styles = styles;

  @property() film = '';
  @property() mode: 'cover' | 'draw' | 'look' = 'look';
  @property({ attribute: false }) covers: Cover[] = [];
  @property({ attribute: false }) layers: Layer[] = [];
  @property({ attribute: false }) texts!: Texts;

  @state() private tool: Tool = 'MOVE';
  @state() private label = '';
  @state() private pending: Spot[] = [];

  @query('.film') filmElement!: HTMLElement;

  private readonly looking = new Looking(this, {
    moved: () => this.requestUpdate(),
    pressed: point => this.place(point),
  });

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('film') || !this.film) return;
    this.pending = [];
    void this.looking.open();
  }

  /** A press on the film, or the cross by a key. */
  private place([x, y]: Point): void {
    if (this.tool === 'MOVE') return;
    this.pending = [...this.pending, { x, y }];
    if (this.tool === 'COVER') {
      if (this.pending.length === 2) this.lay();
    } else if (this.pending.length === NEEDED[this.tool]) {
      this.tell('layer-drawn', [...this.mine, { kind: this.tool, points: this.pending, label: this.label }]);
      this.pending = [];
      this.label = '';
    }
  }

  private lay(): void {
    const [one, other] = this.pending;
    const cover = {
      x: Math.min(one.x, other.x),
      y: Math.min(one.y, other.y),
      width: Math.abs(one.x - other.x),
      height: Math.abs(one.y - other.y),
    };
    this.pending = [];
    if (cover.width > 0 && cover.height > 0) this.tellCovers([...this.covers, cover]);
  }

  private tellCovers(covers: Cover[]): void {
    this.covers = covers;
    this.tell('covers-drawn', covers);
  }

  private get mine(): Drawing[] {
    return this.layers.filter(layer => layer.mine).flatMap(layer => layer.drawn.map(one => one.drawing));
  }

  private tell(type: string, all: object[]): void {
    const detail = { json: JSON.stringify(all) };
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }

  private choose(tool: Tool): void {
    this.tool = tool;
    this.pending = [];
  }

  private readonly key = (event: KeyboardEvent): void => {
    if (event.target !== event.currentTarget) return;
    const { stage } = this.looking;
    const pressed = arrow(event);
    if (pressed) stage?.pan(pressed.way[0] * pressed.far * PAN_PX, pressed.way[1] * pressed.far * PAN_PX);
    else if (event.key === '+' || event.key === '=') stage?.zoom(1);
    else if (event.key === '-') stage?.zoom(-1);
    else if (event.key === '0') stage?.fit();
    else if (event.key === 'Enter') this.placeAtCross();
    else if (event.key === 'Escape') this.pending = [];
    else return;
    event.preventDefault();
  };

  private readonly placeAtCross = (): void => {
    const centre = this.looking.stage?.centre;
    if (centre) this.place(centre);
  };

  protected override render(): TemplateResult {
    const { texts } = this;
    if (!texts) return html`${nothing}`;
    return html`
      <div class="tools" role="toolbar" aria-label=${texts.film}>
        ${this.tools()}
        <button @click=${() => this.looking.stage?.zoom(1)}>${texts.closer}</button>
        <button @click=${() => this.looking.stage?.zoom(-1)}>${texts.farther}</button>
        <button @click=${() => this.looking.stage?.fit()}>${texts.whole}</button>
      </div>
      <div class="stage" tabindex="0" role="group" aria-label=${texts.film} @keydown=${this.key}>
        <div class="film"></div>
        ${this.marks()}
        <div class="cross"></div>
        ${this.looking.failed ? html`<p class="failed" role="alert">${texts.failed}</p>` : nothing}
      </div>
      ${this.mode === 'cover' ? this.coverList() : this.layerList()}`;
  }

  private tools(): TemplateResult | typeof nothing {
    const { texts, mode } = this;
    if (mode === 'look') return nothing;
    const tools: [Tool, string][] =
      mode === 'cover'
        ? [['MOVE', texts.move], ['COVER', texts.cover]]
        : [['MOVE', texts.move], ['POINT', texts.point], ['LINE', texts.line], ['ANGLE', texts.angle]];
    return html`${tools.map(
        ([tool, name]) =>
          html`<button aria-pressed=${this.tool === tool} @click=${() => this.choose(tool)}>${name}</button>`,
      )}
      ${this.tool === 'MOVE'
        ? nothing
        : html`<button @click=${this.placeAtCross}>${texts.place}</button>
            ${mode === 'draw'
              ? html`<input
                  aria-label=${texts.label}
                  placeholder=${texts.label}
                  maxlength="80"
                  .value=${this.label}
                  @input=${(event: Event) => (this.label = (event.target as HTMLInputElement).value)}
                />`
              : nothing}
            <span role="status">${this.pending.length ? texts.next : ''}</span>`}`;
  }

  private marks(): SVGTemplateResult | TemplateResult {
    const placing = this.looking.stage?.placing;
    if (!placing) return html`${nothing}`;
    return html`<svg class="marks" aria-hidden="true">
      ${this.covers.map(cover => coverShape(cover, placing))}
      ${this.layers.map((layer, i) => layer.drawn.map(one => shape(one.drawing.points, one.text, i, placing)))}
      ${this.pending.length ? shape(this.pending, '', -1, placing) : nothing}
    </svg>`;
  }

  private coverList(): TemplateResult {
    const { texts } = this;
    return html`<ul>
      ${this.covers.map(
        (_, i) =>
          html`<li>
            ${texts.covered.replace('{0}', String(i + 1))}
            <button @click=${() => this.tellCovers(this.covers.filter((__, at) => at !== i))}>${texts.remove}</button>
          </li>`,
      )}
    </ul>`;
  }

  private layerList(): TemplateResult {
    return html`<ul>
      ${this.layers.map(
        (layer, i) =>
          html`<li>
              <svg aria-hidden="true">
                <line x1="0" y1="5" x2="32" y2="5" stroke=${colour(i)} stroke-width="3" stroke-dasharray=${dash(i)} />
              </svg>
              ${layer.name}
            </li>
            ${layer.drawn.map((one, at) => this.drawnItem(layer, one.drawing, one.text, at))}`,
      )}
    </ul>`;
  }

  private drawnItem(layer: Layer, drawing: Drawing, text: string, at: number): TemplateResult {
    const { texts } = this;
    const kind = { POINT: texts.point, LINE: texts.line, ANGLE: texts.angle }[drawing.kind];
    return html`<li>
      ${kind}${text ? `: ${text}` : ''}
      ${layer.mine && this.mode === 'draw'
        ? html`<button @click=${() => this.tell('layer-drawn', this.mine.filter((_, i) => i !== at))}>
            ${texts.remove}
          </button>`
        : nothing}
    </li>`;
  }
}

const colour = (i: number): string => (i < 0 ? '#fff' : COLOURS[i % COLOURS.length]);
const dash = (i: number): string => (i < 0 ? '' : DASHES[i % DASHES.length]);

function shape(points: Spot[], text: string, layer: number, placing: Placing): SVGTemplateResult {
  const on = points.map(({ x, y }) => placing.toScreen([x, y]));
  const [tx, ty] = on[on.length === 3 ? 1 : 0];
  return svg`<polyline class="shape" stroke=${colour(layer)} stroke-dasharray=${dash(layer)}
      points=${on.map(one => one.join(',')).join(' ')} />
    ${on.map(([x, y]) => svg`<circle class="dot" cx=${x} cy=${y} r="4" fill=${colour(layer)} />`)}
    <text x=${tx + 8} y=${ty - 8} fill=${colour(layer)}>${text}</text>`;
}

function coverShape(cover: Cover, placing: Placing): SVGTemplateResult {
  const corners: Point[] = [
    [cover.x, cover.y],
    [cover.x + cover.width, cover.y],
    [cover.x + cover.width, cover.y + cover.height],
    [cover.x, cover.y + cover.height],
  ];
  const points = corners.map(corner => placing.toScreen(corner).join(',')).join(' ');
  return svg`<polygon class="cover" points=${points} />`;
}

declare global {
  interface HTMLElementTagNameMap {
    'opinion-film': OpinionFilm;
  }
}
