import { css } from 'lit';

/** As dark as the film room; right lake and round, left plum and square, the landmark chosen white. */
export const styles = css`
  :host {
    display: block;
    background: var(--night, #141412);
    color: var(--night-ink, #eceae2);
    font-family: var(--face, sans-serif);
    font-size: var(--text-s, 0.875rem);
    color-scheme: dark;
  }

  p {
    margin: 0;
  }

  .right {
    --limb: var(--lake-pale, #6cc3dd);
  }

  .left {
    --limb: var(--plum-pale, #e79ac8);
  }

  .tools,
  .landmarks {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.35rem;
    padding: 0.35rem 0.75rem;
  }

  .landmarks p {
    flex-basis: 100%;
  }

  .pair {
    display: grid;
    grid-template-columns: 1fr 1fr;
    gap: 2px;
    height: max(26rem, calc(100dvh - 19rem));
  }

  .pane {
    position: relative;
    min-width: 0;
    overflow: clip;
    border: 1px solid var(--night-rule, #3b3b34);
  }

  .film,
  .marks {
    position: absolute;
    inset: 0;
  }

  .film {
    touch-action: none;
  }

  .marks {
    pointer-events: none;
    overflow: clip;
  }

  .mark {
    position: absolute;
    left: -12px;
    top: -12px;
    width: 24px;
    height: 24px;
    pointer-events: auto;
    cursor: pointer;
  }

  .mark::before {
    content: '';
    position: absolute;
    inset: 7px;
    border: 2px solid var(--limb);
    box-shadow: 0 0 0 1px #141412;
  }

  .mark.right::before {
    border-radius: 50%;
  }

  .mark.chosen {
    --limb: #fff;
    z-index: 1;
  }

  .mark.chosen::before {
    inset: 4px;
  }

  .name {
    position: absolute;
    left: 24px;
    top: 2px;
    padding: 0 0.4rem;
    border-radius: 3px;
    background: #141412d9;
    color: #fff;
    white-space: nowrap;
  }

  .caption {
    position: absolute;
    left: 0.5rem;
    top: 0.35rem;
    padding: 0 0.3rem;
    background: #141412b3;
    font-weight: 600;
    pointer-events: none;
  }

  .failed {
    position: absolute;
    inset: 40% 1rem auto;
    text-align: center;
  }

  button {
    min-height: 2rem;
    padding: 0.15rem 0.6rem;
    border: 1px solid #7d7b70;
    border-radius: 4px;
    background: var(--night-3, #2c2c27);
    color: var(--limb, inherit);
    font: inherit;
    cursor: pointer;
  }

  .landmarks button::before {
    content: '';
    display: inline-block;
    width: 0.6em;
    height: 0.6em;
    margin-inline-end: 0.4em;
    border: 1.5px solid currentColor;
  }

  button.right::before {
    border-radius: 50%;
  }

  button[aria-pressed='true'] {
    border-color: #fff;
    color: #fff;
    font-weight: 600;
  }

  .absent {
    color: var(--night-ink-2, #b9b6aa);
  }

  :focus-visible {
    outline: 3px solid #fff;
    outline-offset: 2px;
  }

  .pane:focus-visible {
    outline-offset: -3px;
  }
`;
