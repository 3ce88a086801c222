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
    "few-circuits": yesNo({
      asks: "Are the circuits so few and plain that the marks on the devices say all a chart would?",
      effort: "glance",
      yes: "the circuits are so few and plain that marks on the devices say it all",
      no: "the circuits are too many for marks on the devices to say it all",
      worse: "no",
    }),
  },
  contested: {},
  paths: [],
  departures: [
    {
      when: any(no("marked"), all(is("chart", "out-of-date", "missing"), no("few-circuits"))),
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
      facts: { chart: "missing", marked: false },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: labels missing",
    },
    {
      name: "devices marked, no chart at a board of fourteen ways",
      facts: { chart: "missing", marked: true, "few-circuits": false },
      possible: ["C3"],
      source: "regulation: a chart as well as marks",
    },
    {
      name: "two marked ways in a garage, no chart",
      facts: { chart: "missing", marked: true, "few-circuits": true },
      possible: ["none"],
      source: "trade practice: the marks say it all",
    },
    {
      name: "chart and marks in order",
      facts: { chart: "complete", marked: true },
      possible: ["none"],
      classification: "none",
      source: "regulation",
    },
    {
      name: "chart not looked for",
      facts: { marked: true, "few-circuits": false },
      possible: ["none", "C3"],
      missing: ["chart"],
      source: "union over the chart",
    },
  ],
});
