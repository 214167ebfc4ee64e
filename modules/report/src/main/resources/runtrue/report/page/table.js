// A table that sorts by its headings and puts itself on the page in lots, so that long ones do not hold it up.
import { el } from './dom.js';

const LOT = 200;

/**
 * A table of `rows`. A column: `{name, of, number, show, wide}`: `of` gives the value that is sorted by, `show` what is shown
 * in its place.
 */
export function table(caption, columns, rows) {
  const body = el('tbody');
  const heads = columns.map((column, i) =>
    el(
      'th',
      { scope: 'col', class: column.number ? 'number' : false, 'aria-sort': 'none' },
      el('button.sort', { type: 'button', click: () => sort(i) }, column.name),
    ),
  );
  const more = el('button', { type: 'button', click: () => lot() });
  let order = rows;
  let made = 0;
  let by = null;

  function lot(count = LOT) {
    const next = order.slice(made, made + count);
    body.append(...next.map((row) => line(columns, row)));
    made += next.length;
    more.hidden = made >= order.length;
    more.textContent = `Show ${Math.min(LOT, order.length - made)} more of ${order.length}`;
  }

  function sort(i) {
    const up = by?.column === i ? !by.up : true;
    by = { column: i, up };
    heads.forEach((h, k) => h.setAttribute('aria-sort', k === i ? (up ? 'ascending' : 'descending') : 'none'));
    order = [...rows].sort((a, b) => compare(columns[i].of(a), columns[i].of(b)) * (up ? 1 : -1));
    body.replaceChildren();
    made = 0;
    lot();
  }

  lot();
  window.addEventListener('beforeprint', () => lot(order.length));
  return el(
    'div.table',
    {},
    el('div.table-scroll', { tabindex: 0, role: 'region', 'aria-label': caption }, el('table', {}, el('caption', {}, caption), el('thead', {}, el('tr', {}, heads)), body)),
    more,
  );
}

function line(columns, row) {
  return el('tr', {}, columns.map((column) => el('td', { class: [column.number ? 'number' : '', column.wide ? 'wide' : ''].join(' ').trim() || false }, column.show ? column.show(row) : String(column.of(row)))));
}

function compare(a, b) {
  return typeof a === 'number' && typeof b === 'number' ? a - b : String(a).localeCompare(String(b), 'en', { numeric: true });
}
