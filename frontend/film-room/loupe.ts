const MAGNIFIED = 2.5;

/** Paints what lies below a finger into a round glass, with a cross at the point itself. */
export function paintLoupe(glass: HTMLCanvasElement, film: HTMLCanvasElement, x: number, y: number): void {
  const context = glass.getContext('2d');
  if (!context) return;
  const ratio = film.width / film.clientWidth;
  const seen = (glass.width / MAGNIFIED) * ratio;
  context.fillStyle = '#141412';
  context.fillRect(0, 0, glass.width, glass.height);
  context.drawImage(film, x * ratio - seen / 2, y * ratio - seen / 2, seen, seen, 0, 0, glass.width, glass.height);
  const middle = glass.width / 2;
  context.strokeStyle = '#fff';
  context.lineWidth = 1;
  context.beginPath();
  for (const [dx, dy] of [[1, 0], [-1, 0], [0, 1], [0, -1]]) {
    context.moveTo(middle + dx * 5, middle + dy * 5);
    context.lineTo(middle + dx * 22, middle + dy * 22);
  }
  context.stroke();
}
