// The list of findings: one row each, opened for all that is known of it.
import { el, part } from './dom.js';
import { detail } from './detail.js';
import { count, measure, sign, weight, where } from './words.js';

const LONG = 150;
const PRINTED = 200;

export function findings(result, state) {
  const list = part('rows');
  // What is out of sight of a long list is laid out when it comes into sight.
  list.classList.toggle('long', result.findings.length > LONG);
  const rows = result.findings.map((finding) => row(finding, result, state));

  state.on('shown', () => {
    list.replaceChildren(...state.shown.map((i) => rows[i].item));
    const all = result.findings.length;
    const said = state.shown.length === all ? count(all, 'finding', 'findings') : `${state.shown.length} of ${count(all, 'finding', 'findings')}`;
    part('count').textContent = all === 0 ? 'No findings: everything that was judged conforms.' : `${said} shown`;
  });
  let last = -1;
  state.on('chosen', ({ index, by }) => {
    rows[last]?.close();
    rows[index]?.open();
    if (by !== 'list' && by !== 'head') {
      rows[index]?.item.scrollIntoView({ block: 'nearest' });
    }
    last = index;
  });
  // A finding on paper has its place, limit and cure with it.
  window.addEventListener('beforeprint', () => state.shown.slice(0, PRINTED).forEach((i) => rows[i].open()));
  window.addEventListener('afterprint', () => rows.forEach((r, i) => (i === state.chosen ? r.open() : r.close())));
  list.addEventListener('keydown', (event) => walk(event, list));
}

function row(finding, result, state) {
  const id = `page:finding-${finding.index}`;
  const button = el(
    'button.row',
    { type: 'button', 'aria-expanded': 'false', 'aria-controls': id, click: () => state.choose(state.chosen === finding.index ? -1 : finding.index, 'list') },
    sign(finding.outcome, finding.sign, 26),
    el(
      'span.row-words',
      {},
      el('span.row-title', {}, finding.outcome === 'not assessed' ? `${finding.title}: ${finding.subject}` : finding.message || finding.title),
      el('span.row-where', {}, where(finding) || finding.files.join(', ') || 'whole drop'),
      el('span.row-facts', {}, el('span.outcome-word', {}, finding.outcome), weight(finding.severity), figures(finding)),
    ),
  );
  const item = el('li', { 'data-finding': finding.index, 'data-outcome': finding.outcome }, button);
  const body = el('div.detail', { id, hidden: true });
  item.append(body);
  return {
    item,
    open() {
      if (!body.firstChild) {
        body.append(detail(finding, result, state));
      }
      body.hidden = false;
      button.setAttribute('aria-expanded', 'true');
      item.classList.add('chosen');
    },
    close() {
      body.hidden = true;
      button.setAttribute('aria-expanded', 'false');
      item.classList.remove('chosen');
    },
  };
}

function figures(finding) {
  if (!finding.measured || !finding.limit) {
    return '';
  }
  return el('span.figures', {}, `${measure(finding.measured)}, ${finding.comparison} ${measure(finding.limit)}`);
}

/** Arrow keys go from row to row. */
function walk(event, list) {
  const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
  const at = event.target.closest?.('button.row')?.parentElement;
  if (!step || !at) {
    return;
  }
  const to = step > 0 ? at.nextElementSibling : at.previousElementSibling;
  to?.querySelector('button.row').focus();
  event.preventDefault();
}
