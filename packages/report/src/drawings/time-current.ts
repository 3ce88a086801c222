import type { CurvesOfCircuit } from "../input.ts";
import { drawing, element, line, rect, text } from "./svg.ts";
import { TOKENS } from "./tokens.ts";

const WIDTH = 340;
const HEIGHT = 240;
const LEFT = 44;
const BOTTOM = 30;
const TOP = 10;
const RIGHT = 12;

/** Decades of the axes: 1 A to 100 kA, 10 ms to 10,000 s. */
const AMPERES: readonly [number, number] = [0, 5];
const SECONDS: readonly [number, number] = [-2, 4];

const xOf = (amperes: number) =>
  LEFT +
  ((Math.log10(Math.max(1, Math.min(1e5, amperes))) - AMPERES[0]) / (AMPERES[1] - AMPERES[0])) * (WIDTH - LEFT - RIGHT);
const yOf = (seconds: number) =>
  HEIGHT -
  BOTTOM -
  ((Math.log10(Math.max(0.01, Math.min(1e4, seconds))) - SECONDS[0]) / (SECONDS[1] - SECONDS[0])) *
    (HEIGHT - BOTTOM - TOP);

/**
 * Time-current drawing on logarithmic axes: the device between its known points, joined straight; the limit of the
 * conductor, I²t = k²S², from 0.1 s to 5 s where it holds; the fault current as a band; the permitted time.
 */
export function timeCurrentCurve(curves: CurvesOfCircuit): string {
  const { device, points, withstand, conductor, faultCurrent, permittedTime } = curves;
  const parts = [grid()];
  if (faultCurrent !== null) {
    const [low, high] = faultCurrent;
    const from = xOf(low);
    parts.push(
      rect(from, TOP, Math.max(1.5, xOf(high) - from), HEIGHT - BOTTOM - TOP, {
        fill: TOKENS.copper,
        "fill-opacity": 0.16,
      }),
    );
    parts.push(
      text(Math.min(from + 3, WIDTH - 78), TOP + 10, "fault current", {
        "font-size": TOKENS.small,
        fill: TOKENS.copper,
      }),
    );
  }
  if (points.length > 1) {
    const low = points.map((point) => `${xOf(point.low)} ${yOf(point.seconds)}`);
    const high = [...points].reverse().map((point) => `${xOf(point.high)} ${yOf(point.seconds)}`);
    parts.push(
      element("path", {
        d: `M${[...low, ...high].join("L")}Z`,
        fill: TOKENS.ink,
        "fill-opacity": 0.14,
        stroke: TOKENS.ink,
        "stroke-width": 1.1,
      }),
    );
  }
  for (const point of points) {
    parts.push(element("circle", { cx: xOf(point.high), cy: yOf(point.seconds), r: 2, fill: TOKENS.ink }));
  }
  if (withstand !== null && withstand > 0) {
    const ends = [5, 0.1].map((seconds) => [xOf(Math.sqrt(withstand / seconds)), yOf(seconds)] as const);
    const [[x1, y1] = [0, 0], [x2, y2] = [0, 0]] = ends;
    parts.push(line(x1, y1, x2, y2, { stroke: TOKENS.copper, "stroke-width": 1.8 }));
    parts.push(
      text(Math.min(x1 + 4, WIDTH - 110), y1 - 4, conductor, { "font-size": TOKENS.small, fill: TOKENS.copper }),
    );
  }
  if (permittedTime !== null) {
    const y = yOf(permittedTime);
    parts.push(line(LEFT, y, WIDTH - RIGHT, y, { "stroke-dasharray": "5 3", "stroke-width": 0.9 }));
    parts.push(text(LEFT + 4, y - 3, `permitted ${permittedTime} s`, { "font-size": TOKENS.small }));
  }
  parts.push(text(WIDTH - RIGHT, HEIGHT - BOTTOM - 4, device, { "font-size": TOKENS.small, "text-anchor": "end" }));
  const description = [
    `${device}: ${points.map(({ seconds, low, high }) => `${seconds} s at ${Math.round(low)} to ${Math.round(high)} A`).join("; ")}`,
    withstand === null ? "conductor limit not known" : `${conductor} withstands ${Math.round(withstand)} A²s`,
    faultCurrent === null
      ? "fault current not known"
      : `fault current ${Math.round(faultCurrent[0])} to ${Math.round(faultCurrent[1])} A`,
    permittedTime === null ? "permitted time not known" : `permitted time ${permittedTime} s`,
  ].join(". ");
  return drawing(WIDTH, HEIGHT, `Time-current drawing, ${device}`, description, parts.join(""));
}

function grid(): string {
  const parts: string[] = [];
  for (let decade = AMPERES[0]; decade <= AMPERES[1]; decade++) {
    const x = xOf(10 ** decade);
    parts.push(line(x, TOP, x, HEIGHT - BOTTOM, { stroke: TOKENS.rule, "stroke-width": 0.6 }));
    const label = decade >= 3 ? `${10 ** (decade - 3)} kA` : `${10 ** decade} A`;
    parts.push(
      text(x, HEIGHT - BOTTOM + 13, label, {
        "font-size": TOKENS.small,
        "text-anchor": decade === AMPERES[1] ? "end" : "middle",
      }),
    );
  }
  for (let decade = SECONDS[0]; decade <= SECONDS[1]; decade++) {
    const y = yOf(10 ** decade);
    parts.push(line(LEFT, y, WIDTH - RIGHT, y, { stroke: TOKENS.rule, "stroke-width": 0.6 }));
    parts.push(text(LEFT - 5, y + 3, `${10 ** decade} s`, { "font-size": TOKENS.small, "text-anchor": "end" }));
  }
  return parts.join("");
}
