// Planes as triangles in space: flat ones by their own axes, curved ones strip by strip along the arc.
import { ShapeUtils, Vector2, Vector3 } from 'three';

const dot = (a, b) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** Points of a flat list of x, y, z. */
export function points(flat) {
  return Array.from({ length: flat.length / 3 }, (_, i) => flat.slice(3 * i, 3 * i + 3));
}

/** Corners of triangles, three points each, in one flat list. */
export function triangles(plane) {
  const rings = [plane.outline, ...plane.holes].map((ring) => points(ring).map((p) => place(plane, p)));
  if (!plane.section) {
    return filled(rings, (uv) => at(plane, uv));
  }
  const made = [];
  for (let i = 1; i < plane.arc.length; i++) {
    const strip = rings.map((r) => between(r, plane.arc[i - 1], plane.arc[i])).filter((r) => r.length > 2);
    if (strip.length) {
      made.push(...filled(strip, (uv) => at(plane, uv)));
    }
  }
  return made;
}

function filled(rings, back) {
  const [outer, ...holes] = rings.map((ring) => ring.map(([u, v]) => new Vector2(u, v)));
  if (outer.length < 3) {
    return [];
  }
  if (ShapeUtils.isClockWise(outer)) {
    outer.reverse();
  }
  holes.filter((h) => !ShapeUtils.isClockWise(h)).forEach((h) => h.reverse());
  const corners = [outer, ...holes].flat();
  return ShapeUtils.triangulateShape(outer, holes).flatMap((t) => t.flatMap((i) => back([corners[i].x, corners[i].y])));
}

/** The part of a ring between two places along the arc. */
function between(ring, from, to) {
  return half(half(ring, 1, from), -1, -to);
}

function half(ring, way, least) {
  const kept = [];
  ring.forEach((a, i) => {
    const b = ring[(i + 1) % ring.length];
    const da = way * a[1] - least;
    const db = way * b[1] - least;
    if (da >= 0) {
      kept.push(a);
    }
    if (da >= 0 !== db >= 0) {
      const share = da / (da - db);
      kept.push([a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share]);
    }
  });
  return kept;
}

/** A point's place in the plane: across the fall and up it, along the arc where the plane is curved. */
export function place(plane, point) {
  if (!plane.section) {
    const from = point.map((c, i) => c - plane.at[i]);
    return [dot(from, plane.across), dot(from, plane.up)];
  }
  const stations = points(plane.section);
  let best = { off: Infinity, v: 0, u: 0 };
  for (let i = 1; i < stations.length; i++) {
    const a = stations[i - 1];
    const way = stations[i].map((c, k) => c - a[k]);
    const from = point.map((c, k) => c - a[k]);
    const u = dot(from, plane.across);
    const flat = from.map((c, k) => c - u * plane.across[k]);
    const share = Math.max(0, Math.min(1, dot(flat, way) / dot(way, way)));
    const off = Math.hypot(...flat.map((c, k) => c - share * way[k]));
    if (off < best.off) {
      best = { off, u, v: plane.arc[i - 1] + share * (plane.arc[i] - plane.arc[i - 1]) };
    }
  }
  return [best.u, best.v];
}

/** The point at a place in the plane. */
export function at(plane, [u, v]) {
  if (!plane.section) {
    return plane.at.map((c, i) => c + u * plane.across[i] + v * plane.up[i]);
  }
  let i = 1;
  while (i < plane.arc.length - 1 && plane.arc[i] < v) {
    i++;
  }
  const share = (v - plane.arc[i - 1]) / (plane.arc[i] - plane.arc[i - 1]);
  const [a, b] = [plane.section.slice(3 * i - 3, 3 * i), plane.section.slice(3 * i, 3 * i + 3)];
  return a.map((c, k) => c + (b[k] - c) * share + u * plane.across[k]);
}

/** Outward unit vector at a place in the plane. */
export function normal(plane, point) {
  if (!plane.section) {
    return new Vector3(...plane.normal);
  }
  const [u, v] = place(plane, point);
  const step = (plane.arc.at(-1) - plane.arc[0]) / 100;
  const [low, high] = [at(plane, [u, v - step]), at(plane, [u, v + step])];
  return new Vector3(...plane.across).cross(new Vector3(...high).sub(new Vector3(...low))).normalize();
}

/** The middle of a plane's outline, on the plane. */
export function middle(plane) {
  const ring = points(plane.outline).map((p) => place(plane, p));
  const range = (k) => (Math.min(...ring.map((p) => p[k])) + Math.max(...ring.map((p) => p[k]))) / 2;
  return at(plane, [range(0), range(1)]);
}
