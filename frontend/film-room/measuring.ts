import type { Conflict, EdgePoints, Measured, MeasureRequest, PlacedPoint } from './contract.js';

/** What stands between a change and its being kept. */
export type Saving =
  | { state: 'saved' }
  | { state: 'saving' }
  | { state: 'unsaved' }
  | { state: 'signed-out' }
  | { state: 'refused'; message: string }
  | { state: 'conflict'; conflict: Conflict };

export interface Placed {
  points: PlacedPoint[];
  edges: EdgePoints[];
}

interface Asking {
  /** Address of the draft's measuring. */
  url: () => string;
  /** What is placed now. */
  placed: () => Placed;
  answered: (measured: Measured, committed: boolean) => void;
  changed: () => void;
}

const PATIENCE_MS = 15_000;
const FIRST_PAUSE_MS = 500;
const LONGEST_PAUSE_MS = 20_000;

/**
 * Asks the server for numbers, one request at a time, the newest points first. A change is never given up: while
 * the server cannot be reached it is asked again, more and more seldom, and at once when the network returns.
 */
export class Measuring {
  sent = 0;
  answered = 0;
  revision = 0;
  saving: Saving = { state: 'saved' };

  /** What is placed differs from the draft the server holds. */
  private dirty = false;
  private wanted = false;
  private commitWanted = false;
  private busy = false;
  private pause = 0;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private generation = 0;

  constructor(private readonly asking: Asking) {}

  /** Starts over on another draft or another state of it; answers still under way are dropped. */
  start(revision: number): void {
    this.stop();
    this.revision = revision;
    this.sent = this.answered = 0;
    this.dirty = this.wanted = this.commitWanted = false;
    this.saving = { state: 'saved' };
  }

  stop(): void {
    clearTimeout(this.timer);
    this.generation++;
    this.busy = false;
    this.pause = 0;
  }

  /** The points have changed; `commit` when the hand let go of them. */
  change(commit: boolean): void {
    this.dirty = true;
    this.commitWanted ||= commit;
    this.measure();
  }

  /** Asks for the numbers of what is placed. */
  measure(): void {
    this.sent++;
    this.wanted = true;
    this.askNow();
  }

  /** Goes on from a newer revision of the draft. */
  goOnFrom(revision: number): void {
    this.revision = Math.max(this.revision, revision);
  }

  /** Asks at once instead of at the end of a pause. */
  askNow(): void {
    clearTimeout(this.timer);
    this.pause = 0;
    void this.ask();
  }

  get settled(): boolean {
    return this.saving.state === 'saved' && !this.dirty && !this.wanted && !this.busy;
  }

  private async ask(): Promise<void> {
    if (this.busy || !this.wanted || this.saving.state === 'conflict') return;
    this.busy = true;
    this.wanted = false;
    const generation = this.generation;
    const commit = this.commitWanted;
    this.commitWanted = false;
    if (commit) this.say({ state: 'saving' });
    const request: MeasureRequest = { seq: this.sent, revision: this.revision, ...this.asking.placed() };
    if (commit) request.commit = true;
    let outcome: Saving;
    try {
      outcome = await this.post(request, generation);
    } catch {
      outcome = { state: 'unsaved' };
    }
    if (generation !== this.generation) return;
    this.busy = false;
    this.conclude(outcome, commit);
  }

  private async post(request: MeasureRequest, generation: number): Promise<Saving> {
    const response = await fetch(this.asking.url(), {
      method: 'POST',
      headers: { 'Content-Type': 'application/json', Accept: 'application/json', ...csrfHeader() },
      body: JSON.stringify(request),
      redirect: 'manual',
      signal: AbortSignal.timeout(PATIENCE_MS),
    });
    if (generation !== this.generation) return this.saving;
    if (response.ok) return this.take((await response.json()) as Measured, request, generation);
    if (response.status === 409) return { state: 'conflict', conflict: (await response.json()) as Conflict };
    if (response.status === 400 || response.status === 422) {
      return { state: 'refused', message: await messageOf(response) };
    }
    if (response.type === 'opaqueredirect' || response.status === 401 || response.status === 403) {
      return { state: 'signed-out' };
    }
    return { state: 'unsaved' };
  }

  private take(measured: Measured, request: MeasureRequest, generation: number): Saving {
    if (generation !== this.generation) return this.saving;
    if (measured.seq > this.answered) {
      this.answered = measured.seq;
      this.revision = measured.revision;
      this.asking.answered(measured, request.commit === true);
    }
    if (request.commit && request.seq === this.sent) this.dirty = false;
    return { state: this.dirty ? 'saving' : 'saved' };
  }

  private conclude(outcome: Saving, commit: boolean): void {
    if (outcome.state === 'saved' || outcome.state === 'saving') {
      this.pause = 0;
      this.say(outcome);
      void this.ask();
      return;
    }
    this.commitWanted ||= commit;
    this.wanted = outcome.state !== 'conflict' && outcome.state !== 'refused';
    this.say(outcome);
    if (!this.wanted) return;
    this.pause = Math.min(LONGEST_PAUSE_MS, this.pause === 0 ? FIRST_PAUSE_MS : this.pause * 2);
    this.timer = setTimeout(() => void this.ask(), this.pause);
  }

  private say(saving: Saving): void {
    this.saving = saving;
    this.asking.changed();
  }
}

function csrfHeader(): Record<string, string> {
  const content = (name: string) => document.querySelector<HTMLMetaElement>(`meta[name=${name}]`)?.content;
  const token = content('_csrf');
  return token ? { [content('_csrf_header') ?? 'X-CSRF-TOKEN']: token } : {};
}

async function messageOf(response: Response): Promise<string> {
  try {
    const body = (await response.json()) as { message?: string; detail?: string };
    return body.message ?? body.detail ?? '';
  } catch {
    return '';
  }
}
