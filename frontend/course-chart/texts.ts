import type { Side } from './contract.js';

/** The chart's own words in the reader's language. */
export interface Texts {
  chart: string;
  shown: string;
  right: string;
  left: string;
  rightLetter: string;
  leftLetter: string;
  varus: string;
  valgus: string;
  age: string;
  years: string;
  today: string;
  normal: string;
  unchanged: string;
  error: string;
  films: string;
  single: string;
  forecast: string;
  nothing: string;
  empty: string;
}

export const sideName = (texts: Texts, side: Side): string => (side === 'RIGHT' ? texts.right : texts.left);
