import { nothing, svg, type SVGTemplateResult } from 'lit';
import type { Row, RowMark } from './contract.js';
import type { TimeScale } from './scale.js';

const ROW = 20;
/** On a narrow screen each row has its name above it. */
const NARROW_ROW = 34;
const BAR = 9;
const DIAMOND = 5;
/** A word stands at a mark when the next one leaves so much room. */
const WORD_PX = 46;

/** Height of the rows along the foot, in pixels. */
export const footHeight = (rows: Row[], narrow: boolean): number => rows.length * (narrow ? NARROW_ROW : ROW);

export interface Telling {
  show: (mark: RowMark, x: number, y: number) => void;
  hide: () => void;
}

/** Plates as bars, procedures, visits, examinations and bone ages, each row at its height. */
export function foot(rows: Row[], time: TimeScale, today: string, top: number, telling: Telling): SVGTemplateResult[] {
  const height = time.narrow ? NARROW_ROW : ROW;
  return rows.map((row, i) => {
    const middle = top + i * height + (time.narrow ? height - 10 : height / 2);
    const name = time.narrow
      ? svg`<text class="row-name" x="0" y=${middle - 11}>${row.label}</text>`
      : svg`<text class="row-name" x="0" y=${middle + 4}>${row.label}</text>`;
    return svg`
      <g class="row ${row.side?.toLowerCase() ?? ''}" role="group" aria-label=${row.label}>
        <g aria-hidden="true">${name}${baseline(row, time, today, middle)}</g>
        ${row.marks.map((mark, at) => rowMark(row, at, time, today, middle, telling))}
      </g>`;
  });
}

function baseline(row: Row, time: TimeScale, today: string, y: number): SVGTemplateResult | typeof nothing {
  const visits = row.marks.filter(({ look }) => look.startsWith('VISIT'));
  if (!visits.length) return nothing;
  const last = [...visits.map(({ date }) => date), today].sort().at(-1)!;
  return svg`<line class="visits" x1=${time.x(visits[0].date)} x2=${time.x(last)} y1=${y} y2=${y}></line>`;
}

function rowMark(row: Row, at: number, time: TimeScale, today: string, y: number, telling: Telling): SVGTemplateResult {
  const mark = row.marks[at];
  const x = time.x(mark.date);
  const next = row.marks[at + 1];
  const word = mark.shortText && (!next || time.x(next.date) - x > WORD_PX) ? mark.shortText : undefined;
  return svg`
    <a
      class="mark ${mark.look.toLowerCase().replace('_', '-')}"
      href=${mark.href ?? nothing}
      role=${mark.href ? nothing : 'img'}
      tabindex="-1"
      aria-label=${mark.text}
      @pointerenter=${() => telling.show(mark, x, y)}
      @pointerleave=${telling.hide}
      @focus=${() => telling.show(mark, x, y)}
      @blur=${telling.hide}
    >
      ${drawn(mark, x, time.x(mark.to ?? today), y)}
      ${word ? svg`<text class="word" x=${x + 9} y=${y + 4} aria-hidden="true">${word}</text>` : nothing}
    </a>`;
}

function drawn(mark: RowMark, x: number, end: number, y: number): SVGTemplateResult {
  switch (mark.look) {
    case 'PLATE':
    case 'PLATE_PARKED':
      return svg`
        <rect class="bar" x=${x} y=${y - BAR / 2} width=${Math.max(2, end - x)} height=${BAR}></rect>
        ${mark.to
          ? nothing
          : svg`<path class="on" d="M${end} ${y - BAR / 2 - 2}l6 ${BAR / 2 + 2}l-6 ${BAR / 2 + 2}z"></path>`}`;
    case 'VISIT_MISSED':
      return svg`<rect class="missed" x=${x - 6} y=${y - 6} width="12" height="12"></rect>
        <path class="cross" d="M${x - 3} ${y - 3}l6 6m0 -6l-6 6"></path>`;
    case 'VISIT':
      return svg`<rect class="touch" x=${x - 6} y=${y - 9} width="12" height="18"></rect>
        <line x1=${x} x2=${x} y1=${y - 7} y2=${y + 7}></line>`;
    case 'PROCEDURE': {
      const half = DIAMOND + 1;
      return svg`<path class="deed" d="M${x} ${y - half}l${half} ${half}l${-half} ${half}l${-half} ${-half}z"></path>`;
    }
    default:
      return svg`<rect class="touch" x=${x - 9} y=${y - 9} width="18" height="18"></rect>
        <circle cx=${x} cy=${y} r="4"></circle>`;
  }
}
