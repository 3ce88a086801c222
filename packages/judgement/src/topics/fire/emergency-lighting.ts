import { all, any, is, NEVER, no, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Emergency lighting of ways out: what is left when the ordinary light goes. */
export const emergencyLighting = topic({
  id: "emergency-lighting",
  title: "Emergency lighting missing or not working",
  group: "fire",
  items: ["fire.escape-routes"],
  facts: {
    "relied-on": yesNo({
      asks: "Does the way out depend on it: no daylight or borrowed light, a stair, or more than a few people who do not know the place?",
      effort: "glance",
      yes: "people depend on emergency lighting to get out",
      no: "people find the way out without emergency lighting",
      worse: "yes",
    }),
    light: ranked({
      asks: "With the supply of the ordinary light off, what comes on, and for how long?",
      effort: "measured",
      values: {
        full: "every emergency light comes on and lasts as long as it is made for",
        short: "every emergency light comes on, and some do not last as long as they are made for",
        some: "some emergency lights do not come on, and the others still show the way",
        none: "no emergency light that is fitted or needed here shows the way out",
      },
    }),
    "senses-local": yesNo({
      asks: "Do they come on when the lighting circuit of the place fails, and not only when the whole supply does?",
      effort: "measured",
      yes: "they come on when the lighting circuit of the place fails",
      no: "they come on only when the whole supply fails",
      worse: "no",
    }),
    "test-and-log": yesNo({
      asks: "Is there a means of testing them and a record of tests?",
      effort: "glance",
      yes: "there is a means of testing and a record",
      no: "there is no means of testing or no record",
      worse: "no",
    }),
  },
  contested: {},
  paths: [
    {
      id: "dark",
      hazard: "mechanical-movement",
      route: "the ordinary light fails, in a fire or not, and people fall or do not find the way out",
      exists: yes("relied-on"),
      layers: [
        oneEventAway("ordinary-light", "surroundings", "the ordinary light", ["560.5"]),
        {
          id: "emergency-light",
          provision: "surroundings",
          words: "emergency light on the way out",
          gone: any(is("light", "none"), all(is("light", "some"), no("senses-local"))),
          sound: NEVER,
          regulations: ["560.9"],
        },
      ],
    },
  ],
  departures: [
    {
      when: is("light", "short", "some", "none"),
      words: "the emergency lighting does not work as it is made to",
      regulations: ["560.9"],
    },
    {
      when: no("senses-local"),
      words: "the emergency lighting does not answer to a failure of the local lighting circuit",
      regulations: ["560.9"],
    },
    {
      when: no("test-and-log"),
      words: "the emergency lighting cannot be tested, or no record of tests is kept",
      regulations: ["560.9", "514.9.1"],
    },
  ],
  client: {
    C2: [
      says(
        "If the lights fail, no light shows the way out. People could fall. Have it put right soon.",
        is("light", "none"),
      ),
      says(
        "If the light of one part fails, people there may have no light on the way out. They could fall. Have it put right soon.",
        is("light", "some"),
      ),
    ],
    C3: "The emergency lights do not work fully, or nobody can show that they do. It is not a danger now. A repair would make the way out safer.",
    FI: [
      unsure("We could not test the emergency lights. They may not work. They must be tested soon.", ["light"]),
      unsure(
        "Emergency lights do not work. We could not find out if people depend on them. This must be looked at soon.",
        ["relied-on", "senses-local"],
        is("light", "some", "none"),
      ),
    ],
    none: "The emergency lights work.",
  },
  remedies: [
    { words: "Repair the lights that fail, or renew their batteries.", changes: { light: "full" } },
    { words: "Feed each from the lighting circuit of its place.", changes: { "senses-local": "yes" } },
    { words: "Fit a test switch, and begin a record of tests.", changes: { "test-and-log": "yes" } },
  ],
  examples: [
    {
      name: "no light on an inside stair of flats",
      facts: { "relied-on": true, light: "none" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: the way out is dark when the supply fails",
    },
    {
      name: "battery lasts half its time",
      facts: { "relied-on": true, light: "short", "senses-local": true },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: works, and short of its duration",
    },
    {
      name: "all in order",
      facts: { "relied-on": true, light: "full", "senses-local": true, "test-and-log": true },
      possible: ["none"],
      source: "regulation 560.9",
    },
    {
      name: "supply not to be switched off during opening hours",
      facts: {
        "relied-on": true,
        light: { notKnown: "limited", reason: "the shop was open" },
        "senses-local": true,
        "test-and-log": true,
      },
      possible: ["none", "C3", "C2"],
      classification: "FI",
      source: "union over the test",
    },
    {
      name: "some fail, circuit not tried",
      facts: { "relied-on": true, light: "some" },
      possible: ["C3", "C2"],
      missing: ["senses-local"],
      source: "union over the local circuit",
    },
  ],
});
