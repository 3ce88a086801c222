import type { Classification } from "@good-grounds/core";
import { drawing, line, rect } from "./svg.ts";
import { TOKENS } from "./tokens.ts";

const WIDTH = 22;
const HEIGHT = 14;

/**
 * The mark of a classification, by weight and not by hue: C1 three solid bars, C2 two, C3 one, FI an open hatched bar,
 * none a thin rule. The letters always stand beside it in the text.
 */
export function classificationMark(classification: Classification): string {
  const bars = classification === "C1" ? 3 : classification === "C2" ? 2 : classification === "C3" ? 1 : 0;
  const solid = Array.from({ length: bars }, (_, i) => rect(1 + i * 7, 1, 5, HEIGHT - 2, { fill: TOKENS.ink })).join(
    "",
  );
  if (classification === "FI") {
    const hatch = [3, 7, 11, 15].map((x) => line(x, HEIGHT - 2, x + 4, 2, { "stroke-width": 0.8 })).join("");
    return drawing(
      WIDTH,
      HEIGHT,
      "FI",
      "open hatched bar",
      rect(1, 1, 19, HEIGHT - 2, { fill: "none", stroke: TOKENS.ink }) + hatch,
    );
  }
  if (classification === "none")
    return drawing(WIDTH, HEIGHT, "none", "thin rule", line(1, HEIGHT / 2, 20, HEIGHT / 2));
  return drawing(WIDTH, HEIGHT, classification, `${bars} solid ${bars === 1 ? "bar" : "bars"}`, solid);
}
