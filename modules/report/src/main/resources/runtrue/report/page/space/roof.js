// What stands in space: planes, joints of sheets, falls, supports, edges.
import { BoxGeometry, BufferGeometry, Color, DoubleSide, Float32BufferAttribute, Group, InstancedMesh, LineBasicMaterial, LineSegments, Matrix4, Mesh, MeshLambertMaterial, Vector3 } from 'three';
import { LineMaterial } from './LineMaterial.js';
import { LineSegments2 } from './LineSegments2.js';
import { LineSegmentsGeometry } from './LineSegmentsGeometry.js';
import { at, middle, normal, points, triangles } from './surface.js';

/** As in the plan: colour, width, and dashes as parts of the roof's size. */
export const EDGES = {
  eave: ['water', 3.2],
  'box gutter': ['water', 5],
  'internal gutter': ['water', 5],
  gutter: ['water', 5],
  valley: ['water', 3.2, [4, 1.4]],
  ridge: ['ink', 4],
  hip: ['ink', 3, [7, 1.6]],
  head: ['ink', 3],
  'pitch change': ['ink', 2.2, [1, 1]],
  verge: ['side', 2.4],
  abutment: ['side', 4],
  step: ['ink', 3, [5, 1]],
};
const OTHER = ['grey', 2, [0.5, 1]];

/** Lifted off the plane so that lines are not swallowed by it, metres. */
const LIFT = 0.015;

/** Groups by name; each can be hidden. `ink` gives colours by name. */
export function roof(result, ink, size) {
  const planes = result.planes.filter((p) => p.hasShape);
  return {
    planes: surfaces(planes, ink),
    sheets: joints(planes, ink),
    falls: falls(planes, ink, size),
    supports: supports(planes, ink),
    edges: edges(result.edges, ink, Math.min(size, usual(result.edges) * 4)),
  };
}

/** Length of the middle one of all edges: what dashes go by, for a drop may be many small roofs far apart. */
function usual(list) {
  const lengths = list.map((e) => e.length).sort((a, b) => a - b);
  return lengths[lengths.length >> 1] ?? Infinity;
}

function surfaces(planes, ink) {
  const group = new Group();
  for (const plane of planes) {
    const shape = new BufferGeometry();
    shape.setAttribute('position', new Float32BufferAttribute(triangles(plane), 3));
    shape.computeVertexNormals();
    const skin = new MeshLambertMaterial({ color: ink('sheet'), side: DoubleSide, polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1 });
    const mesh = new Mesh(shape, skin);
    mesh.userData.plane = plane.index;
    group.add(mesh);
  }
  return group;
}

function lifted(plane, uv) {
  const p = at(plane, uv);
  const n = normal(plane, p);
  return [p[0] + n.x * LIFT, p[1] + n.y * LIFT, p[2] + n.z * LIFT];
}

/** Lines between sheets; along a curve as many pieces as it has stations. */
function joints(planes, ink) {
  const lines = [];
  for (const plane of planes) {
    for (let i = 0; i < plane.sheets.length; i += 4) {
      const [, u, low, high] = plane.sheets.slice(i, i + 4);
      const stops = [low, ...(plane.arc ?? []).filter((v) => v > low && v < high), high];
      for (let k = 1; k < stops.length; k++) {
        lines.push(...lifted(plane, [u, stops[k - 1]]), ...lifted(plane, [u, stops[k]]));
      }
    }
  }
  return thin(lines, ink('joint'));
}

/** An arrow down the fall from the middle of each plane that falls. */
function falls(planes, ink, size) {
  const lines = [];
  for (const plane of planes.filter((p) => p.pitch > 0.3 && !p.section)) {
    const from = new Vector3(...middle(plane));
    const down = new Vector3(...plane.up).negate();
    const side = new Vector3(...plane.across);
    const length = Math.min(size * 0.05, (plane.run || size) * 0.25);
    const up = new Vector3(...plane.normal).multiplyScalar(LIFT * 2);
    const start = from.clone().addScaledVector(down, -length / 2).add(up);
    const end = from.clone().addScaledVector(down, length / 2).add(up);
    const barb = (way) => end.clone().addScaledVector(down, -length * 0.25).addScaledVector(side, way * length * 0.12);
    [start, end, barb(1), end, barb(-1), end].forEach((p) => lines.push(p.x, p.y, p.z));
  }
  return wide(lines, ink('water'), 2.4);
}

function thin(lines, colour) {
  const shape = new BufferGeometry();
  shape.setAttribute('position', new Float32BufferAttribute(lines, 3));
  return new LineSegments(shape, new LineBasicMaterial({ color: colour }));
}

function wide(lines, colour, width, dashes, size) {
  const group = new Group();
  if (lines.length === 0) {
    return group;
  }
  const shape = new LineSegmentsGeometry();
  shape.setPositions(lines);
  const pen = new LineMaterial({ color: new Color(colour), linewidth: width, dashed: Boolean(dashes), polygonOffset: true, polygonOffsetFactor: -4, polygonOffsetUnits: -40 });
  if (dashes) {
    pen.dashSize = (dashes[0] * size) / 250;
    pen.gapSize = (dashes[1] * size) / 250;
  }
  const drawn = new LineSegments2(shape, pen);
  drawn.computeLineDistances();
  group.add(drawn);
  return group;
}

function edges(list, ink, size) {
  const group = new Group();
  for (const kind of new Set(list.map((e) => e.kind))) {
    const [colour, width, dashes] = EDGES[kind] ?? OTHER;
    const lines = list.filter((e) => e.kind === kind).flatMap((e) => e.ends);
    group.add(wide(lines, ink(colour), width, dashes, size));
  }
  return group;
}

/** Members as bars of their own width and depth. `userData.pieces` tells which is which. */
function supports(planes, ink) {
  const bars = planes.flatMap((plane) => plane.supports.flatMap((line) => line.pieces.map((piece) => [plane, piece])));
  const mesh = new InstancedMesh(new BoxGeometry(1, 1, 1), new MeshLambertMaterial({ color: 0xffffff }), bars.length);
  bars.forEach(([plane, piece], i) => mesh.setMatrixAt(i, bar(plane, piece)));
  bars.forEach((_, i) => mesh.setColorAt(i, new Color(ink('steel'))));
  mesh.userData.pieces = bars.map(([, piece]) => piece.globalId);
  return mesh;
}

function bar(plane, piece) {
  const [a, b] = points(piece.ends).map((p) => new Vector3(...p));
  const [contact, flange, depth] = piece.size;
  const along = b.clone().sub(a);
  const length = along.length() || 0.001;
  along.normalize();
  const out = normal(plane, a.clone().add(b).multiplyScalar(0.5).toArray());
  const side = out.clone().cross(along).normalize();
  const high = along.clone().cross(side);
  const centre = a.add(b).multiplyScalar(0.5).addScaledVector(high, contact - Math.max(depth, 0.02) / 2);
  return new Matrix4().makeBasis(along.multiplyScalar(length), side.multiplyScalar(Math.max(flange, 0.02)), high.multiplyScalar(Math.max(depth, 0.02))).setPosition(centre);
}
