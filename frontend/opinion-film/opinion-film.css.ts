import { css } from 'lit';

/** As dark as the film room; each person has a colour and a dash of their own, the hand holds white. */
export const styles = css`
  :host {
    display: grid;
    grid-template-rows: auto minmax(0, 1fr) auto;
    height: max(28rem, calc(100dvh - 16rem));
    background: var(--night, #141412);
    color: var(--night-ink, #eceae2);
    font-family: var(--face, sans-serif);
    font-size: var(--text-s, 0.875rem);
    font-variant-numeric: tabular-nums lining-nums;
    color-scheme: dark;
  }

  :focus-visible {
    outline: 3px solid #fff;
    outline-offset: 2px;
  }

  .tools,
  ul {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.35rem;
    margin: 0;
    padding: 0.35rem 0.75rem;
    list-style: none;
  }

  ul {
    max-height: 9rem;
    overflow: auto;
    gap: 0.35rem 1rem;
  }

  li {
    display: flex;
    align-items: center;
    gap: 0.4rem;
  }

  li svg {
    width: 2rem;
    height: 0.6rem;
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
    border-radius: 2px;
    background: var(--night-raised, #22221e);
    cursor: pointer;
  }

  button[aria-pressed='true'] {
    background: var(--night-ink, #eceae2);
    color: var(--night, #141412);
  }

  input {
    width: 11rem;
    min-height: 1.8rem;
    padding: 0 0.5rem;
    border: 1px solid #7d7b70;
    border-radius: 2px;
    background: var(--night-raised, #22221e);
  }

  .stage {
    position: relative;
    min-height: 0;
    overflow: clip;
  }

  .film,
  svg.marks {
    position: absolute;
    inset: 0;
    width: 100%;
    height: 100%;
  }

  .film {
    touch-action: none;
  }

  svg.marks {
    pointer-events: none;
  }

  .shape {
    fill: none;
    stroke-width: 2;
  }

  .dot {
    stroke: none;
  }

  text {
    font-size: 14px;
    paint-order: stroke;
    stroke: var(--night, #141412);
    stroke-width: 4px;
  }

  .cover {
    fill: #000;
    stroke: #fff;
    stroke-width: 1;
    stroke-dasharray: 4 3;
  }

  .cross {
    position: absolute;
    inset: 0;
    pointer-events: none;
    opacity: 0;
  }

  .stage:focus-visible .cross {
    opacity: 1;
    background:
      linear-gradient(#fff, #fff) center / 1px 24px no-repeat,
      linear-gradient(#fff, #fff) center / 24px 1px no-repeat;
  }

  .failed {
    position: absolute;
    inset: 1rem;
    margin: 0;
  }
`;
