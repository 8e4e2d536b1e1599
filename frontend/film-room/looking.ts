import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { filmAddress } from './address.js';
import type { FilmFacts, FilmWindow } from './contract.js';
import { draggedWindow } from './keys.js';
import type { Stage } from './stage.js';
import { fill, type Texts } from './texts.js';
import type { Point } from './viewport.js';

interface Room extends ReactiveControllerHost {
  readonly film: string;
  /** The element the film is drawn in, once it is there. */
  readonly filmElement: HTMLElement | null;
  dataset: DOMStringMap;
}

interface Watching {
  moved: () => void;
  pressed: (point: Point) => void;
}

/** How the film is looked at: which one, through which window, which way round. */
export class Looking implements ReactiveController {
  stage?: Stage;
  facts?: FilmFacts;
  failed = false;
  window?: FilmWindow;
  windowing = false;
  flipped = false;
  turned = 0;
  /** The next press on the film says where to look, and places nothing. */
  seeking = false;
  private under?: Point;

  constructor(
    private readonly room: Room,
    private readonly watching: Watching,
  ) {
    room.addController(this);
  }

  hostConnected(): void {
    void this.room.updateComplete.then(() => this.raise()).catch(() => this.fail());
  }

  hostDisconnected(): void {
    this.stage?.destroy();
    this.stage = undefined;
  }

  readonly open = async (): Promise<void> => {
    const { film } = this.room;
    this.room.dataset.tiles = 'loading';
    this.failed = false;
    try {
      const response = await fetch(`${filmAddress(film)}/info`, { headers: { Accept: 'application/json' } });
      if (!response.ok) throw new Error(String(response.status));
      const facts = (await response.json()) as FilmFacts;
      if (film !== this.room.film) return;
      this.facts = facts;
      this.window = facts.windows[0];
      if (this.stage) this.showFilm();
      else await this.raise();
    } catch {
      if (film === this.room.film) this.fail();
    }
    this.room.requestUpdate();
  };

  readonly toggleWindow = (): void => {
    this.windowing = !this.windowing;
    this.room.requestUpdate();
  };

  readonly over = (event: PointerEvent): void => {
    this.under = this.stage?.at(event);
  };

  /** Closely at what lies under the pointer, or back to the whole film. */
  readonly look = (): void => {
    if (!this.stage) return;
    if (this.stage.close) this.stage.fit();
    else if (this.under) this.stage.closeOn(this.under);
  };

  /** By the button: back to the whole film, or closely at the place pressed next. */
  readonly seek = (): void => {
    if (this.stage?.close) this.stage.fit();
    else this.seeking = !this.seeking;
    this.room.requestUpdate();
  };

  takenAsPlace(point: Point): boolean {
    if (!this.seeking) return false;
    this.seeking = false;
    this.stage?.closeOn(point);
    this.room.requestUpdate();
    return true;
  }

  readonly flip = (): void => {
    this.flipped = this.stage?.flip() ?? false;
    this.room.requestUpdate();
  };

  readonly turn = (degrees: number): void => {
    this.turned = this.stage?.rotate(degrees) ?? 0;
    this.room.requestUpdate();
  };

  readonly show = (window: FilmWindow): void => {
    this.window = window;
    this.stage?.look(window);
    this.room.requestUpdate();
  };

  readonly nudge = (dx: number, dy: number): void => {
    if (this.window && this.facts?.grey !== false) this.show(draggedWindow(this.window, this.facts!, dx, dy));
  };

  /** The right button, or any press while windowing, changes the window instead of moving the film. */
  readonly byDrag = (event: PointerEvent): void => {
    const { window, facts } = this;
    const meant = event.button === 2 || (this.windowing && event.button === 0);
    if (!window || !facts || facts.grey === false || !meant) return;
    event.stopPropagation();
    const film = event.currentTarget as HTMLElement;
    film.setPointerCapture(event.pointerId);
    film.onpointermove = move =>
      this.show(draggedWindow(window, facts, move.clientX - event.clientX, move.clientY - event.clientY));
    film.onpointerup = film.onpointercancel = () => (film.onpointermove = film.onpointerup = null);
  };

  /** How the picture stands to the child, so that right is never taken for left. */
  facing(words: Texts): string {
    if (this.turned) return fill(this.flipped ? words.flippedAndTurned : words.turned, this.turned);
    return this.flipped ? words.flipped : words.facing;
  }

  /** The tiles and their viewer come when they are needed, apart from the rest of the program. */
  private async raise(): Promise<void> {
    const { Stage } = await import('./stage.js');
    const element = this.room.filmElement;
    if (this.stage || !element?.isConnected) return;
    this.stage = new Stage(element, {
      ...this.watching,
      tiles: shown => (this.room.dataset.tiles = shown),
    });
    this.showFilm();
  }

  private fail(): void {
    this.failed = true;
    this.room.requestUpdate();
  }

  private showFilm(): void {
    if (this.stage && this.facts && this.window) this.stage.open(this.room.film, this.facts, this.window);
  }
}
