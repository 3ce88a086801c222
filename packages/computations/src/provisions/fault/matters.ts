import { matter } from "@good-grounds/core";

/** What is asked about fault protection, and the questions answered. */
export const FAULT = Object.freeze({
  earthed: matter(
    "part-earthed",
    "the exposed metal is joined to a protective conductor that leads to the earthing terminal",
  ),
  automatic: matter("automatic-disconnection", "exposed metal is earthed and a fault is disconnected in time"),
  measureScope: matter("measure-scope", "what the measure is relied on for"),
  marked: matter("class-two-marked", "class II mark, or insulation shown to be double or reinforced"),
  intact: matter("class-two-intact", "the insulating enclosure is whole and no metal passes through it"),
  cpcAtPoint: matter("cpc-at-point", "a protective conductor is run to and ends at each point"),
  supervised: matter(
    "effective-supervision",
    "effective supervision, so that no change can be made that defeats the measure",
  ),
  doubleInsulation: matter("double-insulation", "double or reinforced insulation gives fault protection"),
  soleMeasure: matter("sole-measure", "the measure may be relied on so widely"),
  lowKind: matter("extra-low-kind", "kind of extra-low voltage circuit"),
  lowCurrent: matter("extra-low-current", "alternating or direct"),
  safeSource: matter("safe-source", "the source separates safely, such as a transformer to BS EN 61558-2-6"),
  separated: matter("circuits-separated", "the circuit is separated from all others"),
  toEarth: matter(
    "joined-to-earth",
    "live or exposed parts of the circuit are joined to earth or to parts of other circuits",
  ),
  lowVoltage: matter("extra-low-within", "nominal voltage against the limit of extra-low voltage"),
  extraLow: matter("extra-low-protects", "extra-low voltage protects"),
  unearthed: matter("circuit-unearthed", "the circuit is not joined to earth"),
  isolatingSource: matter(
    "isolating-source",
    "the source has at least simple separation, such as an isolating transformer",
  ),
  oneItem: matter("one-item", "it supplies one item of equipment only"),
  isolatedPart: matter("isolated-part", "the part is isolated from earth and from the earthing terminal"),
  partsJoined: matter("parts-joined", "resistance between parts that can be touched together"),
  separation: matter("electrical-separation", "electrical separation protects"),
  separatedVoltage: matter("separated-voltage", "voltage of the separated circuit against its limit"),
});
