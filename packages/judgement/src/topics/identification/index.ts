import type { Topic } from "../topic.ts";
import { circuitChartMissing } from "./circuit-chart-missing.ts";
import { conductorColours } from "./conductor-colours.ts";
import { cpcUnsleeved } from "./cpc-unsleeved.ts";
import { noticeMissing } from "./notice-missing.ts";
import { wrongLabel } from "./wrong-label.ts";

export const IDENTIFICATION: readonly Topic[] = Object.freeze([
  circuitChartMissing,
  conductorColours,
  cpcUnsleeved,
  noticeMissing,
  wrongLabel,
]);
