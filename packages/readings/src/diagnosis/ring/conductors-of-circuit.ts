import { assumed, type ConductorMaterial, fact, isKnown, isKnownFact, TERM } from "@good-grounds/core";
import type { Circuit } from "@good-grounds/inspection";
import {
  type CableExpectation,
  type CableGiven,
  type CoreExpectation,
  cableExpectation,
  type Doubted,
  materialHypotheses,
  quotientOf,
  sizeHypotheses,
  standardOf,
} from "@good-grounds/measurement";
import { AS_COPPER } from "./assumptions.ts";
import type { RingInput, Uncertain } from "./readings.ts";

/** What size, material, length and temperature of a circuit say of a ring's conductors, by the one model of cables. */
export function conductorsOf({ cable, readings }: Circuit): Partial<RingInput> {
  const given: CableGiven = { ...cable, temperature: readings.temperature };
  const { core, length } = cableExpectation({ ...given, neutral: isKnown(cable.neutral) ? cable.neutral : cable.line });
  // Of one metal, whichever it is, sizes stand in nearly the same ratio.
  const asOne = isKnownFact(cable.material) ? core : cableExpectation({ ...given, material: AS_COPPER }).core;
  const cpcRatio = ratioOf(asOne.cpc, asOne.line);
  return {
    neutralRatio: ratioOf(asOne.neutral, asOne.line) ?? ONE,
    ...(core.line === undefined ? {} : { linePerMetre: uncertain(core.line.perMetre) }),
    ...(cpcRatio === undefined ? {} : { cpcRatio, cpcSizes: otherSizes(given), lineSizes: otherLines(given) }),
    ...(length === undefined ? {} : { length: uncertain(length) }),
    ...otherMetalOf(given, core),
  };
}

/** Line and neutral of one cable where nothing else is known. */
const ONE: Uncertain = { value: 1, deviation: 0.03 };

/** What two conductors of a cable share cancels in their ratio. */
function ratioOf(other: CoreExpectation | undefined, line: CoreExpectation | undefined): Uncertain | undefined {
  return other === undefined || line === undefined ? undefined : uncertain(quotientOf(other.perMetre, line.perMetre));
}

/** Ratios of the other sizes that the protective conductor may have; it is never larger than the line conductor. */
function otherSizes(given: CableGiven): NonNullable<RingInput["cpcSizes"]> {
  const { line, cpc } = given;
  if (!isKnown(line)) return [];
  const material = isKnownFact(given.material) ? given.material : AS_COPPER;
  return sizeHypotheses(cpc).flatMap(({ value: size, asWritten }) => {
    if (asWritten || size > line.value || size > MOST_OF_RING) return [];
    const area = assumed(TERM.cpcArea, size, "a size the protective conductor may have in truth");
    const { core } = cableExpectation({ ...given, material, cpc: area });
    const ratio = ratioOf(core.cpc, core.line);
    return ratio === undefined ? [] : [{ size, ratio }];
  });
}

/** Resistances of the other sizes that line and neutral may have, over that of the one written down. */
function otherLines(given: CableGiven): NonNullable<RingInput["lineSizes"]> {
  const { line, cpc } = given;
  const material = isKnownFact(given.material) ? given.material : AS_COPPER;
  const own = cableExpectation({ ...given, material }).core.line?.perMetre.value;
  return sizeHypotheses(line).flatMap(({ value: size, asWritten }) => {
    if (asWritten || size > MOST_OF_RING || size < LEAST_OF_RING || (isKnown(cpc) && size < cpc.value)) return [];
    const area = assumed(TERM.lineArea, size, "a size the line conductor may have in truth");
    const other = cableExpectation({ ...given, material, line: area }).core.line?.perMetre.value;
    return own === undefined || other === undefined ? [] : [{ size, times: other / own }];
  });
}

/** No ring final circuit is of larger conductors, mm². */
const MOST_OF_RING = 6;
const LEAST_OF_RING = 1.5;

/** The other metal that the conductors may be of, and what their resistance would be over that by the one written down. */
function otherMetalOf(given: CableGiven, core: CableExpectation["core"]): Pick<RingInput, "otherMetal"> {
  const other = materialHypotheses(given.material).find(({ asWritten }) => !asWritten)?.value;
  if (core.line === undefined || other === undefined) return {};
  const line = cableExpectation({ ...given, material: fact<ConductorMaterial>(AS_COPPER.matter, other, []) }).core.line;
  const ratio = line === undefined ? undefined : line.perMetre.value / core.line.perMetre.value;
  return {
    otherMetal: { metal: other, ratio: ratio ?? (other === "aluminium" ? BY_RESISTIVITY : 1 / BY_RESISTIVITY) },
  };
}

/** Resistivity of aluminium over that of copper, 28.264 to 17.241 nΩ·m (IEC 60028 and IEC 60889). */
const BY_RESISTIVITY = 28.264 / 17.241;

function uncertain(doubted: Doubted): Uncertain {
  return { value: doubted.value, deviation: standardOf(doubted) };
}
