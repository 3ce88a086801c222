import { drawing, element } from "./svg.ts";
import { TOKENS } from "./tokens.ts";

/** The field signatures are drawn in. */
const WIDTH = 320;
const HEIGHT = 110;

/** A signature as it was drawn, from its strokes as the data of a path. */
export function drawnSignature(strokes: string, words: string): string {
  const path = { d: strokes, fill: "none", stroke: TOKENS.ink, "stroke-width": 2.5, "stroke-linejoin": "round" };
  return drawing(WIDTH, HEIGHT, words, words, element("path", path));
}
