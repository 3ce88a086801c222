import { ALWAYS, is, NEVER, no, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** The voltage at the origin is outside the statutory limits, or swings with the load. */
export const supplyVoltageOutOfLimits = topic({
  id: "supply-voltage-out-of-limits",
  title: "Supply voltage outside its limits",
  group: "intake",
  items: ["intake.meter", "intake.cut-out"],
  facts: {
    within: yesNo({
      asks: "Is the voltage at the origin between 216.2 V and 253.0 V to neutral?",
      effort: "measured",
      yes: "the voltage at the origin is within the statutory limits",
      no: "the voltage at the origin is outside the statutory limits",
      worse: "no",
      worked: { by: "supply-voltage", met: "yes", notMet: "no" },
    }),
    swings: ranked({
      asks: "Does it change as loads are switched here or next door?",
      effort: "measured",
      values: {
        steady: "the voltage hardly changes as loads are switched",
        sags: "the voltage drops a little under load and comes back",
        "up-and-down": "the voltage goes up as well as down with the load, as a loose or broken neutral makes it do",
      },
    }),
    "earth-live": yesNo({
      asks: "Is the earthed metal here more than 50 V above true earth?",
      effort: "measured",
      yes: "earthed metal is more than 50 V above true earth",
      no: "earthed metal is not more than 50 V above true earth",
      worse: "yes",
    }),
  },
  contested: {},
  paths: [
    {
      id: "overvoltage",
      hazard: "burns-or-fire",
      route: "the neutral opens, equipment gets up to 400 V and burns, or metal on a PME supply becomes live",
      exists: ALWAYS,
      layers: [
        {
          id: "neutral",
          provision: "fault-protection",
          words: "a supply neutral with sound joints",
          gone: is("swings", "up-and-down"),
          sound: NEVER,
          regulations: ["313.1", "442.3"],
        },
        oneEventAway("equipment", "insulation", "equipment and insulation that stand it for a while", ["416.1"]),
      ],
    },
    {
      id: "live-earth",
      hazard: "shock-under-fault",
      route: "earthed metal is live, and somebody touches it",
      exists: ALWAYS,
      layers: [
        {
          id: "earth",
          provision: "fault-protection",
          words: "an earthing terminal at the potential of earth",
          gone: yes("earth-live"),
          sound: NEVER,
          regulations: ["411.3.1.1"],
        },
        {
          id: "nothing-at-earth",
          provision: "surroundings",
          words: "surroundings in which nothing is at a different potential",
          gone: yes("earth-live"),
          sound: NEVER,
          regulations: ["411.3.1.2"],
        },
      ],
    },
  ],
  departures: [
    { when: no("within"), words: "the supply is outside the limits declared for it", regulations: ["313.1"] },
  ],
  client: {
    C1: "Metal here is live. It can kill. Turn the power off and call the power network now.",
    C2: "The power goes up and down. A main wire may be loose. Things could burn. Call the power network today.",
    C3: "The power is too high or too low. It is not a danger now. Ask the power network to put it right.",
    FI: [
      unsure(
        "The power does not seem right. We could not find out why. The power network must look at it soon.",
        ["swings", "earth-live"],
        no("within"),
      ),
      unsure("We could not find out if the power comes in as it should. The power network must look at it soon.", [
        "swings",
        "earth-live",
      ]),
    ],
    none: "The power comes in at the right strength.",
  },
  remedies: [
    {
      words: "Report the readings with times to the distributor, and ask it to check neutral and transformer setting.",
      changes: { within: "yes", swings: "steady", "earth-live": "no" },
    },
  ],
  examples: [
    {
      name: "256 V, steady",
      facts: { within: false, swings: "steady", "earth-live": false },
      possible: ["C3"],
      source: "arithmetic: 230 × 1.1 = 253 V",
    },
    {
      name: "204 V and 268 V as the kettle goes on and off",
      facts: { within: false, swings: "up-and-down", "earth-live": false },
      possible: ["C2"],
      source: "trade practice: signs of a failing supply neutral",
    },
    {
      name: "the same, taps at 110 V",
      facts: { within: false, swings: "up-and-down", "earth-live": true },
      possible: ["C1"],
      source: "trade practice: metal live now",
    },
    {
      name: "241 V",
      facts: { within: true, swings: "sags", "earth-live": false },
      possible: ["none"],
      source: "arithmetic: within 216.2 V to 253 V",
    },
    {
      name: "out of limits once, not watched under load",
      facts: { within: false, "earth-live": false },
      possible: ["C3", "C2"],
      missing: ["swings"],
      source: "union over the behaviour under load",
    },
  ],
});
