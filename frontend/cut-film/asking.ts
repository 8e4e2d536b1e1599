import type { Answer, Cut } from './contract.js';

interface Asked {
  answered: (answer: Answer) => void;
  /** With why, when the server said it. */
  failed: (why?: string) => void;
}

/** Asks for the newest cut, one request at a time; answers to older ones are dropped. */
export class Asking {
  private busy = false;
  private wanted?: Cut;

  constructor(
    private readonly url: () => string,
    private readonly asked: Asked,
  ) {}

  ask(cut: Cut): void {
    this.wanted = cut;
    if (!this.busy) void this.next();
  }

  private async next(): Promise<void> {
    const cut = this.wanted;
    if (!cut) return;
    this.wanted = undefined;
    this.busy = true;
    try {
      const response = await fetch(this.url(), {
        method: 'POST',
        headers: { 'Content-Type': 'application/json', ...token() },
        body: JSON.stringify(cut),
      });
      if (response.ok) this.asked.answered((await response.json()) as Answer);
      else if (response.status === 400) this.asked.failed(((await response.json()) as { message?: string }).message);
      else this.asked.failed();
    } catch {
      this.asked.failed();
    }
    this.busy = false;
    void this.next();
  }
}

function token(): Record<string, string> {
  const meta = (name: string) => document.querySelector<HTMLMetaElement>(`meta[name="${name}"]`)?.content;
  const header = meta('_csrf_header');
  const value = meta('_csrf');
  return header && value ? { [header]: value } : {};
}
