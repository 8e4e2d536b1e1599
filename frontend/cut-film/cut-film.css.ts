import { css } from 'lit';

/** As dark as the film room; what was is dashed, what would be is drawn out. */
export const styles = css`
  :host {
    display: block;
    padding: 0.75rem;
    background: var(--night, #141412);
    color: var(--night-ink, #eceae2);
    font-size: var(--text-s, 0.875rem);
    color-scheme: dark;
  }

  .room {
    display: grid;
    grid-template-areas: 'film tools' 'film numbers';
    grid-template-columns: minmax(0, 1fr) minmax(24rem, 32rem);
    grid-template-rows: auto 1fr;
    gap: 0.75rem 1rem;
  }

  .tools {
    grid-area: tools;
  }

  .numbers {
    grid-area: numbers;
  }

  .film {
    --tall: max(20rem, calc(100dvh - 17rem));

    grid-area: film;
    position: relative;
    overflow: clip;
    width: min(100%, calc(var(--tall) * var(--shape)));
    align-self: start;
    margin-inline: auto;
    border: 1px solid var(--night-rule, #4a4a42);
    touch-action: none;
  }

  svg {
    position: absolute;
    inset: 0;
    width: 100%;
    height: 100%;
  }

  .gap {
    fill: var(--night, #141412);
  }

  polyline {
    fill: none;
    stroke: var(--straw, #e9dcae);
    stroke-width: 1.6;
    vector-effect: non-scaling-stroke;
    filter: drop-shadow(0 0 1px #141412) drop-shadow(0 0 1px #141412);
  }

  .before,
  .bearing-before {
    stroke-dasharray: 6 4;
    opacity: 0.75;
  }

  .bearing-before,
  .bearing-after {
    stroke-width: 0.9;
  }

  .cut {
    stroke: #fff;
    stroke-width: 2;
  }

  .bend {
    stroke: var(--ochre-pale, #f0b95a);
    stroke-width: 1.2;
    stroke-dasharray: 1.5 3;
  }

  .level {
    stroke: var(--ochre-pale, #f0b95a);
    stroke-width: 4;
    opacity: 0.55;
  }

  .centre {
    fill: none;
    stroke: var(--ochre-pale, #f0b95a);
    stroke-width: 2;
    vector-effect: non-scaling-stroke;
  }

  .handle {
    position: absolute;
    width: 28px;
    height: 28px;
    margin: -14px 0 0 -14px;
    padding: 0;
    border: 2px solid #fff;
    border-radius: 50%;
    background: transparent;
    cursor: grab;
    touch-action: none;
  }

  .handle.hinge {
    border-color: var(--ochre-pale, #f0b95a);
    border-radius: 4px;
  }

  .handle:focus-visible {
    outline: 3px solid #9cc8ff;
    outline-offset: 2px;
  }

  .tools {
    display: flex;
    flex-wrap: wrap;
    align-items: end;
    gap: 0.5rem;
  }

  .tools button,
  select,
  input {
    min-height: 2.25rem;
    max-width: 100%;
    border: 1px solid var(--night-rule, #4a4a42);
    border-radius: 4px;
    background: var(--night-3, #2c2c27);
    color: inherit;
    font: inherit;
  }

  .tools p {
    flex-basis: 100%;
    margin: 0;
  }

  input {
    width: 6rem;
  }

  label {
    display: grid;
    gap: 0.2rem;
  }

  caption {
    padding-bottom: 0.2rem;
    text-align: start;
    font-weight: 600;
  }

  table {
    width: 100%;
    border-collapse: collapse;
    font-variant-numeric: tabular-nums;
  }

  th,
  td {
    padding: 0.2rem 0.5rem 0.2rem 0;
    border-top: 1px solid var(--night-rule, #4a4a42);
    text-align: start;
    font-weight: 400;
  }

  .waiting table,
  .waiting svg {
    opacity: 0.5;
  }

  ul {
    margin: 0.5rem 0 0;
    padding-inline-start: 1.1rem;
  }

  .failed {
    color: var(--ochre-pale, #f0b95a);
  }

  @media (width < 60rem) {
    .room {
      grid-template-areas: 'tools' 'film' 'numbers';
      grid-template-columns: minmax(0, 1fr);
      grid-template-rows: none;
    }

    .film {
      --tall: 44dvh;
    }
  }
`;
