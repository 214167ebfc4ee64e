// Signs of findings in space: always the same size, always readable, drawn as in the plan.
import { CanvasTexture, SRGBColorSpace, Sprite, SpriteMaterial, Vector3 } from 'three';
import { middle, normal } from './surface.js';

const PIXELS = 96;
const MOST = 400;
/** Signs within this of each other, metres, stand side by side, as parts of their size. */
const CLOSE = 0.2;
const BESIDE = 0.85;

/**
 * One sign for each that does not conform or is conceded, one for all of a plane that was not assessed. Those of the best
 * order only, where there are very many: `make` gives one more.
 */
export function signs(result, ink) {
  const faces = new Map();
  const face = (outcome, letters, chosen) => {
    const key = `${outcome} ${letters} ${chosen}`;
    if (!faces.has(key)) {
      faces.set(key, new SpriteMaterial({ map: drawn(outcome, letters, chosen, ink), depthTest: false, sizeAttenuation: false, transparent: true }));
    }
    return faces.get(key);
  };
  const spots = new Map();
  const make = (finding) => {
    const made = sign(finding, result.planes[finding.plane], (chosen) => face(finding.outcome, finding.sign, chosen));
    const spot = made.position.toArray().map((c) => Math.round(c / CLOSE)).join();
    made.center.x = 0.5 - BESIDE * (spots.get(spot) ?? 0);
    spots.set(spot, (spots.get(spot) ?? 0) + 1);
    return made;
  };
  const asked = new Set();
  const made = [];
  for (const finding of result.findings) {
    const open = finding.outcome === 'not assessed';
    if (!result.planes[finding.plane]?.hasShape || made.length >= MOST || (open && asked.has(finding.plane))) {
      continue;
    }
    if (open) {
      asked.add(finding.plane);
    }
    made.push(make(finding));
  }
  return { made, make };
}

function sign(finding, plane, face) {
  const sprite = new Sprite(face(false));
  sprite.position.copy(spot(finding, plane));
  sprite.renderOrder = 10;
  sprite.userData = { finding: finding.index, plane: plane.index, open: finding.outcome === 'not assessed', face };
  return sprite;
}

/** Where a finding is in space: its own place, else the middle of its plane. */
export function spot(finding, plane) {
  const at = finding.place ?? middle(plane);
  return new Vector3(...at).addScaledVector(normal(plane, at), 0.05);
}

function drawn(outcome, letters, chosen, ink) {
  const canvas = document.createElement('canvas');
  canvas.width = canvas.height = PIXELS;
  const pen = canvas.getContext('2d');
  const c = PIXELS / 2;
  pen.lineWidth = 5;
  pen.strokeStyle = ink('paper');
  pen.fillStyle = outcome === 'does not conform' ? ink('accent') : outcome === 'conceded' ? ink('ink') : ink('paper');
  pen.beginPath();
  if (outcome === 'does not conform') {
    [[c, 8], [PIXELS - 8, c], [c, PIXELS - 8], [8, c]].forEach(([x, y]) => pen.lineTo(x, y));
    pen.closePath();
  } else if (outcome === 'conceded') {
    pen.rect(18, 18, PIXELS - 36, PIXELS - 36);
  } else {
    pen.strokeStyle = ink('ink');
    pen.arc(c, c, 28, 0, 2 * Math.PI);
  }
  pen.fill();
  pen.stroke();
  if (chosen) {
    pen.lineWidth = 6;
    pen.strokeStyle = ink('accent');
    pen.beginPath();
    pen.arc(c, c, 44, 0, 2 * Math.PI);
    pen.stroke();
  }
  pen.fillStyle = outcome === 'not assessed' ? ink('ink') : ink('paper');
  pen.font = `bold ${letters.length > 2 ? 28 : 38}px Arial, "Liberation Sans", sans-serif`;
  pen.textAlign = 'center';
  pen.textBaseline = 'middle';
  pen.fillText(letters, c, c + 2);
  const texture = new CanvasTexture(canvas);
  texture.colorSpace = SRGBColorSpace;
  return texture;
}
