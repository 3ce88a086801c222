import { any, is, no, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** The supply to smoke and fire alarms. */
export const fireAlarmSupply = topic({
  id: "fire-alarm-supply",
  title: "Supply to smoke or fire alarms",
  group: "fire",
  items: ["fire.alarms"],
  facts: {
    supply: ranked({
      asks: "What feeds the alarms?",
      effort: "opened",
      values: {
        reliable: "the alarms have their own circuit, or share a lighting circuit that is used all day",
        "easily-off": "the alarms are fed in a way that is easily switched off or trips with much else",
        off: "the alarms have no supply",
      },
    }),
    battery: yesNo({
      asks: "Do the alarms have a sound standby battery?",
      effort: "opened",
      yes: "the alarms have a sound standby battery",
      no: "the alarms have no sound standby battery",
      worse: "no",
    }),
    marked: yesNo({
      asks: "Is the circuit marked at the board as that of the alarms?",
      effort: "glance",
      yes: "the circuit is marked at the board",
      no: "the circuit is not marked at the board",
      worse: "no",
    }),
    sounds: yesNo({
      asks: "Do the alarms sound when their test button is pressed?",
      effort: "glance",
      yes: "the alarms sound when tested",
      no: "an alarm does not sound when tested",
      worse: "no",
    }),
  },
  contested: {},
  paths: [
    {
      id: "no-warning",
      hazard: "burns-or-fire",
      route: "a fire breaks out and nobody is warned",
      exists: any(no("sounds"), is("supply", "off")),
      layers: [
        oneEventAway("no-fire", "surroundings", "no fire breaking out"),
        {
          id: "alarm",
          provision: "information",
          words: "an alarm that sounds",
          gone: any(no("sounds"), no("battery")),
          sound: yes("sounds"),
          regulations: ["560.7.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(is("supply", "easily-off", "off"), no("battery"), no("marked"), no("sounds")),
      words: "the supply to the alarms is not reliable and marked",
      regulations: ["560.7.1", "514.8.1"],
    },
  ],
  client: {
    C2: "A smoke alarm does not sound or has no power. You would not be warned of a fire. Have it put right soon.",
    C3: "The supply to the smoke alarms could be better or is not marked. They work now.",
    FI: [
      unsure("We could not find out if the smoke alarms have power. This must be looked at soon.", [
        "supply",
        "battery",
      ]),
      unsure("We could not find out if the smoke alarms sound. This must be looked at soon.", ["sounds"]),
    ],
    none: "The smoke alarms have power and sound when tested.",
  },
  remedies: [
    { words: "Mark the circuit at the board.", changes: { marked: "yes" } },
    { words: "Replace batteries or alarms that do not sound.", changes: { battery: "yes", sounds: "yes" } },
    {
      words: "Feed the alarms from their own circuit or a lighting circuit in daily use.",
      changes: { supply: "reliable", battery: "yes", sounds: "yes" },
    },
  ],
  examples: [
    {
      name: "alarm dead",
      facts: { supply: "off", battery: false, marked: true, sounds: false },
      possible: ["C2"],
      source: "trade practice: nobody is warned",
    },
    {
      name: "works, circuit not marked",
      facts: { supply: "reliable", battery: true, marked: false, sounds: true },
      possible: ["C3"],
      source: "514.8.1",
    },
    {
      name: "not tried",
      facts: { supply: "reliable", battery: true, marked: true },
      possible: ["none", "C2"],
      missing: ["sounds"],
      source: "union over what a test would show",
    },
  ],
});
