import { all, is, NEVER, not, oneKind, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A main switch that does not open every conductor it should. */
export const mainSwitchPoles = topic({
  id: "main-switch-poles",
  title: "Main switch does not open line and neutral",
  group: "boards",
  items: ["boards.main-switch"],
  facts: {
    poles: ranked({
      asks: "What does the main switch open?",
      effort: "opened",
      values: {
        both: "the main switch opens line and neutral together",
        "isolator-near": "the main switch opens the line only, and another switch close by opens line and neutral",
        "line-only": "the main switch opens the line only",
        "neutral-only": "the main switch opens the neutral only",
      },
    }),
    system: oneKind({
      asks: "Which system of earthing is it?",
      effort: "opened",
      values: { "tn-s": "the system is TN-S", "tn-c-s": "the system is TN-C-S", tt: "the system is TT" },
    }),
    "otherwise-sound": yesNo({
      asks: "Is it an old installation whose supply polarity, neutral and earthing are otherwise sound?",
      effort: "measured",
      yes: "supply polarity, neutral and earthing of the old installation are sound",
      no: "supply polarity, neutral or earthing is in doubt",
      worse: "no",
    }),
  },
  contested: {},
  paths: [
    {
      id: "neutral-left",
      hazard: "contact-with-live-parts",
      route: "somebody works on what is switched off, and a conductor that stayed connected is live",
      exists: is("poles", "line-only"),
      layers: [
        oneEventAway("neutral-at-earth", "surroundings", "a neutral of the supply near earth potential", ["461.2"]),
        {
          id: "neutral-open",
          provision: "isolation",
          words: "a main switch that opens the neutral too, or a neutral held to earth by a sound old TN-S supply",
          gone: not(all(is("system", "tn-s"), yes("otherwise-sound"))),
          sound: NEVER,
          regulations: ["462.1.201"],
        },
      ],
    },
    {
      id: "line-left",
      hazard: "contact-with-live-parts",
      route: "somebody works on what is switched off while its line is live",
      exists: is("poles", "neutral-only"),
      layers: [
        oneEventAway("enclosure", "barrier-or-enclosure", "the enclosures of the equipment", ["416.2.1"]),
        {
          id: "line-open",
          provision: "isolation",
          words: "a main switch that opens the line",
          gone: is("poles", "neutral-only"),
          sound: NEVER,
          regulations: ["462.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: is("poles", "line-only", "neutral-only"),
      words: "the main switch for ordinary persons does not open line and neutral together",
      regulations: ["462.1.201"],
    },
  ],
  client: {
    C2: "The main switch does not turn off both wires. Work on the wiring could give a shock. Change it soon.",
    C3: "The main switch turns off one wire of two. A new one that cuts both would be safer.",
    FI: [
      unsure("We could not find out if the main switch turns off all it should. It must be looked at soon.", ["poles"]),
      unsure(
        "The main switch cuts one wire of two. We could not find out if that is safe here. It must be looked at soon.",
        ["system", "otherwise-sound"],
        is("poles", "line-only"),
      ),
    ],
    none: "The main switch turns off all it should.",
  },
  remedies: [
    {
      words: "Fit a two-pole isolator between meter and board.",
      changes: { poles: "isolator-near" },
    },
    { words: "Replace the main switch by one that opens line and neutral.", changes: { poles: "both" } },
  ],
  examples: [
    {
      name: "line only, home on TN-C-S",
      facts: { poles: "line-only", system: "tn-c-s" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: neutral not isolated",
    },
    {
      name: "old TN-S, otherwise sound",
      facts: { poles: "line-only", system: "tn-s", "otherwise-sound": true },
      possible: ["C3"],
      source: "trade practice: old TN-S installation otherwise sound",
    },
    {
      name: "TT",
      facts: { poles: "line-only", system: "tt", "otherwise-sound": true },
      possible: ["C2"],
      source: "trade practice: on TT the neutral can stand well above local earth",
    },
    {
      name: "two-pole isolator by the meter",
      facts: { poles: "isolator-near" },
      possible: ["none"],
      source: "regulation 462.1.201: the isolator is then the main switch",
    },
    {
      name: "only the poles are known",
      facts: { poles: "line-only" },
      possible: ["C3", "C2"],
      missing: ["system"],
      source: "union over the system",
    },
  ],
});
