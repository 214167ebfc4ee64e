// The plan drawings: one at a time, moved and enlarged, findings marked and chosen.
import { el, part, svg } from './dom.js';
import { PanZoom } from './panzoom.js';

export function plan(result, state) {
  const stage = part('stage');
  const drawings = new Map([...stage.querySelectorAll('[data-drawing]')].map((d) => [d.dataset.drawing, d]));
  if (result.plans.length === 0) {
    stage.append(el('p.note', {}, 'No roof plane was found, so there is no plan. What was left out, and why, stands below.'));
    return { tools: [], wake: () => {} };
  }
  stage.tabIndex = 0;
  stage.setAttribute('role', 'group');
  stage.setAttribute('aria-label', 'Plan drawing. Arrow keys move it, plus and minus enlarge and reduce it, 0 shows the whole roof.');
  let shown = null;
  const panzoom = new PanZoom(stage, () => whole(drawings.get(shown.name), shown));

  const pick = el('select', { 'aria-label': 'Drawing', change: () => turn(result.plans[pick.selectedIndex]) }, result.plans.map((p) => el('option', {}, p.title)));
  const tools = [
    result.plans.length > 1 ? pick : '',
    tool('\u2212', 'Reduce', () => panzoom.zoom(1.4)),
    tool('+', 'Enlarge', () => panzoom.zoom(0.7)),
    tool('Roof', 'Show the whole roof', () => panzoom.go(panzoom.home())),
    tool('Sheet', 'Show the whole drawing with its legend', () => panzoom.go(page(drawings.get(shown.name)))),
  ].filter(Boolean);

  function turn(to) {
    if (shown === to) {
      return;
    }
    shown = to;
    drawings.forEach((drawing, name) => (drawing.hidden = name !== to.name));
    pick.selectedIndex = result.plans.indexOf(to);
    const drawing = drawings.get(to.name).querySelector('svg');
    drawing.removeAttribute('width');
    drawing.removeAttribute('height');
    drawing.setAttribute('aria-label', to.title);
    panzoom.take(drawing);
  }

  const marks = new Marks(result, drawings);
  state.on('chosen', ({ index }) => {
    marks.clear();
    const finding = result.findings[index];
    const home = marks.homes.get(finding?.plane);
    if (home) {
      turn(home);
      marks.mark(finding, home);
      fly();
    }
  });
  function fly() {
    if (marks.at && !part('pane-plan').hidden) {
      panzoom.go(around(marks.at, marks.plane, panzoom.home()));
    }
  }
  stage.addEventListener('click', (event) => {
    const index = panzoom.dragged ? -1 : marks.findingOf(event.target.closest('g.finding'));
    if (index >= 0) {
      state.choose(index, 'plan');
    }
  });
  turn(result.plans[0]);
  return { tools, wake: fly };
}

function tool(face, name, click) {
  return el('button', { type: 'button', 'aria-label': name, title: name, click }, face);
}

/** All that the plan of a drawing takes; the part of the page kept for it while it is not laid out. */
function whole(holder, plan) {
  const box = holder.querySelector('g.plan').getBBox();
  return box.width > 0 ? [box.x - 3, box.y - 3, box.width + 6, box.height + 6] : plan.plan;
}

/** The whole page of a drawing: its first mark is the paper. */
function page(holder) {
  const { x, y, width, height } = holder.querySelector('svg > path').getBBox();
  return [x, y, width, height];
}

/** A part of the plan with a place in it: its plane where that is small enough, and never so little that one is lost. */
function around(at, plane, all) {
  const share = Math.max(0.4, Math.min(0.75, 1.25 * Math.max(plane.width / all[2], plane.height / all[3])));
  const near = (k, from, length) => (length < share * all[k + 2] ? from + length / 2 : at[k]);
  const centre = [near(0, plane.x, plane.width), near(1, plane.y, plane.height)];
  return [centre[0] - (all[2] * share) / 2, centre[1] - (all[3] * share) / 2, all[2] * share, all[3] * share];
}

/** Names within drawings are made of those of the result, with what is not plain replaced: as the drawing does it. */
function named(id) {
  const plain = id.replace(/[^A-Za-z0-9_.-]/g, '_');
  return /^[A-Za-z]/.test(plain) ? plain : `x${plain}`;
}

class Marks {
  /** Where the chosen finding is on its drawing; null when it has no place there. */
  at = null;
  /** What is marked. */
  chosen = [];

  constructor(result, drawings) {
    this.result = result;
    this.drawings = drawings;
    this.names = new Map();
    this.homes = new Map();
    const planes = new Map(result.planes.map((p) => [p.id, p]));
    for (const plan of result.plans) {
      for (const plane of plan.planes.map((id) => planes.get(id))) {
        this.homes.set(plane.index, plan);
        plane.findings.forEach((f) => this.names.set(named(f.id), f.index));
      }
    }
    drawings.forEach((drawing) => drawing.querySelectorAll('g.finding').forEach((g) => this.tell(g)));
  }

  tell(group) {
    const finding = this.result.findings[this.findingOf(group)];
    if (finding) {
      group.prepend(svg('title', {}, finding.outcome === 'not assessed' ? `Not assessed: ${finding.title}` : finding.message));
    }
  }

  findingOf(group) {
    return group ? this.names.get(group.id) ?? -1 : -1;
  }

  clear() {
    this.at = null;
    this.ring?.remove();
    this.chosen.forEach((c) => c.classList.remove('chosen'));
  }

  /** Marks a finding. */
  mark(finding, plan) {
    const drawing = this.drawings.get(plan.name).querySelector('svg');
    const { id, findings } = this.result.planes[finding.plane];
    const plane = document.getElementById(named(id));
    this.plane = plane?.getBBox() ?? { x: 0, y: 0, width: 0, height: 0 };
    const group = this.group(finding, findings);
    this.chosen = [plane, group].filter(Boolean);
    this.chosen.forEach((c) => c.classList.add('chosen'));
    const sign = middle(group);
    const place = plan.places.find((p) => p.finding === finding.index)?.at;
    this.at = place ?? sign ?? middle(plane);
    if (this.at) {
      const spots = [this.at, ...(sign && place ? [sign] : [])];
      this.ring = svg('g', { class: 'chosen-ring' }, spots.map((s) => svg('circle', { cx: s[0], cy: s[1], r: 4.4 })));
      drawing.append(this.ring);
    }
  }

  /** The sign of a finding; the question mark of a plane stands for all of its findings that were not assessed. */
  group(finding, ofPlane) {
    const alike = finding.outcome === 'not assessed' ? ofPlane.filter((f) => f.outcome === 'not assessed') : [];
    return [finding, ...alike].map((f) => document.getElementById(named(f.id))).find(Boolean);
  }
}

function middle(element) {
  if (!element) {
    return null;
  }
  const box = element.getBBox();
  return [box.x + box.width / 2, box.y + box.height / 2];
}
