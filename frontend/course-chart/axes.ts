import { nothing, svg, type SVGTemplateResult } from 'lit';
import type { CourseModel } from './contract.js';
import type { TimeScale } from './scale.js';
import type { Texts } from './texts.js';

/** Age above, date below, and today. */
export function timeAxes(
  model: CourseModel,
  time: TimeScale,
  top: number,
  bottom: number,
  texts: Texts,
): SVGTemplateResult {
  const ages = time.ages(years => texts.years.replace('{0}', String(years)));
  const dates = time.dates(document.documentElement.lang || 'en');
  const today = time.x(model.today);
  return svg`
    <text class="axis start" x="0" y=${top - 10}>${texts.age}</text>
    ${ages.map(
      ({ at, label }) => svg`
        <line class="birthday" x1=${at} x2=${at} y1=${top - 5} y2=${bottom}></line>
        <text class="axis" x=${at} y=${top - 10}>${label}</text>`,
    )}
    ${dates.map(
      ({ at, label }) => svg`
        <line class="date" x1=${at} x2=${at} y1=${bottom} y2=${bottom + 5}></line>
        <text class="axis" x=${at} y=${bottom + 18}>${label}</text>`,
    )}
    ${
      today < time.left || today > time.right
        ? nothing
        : svg`<g class="today">
            <line x1=${today} x2=${today} y1=${top - 8} y2=${bottom + 2}></line>
            <text x=${today} y=${top + 12}>${texts.today}</text>
          </g>`
    }`;
}
