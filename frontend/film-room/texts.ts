import type { Side } from './contract.js';

/** The room's own words, in English; the server may give them in another language. */
export const ENGLISH = {
  right: 'Right',
  left: 'Left',
  rightLetter: 'R',
  leftLetter: 'L',
  stage: 'Film. Arrow keys move it below the cross, plus and minus zoom, Enter puts the landmark at the cross.',
  tools: 'How the film is shown',
  zoomIn: 'Closer',
  zoomOut: 'Farther',
  look: 'Look here (Z)',
  fit: 'Whole film',
  window: 'Window',
  windowHelp: 'Drag on the film: up and down for brightness, across for contrast. The right mouse button always does this.',
  centre: 'Brightness',
  width: 'Contrast',
  flip: 'Flip',
  turnLeft: 'Turn left',
  turnRight: 'Turn right',
  undo: 'Undo',
  facing: 'Seen as if facing the child: their right is on your left.',
  flipped: 'Shown flipped: their right is now on your right. The film itself is unchanged.',
  turned: 'Shown turned by {0}°. The film itself is unchanged.',
  flippedAndTurned: 'Shown flipped and turned by {0}°. The film itself is unchanged.',
  landmarks: 'Landmarks on the film',
  step: 'Landmark {0} of {1}',
  back: 'Back',
  skip: 'Pass over',
  next: 'Next',
  edgePoints: '{0} of at least {1} points on the edge',
  placeAtCross: 'Place at the middle',
  allPlaced: 'Every landmark is placed. Check the numbers, then sign.',
  numbers: 'Numbers',
  quantity: 'Quantity',
  noNumbers: 'No numbers yet. They appear as soon as enough landmarks stand on the film.',
  outside: 'outside normal for age',
  comparisons: 'Right against left',
  sources: 'Where the norms come from',
  normal: 'normal {0}',
  table: 'Landmarks as a table',
  landmark: 'Landmark',
  x: 'x in pixels',
  y: 'y in pixels',
  remove: 'Remove',
  edgePoint: '{0}, edge point {1}',
  at: '{0}, x {1}, y {2}',
  placed: '{0} placed.',
  removed: '{0} removed.',
  nextIs: 'Next: {0}.',
  saved: 'Saved',
  saving: 'Saving…',
  unsaved: 'Not saved yet. The points are kept here and sent again as soon as the server answers.',
  signedOut: 'Not saved yet: your sign-in has ended. Sign in again in this tab; the points are kept here until then.',
  signIn: 'Sign in again',
  refused: 'Not saved: {0}',
  restored: 'Points that had not been saved are back and are being saved now.',
  mine: 'Keep the points on this screen',
  theirs: 'Take the other points',
  sign: 'Sign this reading',
  signWait: 'Sign becomes possible when the last change is saved.',
  filmFailed: 'This film cannot be shown. Try again; if it stays so, tell the person who looks after the program.',
  again: 'Try again',
};

export type Texts = typeof ENGLISH;

export const fill = (text: string, ...values: (string | number)[]): string =>
  text.replace(/\{(\d)\}/g, (_, index: string) => String(values[Number(index)]));

export const sideName = (texts: Texts, side: Side): string => (side === 'RIGHT' ? texts.right : texts.left);

export const sideText = (texts: Texts, side: Side | undefined, label: string): string =>
  side ? `${sideName(texts, side)} · ${label}` : label;
