// What is new, changed or gone since an earlier check of the same drop.
import { el } from './dom.js';
import { table } from './table.js';
import { fixed, unit, weight } from './words.js';

const SIGNS = { new: '+', changed: '~', gone: '\u2212' };

export function changes(result) {
  const { since, same, basis, findings, orders, planes } = result.changes;
  const number = (kind) => findings.filter((f) => f.kind === kind).length;
  return [
    el('p', {}, `Since the check of ${since}: ${number('new')} findings new, ${number('changed')} changed, ${number('gone')} gone, ${same} as before. What is gone conforms now only where it says so.`),
    basis.length ? el('p', {}, 'Also different since then, and a change may come from it:') : '',
    basis.length ? el('ul', {}, basis.map((b) => el('li', {}, b))) : '',
    findings.length ? findingTable(findings) : '',
    orders.length ? orderTable(orders) : el('p', {}, 'Nothing to order changed.'),
    planes.length ? planeTable(planes) : el('p', {}, 'No plane changed.'),
  ];
}

function kind(row) {
  return `${SIGNS[row.kind]} ${row.kind}`;
}

function findingTable(findings) {
  return table(
    'Findings that are not as they were',
    [
      { name: 'Change', of: kind },
      { name: 'Rule', wide: true, of: (f) => f.title, show: (f) => el('span', {}, f.title, el('br'), el('code', {}, f.id)) },
      { name: 'Of what', wide: true, of: (f) => f.subject },
      { name: 'What is different', wide: true, of: (f) => f.words },
      { name: 'Before', of: (f) => f.before },
      { name: 'Now', of: (f) => f.now },
      { name: 'Severity', of: (f) => f.severity, show: (f) => weight(f.severity) },
    ],
    findings,
  );
}

function amount(value, symbol) {
  return value === undefined ? '\u2013' : fixed(value, symbol === 'pcs' ? 0 : 2);
}

function orderTable(orders) {
  const more = (o) => (o.now ?? 0) - (o.before ?? 0);
  return table(
    'What is ordered more or less of',
    [
      { name: 'Item', wide: true, of: (o) => [o.description, o.variant].filter(Boolean).join(', ') },
      { name: 'Before', number: true, of: (o) => o.before ?? -1, show: (o) => amount(o.before, o.unit) },
      { name: 'Now', number: true, of: (o) => o.now ?? -1, show: (o) => amount(o.now, o.unit) },
      { name: 'Difference', number: true, of: more, show: (o) => `${more(o) > 0 ? '+' : ''}${amount(more(o), o.unit)}` },
      { name: 'Unit', of: (o) => unit(o.unit) },
    ],
    orders,
  );
}

function planeTable(planes) {
  return table(
    'Planes that are not as they were',
    [
      { name: 'Change', of: kind },
      { name: 'Plane', wide: true, of: (p) => p.name },
      {
        name: 'Figures',
        wide: true,
        of: (p) => p.figures.map((f) => `${f.what} ${amount(f.before, f.unit)}, now ${amount(f.now, f.unit)} ${unit(f.unit)}`.trim()).join('; '),
      },
    ],
    planes,
  );
}
