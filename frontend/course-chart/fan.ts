import { svg, type SVGTemplateResult } from 'lit';
import type { Fan, Side } from './contract.js';
import type { TimeScale, ValueScale } from './scale.js';

/** How far up and down something reaches, in pixels. */
export interface Reach {
  top: number;
  bottom: number;
}

/** How far a fan reaches between two places along the axis; nothing where it is not drawn. */
export function reach(forecast: Fan, from: number, to: number, time: TimeScale, values: ValueScale): Reach[] {
  const days = forecast.days.map(day => ({
    x: time.x(day.date),
    edges: [values.y(day.low90), values.y(day.high90)],
  }));
  return days
    .filter((_, i) => (days[i + 1] ?? days[i]).x >= from && (days[i - 1] ?? days[i]).x <= to)
    .map(({ edges }) => ({ top: Math.min(...edges), bottom: Math.max(...edges) }));
}

/** The forecast from the last film: nine in ten pale, half darker, the middle as a thin line. */
export function fan(forecast: Fan, side: Side, time: TimeScale, values: ValueScale): SVGTemplateResult {
  const { days } = forecast;
  const along = (pick: 'low90' | 'low50' | 'middle' | 'high50' | 'high90') =>
    days.map(day => `${time.x(day.date)},${values.y(day[pick])}`);
  const area = (low: 'low90' | 'low50', high: 'high90' | 'high50') =>
    [...along(low), ...along(high).reverse()].join(' ');
  return svg`
    <g class="fan ${side.toLowerCase()}" role="img" aria-label=${forecast.text}>
      <title>${forecast.text}</title>
      <polygon class="ninety" points=${area('low90', 'high90')}></polygon>
      <polygon class="fifty" points=${area('low50', 'high50')}></polygon>
      <polyline points=${along('middle').join(' ')}></polyline>
    </g>`;
}
