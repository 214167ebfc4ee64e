// All that is known of one finding.
import { el, pairs, svg } from './dom.js';
import { measure, next } from './words.js';

const NAMED = 12;

export function detail(finding, result, state) {
  const show = (view) => () => {
    state.choose(finding.index, 'list');
    state.bring(view, true);
  };
  const placed = finding.plane >= 0;
  return el(
    'div',
    {},
    scale(finding),
    pairs([
      ['Do next', next(finding)],
      ['Where', place(finding, result)],
      ['Judged', finding.subject],
      ['Measured', measure(finding.measured)],
      ['Limit', finding.limit ? `${finding.comparison} ${measure(finding.limit)}` : ''],
      ['Margin', margin(finding)],
      ['Limit from', finding.source],
      ['Rule', `${finding.title} (${finding.rule})`],
      [finding.outcome === 'conceded' ? 'Conceded' : 'Why', finding.outcome === 'not assessed' ? '' : finding.reason],
      ['Files', finding.files.join(', ')],
      ['Id', el('code', {}, finding.id)],
    ]),
    placed
      ? el(
          'p.actions',
          {},
          el('button.main', { type: 'button', click: show('plan') }, 'Show on the plan'),
          el('button', { type: 'button', click: show('space') }, 'Show in 3D'),
        )
      : '',
    elements(finding.elements),
    finding.facts.length ? el('details.facts', {}, el('summary', {}, 'What the outcome rests on'), el('ul', {}, finding.facts.map((f) => el('li', {}, f)))) : '',
  );
}

function margin(finding) {
  if (!finding.margin) {
    return '';
  }
  const [value, symbol] = finding.margin;
  const side = value >= 0 ? 'to spare' : finding.comparison === 'at most' ? 'over the limit' : 'short of the limit';
  return `${measure([Math.abs(value), symbol])} ${side}`;
}

function place(finding, result) {
  const lines = [finding.planeName, finding.storey, finding.grid ? `grid ${finding.grid}` : ''].filter(Boolean).map((t) => el('div', {}, t));
  if (finding.place) {
    const [x, y, z] = finding.place.map((value, axis) => (value + result.origin[axis]).toFixed(3));
    lines.push(el('div.quiet', {}, `X ${x}  Y ${y}  Z ${z} m`));
  }
  return lines.length ? el('div', {}, lines) : '';
}

/** The measured value and the limit on one line, for those that are of one kind. */
function scale(finding) {
  const { measured, limit } = finding;
  if (!measured || !limit || measured[1] !== limit[1] || measured[0] < 0 || limit[0] <= 0) {
    return '';
  }
  const most = Math.max(measured[0], limit[0]) * 1.12;
  const at = (value) => 4 + (value / most) * 292;
  const good = finding.comparison === 'at least' ? [at(limit[0]), 296] : [4, at(limit[0])];
  const x = at(measured[0]);
  return svg(
    'svg',
    { viewBox: '0 0 300 44', class: 'gauge', role: 'img', 'aria-label': `Measured ${measure(measured)}, must be ${finding.comparison} ${measure(limit)}` },
    svg('line', { x1: 4, x2: 296, y1: 22, y2: 22, class: 'gauge-line' }),
    svg('line', { x1: good[0], x2: good[1], y1: 22, y2: 22, class: 'gauge-good' }),
    svg('line', { x1: at(limit[0]), x2: at(limit[0]), y1: 14, y2: 30, class: 'gauge-limit' }),
    svg('path', { d: `M${x} 15l7 7-7 7-7-7z`, class: finding.margin && finding.margin[0] < 0 ? 'gauge-fails' : 'gauge-holds' }),
    label(x, 9, `measured ${measure(measured)}`),
    label(at(limit[0]), 42, `${finding.comparison} ${measure(limit)}`),
  );
}

function label(x, y, text) {
  const anchor = x < 70 ? 'start' : x > 230 ? 'end' : 'middle';
  return svg('text', { x, y, 'text-anchor': anchor }, text);
}

function elements(list) {
  if (list.length === 0) {
    return '';
  }
  const one = (element) =>
    el(
      'li',
      {},
      el('div', {}, el('b', {}, element.name || 'without a name'), ` ${element.class}, ${element.file} #${element.number}`),
      element.globalId ? el('div', {}, el('code', {}, element.globalId), copy(element.globalId)) : '',
      element.evidence ? el('div.quiet', {}, element.evidence) : '',
    );
  const rest = list.slice(NAMED);
  return el(
    'div.elements',
    {},
    el('h3', {}, list.length === 1 ? 'Element' : `${list.length} elements`),
    el('ul', {}, list.slice(0, NAMED).map(one)),
    rest.length ? el('details', {}, el('summary', {}, `${rest.length} more`), el('ul', {}, rest.map(one))) : '',
  );
}

function copy(text) {
  const button = el('button.copy', { type: 'button', 'aria-label': `Copy GlobalId ${text}` }, 'Copy');
  button.addEventListener('click', async () => {
    try {
      await navigator.clipboard.writeText(text);
      button.textContent = 'Copied';
    } catch {
      // A page from disk may not write to the clipboard everywhere: leave the text selected for the reader's own keys.
      window.getSelection().selectAllChildren(button.previousElementSibling);
      button.textContent = 'Selected';
    }
    setTimeout(() => (button.textContent = 'Copy'), 1500);
  });
  return button;
}
