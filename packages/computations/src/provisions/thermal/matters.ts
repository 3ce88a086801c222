import { matter } from "@good-grounds/core";

/** What is asked about heat and fire, and the questions answered. */
export const THERMAL = Object.freeze({
  marks: matter("heat-marks", "marks of heat"),
  connection: matter("connection", "connections, tried with the right tool while dead"),
  burnsNear: matter("burns-near", "material that burns or holds heat lies near"),
  nothingNear: matter("nothing-burns-near", "nothing that burns or holds heat lies near"),
  uncovered: matter("luminaire-uncovered", "no thermal insulation lies on or against it"),
  sound: matter("heat-sound", "no heat where it does harm"),
  noMarks: matter("no-heat-marks", "no damage by heat"),
  tight: matter("connections-tight", "connections are tight"),
  apart: matter("apart-from-combustible", "material that burns is kept apart"),
  distance: matter("combustible-distance", "distance against what the maker asks"),
  enclosureMaterial: matter("enclosure-material", "material of the consumer unit's enclosure"),
  inCabinet: matter("in-cabinet", "it stands in a cabinet of material that does not burn"),
  material: matter("consumer-unit-material", "the consumer unit does not feed a fire"),
  coveredBy: matter("covered-by-insulation", "thermal insulation lies on or against the luminaire or its driver"),
  coverAllowed: matter("cover-allowed", "the luminaire is marked as one that may be covered"),
  lampAsRated: matter("lamp-as-rated", "the lamp is of a kind and power that the luminaire allows"),
  luminaire: matter("recessed-luminaire", "the recessed luminaire can shed its heat"),
  carries: matter("insulated-cable-carries", "design current against the capacity under thermal insulation"),
  covering: matter("luminaire-covering", "it may be covered, or is not"),
});
