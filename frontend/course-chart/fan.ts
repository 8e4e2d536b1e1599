import { svg, type SVGTemplateResult } from 'lit';
import type { Fan, Side } from './contract.js';
import type { TimeScale, ValueScale } from './scale.js';

/** The forecast from the last film: nine in ten pale, half darker, the middle as a thin line. */
export function fan(forecast: Fan, side: Side, time: TimeScale, values: ValueScale): SVGTemplateResult {
  const { days } = forecast;
  const along = (pick: 'low90' | 'low50' | 'middle' | 'high50' | 'high90') =>
    days.map(day => `${time.x(day.date)},${values.y(day[pick])}`);
  const area = (low: 'low90' | 'low50', high: 'high90' | 'high50') => [...along(low), ...along(high).reverse()].join(' ');
  return svg`
    <g class="fan ${side.toLowerCase()}" role="img" aria-label=${forecast.text}>
      <title>${forecast.text}</title>
      <polygon class="ninety" points=${area('low90', 'high90')}></polygon>
      <polygon class="fifty" points=${area('low50', 'high50')}></polygon>
      <polyline points=${along('middle').join(' ')}></polyline>
    </g>`;
}
