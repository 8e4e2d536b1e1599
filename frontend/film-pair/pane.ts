import type { FilmFacts } from '../film-room/contract.js';
import type { Stage } from '../film-room/stage.js';
import type { Placing, Point } from '../film-room/viewport.js';
import type { PairedFilm } from './contract.js';

interface Watching {
  moved: () => void;
  settled: () => void;
}

/** One film of the pair. Its scale is screen pixels to a millimetre, or to the film's height where it has none. */
export class Pane {
  /** Whether the reader moves this one, so that the other follows. */
  leads = false;
  settled = false;
  failed = false;
  private stage?: Stage;
  private facts?: FilmFacts;

  constructor(
    private readonly element: HTMLElement,
    private readonly film: PairedFilm,
    private readonly watching: Watching,
  ) {}

  async open(): Promise<void> {
    try {
      const [{ Stage }, response] = await Promise.all([
        import('../film-room/stage.js'),
        fetch(`/api/films/${this.film.film}/info`, { headers: { Accept: 'application/json' } }),
      ]);
      if (!response.ok) throw new Error(String(response.status));
      this.facts = (await response.json()) as FilmFacts;
      if (!this.element.isConnected) return;
      await new Promise<void>(opened => {
        this.stage = new Stage(this.element, {
          moved: () => {
            this.watching.moved();
            if (this.placing) opened();
          },
          pressed: () => undefined,
          tiles: shown => {
            this.settled = shown === 'settled';
            this.watching.settled();
          },
        });
        this.stage.open(this.film.film, this.facts!, this.facts!.windows[0]);
      });
    } catch {
      this.failed = true;
    }
  }

  /** Whether the film is there to be moved. */
  get stands(): boolean {
    return this.placing !== undefined;
  }

  get placing(): Placing | undefined {
    return this.stage?.placing;
  }

  get scale(): number | undefined {
    const { placing } = this;
    return placing && placing.scale / this.unit;
  }

  /** The scale at which the whole film is seen. */
  fitted(): number {
    const { width, height } = this.facts!;
    return Math.min(this.element.clientWidth / width, this.element.clientHeight / height) / this.unit;
  }

  scaleTo(scale: number): void {
    this.stage?.scaleTo(scale * this.unit);
  }

  zoom(direction: 1 | -1): void {
    this.stage?.zoom(direction);
  }

  pan(dx: number, dy: number): void {
    this.stage?.pan(dx, dy);
  }

  centre(point: Point): void {
    this.stage?.centreOn(point);
  }

  destroy(): void {
    this.stage?.destroy();
    this.stage = undefined;
  }

  /** One film pixel in the unit both films share. */
  private get unit(): number {
    return this.film.mmPerPx ?? 1 / this.facts!.height;
  }
}
