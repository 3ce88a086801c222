import { all, is, NEVER, oneKind, ranked, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A fuse or single-pole device in the neutral, as in old two-pole boards. */
export const neutralFused = topic({
  id: "neutral-fused",
  title: "Fuse or single-pole device in the neutral",
  group: "boards",
  items: ["boards.single-pole"],
  facts: {
    "neutral-device": ranked({
      asks: "What stands in the neutral?",
      effort: "opened",
      values: {
        none: "nothing that can open stands in the neutral",
        linked: "a device that opens line and neutral together stands in the neutral",
        alone: "a fuse or single-pole device that can open alone stands in the neutral",
      },
    }),
    supply: oneKind({
      asks: "Between what conductors does the circuit lie?",
      effort: "measured",
      values: {
        "line-neutral": "the circuit lies between a line and an earthed neutral",
        "two-lines": "the circuit lies between two conductors that both want protecting",
      },
    }),
    used: yesNo({
      asks: "Is the circuit connected and in use?",
      effort: "glance",
      yes: "the circuit is connected",
      no: "the circuit is disconnected at the board",
      worse: "yes",
    }),
  },
  contested: {},
  paths: [
    {
      id: "looks-dead",
      hazard: "contact-with-live-parts",
      route: "the neutral opens alone, the equipment looks dead but is live, and somebody opens it",
      exists: all(is("neutral-device", "alone"), is("supply", "line-neutral"), yes("used")),
      layers: [
        oneEventAway("enclosure", "barrier-or-enclosure", "the enclosure of the equipment", ["416.2.1"]),
        {
          id: "neutral-whole",
          provision: "isolation",
          words: "a neutral that never opens without the line",
          gone: is("neutral-device", "alone"),
          sound: NEVER,
          regulations: ["132.14.2", "530.3.2"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(is("neutral-device", "alone"), is("supply", "line-neutral")),
      words: "a single-pole device stands in the neutral",
      regulations: ["132.14.1", "132.14.2"],
    },
  ],
  client: {
    C2: "An old fuse can make things look dead while they are still live. That could give a shock. Change it soon.",
    C3: "An old fuse of a bad kind is left in the box. It feeds nothing now. Take it out.",
    FI: "We could not find out how an old fuse is wired. It could be unsafe. It must be looked at soon.",
    none: "The fuses are in the right wires.",
  },
  remedies: [
    {
      words: "Replace the neutral fuse by a solid link and protect the line by a device that suits the circuit.",
      changes: { "neutral-device": "none" },
    },
    { words: "Take the circuit out of use and disconnect it.", changes: { used: "no" } },
    {
      words: "Replace the board by one with devices in the line, or devices that open both.",
      changes: { "neutral-device": "linked" },
    },
  ],
  examples: [
    {
      name: "fuses in line and neutral",
      facts: { "neutral-device": "alone", supply: "line-neutral", used: true },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: neutral fuse can blow alone and leave equipment live",
    },
    {
      name: "two-pole breaker that opens both",
      facts: { "neutral-device": "linked" },
      possible: ["none"],
      source: "regulation 530.3.2",
    },
    {
      name: "old board left, circuit disconnected",
      facts: { "neutral-device": "alone", supply: "line-neutral", used: false },
      possible: ["C3"],
      source: "trade practice: no route while disconnected",
    },
    {
      name: "supply to the board not traced",
      facts: { "neutral-device": "alone", used: true },
      possible: ["none", "C2"],
      missing: ["supply"],
      source: "union over what the conductors are",
    },
  ],
});
