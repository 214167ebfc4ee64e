// The roof in space. Drawn only when something changes.
import { AmbientLight, DirectionalLight, Raycaster, Scene, Vector2, Vector3, WebGLRenderer } from 'three';
import { el } from './dom.js';
import { Eye } from './camera.js';
import { roof } from './roof.js';
import { signs, spot } from './signs.js';
import { normal, points } from './surface.js';

const LAYERS = { planes: 'Planes', sheets: 'Sheets', supports: 'Supports', edges: 'Edges', falls: 'Falls', signs: 'Signs' };

/** Takes a place on the page; fails where the browser has no WebGL. */
export function open(host, result, state) {
  if (!result.planes.some((p) => p.hasShape)) {
    throw new Error('no roof plane was found');
  }
  return new Space(host, result, state);
}

class Space {
  waiting = false;
  layers = {};

  constructor(host, result, state) {
    Object.assign(this, { host, result, state });
    this.renderer = new WebGLRenderer({ antialias: true, alpha: true });
    const canvas = this.renderer.domElement;
    canvas.tabIndex = 0;
    canvas.setAttribute('role', 'group');
    canvas.setAttribute('aria-label', 'Roof in 3D. Arrow keys turn it, plus and minus come nearer and go back, 0 shows all of it.');
    host.append(canvas);
    const corners = result.planes.flatMap((p) => points(p.outline).map((c) => new Vector3(...c)));
    this.eye = new Eye(canvas, corners, () => this.ask());
    this.build();
    this.tools = this.makeTools();
    canvas.addEventListener('pointerdown', (e) => (this.down = [e.clientX, e.clientY]));
    canvas.addEventListener('pointerup', (e) => this.click(e));
    new ResizeObserver(() => this.fit()).observe(host);
    state.on('chosen', ({ index }) => this.choose(index));
    state.on('theme', () => this.build());
    this.fit();
  }

  build() {
    const style = getComputedStyle(document.documentElement);
    const ink = (name) => style.getPropertyValue(`--${name}`).trim();
    this.ink = ink;
    const hidden = Object.keys(this.layers).filter((name) => !this.layers[name][0]?.visible);
    this.scene = new Scene();
    const sun = new DirectionalLight(0xffffff, 2.1);
    sun.position.set(0.4, -0.8, 1.4);
    this.scene.add(new AmbientLight(0xffffff, 1.5), sun);
    const made = roof(this.result, ink, this.eye.size);
    this.layers = Object.fromEntries(Object.entries(made).map(([name, thing]) => [name, [thing]]));
    const { made: all, make } = signs(this.result, ink);
    this.layers.signs = all;
    this.makeSign = make;
    this.scene.add(...Object.values(this.layers).flat());
    hidden.forEach((name) => this.layers[name].forEach((thing) => (thing.visible = false)));
    this.mark(this.state.chosen);
  }

  makeTools() {
    const near = (face, name, click) => el('button', { type: 'button', title: name, 'aria-label': name, click }, face);
    const boxes = Object.entries(LAYERS).map(([name, word]) =>
      el('label', {}, el('input', { type: 'checkbox', checked: true, change: (e) => this.show(name, e.target.checked) }), word),
    );
    return [
      near('\u2212', 'Go back', () => this.eye.near(1.3)),
      near('+', 'Come nearer', () => this.eye.near(0.75)),
      near('Roof', 'Show the whole roof', () => this.eye.go(this.eye.home())),
      near('Top', 'Look from above', () => this.above()),
      el('details.layers', {}, el('summary', {}, 'Show'), el('div', {}, boxes)),
    ];
  }

  above() {
    const { target, eye } = this.eye.home();
    this.eye.go({ target, eye: target.clone().add(new Vector3(0, -0.001, eye.distanceTo(target))) });
  }

  show(name, visible) {
    this.layers[name].forEach((thing) => (thing.visible = visible));
    this.ask();
  }

  /** Called when the view comes forward. */
  wake() {
    this.fit();
    if (this.state.chosen >= 0) {
      this.choose(this.state.chosen);
    }
  }

  fit() {
    const { clientWidth: width, clientHeight: height } = this.host;
    if (width === 0 || height === 0) {
      return;
    }
    this.renderer.setPixelRatio(Math.min(2, window.devicePixelRatio));
    this.renderer.setSize(width, height);
    this.eye.shape(width, height);
    const part = 30 / height;
    const scale = 2 * Math.tan((this.eye.camera.fov * Math.PI) / 360) * part;
    this.layers.signs.forEach((sign) => sign.scale.set(scale, scale, 1));
    this.signScale = scale;
    this.ask();
  }

  ask() {
    if (!this.waiting && this.scene) {
      this.waiting = true;
      requestAnimationFrame(() => {
        this.waiting = false;
        this.renderer.render(this.scene, this.eye.camera);
      });
    }
  }

  choose(index) {
    this.mark(index);
    const finding = this.result.findings[index];
    const plane = finding && this.result.planes[finding.plane];
    if (plane?.hasShape && this.host.clientWidth > 0) {
      const place = spot(finding, plane);
      const ring = points(plane.outline).map((p) => new Vector3(...p));
      const reach = Math.max(...ring.map((p) => p.distanceTo(place)));
      this.eye.look(place, normal(plane, place.toArray()), Math.max(this.eye.size / 12, Math.min(reach * 1.3, this.eye.size * 0.8)));
    }
  }

  /** Shows what is chosen: its plane tinted and seen through, its members and its sign in the accent. */
  mark(index) {
    const finding = this.result.findings[index];
    for (const { material, userData } of this.layers.planes[0].children) {
      const chosen = userData.plane === finding?.plane;
      material.color.set(this.ink(chosen ? 'chosen' : 'sheet'));
      material.transparent = chosen;
      material.opacity = chosen ? 0.5 : 1;
      material.depthWrite = !chosen;
      material.needsUpdate = true;
    }
    const members = new Set(finding?.elements.map((e) => e.globalId));
    const [bars] = this.layers.supports;
    const colour = this.layers.planes[0].children[0].material.color.clone();
    bars.userData.pieces.forEach((id, i) => bars.setColorAt(i, colour.set(this.ink(members.has(id) ? 'accent' : 'steel'))));
    if (bars.instanceColor) {
      bars.instanceColor.needsUpdate = true;
    }
    const shows = (sign) => sign.userData.finding === index || (sign.userData.open && finding?.outcome === 'not assessed' && sign.userData.plane === finding.plane);
    if (this.result.planes[finding?.plane]?.hasShape && !this.layers.signs.some(shows)) {
      const more = this.makeSign(finding);
      this.layers.signs.push(more);
      this.scene.add(more);
    }
    for (const sign of this.layers.signs) {
      const data = sign.userData;
      const chosen = finding && shows(sign);
      sign.material = data.face(Boolean(chosen));
      sign.renderOrder = chosen ? 11 : 10;
      const scale = (this.signScale ?? 0.03) * (chosen ? 1.25 : 1);
      sign.scale.set(scale, scale, 1);
    }
    this.ask();
  }

  click(event) {
    if (!this.down || Math.hypot(event.clientX - this.down[0], event.clientY - this.down[1]) > 4) {
      return;
    }
    const room = this.renderer.domElement.getBoundingClientRect();
    const at = new Vector2(((event.clientX - room.left) / room.width) * 2 - 1, 1 - ((event.clientY - room.top) / room.height) * 2);
    const ray = new Raycaster();
    ray.setFromCamera(at, this.eye.camera);
    const [hit] = ray.intersectObjects(this.layers.signs.filter((s) => s.visible));
    if (hit) {
      this.state.choose(hit.object.userData.finding, 'space');
    }
  }
}
