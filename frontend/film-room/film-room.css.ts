import { css } from 'lit';

/** The room is dark; lines are pale straw, right is lake and solid, left is plum and dashed, the hand holds white. */
export const styles = css`
  :host {
    --right: var(--lake-pale, #6cc3dd);
    --left: var(--plum-pale, #e79ac8);
    display: grid;
    grid-template: minmax(0, 1fr) / minmax(0, 1fr) 24rem;
    height: 100%;
    min-height: 34rem;
    background: var(--night, #141412);
    color: var(--night-ink, #eceae2);
    font-family: var(--face, sans-serif);
    font-size: var(--text-m, 1rem);
    font-variant-numeric: tabular-nums lining-nums;
    line-height: 1.35;
    color-scheme: dark;
  }

  :focus-visible {
    outline: 3px solid #fff;
    outline-offset: 2px;
  }

  h2,
  p {
    margin: 0;
  }

  button,
  input {
    font: inherit;
    color: inherit;
  }

  button {
    min-height: 2rem;
    padding: 0.2rem 0.7rem;
    border: 1px solid #7d7b70;
    border-radius: 4px;
    background: var(--night-3, #2c2c27);
    cursor: pointer;
  }

  button:hover:not(.mark, [aria-disabled='true']) {
    background: #3b3b34;
  }

  button:disabled,
  button[aria-disabled='true'] {
    color: #99968a;
    border-color: #55534b;
    cursor: default;
  }

  button.strong:not([aria-disabled='true']) {
    border-color: var(--leaf-pale, #8fcfae);
    background: var(--leaf, #2f6b4f);
    color: #fff;
    font-weight: 600;
  }

  a {
    color: var(--lake-pale, #6cc3dd);
  }

  .row {
    display: flex;
    flex-wrap: wrap;
    gap: 0.4rem;
  }

  .right {
    --limb: var(--right);
  }

  .left {
    --limb: var(--left);
  }

  .soon {
    color: var(--ochre-pale, #f0b95a);
  }

  .harm {
    color: var(--berry-pale, #f59a9f);
  }

  .screen-reader-only {
    position: absolute;
    width: 1px;
    height: 1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }

  /* The film */

  .stage {
    position: relative;
    min-width: 0;
    overflow: clip;
  }

  .stage:focus-visible {
    outline-offset: -3px;
  }

  .film,
  .overlay,
  .drawn {
    position: absolute;
    inset: 0;
  }

  .film {
    touch-action: none;
    cursor: crosshair;
  }

  .film.windowing {
    cursor: ns-resize;
  }

  .overlay {
    pointer-events: none;
    overflow: clip;
  }

  .drawn {
    width: 100%;
    height: 100%;
  }

  .drawn polyline,
  .drawn ellipse {
    fill: none;
    stroke: var(--straw, #e9dcae);
    stroke-width: 1.6;
    vector-effect: non-scaling-stroke;
  }

  .drawn .left {
    stroke-dasharray: 7 5;
  }

  .drawn polyline.joint,
  .drawn polyline.physis,
  .drawn polyline.help {
    stroke-width: 1;
  }

  .drawn polyline.physis {
    stroke: var(--leaf-pale, #8fcfae);
  }

  .drawn polyline.help {
    opacity: 0.65;
  }

  .drawn.waiting {
    opacity: 0.55;
  }

  .drawn .fitted {
    stroke-width: 1.2;
  }

  .drawn path.centre {
    stroke: #fff;
    stroke-width: 1.4;
    stroke-dasharray: none;
  }

  .drawn text.letter {
    fill: var(--limb);
    font-size: var(--text-l, 1.3125rem);
    font-weight: 700;
    text-anchor: middle;
  }

  .drawn text {
    fill: var(--straw, #e9dcae);
    stroke: #141412;
    stroke-width: 3px;
    paint-order: stroke;
    font-size: var(--text-s, 0.875rem);
  }

  .mark {
    --size: 28px;
    --ring: 14px;
    position: absolute;
    left: calc(var(--size) / -2);
    top: calc(var(--size) / -2);
    width: var(--size);
    height: var(--size);
    min-height: 0;
    padding: 0;
    border: 0;
    background: none;
    pointer-events: auto;
    touch-action: none;
    cursor: grab;
  }

  /* Seen small, marks give way to the bone and to the next press; the table holds the same landmarks. */
  .small .mark,
  .mark.edge {
    --size: 16px;
    --ring: 9px;
  }

  .mark::before,
  .mark::after {
    content: '';
    position: absolute;
    box-sizing: border-box;
  }

  .mark::before {
    inset: calc((var(--size) - var(--ring)) / 2);
    border: 2px solid var(--limb, var(--straw, #e9dcae));
    box-shadow:
      0 0 0 1px #141412,
      inset 0 0 0 1px #141412;
  }

  .mark::after {
    inset: calc(var(--size) / 2 - 1px);
    background: var(--limb, var(--straw, #e9dcae));
  }

  .mark.right::before,
  .mark.none::before {
    border-radius: 50%;
  }

  .mark.left::before {
    border-style: dashed;
  }

  .small .mark::before,
  .mark.edge::before {
    border-width: 1.5px;
    border-style: solid;
  }

  .mark.held {
    --limb: #fff;
    z-index: 1;
  }

  .mark:focus-visible {
    outline: 2px solid #fff;
    outline-offset: -2px;
    border-radius: 50%;
  }

  .mark .name {
    display: none;
    position: absolute;
    left: calc(var(--size) - 2px);
    top: calc(var(--size) / 2 - 0.75rem);
    padding: 0 0.4rem;
    border-radius: 3px;
    background: #141412d9;
    color: #fff;
    font-size: var(--text-s, 0.875rem);
    white-space: nowrap;
    pointer-events: none;
  }

  .mark:hover .name,
  .mark:focus-visible .name {
    display: block;
  }

  .cross {
    display: none;
    position: absolute;
    left: 50%;
    top: 50%;
    width: 40px;
    height: 40px;
    margin: -20px;
    background:
      linear-gradient(#fff 0 0) 50% 0 / 1px 14px no-repeat,
      linear-gradient(#fff 0 0) 50% 100% / 1px 14px no-repeat,
      linear-gradient(#fff 0 0) 0 50% / 14px 1px no-repeat,
      linear-gradient(#fff 0 0) 100% 50% / 14px 1px no-repeat;
    pointer-events: none;
  }

  .stage:focus-visible .cross {
    display: block;
  }

  .loupe {
    position: absolute;
    top: 0.5rem;
    left: 3.6rem;
    border: 2px solid #fff;
    border-radius: 50%;
    pointer-events: none;
  }

  .loupe.far {
    left: auto;
    right: 0.5rem;
  }

  .caption {
    position: absolute;
    left: 3.6rem;
    bottom: 0.5rem;
    max-width: 60%;
    padding: 0.15rem 0.4rem;
    border-radius: 4px;
    background: #141412b8;
    color: var(--night-ink-2, #b5b2a5);
    font-size: var(--text-s, 0.875rem);
    pointer-events: none;
  }

  .caption p:first-child {
    color: var(--night-ink, #eceae2);
    font-weight: 600;
  }

  .tools {
    position: absolute;
    left: 0.5rem;
    top: 0.5rem;
    display: grid;
    gap: 4px;
  }

  .tool {
    display: grid;
    place-items: center;
    width: 2.4rem;
    height: 2.4rem;
    padding: 0;
    border-color: #55534b;
    background: #1e1e1be6;
  }

  .tool[aria-pressed='true'],
  .window-box button[aria-pressed='true'] {
    border-color: #fff;
    background: #4a4a42;
  }

  .tool svg {
    width: 1.35rem;
    fill: none;
    stroke: currentColor;
    stroke-width: 1.7;
    stroke-linecap: round;
    stroke-linejoin: round;
  }

  .window-box {
    position: absolute;
    left: 3.6rem;
    top: 0.5rem;
    display: grid;
    gap: 0.5rem;
    width: 18rem;
    max-width: calc(100% - 5rem);
    box-sizing: border-box;
    padding: 0.7rem;
    border: 1px solid #55534b;
    border-radius: 4px;
    background: #1e1e1bf2;
    font-size: var(--text-s, 0.875rem);
  }

  .window-box label {
    display: grid;
    grid-template-columns: 5.5rem 1fr;
    align-items: center;
  }

  .window-box input {
    min-width: 0;
    accent-color: var(--straw, #e9dcae);
  }

  .window-box p {
    color: var(--night-ink-2, #b5b2a5);
  }

  .failed {
    position: absolute;
    inset: 30% 15% auto;
    display: grid;
    gap: 0.7rem;
    justify-items: start;
    padding: 1rem;
    border-left: 4px solid var(--berry-pale, #f59a9f);
    background: var(--night-2, #1e1e1b);
  }

  /* Beside it */

  .panel {
    display: grid;
    grid-template-rows: auto minmax(0, 1fr) auto;
    min-height: 0;
    border-left: 1px solid #3a3932;
    background: var(--night-2, #1e1e1b);
  }

  .step {
    display: grid;
    grid-template-columns: 5.5rem 1fr;
    gap: 0.5rem 0.8rem;
    align-items: start;
    padding: 0.8rem 1rem;
    border-bottom: 1px solid #3a3932;
  }

  .step.done {
    grid-template-columns: 1fr;
  }

  .step .row {
    grid-column: 1 / -1;
  }

  .step .row button {
    font-size: var(--text-s, 0.875rem);
  }

  .step h2 {
    color: var(--limb, #fff);
    font-size: var(--text-m, 1rem);
    font-weight: 650;
    line-height: 1.25;
  }

  .step .which,
  .step .count {
    color: var(--night-ink-2, #b5b2a5);
    font-size: var(--text-s, 0.875rem);
  }

  .step .sentence {
    min-height: 2.7em;
  }

  .place {
    width: 5.5rem;
    border-radius: 4px;
    background: var(--night, #141412);
  }

  .place .bone {
    fill: #3a3932;
    stroke: var(--night-ink-2, #b5b2a5);
    stroke-width: 1.2;
  }

  .place .bone:not([d$='Z']) {
    fill: none;
  }

  .place .edge,
  .place .halo {
    fill: none;
    stroke: #fff;
    stroke-width: 1.3;
    stroke-dasharray: 3 2.5;
  }

  .place .halo {
    stroke-dasharray: none;
    opacity: 0.7;
  }

  .place .spot {
    fill: #fff;
  }

  .facts {
    overflow: auto;
    padding: 0.5rem 1rem;
  }

  .none {
    color: var(--night-ink-2, #b5b2a5);
  }

  table {
    width: 100%;
    border-collapse: collapse;
  }

  .numbers th,
  .numbers td {
    padding: 0.28rem 0.5rem 0.28rem 0;
    border-bottom: 1px solid #33322c;
    text-align: start;
    vertical-align: top;
  }

  .numbers {
    table-layout: fixed;
  }

  .numbers th:first-child {
    width: 32%;
  }

  .numbers thead th {
    color: var(--limb);
    font-weight: 600;
  }

  .numbers thead th.right::before,
  .numbers thead th.left::before {
    content: '';
    display: inline-block;
    width: 0.6em;
    height: 0.6em;
    margin-inline-end: 0.4em;
    border-radius: 50%;
    background: currentColor;
  }

  .numbers thead th.left::before {
    border-radius: 0;
  }

  .numbers tbody th {
    font-weight: 500;
  }

  .numbers .value {
    font-weight: 600;
  }

  .numbers .doubtful .value {
    color: var(--night-ink-2, #b5b2a5);
    font-weight: 400;
  }

  .comparisons {
    display: grid;
    grid-template-columns: auto 1fr;
    gap: 0.2rem 0.75rem;
    margin: 0.75rem 0;
  }

  .comparisons dd {
    margin: 0;
  }

  .sources {
    margin: 0.5rem 0;
    color: var(--night-ink-2, #b5b2a5);
    font-size: var(--text-s, 0.875rem);
  }

  .comparisons .note,
  .numbers .range,
  .numbers .note {
    display: block;
    color: var(--night-ink-2, #b5b2a5);
    font-size: var(--text-s, 0.875rem);
    font-weight: 400;
  }

  .numbers .out .value {
    color: var(--ochre-pale, #f0b95a);
  }

  .numbers .out .value::after {
    content: '\\a0◆';
    font-size: 0.7em;
    vertical-align: 0.1em;
  }

  .numbers .none .value {
    color: var(--night-ink-2, #b5b2a5);
    font-weight: 400;
    white-space: normal;
  }

  .numbers.waiting .value {
    color: #8b887c;
  }

  .warnings {
    margin: 0.5rem 0;
    padding: 0;
    list-style: none;
    font-size: var(--text-s, 0.875rem);
  }

  .warnings li {
    margin-bottom: 0.25rem;
    padding-left: 0.6rem;
    border-left: 3px solid currentColor;
  }

  .table {
    margin-top: 0.6rem;
    font-size: var(--text-s, 0.875rem);
  }

  .table summary {
    min-height: 1.8rem;
    cursor: pointer;
  }

  .table th {
    font-weight: 400;
    text-align: start;
    color: var(--limb, inherit);
  }

  .table thead th {
    color: var(--night-ink-2, #b5b2a5);
  }

  .table input {
    width: 5.2rem;
    box-sizing: border-box;
    min-height: 1.75rem;
    padding: 0.1rem 0.3rem;
    border: 1px solid #7d7b70;
    border-radius: 3px;
    background: var(--night, #141412);
    appearance: textfield;
  }

  .table td button {
    min-height: 1.75rem;
    padding: 0 0.5rem;
  }

  footer {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    justify-content: space-between;
    gap: 0.4rem 1rem;
    padding: 0.6rem 1rem;
    border-top: 1px solid #3a3932;
  }

  .saving {
    flex: 1 1 8rem;
    font-size: var(--text-s, 0.875rem);
  }

  @media (max-width: 50rem) {
    :host {
      grid-template: 58dvh auto / minmax(0, 1fr);
    }

    .panel {
      border-left: 0;
      border-top: 1px solid #3a3932;
    }

    .step {
      grid-template-columns: 4rem 1fr;
      padding: 0.45rem 0.7rem;
    }

    .place {
      width: 4rem;
    }

    .step .sentence {
      min-height: 0;
      font-size: var(--text-s, 0.875rem);
    }

    .facts {
      padding: 0.2rem 0.7rem;
    }

    footer {
      padding: 0.4rem 0.7rem;
    }

    .tools {
      gap: 2px;
    }

    .tool {
      width: 2.1rem;
      height: 2rem;
      min-height: 0;
    }

    .caption {
      left: 3rem;
      max-width: calc(100% - 3.5rem);
      line-height: 1.2;
    }

    .caption p:not(:first-child, .soon) {
      display: none;
    }

    .window-box,
    .loupe {
      left: 3rem;
    }
  }

  @media (prefers-reduced-motion: no-preference) {
    .numbers .value {
      transition: color 80ms;
    }
  }
`;
