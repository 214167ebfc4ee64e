// The reader's eye: turned by mouse, fingers or keys, flown to a place.
import { Box3, PerspectiveCamera, Vector3 } from 'three';
import { OrbitControls } from './OrbitControls.js';
import { glide } from './dom.js';

const OPENING = 35;
/** Of the picture, by the whole roof. */
const FILLED = 0.88;

export class Eye {
  frame = 0;
  /** Whether the reader has taken it anywhere: until then it shows the whole roof, whatever the shape of the picture. */
  moved = false;

  /** `corners` are points that the whole of the roof lies between. */
  constructor(element, corners, changed) {
    this.corners = corners;
    const box = new Box3().setFromPoints(corners);
    this.middle = box.getCenter(new Vector3());
    this.changed = changed;
    this.size = Math.max(1, box.getSize(new Vector3()).length());
    this.camera = new PerspectiveCamera(OPENING, 1, this.size / 500, this.size * 20);
    this.camera.up.set(0, 0, 1);
    this.controls = new OrbitControls(this.camera, element);
    this.controls.maxPolarAngle = Math.PI * 0.62;
    this.controls.minDistance = this.size / 100;
    this.controls.maxDistance = this.size * 6;
    this.controls.addEventListener('change', changed);
    this.controls.addEventListener('start', () => {
      cancelAnimationFrame(this.frame);
      this.moved = true;
    });
    this.aspect = 1;
    this.set(this.home());
    element.addEventListener('keydown', (event) => this.key(event));
  }

  /** All of the roof, seen from the south-east as on the drawings. */
  home() {
    const target = this.middle.clone();
    const way = new Vector3(0.55, -0.72, 0.62).normalize();
    return { target, eye: target.clone().addScaledVector(way, this.reach(way)) };
  }

  /** How far off the roof must be, looked at from `way`, to fill most of the picture. */
  reach(way) {
    const right = new Vector3(0, 0, 1).cross(way).normalize();
    const up = way.clone().cross(right);
    const half = Math.tan((OPENING * Math.PI) / 360) * FILLED;
    let far = 0;
    for (const corner of this.corners) {
      const from = corner.clone().sub(this.middle);
      const wide = Math.abs(from.dot(right)) / this.aspect;
      far = Math.max(far, Math.max(wide, Math.abs(from.dot(up))) / half + from.dot(way));
    }
    return far;
  }

  set({ target, eye }) {
    this.controls.target.copy(target);
    this.camera.position.copy(eye);
    this.controls.update();
    this.changed();
  }

  go(to) {
    this.moved = true;
    const from = { target: this.controls.target.clone(), eye: this.camera.position.clone() };
    glide(this, (share) => {
      const target = from.target.clone().lerp(to.target, share);
      const start = from.eye.clone().sub(from.target);
      const end = to.eye.clone().sub(to.target);
      const radius = start.length() + (end.length() - start.length()) * share;
      const way = start.normalize().lerp(end.normalize(), share).normalize();
      this.set({ target, eye: target.clone().addScaledVector(way, radius) });
    });
  }

  /** Looks at a place of a plane from where the plane is seen well. */
  look(place, outward, reach) {
    const level = new Vector3(outward.x, outward.y, 0);
    if (level.length() < 0.02) {
      level.set(0.3, -0.5, 0);
    }
    const way = level.normalize().multiplyScalar(0.85).add(new Vector3(0.25, -0.1, 0.8)).normalize();
    const half = Math.tan((OPENING * Math.PI) / 360) * Math.min(1, this.aspect);
    this.go({ target: place.clone(), eye: place.clone().addScaledVector(way, (reach * 0.5) / half) });
  }

  shape(width, height) {
    this.aspect = width / height;
    this.camera.aspect = this.aspect;
    this.camera.updateProjectionMatrix();
    if (!this.moved) {
      this.set(this.home());
    }
  }

  turn(sideways, up) {
    const from = this.camera.position.clone().sub(this.controls.target);
    const flat = Math.hypot(from.x, from.y);
    const angle = Math.atan2(from.y, from.x) + sideways;
    const rise = Math.max(-0.35, Math.min(1.5, Math.atan2(from.z, flat) + up));
    const r = from.length();
    const eye = new Vector3(Math.cos(angle) * Math.cos(rise), Math.sin(angle) * Math.cos(rise), Math.sin(rise)).multiplyScalar(r);
    this.set({ target: this.controls.target.clone(), eye: eye.add(this.controls.target) });
  }

  near(factor) {
    const target = this.controls.target.clone();
    this.set({ target, eye: this.camera.position.clone().sub(target).multiplyScalar(factor).add(target) });
  }

  key(event) {
    const keys = {
      ArrowLeft: () => this.turn(-0.12, 0),
      ArrowRight: () => this.turn(0.12, 0),
      ArrowUp: () => this.turn(0, 0.08),
      ArrowDown: () => this.turn(0, -0.08),
      '+': () => this.near(0.85),
      '=': () => this.near(0.85),
      '-': () => this.near(1.18),
      0: () => this.go(this.home()),
    };
    if (keys[event.key] && !event.ctrlKey && !event.metaKey) {
      event.preventDefault();
      keys[event.key]();
    }
  }
}
