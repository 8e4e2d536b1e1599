import OpenSeadragon from 'openseadragon';
import { filmAddress } from './address.js';
import type { FilmFacts, FilmWindow } from './contract.js';
import { Placing, type Point } from './viewport.js';

const QUALITY = 90;
/** Screen pixels to a film pixel at which the landmarks of one joint stand apart and together on the screen. */
const CLOSE = 2.8;
const STEP_OF_ZOOM = 1.25;

interface Watching {
  /** The film has moved, turned or been resized below the marks. */
  moved: () => void;
  /** A quick press on the film itself, at a film pixel. */
  pressed: (point: Point) => void;
  tiles: (state: 'loading' | 'settled') => void;
}

/** The film itself: tiles, zoom, flip, rotation and grey-scale window. It changes how a film looks, never its data. */
export class Stage {
  private readonly viewer: OpenSeadragon.Viewer;
  private facts?: FilmFacts;
  private film = '';
  private image?: OpenSeadragon.TiledImage;
  private wanted?: FilmWindow;
  private opening = false;

  constructor(
    private readonly element: HTMLElement,
    private readonly watching: Watching,
  ) {
    this.viewer = OpenSeadragon({
      element,
      drawer: 'canvas',
      showNavigationControl: false,
      keyboardNavEnabled: false,
      animationTime: matchMedia('(prefers-reduced-motion: reduce)').matches ? 0 : 0.4,
      immediateRender: true,
      visibilityRatio: 0.3,
      minZoomImageRatio: 0.7,
      maxZoomPixelRatio: 12,
      imageSmoothingEnabled: true,
      gestureSettingsMouse: { clickToZoom: false, dblClickToZoom: false, scrollToZoom: true },
      gestureSettingsTouch: { clickToZoom: false, dblClickToZoom: false, pinchRotate: false },
      gestureSettingsPen: { clickToZoom: false, dblClickToZoom: false },
    } as OpenSeadragon.Options);
    this.viewer.canvas.tabIndex = -1;
    for (const event of ['update-viewport', 'resize', 'flip', 'rotate'] as const) {
      this.viewer.addHandler(event, () => this.watching.moved());
    }
    this.viewer.addHandler('canvas-click', event => {
      if (event.quick) this.press(event.originalEvent as MouseEvent);
    });
  }

  open(film: string, facts: FilmFacts, window: FilmWindow): void {
    this.film = film;
    this.facts = facts;
    this.viewer.world.removeAll();
    this.image = undefined;
    this.opening = false;
    this.look(window);
  }

  /** Shows the film through another window; the newest wins, and the old picture stays until the new one is whole. */
  look(window: FilmWindow): void {
    this.wanted = window;
    this.watching.tiles('loading');
    if (this.opening) return;
    this.opening = true;
    const shown = window;
    this.viewer.addTiledImage({
      tileSource: this.tileSource(window),
      success: event => this.replaceBy((event as unknown as { item: OpenSeadragon.TiledImage }).item, shown),
    });
  }

  /** Mirrors the picture about its upright middle as seen, however it is turned. */
  flip(): boolean {
    const { viewport } = this.viewer;
    viewport.toggleFlip();
    return viewport.getFlip();
  }

  /** Turns the picture, clockwise as seen; says by how much it now is turned, 0 to 359°. */
  rotate(degrees: number): number {
    const { viewport } = this.viewer;
    viewport.setRotation(viewport.getRotation() + (viewport.getFlip() ? -degrees : degrees), true);
    return ((viewport.getFlip() ? -viewport.getRotation() : viewport.getRotation()) + 360) % 360;
  }

  zoom(direction: 1 | -1): void {
    this.viewer.viewport.zoomBy(direction > 0 ? STEP_OF_ZOOM : 1 / STEP_OF_ZOOM);
  }

  /** Whether a place is looked at closely. */
  get close(): boolean {
    return (this.placing?.scale ?? 0) > CLOSE / STEP_OF_ZOOM;
  }

  /** Brings a place closely below the middle. */
  closeOn(point: Point): void {
    const { image, placing } = this;
    if (!image || !placing) return;
    this.viewer.viewport.zoomBy(CLOSE / placing.scale, undefined, true);
    this.viewer.viewport.panTo(image.imageToViewportCoordinates(...point), true);
    this.viewer.viewport.applyConstraints(true);
  }

  fit(): void {
    this.viewer.viewport.goHome();
  }

  /** Shows the film at so many screen pixels to one of its own, about the middle as it is seen. */
  scaleTo(scale: number): void {
    const { image, viewer } = this;
    if (image) viewer.viewport.zoomTo(image.imageToViewportZoom(scale), undefined, true);
  }

  /** Brings a film pixel to the middle. */
  centreOn(point: Point): void {
    const { image, viewer } = this;
    if (image) viewer.viewport.panTo(image.imageToViewportCoordinates(...point), true);
  }

  /** Moves the film below the eye by screen pixels. */
  pan(dx: number, dy: number): void {
    const { viewport } = this.viewer;
    const mirrored = viewport.getFlip() ? -dx : dx;
    viewport.panBy(viewport.deltaPointsFromPixels(new OpenSeadragon.Point(mirrored, dy), true), true);
    viewport.applyConstraints(true);
  }

  /** Brings a film pixel into view when it is not. */
  show(point: Point): void {
    const { image, placing } = this;
    if (!image || !placing) return;
    const [x, y] = placing.toScreen(point);
    const { clientWidth, clientHeight } = this.element;
    if (x >= 0 && y >= 0 && x <= clientWidth && y <= clientHeight) return;
    this.viewer.viewport.panTo(image.imageToViewportCoordinates(...point));
  }

  /** Where film pixels stand on the screen now. */
  get placing(): Placing | undefined {
    const { image } = this;
    const { viewport } = this.viewer;
    if (!image) return undefined;
    const on = (x: number, y: number): Point => {
      const pixel = viewport.pixelFromPoint(image.imageToViewportCoordinates(x, y, true), true);
      return [pixel.x, pixel.y];
    };
    const mirror = viewport.getFlip() ? viewport.getContainerSize().x : undefined;
    return Placing.of(on(0, 0), on(1, 0), on(0, 1), mirror);
  }

  get centre(): Point | undefined {
    const box = this.element.getBoundingClientRect();
    return this.placing?.toFilm([box.width / 2, box.height / 2]);
  }

  /** The film pixel below a pointer. */
  at(event: { clientX: number; clientY: number }): Point | undefined {
    const box = this.element.getBoundingClientRect();
    return this.placing?.toFilm([event.clientX - box.left, event.clientY - box.top]);
  }

  /** The picture as drawn, for a loupe. */
  get canvas(): HTMLCanvasElement | undefined {
    return this.viewer.drawer?.canvas as HTMLCanvasElement | undefined;
  }

  destroy(): void {
    this.viewer.destroy();
  }

  private press(event: MouseEvent): void {
    const point = this.at(event);
    const { facts } = this;
    if (!point || !facts) return;
    const [x, y] = point;
    if (x >= 0 && y >= 0 && x <= facts.width && y <= facts.height) this.watching.pressed(point);
  }

  private replaceBy(image: OpenSeadragon.TiledImage, shown: FilmWindow): void {
    const before = this.image;
    this.image = image;
    const settle = () => {
      if (before) this.viewer.world.removeItem(before);
      this.opening = false;
      if (this.wanted !== shown) this.look(this.wanted!);
      else this.watching.tiles(image.getFullyLoaded() ? 'settled' : 'loading');
    };
    image.addHandler('fully-loaded-change', event => {
      if (image === this.image && !this.opening) this.watching.tiles(event.fullyLoaded ? 'settled' : 'loading');
    });
    if (before) {
      image.whenFullyLoaded(settle);
    } else {
      settle();
      this.watching.moved();
    }
  }

  private tileSource(window: FilmWindow): OpenSeadragon.TileSource {
    const { width, height, tileSize, levels } = this.facts!;
    const address = `${filmAddress(this.film)}/rendered`;
    const source = new OpenSeadragon.TileSource({ width, height, tileSize, minLevel: 0, maxLevel: levels });
    source.getTileUrl = (level, column, row) => {
      const halved = 2 ** (levels - (level as number));
      const side = tileSize * halved;
      const sx = column * side;
      const sy = row * side;
      const sw = Math.min(side, width - sx);
      const sh = Math.min(side, height - sy);
      const seen = [Math.ceil(sw / halved), Math.ceil(sh / halved), sx, sy, sw, sh].join(',');
      return `${address}?viewport=${seen}&window=${window.c},${window.w},${window.fn}&quality=${QUALITY}`;
    };
    return source;
  }
}
