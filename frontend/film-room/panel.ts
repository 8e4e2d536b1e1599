import { html, nothing, type TemplateResult } from 'lit';
import type { Measured, ShownNumber, Side, Warning } from './contract.js';
import { drawing } from './drawings.js';
import type { Saving } from './measuring.js';
import type { Handle, Points } from './points.js';
import { fill, sideName, sideText, type Texts } from './texts.js';

interface Guiding {
  back: () => void;
  next: () => void;
  placeAtCross: () => void;
}

/** The landmark in hand: where it is, in a small drawing and a sentence. */
export function stepCard(points: Points, texts: Texts, guiding: Guiding): TemplateResult {
  const { step, guide } = points;
  if (!step) {
    return html`<section class="step done"><p>${texts.allPlaced}</p>
      <div class="row"><button @click=${guiding.back}>${texts.back}</button></div></section>`;
  }
  const side = (step.side ?? 'none').toLowerCase();
  const count = points.pointsOf(step).length;
  return html`
    <section class="step" aria-labelledby="step-title">
      <svg viewBox="0 0 80 80" class="place ${side}" aria-hidden="true">${drawing(step.drawing, step.side)}</svg>
      <div class="words">
        <p class="which">${fill(texts.step, points.current + 1, guide.length)}</p>
        <h2 id="step-title" class=${side}>${sideText(texts, step.side, step.label)}</h2>
        <p class="sentence">${step.sentence}</p>
        ${step.kind === 'circle'
          ? html`<p class="count">${fill(texts.edgePoints, count, step.least ?? 5)}</p>`
          : nothing}
      </div>
      <div class="row">
        <button ?disabled=${points.current === 0} @click=${guiding.back}>${texts.back}</button>
        <button @click=${guiding.next} class=${points.isDone(step) ? 'strong' : ''}>
          ${points.isDone(step) ? texts.next : texts.skip}</button>
        <button @click=${guiding.placeAtCross}>${texts.placeAtCross}</button>
      </div>
    </section>`;
}

const SIDES: Side[] = ['RIGHT', 'LEFT'];

/** Every quantity a row, every limb a column; grey while the points have moved on. */
export function numbers(measured: Measured | undefined, waiting: boolean, texts: Texts): TemplateResult {
  const all = measured?.numbers ?? [];
  if (!all.length) return html`<p class="none">${texts.noNumbers}</p>`;
  const sides = SIDES.filter(side => all.some(number => number.side === side));
  const ids = [...new Set(all.map(number => number.id))];
  return html`
    <table class="numbers ${waiting ? 'waiting' : ''}" aria-busy=${waiting}>
      <caption class="screen-reader-only">${texts.numbers}</caption>
      <thead>
        <tr>
          <th scope="col"><span class="screen-reader-only">${texts.quantity}</span></th>
          ${sides.map(side => html`<th scope="col" class=${side.toLowerCase()}>${sideName(texts, side)}</th>`)}
        </tr>
      </thead>
      <tbody>${ids.map(id => numberRow(all.filter(number => number.id === id), sides, texts))}</tbody>
    </table>`;
}

function numberRow(row: ShownNumber[], sides: Side[], texts: Texts): TemplateResult {
  const [first] = row;
  return html`
    <tr>
      <th scope="row">
        ${first.label}${first.range ? html`<span class="range">${fill(texts.normal, first.range)}</span>` : nothing}
        ${first.norm ? html`<span class="range">${first.norm}</span>` : nothing}
      </th>
      ${sides.map(side => numberCell(row.find(number => number.side === side), texts))}
    </tr>`;
}

function numberCell(number: ShownNumber | undefined, texts: Texts): TemplateResult {
  if (!number) return html`<td></td>`;
  return html`
    <td class="${number.state} ${number.doubtful ? 'doubtful' : ''}" data-quantity=${number.id} data-side=${number.side}>
      <span class="value">${number.text}</span>
      ${number.state === 'out' ? html`<span class="screen-reader-only">, ${texts.outside}</span>` : nothing}
      ${number.note ? html`<span class="note">${number.note}</span>` : nothing}
    </td>`;
}

/** Right against left, and where the norms come from. */
export function below(measured: Measured | undefined, texts: Texts): TemplateResult {
  const { comparisons, sources } = measured ?? { comparisons: [], sources: [] };
  return html`
    ${comparisons.length
      ? html`<dl class="comparisons" aria-label=${texts.comparisons}>
          ${comparisons.map(
            ({ label, text, note }) => html`<dt>${label}</dt>
              <dd>${text}${note ? html`<span class="note">${note}</span>` : nothing}</dd>`,
          )}
        </dl>`
      : nothing}
    ${sources.length
      ? html`<details class="sources">
          <summary>${texts.sources}</summary>
          <ul>${sources.map(source => html`<li>${source}</li>`)}</ul>
        </details>`
      : nothing}`;
}

export function warnings(
  measured: Measured | undefined,
  severities: Warning['severity'][],
  texts: Texts,
): TemplateResult {
  const shown = (measured?.warnings ?? []).filter(({ severity }) => severities.includes(severity));
  if (!shown.length) return html`${nothing}`;
  return html`<ul class="warnings">
    ${shown.map(({ side, text, severity }) => html`<li class=${severity}>${sideText(texts, side, text)}</li>`)}
  </ul>`;
}

interface Tabling {
  label: (handle: Handle) => string;
  fixed: boolean;
  /** A number was typed; the other may still be missing. */
  typed: (handle: Handle, x: number, y: number) => void;
  remove: (handle: Handle) => void;
  reached: (handle: Handle) => void;
}

/** Every landmark with its x and y, placed or still to be placed: the way without dragging. */
export function landmarkTable(rows: Handle[], texts: Texts, tabling: Tabling): TemplateResult {
  return html`
    <details class="table">
      <summary>${texts.table}</summary>
      <table>
        <thead>
          <tr>
            <th scope="col">${texts.landmark}</th>
            <th scope="col">x</th>
            <th scope="col">y</th>
            <td></td>
          </tr>
        </thead>
        <tbody>${rows.map(row => landmarkRow(row, texts, tabling))}</tbody>
      </table>
    </details>`;
}

function landmarkRow(row: Handle, texts: Texts, { label, fixed, typed, remove, reached }: Tabling): TemplateResult {
  const name = label(row);
  const input = (axis: 'x' | 'y', set: (value: number) => void) => html`
    <input
      type="number"
      step="any"
      ?readonly=${fixed}
      aria-label="${name}, ${axis === 'x' ? texts.x : texts.y}"
      .value=${Number.isNaN(row[axis]) ? '' : row[axis].toFixed(1)}
      @focus=${() => reached(row)}
      @change=${(event: Event) => set((event.target as HTMLInputElement).valueAsNumber)}
    />`;
  const empty = Number.isNaN(row.x) && Number.isNaN(row.y);
  return html`
    <tr class=${(row.side ?? 'none').toLowerCase()}>
      <th scope="row">${name}</th>
      <td>${input('x', x => typed(row, x, row.y))}</td>
      <td>${input('y', y => typed(row, row.x, y))}</td>
      <td>
        ${fixed || empty
          ? nothing
          : html`<button aria-label="${texts.remove}: ${name}" @click=${() => remove(row)}>×</button>`}
      </td>
    </tr>`;
}

interface Keeping {
  again: () => void;
  mine: () => void;
  theirs: () => void;
}

/** Whether what is on the screen is kept, and what to do when it is not. */
export function savingState(saving: Saving, texts: Texts, keeping: Keeping): TemplateResult {
  switch (saving.state) {
    case 'saved':
      return html`<p class="saving">${texts.saved}</p>`;
    case 'saving':
      return html`<p class="saving">${texts.saving}</p>`;
    case 'unsaved':
      return html`<p class="saving soon">${texts.unsaved} <button @click=${keeping.again}>${texts.again}</button></p>`;
    case 'signed-out':
      return html`<p class="saving soon">${texts.signedOut} <a href=${location.href}>${texts.signIn}</a></p>`;
    case 'refused':
      return html`<p class="saving harm">${fill(texts.refused, saving.message)}</p>`;
    case 'conflict':
      return html`<div class="saving harm"><p>${saving.conflict.message}</p>
        <div class="row">
          <button @click=${keeping.mine}>${texts.mine}</button>
          <button @click=${keeping.theirs}>${texts.theirs}</button>
        </div></div>`;
  }
}
