import { all, any, is, no, ranked, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** No chart of the circuits at the board, or devices that are not marked. */
export const circuitChartMissing = topic({
  id: "circuit-chart-missing",
  title: "Circuit chart or marking missing",
  group: "identification",
  items: ["notices.diagram", "boards.labels", "circuits.identification"],
  facts: {
    chart: ranked({
      asks: "Is there a chart, diagram or schedule of the circuits at the board?",
      effort: "glance",
      values: {
        complete: "a chart at the board shows every circuit as it is",
        "out-of-date": "the chart at the board is out of date or leaves circuits out",
        missing: "there is no chart at the board",
      },
    }),
    marked: yesNo({
      asks: "Is each device marked with what it feeds?",
      effort: "glance",
      yes: "each device is marked with what it feeds",
      no: "devices are not marked with what they feed",
      worse: "no",
    }),
    "one-circuit": yesNo({
      asks: "Does the board feed only one circuit, whose load stands beside it?",
      effort: "glance",
      yes: "the board feeds one circuit whose load stands beside it",
      no: "the board feeds circuits that cannot be told apart by sight",
      worse: "no",
    }),
  },
  contested: {},
  paths: [],
  departures: [
    {
      when: all(no("one-circuit"), any(is("chart", "out-of-date", "missing"), no("marked"))),
      words: "nothing tells for certain which device feeds what",
      regulations: ["514.8.1", "514.9.1"],
    },
  ],
  client: {
    C3: "The fuse box has no full list of what each switch is for. It is not a danger. A list should be put up.",
    none: "The fuse box shows what each switch is for.",
  },
  remedies: [
    {
      words: "Trace the circuits, mark each device and leave a chart at the board.",
      changes: { chart: "complete", marked: "yes" },
    },
  ],
  examples: [
    {
      name: "chart missing, breakers unmarked",
      facts: { chart: "missing", marked: false, "one-circuit": false },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: labels missing",
    },
    {
      name: "devices marked, no chart",
      facts: { chart: "missing", marked: true, "one-circuit": false },
      possible: ["C3"],
      source: "regulation: both are asked for",
    },
    {
      name: "small switch box for one shower beside it",
      facts: { chart: "missing", marked: false, "one-circuit": true },
      possible: ["none"],
      source: "regulation: no possibility of confusion",
    },
    {
      name: "chart and marking in order",
      facts: { chart: "complete", marked: true },
      possible: ["none"],
      classification: "none",
      source: "regulation",
    },
    {
      name: "chart not looked for",
      facts: { marked: true, "one-circuit": false },
      possible: ["none", "C3"],
      missing: ["chart"],
      source: "union over the chart",
    },
  ],
});
