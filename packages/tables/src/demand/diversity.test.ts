import { expect, test } from "vitest";
import {
  type Allowance,
  DIVERSITY,
  DIVERSITY_LOADS,
  DIVERSITY_PREMISES,
  DIVERSITY_SOURCE,
  type DiversityLoad,
} from "./index.ts";

/**
 * The handbook's allowances as copied out: households, shops and offices, hotels. A lone figure is a part of the sum in
 * percent; X/Y/Z the largest, the second and every other; "10A+50" ten amperes and a part of the rest, "+5A" for a socket.
 */
const COPIED: Readonly<Record<DiversityLoad, string>> = {
  lighting: "66 90 75",
  "heating-and-power": "10A+50 100/75/75 100/80/60",
  cooking: "10A+30+5A 100/80/60 100/80/60",
  motors: "- 100/80/60 100/50/50",
  "instantaneous-water-heaters": "100/100/25 100/100/25 100/100/25",
  "thermostatic-water-heaters": "100 100 100",
  "standard-circuits": "100/40/40 100/50/50 100/50/50",
  "other-sockets": "100/40/40 100/75/75 100/75/40",
};

function written(allowance: Allowance | null): string {
  const percent = (part: number) => String(Math.round(part * 100));
  if (allowance === null) return "-";
  if (allowance.rule === "whole") return percent(allowance.part);
  if (allowance.rule === "ranked") return [allowance.largest, allowance.second, allowance.rest].map(percent).join("/");
  const socket = allowance.socket > 0 ? `+${allowance.socket}A` : "";
  return `${allowance.first}A+${percent(allowance.rest)}${socket}`;
}

test.each(DIVERSITY_LOADS)("%s: allowances are the copied ones", (load) => {
  const row = DIVERSITY_PREMISES.map((premises) => written(DIVERSITY[load][premises]));
  expect(row.join(" ")).toBe(COPIED[load]);
});

test("allowances say that they are no requirement", () => {
  expect(DIVERSITY_SOURCE).toMatchObject({ basis: "published", doubt: "allowances for judgement, no requirement" });
});
