import { html, nothing, svg, type TemplateResult } from 'lit';
import type { FilmFacts, FilmWindow } from './contract.js';
import type { Looking } from './looking.js';
import type { Texts } from './texts.js';

const ICONS = {
  closer: 'M5 12h14M12 5v14',
  farther: 'M5 12h14',
  look: 'M10 4a6 6 0 1 0 0 12a6 6 0 0 0 0-12M14.5 14.5L20 20M10 7v6M7 10h6',
  whole: 'M4 9V4h5M15 4h5v5M20 15v5h-5M9 20H4v-5',
  window: 'M12 3a9 9 0 1 0 0 18V3M12 3a9 9 0 0 1 0 18',
  flip: 'M12 3v18M9 7L3 17h6zM15 7l6 10h-6z',
  turnLeft: 'M5 8a8 8 0 1 1-1 6M5 3v5h5',
  turnRight: 'M19 8a8 8 0 1 0 1 6M19 3v5h-5',
  undo: 'M4 10h10a5 5 0 0 1 0 10H9M8 6l-4 4 4 4',
};

function tool(icon: keyof typeof ICONS, label: string, act: () => void, pressed?: boolean): TemplateResult {
  return html`<button
    class="tool"
    title=${label}
    aria-label=${label}
    aria-pressed=${pressed ?? nothing}
    @click=${act}
  >
    <svg viewBox="0 0 24 24" aria-hidden="true">${svg`<path d=${ICONS[icon]}></path>`}</svg>
  </button>`;
}

/** How the film is shown; nothing here changes the film. */
export function toolbar(texts: Texts, looking: Looking, undo: (() => void) | undefined): TemplateResult {
  const { stage, facts, windowing, flipped, toggleWindow, flip, turn } = looking;
  return html`
    <div class="tools" role="group" aria-label=${texts.tools}>
      ${tool('closer', texts.zoomIn, () => stage?.zoom(1))}
      ${tool('farther', texts.zoomOut, () => stage?.zoom(-1))}
      ${tool('look', texts.look, looking.seek, looking.seeking)}
      ${tool('whole', texts.fit, () => stage?.fit())}
      ${facts?.grey === false ? nothing : tool('window', texts.window, toggleWindow, windowing)}
      ${tool('flip', texts.flip, flip, flipped)}
      ${tool('turnLeft', texts.turnLeft, () => turn(-90))}
      ${tool('turnRight', texts.turnRight, () => turn(90))}
      ${undo ? tool('undo', texts.undo, undo) : nothing}
    </div>`;
}

export function failure(texts: Texts, again: () => void): TemplateResult {
  return html`<div class="failed" role="alert">
    <p>${texts.filmFailed}</p>
    <button @click=${again}>${texts.again}</button>
  </div>`;
}

/** The grey-scale window by name and by numbers. */
export function windowBox(
  texts: Texts,
  facts: FilmFacts,
  window: FilmWindow,
  show: (window: FilmWindow) => void,
): TemplateResult {
  const range = facts.maxValue - facts.minValue;
  const slider = (label: string, value: number, least: number, most: number, set: (value: number) => void) => html`
    <label>
      ${label}
      <input
        type="range"
        min=${least}
        max=${most}
        step=${Math.max(1, Math.round(range / 400))}
        .value=${String(value)}
        @input=${(event: Event) => set((event.target as HTMLInputElement).valueAsNumber)}
      />
    </label>`;
  return html`
    <div class="window-box" role="group" aria-label=${texts.window}>
      <div class="row">
        ${facts.windows.map(
          preset => html`<button
            aria-pressed=${preset.c === window.c && preset.w === window.w && preset.fn === window.fn}
            @click=${() => show(preset)}
          >
            ${preset.name}
          </button>`,
        )}
      </div>
      ${slider(texts.centre, facts.maxValue - window.c, 0, range, value =>
        show({ ...window, c: facts.maxValue - value }),
      )}
      ${slider(texts.width, range * 2 - window.w, 0, range * 2 - range / 200, value =>
        show({ ...window, w: range * 2 - value }),
      )}
      <p>${texts.windowHelp}</p>
    </div>`;
}
