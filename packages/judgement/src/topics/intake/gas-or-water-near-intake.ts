import { ALWAYS, any, is, NEVER, ranked, says, unsure } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Gas or water pipes too near to meter, cut-out or tails. */
export const gasOrWaterNearIntake = topic({
  id: "gas-or-water-near-intake",
  title: "Gas or water pipe near the intake",
  group: "intake",
  items: ["intake.meter", "intake.meter-tails"],
  facts: {
    gas: ranked({
      asks: "How near is gas to the equipment?",
      effort: "glance",
      values: {
        clear:
          "a gas meter is 150 mm or more from the equipment and gas pipes 25 mm or more from cables, or there is none",
        parted: "gas is nearer than that, with an insulating partition between",
        near: "gas is nearer than that, with nothing between",
        touching: "a gas pipe touches tails or terminals, or is scorched by them",
      },
    }),
    water: ranked({
      asks: "Does water from a pipe or tank get to it?",
      effort: "glance",
      values: {
        dry: "no water pipe or tank is above the equipment, or all is dry",
        drips: "water drips or has run on the equipment",
      },
    }),
  },
  contested: {},
  paths: [
    {
      id: "arc-and-gas",
      hazard: "burns-or-fire",
      route: "an arc burns through the pipe, or gas that has leaked takes fire at a contact",
      exists: ALWAYS,
      layers: [
        oneEventAway("no-gas", "surroundings", "gas that stays in its pipes", ["528.3.4"]),
        {
          id: "apart",
          provision: "barrier-or-enclosure",
          words: "distance or a partition, and sheaths and cases that are whole",
          gone: is("gas", "touching"),
          sound: NEVER,
          regulations: ["528.3.1", "528.3.4"],
        },
      ],
    },
    {
      id: "water",
      hazard: "contact-with-live-parts",
      route: "water gets to live parts, and wet cases or walls become live or burn",
      exists: ALWAYS,
      layers: [
        {
          id: "keeps-water-out",
          provision: "barrier-or-enclosure",
          words: "enclosures that keep water away from live parts",
          gone: is("water", "drips"),
          sound: NEVER,
          regulations: ["522.3.1", "528.3.2"],
        },
        oneEventAway("insulation", "insulation", "insulation that stands the water for a while", ["416.1"]),
      ],
    },
  ],
  departures: [
    {
      when: any(is("gas", "near", "touching"), is("water", "drips")),
      words: "other services are too near without protection",
      regulations: ["528.3.1", "528.3.4"],
    },
  ],
  client: {
    C2: [
      says(
        "A gas pipe touches the main power wires or was burnt by them. It could cause a fire. Have this put right soon.",
        is("gas", "touching"),
      ),
      says(
        "Water drips or has run on the main power parts. It could cause a shock or a fire. Have this put right soon.",
        is("water", "drips"),
      ),
    ],
    C3: "A gas pipe or gas meter is near the main power. It is not a danger now. A gap or a guard is better.",
    FI: [
      unsure("We could not see how near gas is to the main power. This must be looked at.", ["gas"]),
      unsure("We could not see if water gets on the main power parts. This must be looked at.", ["water"]),
    ],
    none: "Pipes are far enough from the main power, or kept apart from it.",
  },
  remedies: [
    { words: "Put a rigid insulating partition between gas and equipment.", changes: { gas: "parted" } },
    { words: "Have the gas firm move pipe or meter, or the supplier its meter.", changes: { gas: "clear" } },
    { words: "Stop the leak, and have wet equipment replaced.", changes: { water: "dry" } },
  ],
  examples: [
    {
      name: "gas meter 60 mm from the electricity meter",
      facts: { gas: "near", water: "dry" },
      possible: ["C3"],
      source: "trade practice: separation of gas and electricity at the intake",
    },
    {
      name: "the same with a partition",
      facts: { gas: "parted", water: "dry" },
      possible: ["none"],
      source: "trade practice: separation of gas and electricity at the intake",
    },
    {
      name: "pipe rests on a tail",
      facts: { gas: "touching", water: "dry" },
      possible: ["C2"],
      source: "regulation 528.3.4",
    },
    {
      name: "leaking cistern above the cut-out",
      facts: { gas: "clear", water: "drips" },
      possible: ["C2"],
      source: "regulation 522.3.1",
    },
    {
      name: "water not looked at",
      facts: { gas: "clear" },
      possible: ["none", "C2"],
      missing: ["water"],
      source: "union over water",
    },
  ],
});
