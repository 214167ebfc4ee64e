// The result that the page carries, with what is looked up in it often.

export function read() {
  const result = JSON.parse(document.querySelector('script[data-block="result"]').textContent);
  result.findings.forEach((finding, index) => {
    finding.index = index;
    finding.text = [finding.id, finding.title, finding.message, finding.subject, finding.planeName, finding.storey, finding.grid]
      .concat(finding.elements.flatMap((e) => [e.name, e.globalId]))
      .join('\n')
      .toLowerCase();
  });
  result.planes.forEach((plane, index) => {
    plane.index = index;
    plane.findings = [];
    plane.hasShape = plane.outline.length >= 9;
  });
  result.findings.filter((f) => f.plane >= 0).forEach((f) => result.planes[f.plane].findings.push(f));
  return result;
}

/** Values that occur, each once, in order. */
export function distinct(values) {
  return [...new Set(values)].filter(Boolean).sort((a, b) => a.localeCompare(b, 'en', { numeric: true }));
}

/** Items that share a key, in the order of the first of each. */
export function grouped(items, key) {
  const groups = new Map();
  for (const item of items) {
    const name = key(item);
    groups.has(name) ? groups.get(name).push(item) : groups.set(name, [item]);
  }
  return [...groups.values()];
}

/** By how much a limit is missed, as a part of it; 0 when it is kept or not known. */
export function missedBy(finding) {
  if (!finding.margin || !finding.limit || finding.margin[0] >= 0) {
    return 0;
  }
  return finding.limit[0] === 0 ? 1 : -finding.margin[0] / Math.abs(finding.limit[0]);
}

/** Planes whose findings have an outcome that a person acts on: the first of the list that any has. */
export function outcomeOf(plane) {
  const found = new Set(plane.findings.map((f) => f.outcome));
  return ['does not conform', 'not assessed', 'conceded'].find((o) => found.has(o)) ?? (plane.conforms ? 'conforms' : 'not assessed');
}
