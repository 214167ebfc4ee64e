// Words, signs and figures: one way to say each on the whole page.
import { el, svg } from './dom.js';

export const OUTCOMES = ['does not conform', 'not assessed', 'conceded', 'conforms'];
export const SEVERITIES = ['critical', 'major', 'minor', 'note'];

const UNITS = { 1: '', deg: '°', um: 'µm', m2: 'm²', m3: 'm³', 'kg/m2': 'kg/m²' };
const DECIMALS = { mm: 1, deg: 2 };
const ASSESSED_LATER = 'To be assessed: ';

/** With at most so many decimals and thousands set apart. */
export function number(value, decimals = 3) {
  const [whole, fraction] = String(Number(value.toFixed(decimals))).split('.');
  const grouped = Math.abs(value) >= 10000 ? whole.replace(/\B(?=(\d{3})+$)/g, '\u202f') : whole;
  return (fraction ? `${grouped}.${fraction}` : grouped).replace('-', '\u2212');
}

/** With exactly so many decimals. */
export function fixed(value, decimals) {
  const [whole, fraction] = value.toFixed(decimals).split('.');
  const grouped = Math.abs(value) >= 10000 ? whole.replace(/\B(?=(\d{3})+$)/g, '\u202f') : whole;
  return (fraction ? `${grouped}.${fraction}` : grouped).replace('-', '\u2212');
}

export function unit(symbol) {
  return UNITS[symbol] ?? symbol.replace('m2', 'm²').replace('m3', 'm³');
}

/** A number with its unit, both as the result has them. */
export function measure(pair) {
  if (!pair) {
    return '';
  }
  const symbol = unit(pair[1]);
  return number(pair[0], DECIMALS[pair[1]] ?? 3) + (symbol === '' || symbol === '°' ? symbol : `\u00a0${symbol}`);
}

/** The sign of an outcome: a diamond, a ring, a square or a tick, with letters in it or none. */
export function sign(outcome, letters = '', size = 22) {
  const shape = {
    'does not conform': () => svg('path', { d: 'M12 1 23 12 12 23 1 12Z', class: 'sign-fails' }),
    'not assessed': () => svg('circle', { cx: 12, cy: 12, r: 9, class: 'sign-open' }),
    conceded: () => svg('rect', { x: 3, y: 3, width: 18, height: 18, class: 'sign-conceded' }),
    conforms: () => svg('path', { d: 'M4 13 10 19 21 5', class: 'sign-conforms' }),
  }[outcome]();
  const text = outcome === 'conforms' ? '' : outcome === 'not assessed' ? '?' : letters || (outcome === 'conceded' ? '' : '!');
  const small = text.length > 2 ? 7.5 : 10;
  return svg(
    'svg',
    { viewBox: '0 0 24 24', width: size, height: size, class: 'sign', 'aria-hidden': 'true' },
    shape,
    text
      ? svg('text', { x: 12, y: 12 + small * 0.36, 'font-size': small, class: outcome === 'not assessed' ? 'on-open' : 'on-full' }, text)
      : null,
  );
}

/** How much it matters: four strokes, as many of them filled, and the word. */
export function weight(severity) {
  const filled = 4 - SEVERITIES.indexOf(severity);
  const strokes = [0, 1, 2, 3].map((i) =>
    svg('rect', { x: i * 5, y: 9 - 3 * i, width: 3.4, height: 3 + 3 * i, class: i < filled ? 'stroke-full' : 'stroke-empty' }),
  );
  return el('span.weight', {}, svg('svg', { viewBox: '0 0 19 12', width: 19, height: 12, 'aria-hidden': 'true' }, strokes), severity);
}

/** Where a finding is, shortest first. */
export function where(finding) {
  return [finding.planeName, finding.grid ? `grid ${finding.grid}` : '', finding.storey].filter(Boolean).join(' · ');
}

/** What a person does next about a finding. */
export function next(finding) {
  if (finding.outcome === 'does not conform') {
    return finding.cure;
  }
  return finding.outcome === 'not assessed' ? ASSESSED_LATER + finding.reason : finding.reason;
}

/** `3 findings`, `1 finding`. */
export function count(number, one, many) {
  return `${number} ${number === 1 ? one : many}`;
}

/** A time stamp of ISO 8601 as people write it; as it stands when it is none. */
export function day(stamp) {
  const found = /^(\d{4})-(\d\d)-(\d\d)T(\d\d:\d\d)/.exec(stamp);
  if (!found) {
    return stamp;
  }
  const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
  return `${Number(found[3])} ${months[Number(found[2]) - 1]} ${found[1]}, ${found[4]}${stamp.endsWith('Z') ? ' UTC' : ''}`;
}
