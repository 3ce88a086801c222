import { regulationsOf } from "./regulation.ts";

/** Earthing, protective bonding and isolation. */
export const EARTHING_BONDING_ISOLATION = regulationsOf("earthing-bonding-isolation", [
  [
    "411.3.1.1",
    "memory",
    "Exposed-conductive-parts are joined to a protective conductor, and one is run to every point.",
  ],
  [
    "411.3.1.2",
    "published",
    "Main bonding of water, gas and other metal services, central heating and air conditioning, exposed metal structure and lightning protection.",
    { doubt: "a metal pipe with an insulating part at its entry needs none (2018): from memory" },
  ],
  ["462.1", "memory", "Every circuit can be isolated from its supply."],
  [
    "462.1.201",
    "memory",
    "A main linked switch or circuit-breaker as near the origin as may be; double-pole for single-phase household use.",
  ],
  ["462.2", "memory", "Isolation is kept up: devices are placed or guarded against being closed by mistake."],
  [
    "530.3.201",
    "published",
    "Where power may flow both ways, devices are chosen by whether they may be fed from either side.",
    { edition: "2018+A3 and later" },
  ],
  ["537.2", "memory", "A device for isolation is suited to it (Table 537.4)."],
  ["542.2", "memory", "Kinds of earth electrodes and how they are kept from drying, freezing and corrosion."],
  [
    "542.3.1",
    "published",
    "Earthing conductors are sized as protective conductors; buried ones by Table 54.1 as well.",
  ],
  [
    "543.1.1",
    "published",
    "A protective conductor apart from the cable: at least 2.5 mm² of copper with mechanical protection, 4 mm² without.",
  ],
  ["543.1.3", "published", "Size of a protective conductor by energy: S ≥ √(I²t) ÷ k, up to 5 s."],
  ["543.1.4", "published", "Size of a protective conductor by selection from Table 54.7."],
  [
    "544.1.1",
    "published",
    "Main bonding: half the earthing conductor, at least 6 mm², no more than 25 mm² asked; under PME by Table 54.8.",
  ],
  ["544.2.1", "memory", "Between exposed-conductive-parts: the conductance of the smaller protective conductor."],
  [
    "544.2.2",
    "memory",
    "Between an exposed- and an extraneous-conductive-part: half the conductance of the protective conductor.",
  ],
  ["544.2.3", "published", "Between extraneous-conductive-parts: 2.5 mm² with mechanical protection, 4 mm² without."],
]);
