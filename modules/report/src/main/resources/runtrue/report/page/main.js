// Puts the page together from the result that it carries.
import { el, part } from './dom.js';
import { filters } from './filters.js';
import { findings } from './findings.js';
import { head } from './head.js';
import { read } from './model.js';
import { sections } from './sections.js';
import { State } from './state.js';
import { viewer } from './viewer.js';

/** `load` gives modules by name: what only some readers need is loaded when they do. */
export function start(load) {
  const result = read();
  const state = new State();
  document.title = `Roof check: ${result.drop}`;
  head(result, state);
  findings(result, state);
  viewer(result, state, load);
  filters(result, state);
  const parts = sections(result, state);
  navigation(parts);
  part('foot').append(
    el('p', {}, `Made by Runtrue ${result.tool} from the models named above, run ${result.run}.`),
    el('p', {}, 'Not a design: an engineer\u2019s design, local codes and a safety plan for work on the roof come first.'),
    el('p', {}, 'The 3D view is drawn by three.js, \u00a9 2010\u20132025 three.js authors, MIT licence; its text is in this file.'),
  );
  document.documentElement.dataset.ready = 'true';
}

function navigation(parts) {
  const links = [['summary', 'Outcome'], ['findings', 'Findings'], ['view', 'Plan and 3D'], ...parts];
  part('nav').append(el('ul', {}, links.map(([id, name]) => el('li', {}, el('a', { href: `#page:${id}` }, name)))));
}
