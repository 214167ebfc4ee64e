// Plan and 3D view as two leaves of one frame, with a line below that says what is marked.
import { el, part } from './dom.js';
import { plan } from './plan.js';
import { measure, sign, where } from './words.js';

const VIEWS = [
  ['plan', 'Plan'],
  ['space', '3D'],
];

export function viewer(result, state, load) {
  const bar = part('viewer-bar');
  const tools = el('div.viewer-tools');
  const tabs = VIEWS.map(([view, name]) =>
    el('button', { type: 'button', role: 'tab', id: `page:tab-${view}`, 'data-tab': view, 'aria-controls': `page:pane-${view}`, click: () => turn(view) }, name),
  );
  const tablist = el('div.tabs', { role: 'tablist', 'aria-label': 'View' }, tabs);
  bar.append(tablist, tools);
  const views = { plan: plan(result, state), space: null };
  let shown = '';

  function turn(view) {
    shown = view;
    VIEWS.forEach(([name], i) => {
      part(`pane-${name}`).hidden = name !== view;
      tabs[i].setAttribute('aria-selected', String(name === view));
      tabs[i].tabIndex = name === view ? 0 : -1;
    });
    views.space ??= view === 'space' ? lazily(result, state, load) : null;
    tools.replaceChildren(...views[view].tools);
    views[view].wake();
  }

  tablist.addEventListener('keydown', (event) => {
    if (event.key === 'ArrowRight' || event.key === 'ArrowLeft') {
      turn(shown === 'plan' ? 'space' : 'plan');
      part('viewer-bar').querySelector('[aria-selected="true"]').focus();
    }
  });
  state.on('bring', ({ view, into }) => {
    turn(view);
    if (into && part('viewer').getBoundingClientRect().top < 0 || part('viewer').getBoundingClientRect().bottom > window.innerHeight) {
      part('viewer').scrollIntoView({ block: 'nearest' });
    }
  });
  state.on('chosen', ({ index }) => caption(result.findings[index]));
  turn('plan');
  caption(undefined);
}

/** The 3D view is large: it is loaded when it is first asked for. */
function lazily(result, state, load) {
  const host = part('space');
  const tools = el('div.viewer-tools');
  const waiting = el('p.note', {}, 'The 3D view is being made.');
  host.append(waiting);
  let view = null;
  load('scene.js')
    .then((scene) => scene.open(host, result, state))
    .then((opened) => {
      view = opened;
      waiting.remove();
      tools.append(...view.tools);
      view.wake();
    })
    .catch((reason) => {
      waiting.textContent = `This browser shows no 3D here (${reason.message}). The plan has the same findings.`;
      host.dataset.missing = 'true';
    });
  return { tools: [tools], wake: () => view?.wake() };
}

function caption(finding) {
  const line = part('caption');
  if (!finding) {
    line.replaceChildren(el('span.quiet', {}, 'Choose a finding in the list, or a sign in the view.'));
    return;
  }
  const figures = finding.measured && finding.limit ? `${measure(finding.measured)}, must be ${finding.comparison} ${measure(finding.limit)}` : finding.outcome;
  const nowhere = finding.plane < 0 ? 'It concerns the whole drop and has no place on the roof. ' : '';
  line.replaceChildren(
    sign(finding.outcome, finding.sign, 22),
    el('span', {}, el('b', {}, finding.title), ` ${figures}. `, el('span.quiet', {}, nowhere + where(finding))),
  );
}
