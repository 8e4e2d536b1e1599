import type { Side } from './contract.js';

/** The chart's own words, in English; the server may give them in another language. */
export const ENGLISH = {
  chart: 'Course over time. Arrow keys move from film to film and from line to line.',
  shown: 'What is shown',
  right: 'Right',
  left: 'Left',
  rightLetter: 'R',
  leftLetter: 'L',
  varus: 'varus',
  valgus: 'valgus',
  age: 'age',
  years: '{0} y',
  today: 'today',
  normal: 'normal for age',
  unchanged: '≈ no measurable change',
  error: 'bar: reader error',
  films: 'Films',
  single: 'Choose single measures',
  forecast: 'shaded: forecast, half and nine in ten',
  nothing: 'Nothing is shown. Choose a limb and a part above.',
  empty: 'No film has been read yet. The course begins with the first signed reading.',
};

export type Texts = typeof ENGLISH;

export const sideName = (texts: Texts, side: Side): string => (side === 'RIGHT' ? texts.right : texts.left);
