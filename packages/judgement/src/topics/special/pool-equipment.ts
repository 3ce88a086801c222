import { all, any, is, NEVER, no, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Electrical equipment and bonding around a swimming pool, paddling pool or fountain. */
export const poolEquipment = topic({
  id: "pool-equipment",
  title: "Equipment and bonding at a swimming pool",
  group: "special",
  items: ["special.pools"],
  facts: {
    zone: ranked({
      asks: "Which zone does the equipment stand in?",
      effort: "glance",
      values: {
        outside: "the equipment stands outside the zones",
        "zone-2": "the equipment stands in zone 2",
        "zone-1": "the equipment stands in zone 1",
        "zone-0": "the equipment stands in the water, zone 0",
      },
    }),
    protection: ranked({
      asks: "What protects it: SELV with its source outside, a working RCD of 30 mA, or neither?",
      effort: "opened",
      values: {
        selv: "it is fed by SELV whose source stands outside the zones",
        "rcd-30ma": "it is fed at mains voltage behind a working 30 mA RCD",
        neither: "it is fed at mains voltage without a working 30 mA RCD",
      },
    }),
    bonding: yesNo({
      asks: "Are all extraneous parts of the zones joined by supplementary bonding, grids in the floor included?",
      effort: "measured",
      yes: "the extraneous parts are bonded together and measured so",
      no: "extraneous parts are not bonded together",
      worse: "no",
      worked: { by: "bonding-continuity", notMet: "no", findings: "none" },
    }),
    ip: yesNo({
      asks: "Does the enclosure keep water out as its zone asks?",
      effort: "glance",
      yes: "the enclosure keeps water out as its zone asks",
      no: "the enclosure does not keep water out as its zone asks",
      worse: "no",
    }),
  },
  contested: {},
  paths: [
    {
      id: "wet-shock",
      hazard: "contact-with-live-parts",
      route: "a person in or wet from the water comes into contact with mains voltage at the equipment",
      exists: all(is("zone", "zone-2", "zone-1", "zone-0"), is("protection", "rcd-30ma", "neither")),
      layers: [
        {
          id: "enclosure",
          provision: "barrier-or-enclosure",
          words: "an enclosure that keeps water out",
          gone: all(no("ip"), is("zone", "zone-1", "zone-0")),
          sound: NEVER,
          regulations: ["702.512.2"],
        },
        {
          id: "rcd",
          provision: "additional-protection",
          words: "an RCD of 30 mA or less, where mains voltage is allowed",
          gone: any(is("protection", "neither"), is("zone", "zone-1", "zone-0")),
          sound: NEVER,
          regulations: ["702.410.3.4.1", "702.410.3.4.2", "702.410.3.4.3"],
        },
      ],
    },
    {
      id: "between-metal",
      hazard: "shock-under-fault",
      route: "a voltage stands between metal parts that a wet person touches together",
      exists: no("bonding"),
      layers: [
        {
          id: "bonding",
          provision: "equipotential-bonding",
          words: "bonding between the parts",
          gone: no("bonding"),
          sound: yes("bonding"),
          regulations: ["702.415.2"],
        },
        oneEventAway("no-fault", "fault-protection", "an installation and supply without a fault"),
      ],
    },
  ],
  departures: [
    {
      when: any(
        no("bonding"),
        all(no("ip"), is("zone", "zone-2", "zone-1", "zone-0")),
        all(is("zone", "zone-1", "zone-0"), is("protection", "rcd-30ma", "neither")),
        all(is("zone", "zone-2"), is("protection", "neither")),
      ),
      words: "protection at the pool is not what its zones ask for",
      regulations: ["702.410.3.4.1", "702.415.2", "702.512.2"],
    },
  ],
  client: {
    C1: "Mains power can reach people in the pool. Keep everyone out of the water and switch it off now.",
    C2: "The power near the pool is not safe enough for wet people. Have it put right soon.",
    C3: "The power near the pool is safe now, but not as good as it should be today.",
    FI: unsure("We could not find out if the power near the pool is safe. Keep it off until this is known.", [
      "zone",
      "protection",
      "bonding",
      "ip",
    ]),
    none: "The power near the pool is as it should be.",
  },
  remedies: [
    { words: "Bond the extraneous parts of the zones together and measure them.", changes: { bonding: "yes" } },
    {
      words: "Replace the equipment by SELV equipment for its zone, with the source outside the zones.",
      changes: { protection: "selv", ip: "yes" },
    },
    { words: "Take mains equipment out of the zones.", changes: { zone: "outside" } },
  ],
  examples: [
    {
      name: "mains light in the water, seal gone, no RCD",
      facts: { zone: "zone-0", protection: "neither", bonding: true, ip: false },
      possible: ["C1"],
      source: "702.410.3.4.1",
    },
    {
      name: "socket in zone 2 behind an RCD",
      facts: { zone: "zone-2", protection: "rcd-30ma", bonding: true, ip: true },
      possible: ["none"],
      source: "702.410.3.4.3",
    },
    {
      name: "no supplementary bonding",
      facts: { zone: "outside", protection: "rcd-30ma", bonding: false, ip: true },
      possible: ["C2"],
      source: "trade practice; 702.415.2",
    },
    {
      name: "supply of the pool light not known",
      facts: { zone: "zone-0", bonding: true, ip: true },
      possible: ["none", "C2"],
      missing: ["protection"],
      source: "union over what may feed it",
    },
  ],
});
