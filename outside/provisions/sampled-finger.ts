/**
 * The jointed finger by brute force, written apart from the code it checks: a chain of three links in the plane through
 * the opening's edge and the live part, tried at every lean, depth and bend of a grid. All lengths in mm. The wall is a
 * thin line at depth 0 with a gap from `-gap` to 0; positive across is away from the gap, under the wall.
 */
export interface SampledPosture {
  /** Places of the end of the finger's skin, across and deep: the tip, and the side of the last two links. */
  readonly skin: readonly (readonly [across: number, deep: number])[];
}

const RADIUS = 6;
const LENGTHS = [20, 30, 30] as const;

interface Grid {
  readonly gap: number;
  /** Leans of the base away from square to the wall, degrees. */
  readonly leans: readonly number[];
  readonly step: number;
}

/** Every posture of the grid that no part of the wall stands in the way of. */
export function* sampledPostures({ gap, leans, step }: Grid): Generator<SampledPosture> {
  for (const lean of leans) {
    for (let first = 0; first <= 90; first += step) {
      for (let second = 0; second <= 90; second += step) {
        for (let inside = 6; inside <= 80; inside += 2) {
          for (const crossing of [0, 0.25, 0.5, 0.75, 1]) {
            const centre = centreLine(lean, first, second, inside, crossing, gap);
            if (centre === undefined || strikesWall(centre, gap)) continue;
            yield { skin: skinOf(centre) };
          }
        }
      }
    }
  }
}

type Point = readonly [across: number, deep: number];

const turned = (degrees: number): Point => [Math.sin((degrees * Math.PI) / 180), Math.cos((degrees * Math.PI) / 180)];

/** Corners of the centre line, from the stop face to the middle of the round tip; undefined where the gap is too tight. */
function centreLine(
  lean: number,
  first: number,
  second: number,
  inside: number,
  crossing: number,
  gap: number,
): readonly Point[] | undefined {
  const directions = [turned(lean), turned(lean + first), turned(lean + first + second)] as const;
  // The link that crosses the wall is the one `80 - inside` along from the stop face.
  let outside = 80 - inside;
  let link = 0;
  while (link < 2 && outside > (LENGTHS[link] as number)) outside -= LENGTHS[link++] as number;
  const along = directions[link] as Point;
  if (along[1] < 0.05) return undefined;
  const half = RADIUS / along[1];
  if (2 * half > gap) return undefined;
  const at = -gap + half + crossing * (gap - 2 * half);
  // Walk back from the crossing to the stop face, then forward.
  let corner: Point = [at - outside * along[0], -outside * along[1]];
  for (let i = link - 1; i >= 0; i--) {
    const [x, z] = directions[i] as Point;
    corner = [corner[0] - (LENGTHS[i] as number) * x, corner[1] - (LENGTHS[i] as number) * z];
  }
  const corners: Point[] = [corner];
  for (let i = 0; i < 3; i++) {
    const [x, z] = directions[i] as Point;
    const length = i === 2 ? 30 - RADIUS : (LENGTHS[i] as number);
    corner = [corner[0] + length * x, corner[1] + length * z];
    corners.push(corner);
  }
  return corners;
}

/** Whether the round body comes within its radius of either side of the wall. */
function strikesWall(corners: readonly Point[], gap: number): boolean {
  for (let i = 0; i + 1 < corners.length; i++) {
    const [a, b] = [corners[i] as Point, corners[i + 1] as Point];
    for (let t = 0; t <= 1; t += 1 / 16) {
      const x = a[0] + t * (b[0] - a[0]);
      const z = a[1] + t * (b[1] - a[1]);
      const fromEdge = Math.hypot(Math.max(0, -x), z);
      const fromOther = Math.hypot(Math.max(0, x + gap), z);
      if (Math.min(fromEdge, fromOther) < RADIUS - 0.02) return true;
    }
  }
  return false;
}

/** Points of the skin: round the tip, and along both sides of the last two links. */
function skinOf(corners: readonly Point[]): readonly Point[] {
  const skin: Point[] = [];
  const tip = corners[3] as Point;
  for (let angle = 0; angle < 360; angle += 15) {
    const [x, z] = turned(angle);
    skin.push([tip[0] + RADIUS * x, tip[1] + RADIUS * z]);
  }
  for (const i of [1, 2]) {
    const [a, b] = [corners[i] as Point, corners[i + 1] as Point];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const [x, z] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
    for (let t = 0; t <= length; t += 3) {
      skin.push([a[0] + t * x + RADIUS * z, a[1] + t * z - RADIUS * x]);
      skin.push([a[0] + t * x - RADIUS * z, a[1] + t * z + RADIUS * x]);
    }
  }
  return skin;
}
