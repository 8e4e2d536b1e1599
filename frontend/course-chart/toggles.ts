import { html, type TemplateResult } from 'lit';
import type { Quantity, Side } from './contract.js';
import { sideName, type Texts } from './texts.js';

export const SIDES: Side[] = ['RIGHT', 'LEFT'];

/** So many lanes are open at first; the others wait for their buttons. */
const OPEN_AT_FIRST = 4;

/** What is hidden of a course, as the reader chose. */
export class Shown {
  private constructor(
    private readonly quantities: Quantity[],
    private readonly hidden: ReadonlySet<string>,
  ) {}

  static of(quantities: Quantity[]): Shown {
    return new Shown(quantities, new Set(quantities.slice(OPEN_AT_FIRST).map(({ id }) => id)));
  }

  /** The same choice for a course that was loaded again. */
  with(quantities: Quantity[]): Shown {
    return new Shown(quantities, this.hidden);
  }

  has(key: string): boolean {
    return !this.hidden.has(key);
  }

  get sides(): Side[] {
    return SIDES.filter(side => this.has(side));
  }

  get lanes(): Quantity[] {
    return this.quantities.filter(({ id }) => this.has(id));
  }

  /** The parts in the order of their first quantity. */
  get parts(): string[] {
    return [...new Set(this.quantities.map(({ part }) => part))];
  }

  of(part: string): Quantity[] {
    return this.quantities.filter(quantity => quantity.part === part);
  }

  /** Whether any quantity of the part is shown. */
  hasPart(part: string): boolean {
    return this.of(part).some(({ id }) => this.has(id));
  }

  toggled(key: string): Shown {
    return this.has(key) ? this.without([key]) : this.plus([key]);
  }

  /** Hides all of a part, or shows the first of its quantities. */
  toggledPart(part: string): Shown {
    const ids = this.of(part).map(({ id }) => id);
    return this.hasPart(part) ? this.without(ids) : this.plus(ids.slice(0, 1));
  }

  private without(keys: string[]): Shown {
    return new Shown(this.quantities, new Set([...this.hidden, ...keys]));
  }

  private plus(keys: string[]): Shown {
    return new Shown(this.quantities, new Set([...this.hidden].filter(key => !keys.includes(key))));
  }
}

/** Right and left, femur and tibia at once; single measures behind one fold. */
export function toggles(shown: Shown, words: Texts, choose: (next: Shown) => void): TemplateResult {
  const button = (pressed: boolean, label: string, kind: string, next: () => Shown) => html`
    <button class=${kind} aria-pressed=${pressed} @click=${() => choose(next())}>${label}</button>`;
  return html`
    <div class="toggles" role="group" aria-label=${words.shown}>
      ${SIDES.map(side =>
        button(shown.has(side), sideName(words, side), side.toLowerCase(), () => shown.toggled(side)),
      )}
      <span class="gap"></span>
      ${shown.parts.map(part => button(shown.hasPart(part), part, 'part', () => shown.toggledPart(part)))}
      <details>
        <summary>${words.single}</summary>
        <div class="single">
          ${shown.parts.map(
            part => html`
              <div class="measures" role="group" aria-label=${part}>
                <span aria-hidden="true">${part}</span>
                ${shown
                  .of(part)
                  .map(({ id, label }) => button(shown.has(id), label, 'quantity', () => shown.toggled(id)))}
              </div>`,
          )}
        </div>
      </details>
    </div>`;
}
