import { html, type TemplateResult } from 'lit';
import type { FilmMark } from './contract.js';
import type { TimeScale } from './scale.js';

const PICTURE_PX = 30;

/** Films at their dates under the axis: small pictures where there is room, newest first, else ticks. */
export function filmStrip(films: FilmMark[], time: TimeScale): TemplateResult[] {
  let nextLeft = Infinity;
  const newestFirst = [...films].sort((one, other) => other.date.localeCompare(one.date));
  return newestFirst
    .map(film => {
      const x = time.x(film.date);
      const pictured = x + PICTURE_PX / 2 <= nextLeft;
      if (pictured) nextLeft = x - PICTURE_PX / 2 - 2;
      return html`<a
        class=${pictured ? 'picture' : 'tick'}
        href=${film.href}
        title=${film.label}
        style="left:${x}px"
      >
        ${pictured
          ? html`<img src=${film.src} alt=${film.label} loading="lazy" />`
          : html`<span class="screen-reader-only">${film.label}</span>`}
      </a>`;
    })
    .reverse();
}
