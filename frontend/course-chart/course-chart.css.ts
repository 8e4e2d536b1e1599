import { css } from 'lit';

/** Paper and ink; right lake, solid and round, left plum, dashed and square. */
export const styles = css`
  :host {
    display: block;
    position: relative;
    color: var(--ink, #1f2a24);
    font-family: var(--face, sans-serif);
    font-size: var(--text-s, 0.875rem);
    font-variant-numeric: tabular-nums lining-nums;
  }

  .right {
    --limb: var(--lake, #1b6f8a);
  }

  .left {
    --limb: var(--plum, #8a3b6e);
  }

  .toggles {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.35rem;
    margin-bottom: 0.35rem;
  }

  .toggles .gap {
    width: 0.6rem;
  }

  button {
    min-height: 1.9rem;
    padding: 0.1rem 0.65rem;
    border: 1px solid var(--rule-strong, #857c6a);
    border-radius: 4px;
    background: none;
    color: var(--ink-2, #4a564f);
    font: inherit;
    cursor: pointer;
  }

  button::before {
    content: '';
    display: inline-block;
    box-sizing: border-box;
    width: 0.65em;
    height: 0.65em;
    margin-inline-end: 0.4em;
    border: 1.5px solid var(--limb, var(--ink-2, #4a564f));
  }

  button.right::before {
    border-radius: 50%;
  }

  button.quantity::before,
  button.part::before {
    width: 0.75em;
    height: 0;
    border-width: 0 0 2px;
    vertical-align: 0.25em;
    opacity: 0.35;
  }

  button[aria-pressed='true'] {
    background: #fffefb;
    border-color: var(--ink, #1f2a24);
    color: var(--limb, var(--ink, #1f2a24));
    font-weight: 600;
  }

  button[aria-pressed='true']::before {
    background: var(--limb, transparent);
    opacity: 1;
  }

  :focus-visible {
    outline: 3px solid var(--focus, #0b57a4);
    outline-offset: 2px;
  }

  details {
    flex-basis: 100%;
  }

  details:not([open]) {
    flex-basis: auto;
    margin-inline-start: 0.6rem;
  }

  summary {
    padding: 0.3rem 0;
    color: var(--ink-2, #4a564f);
    cursor: pointer;
  }

  .single {
    display: grid;
    gap: 0.35rem;
    padding-bottom: 0.35rem;
  }

  .measures {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.35rem;
  }

  .measures > span {
    min-width: 5.5rem;
    color: var(--ink-2, #4a564f);
  }

  .keys {
    display: flex;
    flex-wrap: wrap;
    gap: 0.2rem 1.2rem;
    margin: 0.35rem 0 0;
  }

  .key {
    display: inline-flex;
    align-items: center;
    gap: 0.35rem;
    color: var(--ink-2, #4a564f);
  }

  .key .band {
    width: 1.3rem;
    height: 0.8rem;
    border-block: 1px solid #9fbfae;
    background: #dcebe1;
  }

  .key .bar {
    width: 7px;
    height: 0.9rem;
    border-block: 1.5px solid currentColor;
    background: linear-gradient(currentColor 0 0) 50% / 1.5px 100% no-repeat;
  }

  .key .fan {
    width: 1.3rem;
    height: 0.8rem;
    background: linear-gradient(90deg, #1b6f8a55, #1b6f8a22);
  }

  .chart {
    position: relative;
  }

  svg {
    display: block;
    overflow: visible;
  }

  text {
    fill: var(--ink-2, #4a564f);
    font-size: 0.8125rem;
  }

  text.axis,
  .today text {
    text-anchor: middle;
  }

  text.axis.start {
    text-anchor: start;
  }

  text.value {
    text-anchor: end;
  }

  .inside {
    stroke: #fffefb;
    stroke-width: 3px;
    paint-order: stroke;
  }

  text.quantity,
  tspan.quantity {
    fill: var(--ink, #1f2a24);
    font-size: var(--text-m, 1rem);
    font-weight: 650;
  }

  .lane {
    fill: #fffefb;
    stroke: var(--rule, #c9c0ad);
  }

  .band {
    fill: #dcebe1;
    stroke: #9fbfae;
  }

  .grid {
    stroke: #1f2a2414;
  }

  .zero {
    stroke: #1f2a2466;
  }

  .birthday {
    stroke: #7a5a3a26;
  }

  .date {
    stroke: var(--rule-strong, #857c6a);
  }

  .today line {
    stroke: var(--bark, #7a5a3a);
    stroke-dasharray: 2 3;
  }

  .today text {
    fill: var(--bark, #7a5a3a);
    stroke: #fffefb;
    stroke-width: 4px;
    paint-order: stroke;
  }

  .joined {
    stroke: var(--limb);
    stroke-width: 2;
  }

  .left .joined {
    stroke-dasharray: 6 4;
  }

  .unchanged {
    fill: var(--limb);
    font-size: var(--text-m, 1rem);
    font-weight: 650;
    text-anchor: middle;
  }

  .reach {
    fill: transparent;
  }

  .error {
    fill: none;
    stroke: var(--limb);
    stroke-width: 1.3;
    opacity: 0.75;
  }

  .dot {
    fill: var(--limb);
    stroke: #fffefb;
    stroke-width: 1.2;
  }

  .draft .dot {
    fill: #fffefb;
    stroke: var(--limb);
    stroke-width: 2;
  }

  .point {
    cursor: pointer;
  }

  .point:focus {
    outline: none;
  }

  .point:focus-visible .reach {
    stroke: var(--focus, #0b57a4);
    stroke-width: 3;
  }

  .last {
    fill: var(--limb);
    stroke: #fffefb;
    stroke-width: 4px;
    stroke-linejoin: round;
    paint-order: stroke;
    font-size: var(--text-s, 0.875rem);
    font-weight: 650;
  }

  .fan polygon {
    fill: var(--limb);
    stroke: none;
  }

  .fan .ninety {
    opacity: 0.13;
  }

  .fan .fifty {
    opacity: 0.22;
  }

  .fan polyline {
    fill: none;
    stroke: var(--limb);
    stroke-dasharray: 1 4;
    stroke-linecap: round;
    stroke-width: 2;
  }

  .row {
    --mark: var(--limb, var(--bark, #7a5a3a));
  }

  .row .bar,
  .row .deed,
  .row .on {
    fill: var(--mark);
  }

  .row .plate-parked .bar {
    fill: #fffefb;
    stroke: var(--mark);
    stroke-width: 1.5;
    stroke-dasharray: 4 2;
  }

  .row circle {
    fill: #fffefb;
    stroke: var(--mark);
    stroke-width: 2;
  }

  .row .bone-age circle {
    fill: var(--mark);
  }

  .row line {
    stroke: var(--mark);
    stroke-width: 2;
  }

  .row .visit-due circle {
    stroke-dasharray: 2 2;
  }

  .row .visits {
    stroke: var(--rule, #c9c0ad);
    stroke-width: 1.5;
  }

  .row .missed {
    fill: var(--paper, #faf8f3);
  }

  .row .cross {
    fill: none;
    stroke: var(--berry, #9c2f3a);
    stroke-width: 2;
  }

  .row .touch {
    fill: transparent;
  }

  .row .mark:focus-visible :is(.bar, circle, .deed) {
    stroke: var(--focus, #0b57a4);
    stroke-width: 3;
  }

  .films {
    position: relative;
    height: 72px;
    margin-top: 2px;
  }

  .films a {
    position: absolute;
    top: 6px;
    box-sizing: border-box;
    transform: translateX(-50%);
    background: var(--night, #141412);
  }

  .films a::before {
    content: '';
    position: absolute;
    left: 50%;
    top: -6px;
    height: 5px;
    border-left: 1px solid var(--rule-strong, #857c6a);
  }

  .films .picture {
    width: 30px;
    height: 64px;
    border: 1px solid var(--rule-strong, #857c6a);
  }

  .films .tick {
    width: 3px;
    height: 12px;
    background: var(--bark, #7a5a3a);
  }

  .films img {
    display: block;
    width: 100%;
    height: 100%;
    object-fit: cover;
  }

  .films a:hover,
  .films a:focus-visible {
    z-index: 1;
  }

  .tip {
    position: absolute;
    z-index: 2;
    max-width: 16rem;
    padding: 0.3rem 0.55rem;
    transform: translateY(-50%);
    border-radius: 4px;
    background: var(--ink, #1f2a24);
    color: #fff;
    pointer-events: none;
  }

  .empty {
    margin: 0;
    padding: 1.5rem 1rem;
    border: 1px dashed var(--rule-strong, #857c6a);
    color: var(--ink-2, #4a564f);
  }

  .screen-reader-only {
    position: absolute;
    width: 1px;
    height: 1px;
    overflow: hidden;
    clip-path: inset(50%);
  }
`;
