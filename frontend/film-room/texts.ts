import type { Side } from './contract.js';

/** The room's own words in the reader's language. */
export interface Texts {
  right: string;
  left: string;
  rightLetter: string;
  leftLetter: string;
  stage: string;
  tools: string;
  zoomIn: string;
  zoomOut: string;
  look: string;
  fit: string;
  window: string;
  windowHelp: string;
  centre: string;
  width: string;
  flip: string;
  turnLeft: string;
  turnRight: string;
  undo: string;
  facing: string;
  flipped: string;
  turned: string;
  flippedAndTurned: string;
  landmarks: string;
  step: string;
  back: string;
  skip: string;
  next: string;
  edgePoints: string;
  placeAtCross: string;
  allPlaced: string;
  numbers: string;
  quantity: string;
  noNumbers: string;
  outside: string;
  comparisons: string;
  sources: string;
  normal: string;
  table: string;
  landmark: string;
  x: string;
  y: string;
  remove: string;
  edgePoint: string;
  at: string;
  placed: string;
  removed: string;
  nextIs: string;
  saved: string;
  saving: string;
  unsaved: string;
  signedOut: string;
  signIn: string;
  refused: string;
  restored: string;
  mine: string;
  theirs: string;
  sign: string;
  signWait: string;
  filmFailed: string;
  again: string;
}

export const fill = (text: string, ...values: (string | number)[]): string =>
  text.replace(/\{(\d)\}/g, (_, index: string) => String(values[Number(index)]));

export const sideName = (texts: Texts, side: Side): string => (side === 'RIGHT' ? texts.right : texts.left);

export const sideText = (texts: Texts, side: Side | undefined, label: string): string =>
  side ? `${sideName(texts, side)} · ${label}` : label;
