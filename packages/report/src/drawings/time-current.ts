import type { CurvesOfCircuit } from "../input.ts";
import { drawing, element, fitted, line, rect, text } from "./svg.ts";
import { TOKENS } from "./tokens.ts";

/** Two stand side by side on a page with letters that can be read there. */
const WIDTH = 288;
const HEIGHT = 270;
const LEFT = 44;
/** Below the drawing: the figures of the axis, then the key. */
const BOTTOM = 80;
const TOP = 10;
const RIGHT = 12;
const KEY_ROW = 13;
const KEY_SIGN = 20;

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
 * conductor, I²t = k²S², from 0.1 s to 5 s where it holds; the fault current as a band; the permitted time. What is what
 * stands in a key below, where no label can lie on a line.
 */
export function timeCurrentCurve(curves: CurvesOfCircuit): string {
  const { device, points, withstand, conductor, faultCurrent, permittedTime } = curves;
  const parts = [
    grid(),
    faultCurrent === null ? "" : faultBand(faultCurrent),
    deviceBand(points),
    withstand === null || withstand <= 0 ? "" : slope(withstand),
    permittedTime === null ? "" : across(yOf(permittedTime), LEFT, WIDTH - RIGHT),
    key(curves),
  ];
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

const BAND_FILL = { fill: TOKENS.copper, "fill-opacity": 0.16 };
/** Edges that stay where a printer leaves the wash of the band out. */
const BAND_EDGE = { stroke: TOKENS.copper, "stroke-width": 0.7, "stroke-dasharray": "1.5 2" };
const DEVICE_FILL = { fill: TOKENS.ink, "fill-opacity": 0.14, stroke: TOKENS.ink, "stroke-width": 1.1 };
const SLOPE_STROKE = { stroke: TOKENS.copper, "stroke-width": 1.8 };

function faultBand([low, high]: readonly [low: number, high: number]): string {
  // A band too narrow to be seen keeps a width, inside the drawing.
  const from = Math.min(xOf(low), WIDTH - RIGHT - 1.5);
  const to = Math.max(from + 1.5, xOf(high));
  const edge = (x: number) => line(x, TOP, x, HEIGHT - BOTTOM, BAND_EDGE);
  return rect(from, TOP, to - from, HEIGHT - BOTTOM - TOP, BAND_FILL) + edge(from) + edge(to);
}

function deviceBand(points: CurvesOfCircuit["points"]): string {
  const low = points.map((point) => `${xOf(point.low)} ${yOf(point.seconds)}`);
  const high = [...points].reverse().map((point) => `${xOf(point.high)} ${yOf(point.seconds)}`);
  const band = points.length > 1 ? element("path", { d: `M${[...low, ...high].join("L")}Z`, ...DEVICE_FILL }) : "";
  return (
    band +
    points
      .map((point) => element("circle", { cx: xOf(point.high), cy: yOf(point.seconds), r: 2, fill: TOKENS.ink }))
      .join("")
  );
}

/** The line of equal energy on which the conductor reaches its final temperature. */
function slope(withstand: number): string {
  const at = (seconds: number) => [xOf(Math.sqrt(withstand / seconds)), yOf(seconds)] as const;
  return line(...at(5), ...at(0.1), SLOPE_STROKE);
}

function across(y: number, from: number, to: number): string {
  return line(from, y, to, y, { "stroke-dasharray": "5 3", "stroke-width": 0.9 });
}

/** What the drawing shows, each sign with its words; what is not known is not in it. */
function key({ device, points, withstand, conductor, faultCurrent, permittedTime }: CurvesOfCircuit): string {
  const entries: readonly (readonly [shown: boolean, words: string, sign: (x: number, y: number) => string])[] = [
    [points.length > 0, device, (x, y) => rect(x, y - 4, KEY_SIGN - 5, 8, DEVICE_FILL)],
    [withstand !== null, conductor, (x, y) => line(x, y - 4, x + KEY_SIGN - 5, y + 4, SLOPE_STROKE)],
    [
      faultCurrent !== null,
      "prospective fault current, a band",
      (x, y) =>
        rect(x, y - 4, KEY_SIGN - 5, 8, BAND_FILL) +
        line(x, y - 4, x, y + 4, BAND_EDGE) +
        line(x + KEY_SIGN - 5, y - 4, x + KEY_SIGN - 5, y + 4, BAND_EDGE),
    ],
    [
      permittedTime !== null,
      `permitted disconnection time ${permittedTime} s`,
      (x, y) => across(y, x, x + KEY_SIGN - 5),
    ],
  ];
  return entries
    .filter(([shown]) => shown)
    .map(([, words, sign], i) => {
      const x = LEFT;
      const y = HEIGHT - BOTTOM + 26 + KEY_ROW * i;
      const label = fitted(words, WIDTH - RIGHT - LEFT - KEY_SIGN, TOKENS.small);
      return sign(x, y) + text(x + KEY_SIGN, y + 3, label, { "font-size": TOKENS.small });
    })
    .join("");
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
