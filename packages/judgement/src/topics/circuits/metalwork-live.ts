import { ALWAYS, all, amount, any, atLeast, held, NEVER, no, says, unsure, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** Metal that people touch and that reads a voltage to earth: a fault now, or a voltage that collapses under load. */
export const metalworkLive = topic({
  id: "metalwork-live",
  title: "Metal that reads a voltage to earth",
  group: "circuits",
  items: ["circuits.cpc", "circuits.insulation", "accessories.connections"],
  facts: {
    voltage: amount({
      asks: "What does the metal read to a proved earth, with the circuit on?",
      name: "voltage of the metal to earth",
      effort: "measured",
      unit: "volt",
      worse: "higher",
    }),
    "holds-under-load": yesNo({
      asks: "Does the voltage hold when a low-impedance instrument loads it?",
      effort: "measured",
      yes: "the voltage holds under load",
      no: "the voltage collapses under load",
      worse: "yes",
    }),
    earthed: yesNo({
      asks: "Is the metal connected to the means of earthing, shown by reading?",
      effort: "measured",
      yes: "the metal reads continuous to the main earthing terminal",
      no: "the metal is not connected to earth",
      worse: "no",
    }),
    "made-dead": yesNo({
      asks: "Is the circuit isolated, locked off and marked now?",
      effort: "glance",
      yes: "the circuit is isolated, locked off and marked",
      no: "the circuit is in service",
      worse: "no",
    }),
  },
  contested: {
    "left-dead": {
      question: "The circuit was locked off during the visit. Is the danger classified as found or as left?",
      positions: {
        "as-found": {
          words: "the danger is classified as it was found",
          because: "a lock on a breaker is no repair, and the next person may take it off",
        },
        "as-left": {
          words: "what is locked off is classified as left",
          because: "metal that is dead cannot give a shock until somebody undoes the isolation",
        },
      },
    },
  },
  paths: [
    {
      id: "touch-metal",
      hazard: "shock-under-fault",
      route: "somebody touches the metal and something earthed",
      exists: ALWAYS,
      layers: [
        {
          id: "basic",
          provision: "insulation",
          words: "insulation between live parts and the metal",
          // Near the full line voltage a reading counts as a fault even where a load brings it down: a fault of some
          // thousands of ohms would do the same, and it kills.
          gone: any(atLeast("voltage", "180 V"), all(atLeast("voltage", "50 V"), yes("holds-under-load"))),
          sound: NEVER,
          regulations: ["416.1", "411.3.1.1"],
        },
        {
          id: "disconnection",
          provision: "fault-protection",
          words: "earthing of the metal and disconnection of the supply",
          gone: any(
            no("earthed"),
            atLeast("voltage", "180 V"),
            all(atLeast("voltage", "50 V"), yes("holds-under-load")),
          ),
          sound: NEVER,
          regulations: ["411.3.1.1", "411.3.2"],
        },
        {
          id: "isolated",
          provision: "isolation",
          words: "isolation that was locked and marked during the visit",
          gone: any(no("made-dead"), held("left-dead", "as-found")),
          sound: NEVER,
          regulations: ["462.2"],
        },
      ],
    },
  ],
  departures: [
    { when: no("earthed"), words: "metal that needs earthing is not earthed", regulations: ["411.3.1.1"] },
    {
      when: any(atLeast("voltage", "180 V"), all(atLeast("voltage", "50 V"), yes("holds-under-load"))),
      words: "metal that should never be live carries a voltage",
      regulations: ["131.2.2", "411.3.1.1"],
    },
  ],
  client: {
    C1: [
      says(
        "Metal that people touch is live. It can kill. The power there must stay off until it is mended.",
        no("made-dead"),
      ),
      says(
        "Metal that people touch was live. The power there is now off and locked. It must stay off until it is mended.",
        yes("made-dead"),
      ),
    ],
    C2: [
      says(
        "Metal that people touch was live. The power there is now off and locked. It must be mended before use.",
        all(
          yes("made-dead"),
          any(atLeast("voltage", "180 V"), all(atLeast("voltage", "50 V"), yes("holds-under-load"))),
        ),
      ),
      says(
        "Metal that people touch is not earthed. It could give a shock. It must be mended before use.",
        no("earthed"),
      ),
    ],
    C3: "Metal is not earthed. The part is locked off, so it is not a danger now. Mend it before it is used again.",
    FI: unsure(
      "We could not find out if metal that people touch is safe. It may give a shock. It must be looked at soon.",
      ["voltage", "holds-under-load", "earthed", "made-dead"],
    ),
    none: "The metal is earthed, and the voltage found on it is low.",
  },
  remedies: [
    {
      words: "Isolate at once, find the fault to the metal, mend it, restore the earth and test before use.",
      changes: { "holds-under-load": "no", earthed: "yes" },
    },
    {
      words: "Where the voltage is only induced, connect the metal to the protective conductor and measure again.",
      changes: { "holds-under-load": "no", earthed: "yes" },
    },
  ],
  examples: [
    {
      name: "switch plate at 228 V, circuit on",
      facts: { voltage: "228 V", "made-dead": false },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: metal is live because of a fault now",
    },
    {
      name: "tap at 70 V that holds under load",
      facts: { voltage: "70 V", "holds-under-load": true, "made-dead": false },
      possible: ["C1"],
      source: "trade practice: above 50 V a.c. and able to drive current",
    },
    {
      name: "plate at 90 V that collapses, no earth",
      facts: { voltage: "90 V", "holds-under-load": false, earthed: false },
      possible: ["C2"],
      source: "trade practice: induced voltage on unearthed metal, fault protection absent",
    },
    {
      name: "locked off before leaving, classified as found",
      facts: { voltage: "228 V", "made-dead": true },
      possible: ["C1"],
      source: "trade practice: classified as found",
    },
    {
      name: "locked off before leaving, classified as left",
      facts: { voltage: "228 V", earthed: false, "made-dead": true },
      positions: { "left-dead": "as-left" },
      possible: ["C2"],
      source: "trade discussion: made safe during the visit",
    },
    {
      name: "60 V, not loaded",
      facts: { voltage: "60 V", earthed: true, "made-dead": false },
      possible: ["none", "C1"],
      missing: ["holds-under-load"],
      source: "union over what a loaded reading would show",
    },
  ],
});
