import { all, is, NEVER, no, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A motor that nothing protects when it stalls, or that starts again by itself. */
export const motorProtection = topic({
  id: "motor-protection",
  title: "Motor without overload protection, or that restarts by itself",
  group: "accessories",
  items: ["accessories.fixed-equipment"],
  facts: {
    "over-370-w": yesNo({
      asks: "Is the motor rated above 0.37 kW?",
      effort: "glance",
      yes: "the motor is rated above 0.37 kW",
      no: "the motor is rated 0.37 kW or less",
      worse: "yes",
    }),
    overload: ranked({
      asks: "What protects it when it stalls or is overloaded?",
      effort: "opened",
      values: {
        "set-right": "a device set to its rated current, or one built in, protects it",
        "set-high": "a device protects it, and is set above its rated current",
        none: "nothing protects it when it stalls",
      },
    }),
    attended: yesNo({
      asks: "Is somebody at it while it runs?",
      effort: "glance",
      yes: "somebody is at it while it runs",
      no: "it runs unattended",
      worse: "no",
    }),
    restart: ranked({
      asks: "After a loss of supply, does it start again by itself, and could that hurt somebody?",
      effort: "measured",
      values: {
        "stays-off": "it stays off after a loss of supply",
        harmless: "it starts again by itself, and nobody could be hurt by that",
        dangerous: "it starts again by itself, and could hurt somebody",
      },
    }),
  },
  contested: {},
  paths: [
    {
      id: "stall",
      hazard: "burns-or-fire",
      route: "the motor stalls, its windings burn, and what is near it takes fire",
      exists: all(yes("over-370-w"), is("overload", "none")),
      layers: [
        oneEventAway("runs-free", "surroundings", "a motor that runs free so far"),
        {
          id: "overload",
          provision: "overcurrent-protection",
          words: "a device that stops an overloaded motor",
          gone: is("overload", "none"),
          sound: NEVER,
          regulations: ["552.1.2"],
        },
        {
          id: "somebody-there",
          provision: "surroundings",
          words: "somebody at the machine who switches it off",
          gone: no("attended"),
          sound: NEVER,
        },
      ],
    },
    {
      id: "restart",
      hazard: "mechanical-movement",
      route: "the supply comes back, the machine starts, and somebody has hands in it",
      exists: is("restart", "dangerous"),
      layers: [
        oneEventAway("care", "surroundings", "nobody having hands in it just then"),
        {
          id: "no-restart",
          provision: "isolation",
          words: "a starter that stays off until somebody starts it",
          gone: is("restart", "dangerous"),
          sound: NEVER,
          regulations: ["552.1.3", "445.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(yes("over-370-w"), is("overload", "set-high", "none")),
      words: "the motor is not protected against overload",
      regulations: ["552.1.2"],
    },
    {
      when: is("restart", "dangerous"),
      words: "nothing keeps the motor from starting again by itself",
      regulations: ["552.1.3", "445.1"],
    },
  ],
  client: {
    C2: [
      says("A machine could start by itself and hurt someone. Have it put right soon.", is("restart", "dangerous")),
      says("A machine could burn out if it sticks. Have it put right soon.", is("overload", "none")),
    ],
    C3: "The part that guards a motor is not right. It is not a danger now. A change would be better.",
    FI: [
      unsure("We could not find out what guards a motor. It may not be safe. It must be looked at soon.", [
        "over-370-w",
        "overload",
        "attended",
      ]),
      unsure("We could not find out if a machine could start by itself. It must be looked at soon.", ["restart"]),
    ],
    none: "The motor is guarded as it should be.",
  },
  remedies: [
    { words: "Set the overload device to the current on the motor's plate.", changes: { overload: "set-right" } },
    {
      words: "Fit a starter with overload protection that stays off after a loss of supply.",
      changes: { overload: "set-right", restart: "stays-off" },
    },
  ],
  examples: [
    {
      name: "unattended pump of 2 kW without overload device",
      facts: { "over-370-w": true, overload: "none", attended: false, restart: "harmless" },
      possible: ["C2"],
      classification: "C2",
      source: "regulation 552.1.2",
    },
    {
      name: "saw that starts again by itself",
      facts: { overload: "set-right", restart: "dangerous" },
      possible: ["C2"],
      source: "regulation 552.1.3",
    },
    {
      name: "overload device set too high",
      facts: { "over-370-w": true, overload: "set-high", restart: "stays-off" },
      possible: ["C3"],
      source: "trade practice",
    },
    {
      name: "small fan",
      facts: { "over-370-w": false, restart: "harmless" },
      possible: ["none"],
      source: "regulation 552.1.2",
    },
    {
      name: "starter not opened",
      facts: { "over-370-w": true, attended: false, restart: "stays-off" },
      possible: ["none", "C3", "C2"],
      missing: ["overload"],
      source: "union over what is inside",
    },
  ],
});
