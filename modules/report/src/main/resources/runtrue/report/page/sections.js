// What stands below the findings: gaps, quantities, planes, rules, and what all of it rests on.
import { changes } from './changes.js';
import { el, pairs, part } from './dom.js';
import { grouped, outcomeOf } from './model.js';
import { table } from './table.js';
import { OUTCOMES, count, fixed, measure, sign, unit, weight } from './words.js';

/** Adds them and gives their names for the navigation. */
export function sections(result, state) {
  const all = [
    ...(result.changes ? [['changes', 'Since an earlier check', changes(result)]] : []),
    ['gaps', 'Not read, not assessed', gaps(result)],
    ['quantities', 'Quantities', quantities(result)],
    ['planes', 'Planes', planes(result, state)],
    ['rules', 'Rules', rules(result, state)],
    ['health', 'Models', health(result)],
    ['ground', 'What it rests on', ground(result)],
  ];
  part('sections').append(
    ...all.map(([id, name, content]) => el('section.part', { id: `page:${id}`, 'data-part': id, tabindex: -1, 'aria-labelledby': `page:${id}-title` }, el('h2', { id: `page:${id}-title` }, name), content)),
  );
  return all.map(([id, name]) => [id, name]);
}

function gaps(result) {
  const open = grouped(result.findings.filter((f) => f.outcome === 'not assessed'), (f) => `${f.rule}\n${f.reason}`);
  const parts = [];
  if (open.length) {
    parts.push(
      table(
        'Rules that could not be judged, and why',
        [
          { name: 'Count', number: true, of: (g) => g.length },
          { name: 'Rule', of: (g) => g[0].title },
          { name: 'Why, and what to do', wide: true, of: (g) => g[0].reason },
          { name: 'Concerns', wide: true, of: (g) => some(g.map((f) => f.subject)) },
        ],
        open,
      ),
    );
  }
  if (result.unread.length) {
    parts.push(elements('Elements that were not read: they are missing from all figures', result.unread));
  }
  if (result.unplaced.length) {
    parts.push(elements('Elements that were read but are no plane of their own', result.unplaced));
  }
  if (result.bill.missing.length) {
    parts.push(el('h3', {}, 'Quantities that are missing'), el('ul', {}, result.bill.missing.map((m) => el('li', {}, m))));
  }
  return parts.length ? parts : el('p', {}, 'Everything was read and assessed.');
}

function elements(caption, list) {
  return table(
    caption,
    [
      { name: 'Element', of: (e) => e.name || 'without a name', show: (e) => el('span', {}, e.name || 'without a name', el('br'), el('code', {}, e.globalId)) },
      { name: 'Class', of: (e) => e.class },
      { name: 'Why, and what to do', wide: true, of: (e) => e.reason },
      { name: 'Shape', of: (e) => e.representation },
      { name: 'File', of: (e) => `${e.file} #${e.number}` },
      { name: 'Storey', of: (e) => e.storey },
    ],
    list,
  );
}

function some(texts, most = 6) {
  const once = [...new Set(texts)];
  return once.length > most ? `${once.slice(0, most).join(', ')} and ${once.length - most} more` : once.join(', ');
}

function quantities(result) {
  const { bill } = result;
  if (bill.lines.length === 0) {
    return el('p', {}, 'No quantities: no roof plane was found.');
  }
  const amount = (value, symbol) => fixed(value, symbol === 'pcs' ? 0 : 2);
  const parts = bill.lines.flatMap((line) => line.parts.map((part) => ({ ...part, line })));
  return [
    el('p', {}, `Taken off by the build-up \u201c${bill.buildUp}\u201d (${bill.source}). Net is by the geometry; ordered has laps, waste and whole packs. quantities.xlsx tells why they differ, line by line.`),
    table(
      'What to order',
      [
        { name: 'Part', of: (l) => l.section },
        { name: 'Item', wide: true, of: (l) => [l.description, l.variant].filter(Boolean).join(', ') },
        { name: 'Net', number: true, of: (l) => l.net, show: (l) => amount(l.net, l.unit) },
        { name: 'Ordered', number: true, of: (l) => l.ordered, show: (l) => el('b', {}, amount(l.ordered, l.unit)) },
        { name: 'Unit', of: (l) => unit(l.unit) },
        { name: 'In', of: (l) => (l.count ? `${l.count} \u00d7 ${l.each}` : '') },
        { name: 'Each, m', number: true, of: (l) => l.length, show: (l) => (l.length ? fixed(l.length, 3) : '') },
        { name: 'Mass, kg', number: true, of: (l) => l.mass ?? -1, show: (l) => (l.mass === undefined ? '' : fixed(l.mass, 1)) },
        { name: 'How it was worked out', wide: true, of: (l) => l.method },
      ],
      bill.lines,
    ),
    el(
      'details',
      {},
      el('summary', {}, `By plane (${count(parts.length, 'line', 'lines')})`),
      table(
        'Net quantities by plane',
        [
          { name: 'Plane', wide: true, of: (p) => result.planes[p.plane]?.name ?? '' },
          { name: 'Item', wide: true, of: (p) => [p.line.description, p.line.variant].filter(Boolean).join(', ') },
          { name: 'Zone', of: (p) => p.zone },
          { name: 'Net', number: true, of: (p) => p.net, show: (p) => amount(p.net, p.line.unit) },
          { name: 'Unit', of: (p) => unit(p.line.unit) },
          { name: 'Pieces', number: true, of: (p) => p.count, show: (p) => (p.count ? String(p.count) : '') },
        ],
        parts,
      ),
    ),
    bill.figures.length
      ? table(
          'The order as a whole',
          [
            { name: 'What', wide: true, of: (f) => f.what },
            { name: 'Value', number: true, of: (f) => f.value ?? -Infinity, show: (f) => (f.value === undefined ? 'not known' : measure([Number(f.value.toFixed(2)), f.unit])) },
            { name: 'Verdict', of: (f) => f.verdict },
            { name: 'Remark', wide: true, of: (f) => f.remark },
          ],
          bill.figures,
        )
      : '',
  ];
}

function planes(result, state) {
  if (result.planes.length === 0) {
    return el('p', {}, 'No roof plane was found.');
  }
  return table(
    'Roof planes; a name shows its findings',
    [
      {
        name: 'Plane',
        wide: true,
        of: (p) => p.name,
        show: (p) => (p.findings.length ? el('button.link', { type: 'button', click: () => state.narrow({ plane: p.name }) }, p.name) : p.name),
      },
      { name: 'Outcome', of: (p) => OUTCOMES.indexOf(outcomeOf(p)), show: (p) => el('span.worded', {}, sign(outcomeOf(p), '', 16), outcomeOf(p)) },
      { name: 'Findings', number: true, of: (p) => p.findings.length },
      { name: 'Pitch, \u00b0', number: true, of: (p) => p.pitch, show: (p) => (p.leastPitch === undefined ? fixed(p.pitch, 1) : `${fixed(p.leastPitch, 1)} to ${fixed(p.pitch, 1)}`) },
      { name: 'Area, m\u00b2', number: true, of: (p) => p.area, show: (p) => fixed(p.area, 2) },
      { name: 'In plan, m\u00b2', number: true, of: (p) => p.planArea, show: (p) => fixed(p.planArea, 2) },
      { name: 'Longest sheet, m', number: true, of: (p) => p.run, show: (p) => (p.sheets.length ? fixed(p.run, 3) : '') },
      { name: 'Sheets', number: true, of: (p) => p.sheets.length / 4 },
      { name: 'Support lines', number: true, of: (p) => p.supports.length },
      { name: 'Carried by', of: (p) => p.carriedBy },
      { name: 'Eave, m', number: true, of: (p) => p.eave, show: (p) => fixed(p.eave, 3) },
      { name: 'Ridge, m', number: true, of: (p) => p.ridge, show: (p) => fixed(p.ridge, 3) },
      { name: 'Storey', of: (p) => p.storey },
      { name: 'Grid', of: (p) => p.grid },
      { name: 'Remarks', wide: true, of: (p) => p.remarks.join(' ') },
    ],
    result.planes,
  );
}

function rules(result, state) {
  const limits = (r) => r.limits.map((l) => `${l.comparison} ${measure(l.value)}`);
  const met = (r) => OUTCOMES.reduce((sum, o) => sum + r.counts[o], 0);
  return [
    el('p', {}, `Rule set ${result.ruleSet.name}, version ${result.ruleSet.version} (${result.ruleSet.file}). A rule counts once for every plane, span, sheet or element that it applies to.`),
    table(
      'Rules applied, with their limits and what came of them',
      [
        { name: 'Rule', wide: true, of: (r) => r.title, show: (r) => el('span', {}, r.title, el('br'), el('code', {}, r.id)) },
        { name: 'Severity', of: (r) => r.severity, show: (r) => weight(r.severity) },
        { name: 'Limit', of: (r) => limits(r).join(', '), show: (r) => some(limits(r), 4) },
        { name: 'Limit from', wide: true, of: (r) => r.sources.join('; ') },
        ...OUTCOMES.map((outcome) => ({
          name: outcome,
          number: true,
          of: (r) => r.counts[outcome],
          show: (r) => (r.counts[outcome] ? el('span.worded', {}, sign(outcome, '', 14), String(r.counts[outcome])) : '\u2013'),
        })),
        { name: 'Met', number: true, of: met, show: (r) => (met(r) ? String(met(r)) : 'nothing') },
      ],
      result.rules,
    ),
  ];
}

function health(result) {
  const files = table(
    'Model files',
    [
      { name: 'File', of: (f) => f.name, show: (f) => el('span', {}, f.name, f.opened ? '' : el('b', {}, ' not read')) },
      { name: 'Schema', of: (f) => f.schema },
      { name: 'Written by', of: (f) => f.program },
      { name: 'Written on', of: (f) => f.time },
      { name: 'Roof elements', number: true, of: (f) => f.roofs },
      { name: 'Members', number: true, of: (f) => f.members },
      { name: 'Not read', number: true, of: (f) => f.unread },
      { name: 'Size, MB', number: true, of: (f) => f.bytes, show: (f) => fixed(f.bytes / 1e6, 2) },
      { name: 'SHA-256', of: (f) => f.sha256, show: (f) => el('code', { title: f.sha256 }, f.sha256.slice(0, 12)) },
      { name: 'Notes', wide: true, of: (f) => f.notes.join(' ') },
    ],
    result.files,
  );
  if (result.health.length === 0) {
    return [files, el('p', {}, 'Nothing is amiss with the models that would touch the roof.')];
  }
  return [
    files,
    table(
      'What is amiss with the models',
      [
        { name: 'Matters', of: (h) => h.importance },
        { name: 'What', wide: true, of: (h) => h.title, show: (h) => el('span', {}, el('b', {}, h.title), ' ', h.detail) },
        { name: 'Why it matters', wide: true, of: (h) => h.why },
        { name: 'What to do', wide: true, of: (h) => h.action },
        { name: 'Elements', number: true, of: (h) => h.items.length, show: (h) => (h.items.length ? named(h.items) : '') },
        { name: 'File', of: (h) => h.file },
      ],
      result.health,
    ),
  ];
}

function named(items) {
  return el('details', {}, el('summary', {}, String(items.length)), el('ul.names', {}, items.slice(0, 100).map((i) => el('li', {}, `${i.name || 'without a name'} `, el('code', {}, i.globalId), i.detail ? ` ${i.detail}` : ''))));
}

function ground(result) {
  return [
    el('ul.cautions', {}, result.cautions.map((c) => el('li', {}, c))),
    result.concessions.length ? concessions(result) : el('p', {}, 'No concessions are on file for this drop.'),
    el('h3', {}, 'Roof system'),
    pairs([
      ['Name', result.system.title],
      ['Values from', result.system.source],
      ...result.system.values.map((v) => [plain(v.name), measure(v.value)]),
      ...result.system.texts.map((t) => [plain(t.name), t.text]),
    ], 'dl.pairs.columns'),
    el('details', {}, el('summary', {}, `Settings in force (${result.settings.length})`), table('Settings in force', [
      { name: 'Setting', of: (s) => s.name },
      { name: 'Value', wide: true, of: (s) => s.value },
      { name: 'From', of: (s) => [s.origin, s.file].filter(Boolean).join(' ') },
    ], result.settings)),
    el('details', {}, el('summary', {}, `Tolerances (${result.tolerances.length})`), table('Tolerances, with the reason for each', [
      { name: 'Tolerance', of: (t) => t.name },
      { name: 'Value', number: true, of: (t) => t.value[0], show: (t) => measure(t.value) },
      { name: 'Reason', wide: true, of: (t) => t.reason },
    ], result.tolerances)),
  ];
}

function concessions(result) {
  return table('Concessions: who accepts what, and whether it holds', [
    { name: 'Finding', of: (c) => c.finding, show: (c) => el('code', {}, c.finding) },
    { name: 'State', of: (c) => c.state },
    { name: 'By', of: (c) => c.by },
    { name: 'Why', wide: true, of: (c) => c.why },
    { name: 'Until', of: (c) => c.until || 'withdrawn' },
    { name: 'Up to', of: (c) => c.upTo },
    { name: 'Remark', wide: true, of: (c) => c.remark },
    { name: 'Stands in', of: (c) => c.from },
  ], result.concessions);
}

function plain(name) {
  const words = name.replace(/[_-]/g, ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}
