// The title block and the outcome: what was checked, what came out, the worst finding, what was not assessed.
import { el, pairs, part } from './dom.js';
import { grouped } from './model.js';
import { themeSwitch } from './theme.js';
import { OUTCOMES, count, day, measure, next, sign, weight, where } from './words.js';

const REASONS = 3;

export function head(result, state) {
  part('block').append(
    el('div.block-name', {}, el('p.kicker', {}, 'Roof check'), el('h1', {}, result.drop)),
    pairs(
      [
        ['Run', day(result.run)],
        ['Rule set', `${result.ruleSet.name} ${result.ruleSet.version}`],
        ['Roof system', result.system.title],
        [result.files.length === 1 ? 'Model file' : 'Model files', result.files.map((f) => f.name).join(', ')],
      ],
      'dl.block-facts',
    ),
    el(
      'div.block-tools',
      {},
      themeSwitch(() => state.dispatchEvent(new CustomEvent('theme'))),
      el('button.plain', { type: 'button', click: () => window.print() }, 'Print'),
    ),
  );
  part('summary').append(verdict(result, state), worst(result, state), open(result, state));
}

function verdict(result, state) {
  const tallies = OUTCOMES.map((outcome) => {
    const number = result.counts[outcome];
    const face = [sign(outcome, '', 26), el('b', {}, String(number)), el('span', {}, outcome)];
    return outcome === 'conforms' || number === 0
      ? el('li.tally', { 'data-outcome': outcome }, face)
      : el('li.tally', { 'data-outcome': outcome }, el('button', { type: 'button', title: 'Show these in the list', click: () => state.narrow({ outcome }) }, face));
  });
  return el(
    'div.verdict',
    { 'data-outcome': result.verdict.outcome },
    el('p.verdict-sentence', {}, sign(result.verdict.outcome, '', 40), el('span', {}, result.verdict.sentence)),
    el('ul.tallies', { 'aria-label': 'Judgements by outcome' }, tallies),
  );
}

function worst(result, state) {
  const finding = result.findings.find((f) => f.outcome === 'does not conform');
  if (!finding) {
    return el(
      'div.card',
      {},
      el('h2', {}, 'Nothing that does not conform'),
      el('p', {}, 'None of the judgements that could be made goes against a limit. What could not be judged stands beside this.'),
    );
  }
  const show = (view) => () => {
    state.choose(finding.index, 'head');
    state.bring(view, true);
  };
  return el(
    'div.card.worst',
    {},
    el('h2', {}, 'Worst finding: start here'),
    el('p.worst-what', {}, sign(finding.outcome, finding.sign, 34), el('span', {}, finding.message)),
    pairs([
      ['How bad', el('span', {}, weight(finding.severity), against(finding))],
      ['Where', where(finding) || finding.subject],
      ['Do next', next(finding)],
    ]),
    el(
      'p.actions',
      {},
      el('button.main', { type: 'button', click: show('plan') }, 'Show on the plan'),
      el('button', { type: 'button', click: show('space') }, 'Show in 3D'),
    ),
  );
}

function against(finding) {
  return finding.measured && finding.limit
    ? ` · ${measure(finding.measured)}, must be ${finding.comparison} ${measure(finding.limit)}`
    : '';
}

function open(result, state) {
  const reasons = grouped(result.findings.filter((f) => f.outcome === 'not assessed'), (f) => f.reason);
  reasons.sort((a, b) => b.length - a.length);
  const unread = result.unread.length + result.files.filter((f) => !f.opened).length;
  const rows = reasons.slice(0, REASONS).map((group) => el('li', {}, el('b', {}, `${group.length}\u00a0\u00d7 `), group[0].reason));
  if (reasons.length > REASONS) {
    rows.push(el('li', {}, count(reasons.length - REASONS, 'more reason', 'more reasons')));
  }
  if (unread > 0) {
    rows.push(el('li', {}, el('b', {}, `${unread}\u00a0\u00d7 `), 'not read from the models, and so missing from all figures'));
  }
  const nothing = rows.length === 0;
  return el(
    'div.card.open',
    {},
    el('h2', {}, nothing ? 'All was read and assessed' : 'Not read or not assessed'),
    nothing ? el('p', {}, 'No element was left out, and every rule that applies could be judged.') : el('ul.reasons', {}, rows),
    nothing ? '' : el('p.actions', {}, el('a.button', { href: '#page:gaps' }, 'See all, and why')),
  );
}
