// Moves and enlarges a drawing by its viewBox: mouse, wheel, fingers, keys.
import { glide } from './dom.js';

const MOST = 40;

/**
 * Takes hold of a stage that shows one drawing at a time.
 * `home` gives the frame of the drawing shown: x, y, width, height.
 */
export class PanZoom {
  drawing = null;
  box = null;
  fingers = new Map();
  moved = 0;
  frame = 0;

  constructor(stage, home) {
    this.stage = stage;
    this.home = home;
    stage.addEventListener('wheel', (e) => this.wheel(e), { passive: false });
    stage.addEventListener('pointerdown', (e) => this.down(e));
    stage.addEventListener('pointermove', (e) => this.move(e));
    for (const end of ['pointerup', 'pointercancel', 'pointerleave']) {
      stage.addEventListener(end, (e) => this.fingers.delete(e.pointerId));
    }
    stage.addEventListener('keydown', (e) => this.key(e));
  }

  take(drawing) {
    this.drawing = drawing;
    this.set(this.home());
  }

  /** Goes to a frame, gently. */
  go(box) {
    const from = this.box;
    glide(this, (share) => this.set(from.map((value, i) => value + (box[i] - value) * share)));
  }

  set(box) {
    this.box = box;
    this.drawing.setAttribute('viewBox', box.map((v) => v.toFixed(3)).join(' '));
  }

  /** Millimetres of the drawing in one pixel of the screen. */
  get unit() {
    const room = this.stage.getBoundingClientRect();
    return Math.max(this.box[2] / room.width, this.box[3] / room.height);
  }

  zoom(factor, x, y) {
    const widest = this.home()[2] * 3;
    const width = Math.min(widest, Math.max(this.home()[2] / MOST, this.box[2] * factor));
    const share = width / this.box[2];
    const centre = [this.box[0] + this.box[2] / 2, this.box[1] + this.box[3] / 2];
    const room = this.stage.getBoundingClientRect();
    const at = x === undefined ? centre : [centre[0] + (x - room.left - room.width / 2) * this.unit, centre[1] + (y - room.top - room.height / 2) * this.unit];
    this.set([at[0] + (this.box[0] - at[0]) * share, at[1] + (this.box[1] - at[1]) * share, width, this.box[3] * share]);
  }

  shift(x, y) {
    this.set([this.box[0] + x, this.box[1] + y, this.box[2], this.box[3]]);
  }

  wheel(event) {
    event.preventDefault();
    this.zoom(Math.exp(Math.max(-60, Math.min(60, event.deltaY)) * 0.004), event.clientX, event.clientY);
  }

  down(event) {
    cancelAnimationFrame(this.frame);
    this.fingers.set(event.pointerId, event);
    this.moved = 0;
  }

  move(event) {
    const before = this.fingers.get(event.pointerId);
    if (!before) {
      return;
    }
    const x = event.clientX - before.clientX;
    const y = event.clientY - before.clientY;
    this.moved += Math.abs(x) + Math.abs(y);
    if (this.moved < 4) {
      return;
    }
    if (this.fingers.size === 2) {
      this.pinch(event, before);
    } else {
      this.shift(-x * this.unit, -y * this.unit);
    }
    this.fingers.set(event.pointerId, event);
    if (!this.stage.hasPointerCapture(event.pointerId)) {
      this.stage.setPointerCapture(event.pointerId);
    }
  }

  pinch(event, before) {
    const other = [...this.fingers.values()].find((f) => f.pointerId !== event.pointerId);
    const apart = (f) => Math.max(1, Math.hypot(f.clientX - other.clientX, f.clientY - other.clientY));
    this.zoom(apart(before) / apart(event), (event.clientX + other.clientX) / 2, (event.clientY + other.clientY) / 2);
    this.shift(((before.clientX - event.clientX) / 2) * this.unit, ((before.clientY - event.clientY) / 2) * this.unit);
  }

  key(event) {
    const part = this.box[2] / 10;
    const keys = {
      ArrowLeft: () => this.shift(-part, 0),
      ArrowRight: () => this.shift(part, 0),
      ArrowUp: () => this.shift(0, -part),
      ArrowDown: () => this.shift(0, part),
      '+': () => this.zoom(0.8),
      '=': () => this.zoom(0.8),
      '-': () => this.zoom(1.25),
      0: () => this.go(this.home()),
    };
    if (keys[event.key] && !event.ctrlKey && !event.metaKey && event.target === this.stage) {
      event.preventDefault();
      keys[event.key]();
    }
  }

  /** Whether the pointer has been dragged since it went down: then its release is no click. */
  get dragged() {
    return this.moved >= 4;
  }
}
