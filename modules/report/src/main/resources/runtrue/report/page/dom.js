// Makes elements. Texts become text nodes and nothing else: whatever a model says is shown, never run.

/**
 * An element: `el('p.note', {id: 'x'}, 'words', child)`. Attributes come from the program, never from a result; those that
 * are false, null or undefined are left out; functions listen to the event they are named for.
 */
export function el(tag, attributes = {}, ...children) {
  const [name, ...classes] = tag.split('.');
  const made = document.createElement(name);
  made.classList.add(...classes);
  return filled(made, attributes, children);
}

/** The same for a drawing. */
export function svg(tag, attributes = {}, ...children) {
  return filled(document.createElementNS('http://www.w3.org/2000/svg', tag), attributes, children);
}

function filled(made, attributes, children) {
  for (const [key, value] of Object.entries(attributes)) {
    if (typeof value === 'function') {
      made.addEventListener(key, value);
    } else if (value === true) {
      made.setAttribute(key, '');
    } else if (value !== false && value !== null && value !== undefined) {
      made.setAttribute(key, value);
    }
  }
  made.append(...children.flat().filter((c) => c !== null && c !== undefined && c !== ''));
  return made;
}

/** The place that the template keeps for a part of the page. */
export function part(name) {
  return document.querySelector(`[data-part="${name}"]`);
}

/** Names and values, one under the other; pairs without a value are left out. */
export function pairs(list, tag = 'dl.pairs') {
  const shown = list.filter(([, value]) => value !== '' && value !== null && value !== undefined);
  return el(tag, {}, shown.map(([name, value]) => el('div', {}, el('dt', {}, name), el('dd', {}, value))));
}

/** Whether movement is wanted. */
export function moves() {
  return !window.matchMedia('(prefers-reduced-motion: reduce)').matches;
}

/** Runs `step(share)` with the share going from 0 to 1, gently at both ends; a later run with the same `holder` ends this. */
export function glide(holder, step, milliseconds = 450) {
  cancelAnimationFrame(holder.frame);
  if (!moves()) {
    step(1);
    return;
  }
  const start = performance.now();
  const next = (now) => {
    const share = Math.max(0, Math.min(1, (now - start) / milliseconds));
    step(share * share * (3 - 2 * share));
    if (share < 1) {
      holder.frame = requestAnimationFrame(next);
    }
  };
  holder.frame = requestAnimationFrame(next);
}
