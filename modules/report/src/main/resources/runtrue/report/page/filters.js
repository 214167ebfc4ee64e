// Which findings the list shows, and in which order.
import { el, part } from './dom.js';
import { distinct, missedBy } from './model.js';
import { OUTCOMES, SEVERITIES, sign } from './words.js';

const ORDERS = {
  'worst first': () => 0,
  number: (a, b) => Number(a.sign) - Number(b.sign) || 0,
  'missed by most': (a, b) => missedBy(b) - missedBy(a),
  rule: (a, b) => compare(a.title, b.title),
  plane: (a, b) => compare(a.planeName, b.planeName),
  storey: (a, b) => compare(a.storey, b.storey),
};

const compare = (a, b) => a.localeCompare(b, 'en', { numeric: true });

export function filters(result, state) {
  const outcomes = new Set(OUTCOMES);
  const buttons = new Map();
  const all = result.findings;
  const rule = choice('Rule', distinct(all.map((f) => f.title)), apply);
  const severity = choice('Severity', SEVERITIES.filter((s) => all.some((f) => f.severity === s)), apply);
  const plane = choice('Plane', distinct(all.map((f) => f.planeName)), apply);
  const storey = choice('Storey', distinct(all.map((f) => f.storey)), apply);
  const order = choice('Order', Object.keys(ORDERS), apply, false);
  const text = el('input', { type: 'search', 'data-filter': 'Text', placeholder: 'Words, a name, a GlobalId', input: apply });

  const toggles = OUTCOMES.filter((o) => all.some((f) => f.outcome === o)).map((outcome) => {
    const button = el('button.toggle', { type: 'button', 'aria-pressed': 'true', click: () => press(outcome) }, sign(outcome, '', 18), outcome);
    buttons.set(outcome, button);
    return button;
  });
  const press = (outcome) => {
    outcomes.has(outcome) ? outcomes.delete(outcome) : outcomes.add(outcome);
    apply();
  };
  const reset = () => {
    OUTCOMES.forEach((o) => outcomes.add(o));
    [rule, severity, plane, storey].forEach((c) => (c.select.value = ''));
    text.value = '';
  };

  function apply() {
    buttons.forEach((button, outcome) => button.setAttribute('aria-pressed', String(outcomes.has(outcome))));
    const words = text.value.toLowerCase().split(/\s+/).filter(Boolean);
    const passing = all.filter(
      (f) =>
        outcomes.has(f.outcome) &&
        rule.passes(f.title) &&
        severity.passes(f.severity) &&
        plane.passes(f.planeName) &&
        storey.passes(f.storey) &&
        words.every((w) => f.text.includes(w)),
    );
    passing.sort((a, b) => ORDERS[order.select.value](a, b) || a.index - b.index);
    state.show(passing.map((f) => f.index));
  }

  state.on('narrow', (to) => {
    reset();
    if (to.outcome) {
      OUTCOMES.filter((o) => o !== to.outcome).forEach((o) => outcomes.delete(o));
    }
    if (to.plane) {
      plane.select.value = to.plane;
    }
    apply();
    part('filters').scrollIntoView({ block: 'start' });
    part('filters').querySelector('summary').focus({ preventScroll: true });
  });

  const clear = el('button.plain', { type: 'button', click: () => (reset(), apply()) }, 'Show all');
  part('filters').append(
    el('div.toggles', { role: 'group', 'aria-label': 'Outcomes shown' }, toggles),
    el(
      'details.filter',
      { open: window.innerWidth > 700 },
      el('summary', {}, 'Filter and order'),
      el('div.filter-grid', {}, labelled('Text', text), [rule, severity, plane, storey, order].map((c) => c.label), clear),
    ),
  );
  apply();
}

function choice(name, values, changed, all = true) {
  const options = values.map((v) => option(v, v));
  const select = el('select', { 'data-filter': name, change: changed }, all ? option('', 'all') : null, options);
  return { select, label: labelled(name, select), passes: (value) => select.value === '' || select.value === value };
}

function option(value, text) {
  const made = el('option', {}, text);
  made.value = value;
  return made;
}

function labelled(name, field) {
  return el('label', {}, el('span', {}, name), field);
}
