import { draftAddress } from './address.js';
import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { EdgePoints, Measured, PlacedPoint, Step } from './contract.js';
import { forget, keep, kept } from './keeping.js';
import { Measuring } from './measuring.js';
import { handleLabel } from './overlay.js';
import { keyOf, Points, type Handle } from './points.js';
import { fill, sideText, type Texts } from './texts.js';
import type { Point } from './viewport.js';

/** What the server gave the room. */
export interface Given {
  draft: string;
  revision: number;
  points: PlacedPoint[];
  edges: EdgePoints[];
  guide: Step[];
  fixed: boolean;
  answer?: Measured;
  texts: Texts;
}

/** The reading in hand: what is placed, what the server says to it, and whether it is kept. */
export class Draft implements ReactiveController {
  readonly placed = new Points();
  measured?: Measured;
  /** Key of the landmark in hand. */
  held?: string;
  /** For the live region. */
  said = '';

  private readonly typing = new Map<string, Point>();
  private readonly measuring: Measuring;

  constructor(
    private readonly room: ReactiveControllerHost & { readonly given: Given },
    private readonly committed: () => void,
  ) {
    room.addController(this);
    this.measuring = new Measuring({
      url: () => `${draftAddress(this.room.given.draft)}/measure`,
      placed: () => this.placed.placed,
      answered: (measured, saved) => {
        this.measured = measured;
        if (saved) this.committed();
      },
      changed: () => {
        if (this.measuring.settled) forget(this.room.given.draft);
        this.room.requestUpdate();
      },
    });
  }

  hostConnected(): void {
    addEventListener('online', this.again);
    addEventListener('beforeunload', this.warn);
  }

  hostDisconnected(): void {
    removeEventListener('online', this.again);
    removeEventListener('beforeunload', this.warn);
    this.measuring.stop();
  }

  get sent(): number {
    return this.measuring.sent;
  }

  get answered(): number {
    return this.measuring.answered;
  }

  get revision(): number {
    return this.measuring.revision;
  }

  get saving() {
    return this.measuring.saving;
  }

  /** The last change is committed and answered. */
  get settled(): boolean {
    return this.measuring.settled;
  }

  /** The numbers shown belong to points that have since moved. */
  get waiting(): boolean {
    return this.measuring.answered !== this.measuring.sent;
  }

  /** Takes the server's draft; points of this tab that were never saved come first. */
  adopt(): void {
    const { draft, revision, points, edges, guide, fixed, answer, texts } = this.room.given;
    const unsaved = fixed || !draft ? undefined : kept(draft);
    this.placed.guide = guide;
    this.placed.adopt(unsaved ?? { points, edges });
    this.measuring.start(revision);
    this.measured = answer;
    if (unsaved) {
      this.said = texts.restored;
      this.measuring.revision = unsaved.revision;
      this.measuring.change(true);
    } else if (!answer && draft && this.placed.handles.length) {
      this.measuring.measure();
    }
  }

  /** Takes points the server has newly given, unless this room holds newer ones. */
  takeNewer(): void {
    if (this.measuring.settled) this.adopt();
    else this.settle();
  }

  /** Goes on under another guide, revision or answer: what is placed stays. */
  settle(): void {
    const { guide, revision, answer } = this.room.given;
    this.placed.follow(guide);
    this.measuring.goOnFrom(revision);
    if (answer && !this.waiting) this.measured = answer;
    else this.measuring.measure();
  }

  place(point: Point): Handle | undefined {
    if (this.room.given.fixed) return undefined;
    const { texts } = this.room.given;
    const handle = this.placed.place(point);
    if (!handle) return undefined;
    this.held = handle.key;
    this.said = fill(texts.placed, this.label(handle));
    if (handle.edge === undefined) this.sayNext();
    this.change(true);
    return handle;
  }

  move(handle: Handle, point: Point, commit: boolean): void {
    this.held = handle.key;
    this.placed.move(handle, point);
    this.change(commit);
  }

  hold(handle: Handle): void {
    this.held = handle.key;
    this.room.requestUpdate();
  }

  commit(): void {
    this.change(true);
  }

  remember(): void {
    this.placed.remember();
  }

  remove(handle: Handle): void {
    this.placed.remove(handle);
    this.said = fill(this.room.given.texts.removed, this.label(handle));
    this.change(true);
  }

  undo(): void {
    if (!this.room.given.fixed && this.placed.undo()) this.change(true);
  }

  /** Takes a number typed into the table; a new landmark stands once both its numbers are there. */
  typed(handle: Handle, x: number, y: number): void {
    const before = this.typing.get(handle.key) ?? [handle.x, handle.y];
    const point: Point = [Number.isNaN(x) ? before[0] : x, Number.isNaN(y) ? before[1] : y];
    this.typing.set(handle.key, point);
    if (point.some(Number.isNaN)) return;
    this.typing.delete(handle.key);
    this.remember();
    this.move(handle, point, true);
  }

  go(by: number): void {
    this.placed.go(this.placed.current + by);
    this.said = '';
    this.sayNext();
    this.room.requestUpdate();
  }

  readonly again = (): void => this.measuring.askNow();

  /** Of two states of the draft keeps the one on the screen: it becomes the next revision of the other. */
  readonly keepMine = (): void => {
    if (this.saving.state !== 'conflict') return;
    this.measuring.goOnFrom(this.saving.conflict.revision);
    this.measuring.saving = { state: 'saving' };
    this.change(true);
  };

  readonly takeTheirs = (): void => {
    if (this.saving.state !== 'conflict') return;
    const { conflict } = this.saving;
    forget(this.room.given.draft);
    this.placed.adopt(conflict);
    this.measuring.start(conflict.revision);
    this.measuring.measure();
    this.room.requestUpdate();
  };

  readonly label = (handle: Handle): string => {
    const key = keyOf(handle.side, handle.landmark);
    const step = this.placed.guide.find(one => keyOf(one.side, one.landmark) === key);
    return handleLabel(handle, step?.label ?? handle.landmark, this.room.given.texts);
  };

  private sayNext(): void {
    const { texts } = this.room.given;
    const { step } = this.placed;
    this.said += ` ${step ? fill(texts.nextIs, sideText(texts, step.side, step.label)) : texts.allPlaced}`;
  }

  private change(commit: boolean): void {
    keep(this.room.given.draft, { revision: this.measuring.revision, ...this.placed.placed });
    this.measuring.change(commit);
    this.room.requestUpdate();
  }

  private readonly warn = (event: BeforeUnloadEvent): void => {
    if (!this.measuring.settled) event.preventDefault();
  };
}
