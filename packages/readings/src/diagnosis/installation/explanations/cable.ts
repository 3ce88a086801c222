import {
  type ConductorMaterial,
  isKnown,
  isKnownFact,
  type LengthFound,
  printQuantity,
  TERM,
} from "@good-grounds/core";
import { lengthFoundOf, materialHypotheses, sizeHypotheses } from "@good-grounds/measurement";
import { conductorResistance } from "@good-grounds/tables";
import { changed, spread, truthOf } from "../circuit-effects.ts";
import { type CircuitBlock, type Nominal, recorded } from "../circuit-model.ts";
import type { CircuitFault, Effect, Surroundings } from "../fault.ts";

/** How often a length is wrong beyond what its way of finding leaves: a tape is misread now and then, a guess often. */
const LENGTH_WRONG: Readonly<Record<LengthFound, number>> = {
  taped: 0.08,
  "by-drawing": 0.14,
  estimated: 0.16,
  unknown: 0.2,
};

/** The same where the lengths of the board are plainly guesses. */
const GUESSED = 0.4;

/** A cable that is not as written down. */
export const CABLE: readonly CircuitFault[] = [
  {
    id: "length-wrong",
    innocent: true,
    prior: ({ circuit, guess }) => (guess > 0 ? GUESSED : LENGTH_WRONG[lengthFoundOf(circuit.cable.lengthFound)]),
    words: (size) => `the cable to the point of the reading is about ${size} long and not as written`,
    effects: (block, around) => {
      const { nominal, length } = block;
      if (!block.cableKnown || length === undefined) return [];
      const scaled = (k: number): Nominal => ({ ...nominal, line: nominal.line * k, cpc: nominal.cpc * k });
      return spread(block, {
        low: 0.2,
        high: 5,
        count: 30,
        shown: (slot, k) => recorded(slot, scaled(k)),
        truth: (k) => ({ ...truthOf({ ...scaled(k), before: around.before }), length: k * length }),
        size: (k) => printQuantity(Math.round(k * length * 2) / 2, "metre"),
        // Lengths are more often out by a third than by half or twice, guesses all the more.
        weight: (k) => Math.exp(-Math.abs(Math.log(k)) / (block.guess > 0 ? 0.25 : 0.4)),
      });
    },
  },
  {
    id: "protective-conductor-size-wrong",
    innocent: false,
    prior: 0.12,
    words: (size) => `the protective conductor has ${size} and not the size written down`,
    effects: (block, around) => otherSizes(block, around, "cpc"),
  },
  {
    id: "line-conductor-size-wrong",
    innocent: false,
    prior: 0.08,
    words: (size) => `line and neutral have ${size} and not the size written down`,
    effects: (block, around) => otherSizes(block, around, "line"),
  },
  {
    id: "cable-size-wrong",
    innocent: false,
    prior: 0.05,
    words: (size) => `the whole cable has ${size} and not the sizes written down`,
    effects: otherCables,
  },
  {
    id: "material-wrong",
    innocent: false,
    prior: ({ guess }) => (guess > 0 ? 0.02 : 0.05),
    seenAs: "material",
    words: (size) => `the conductors are of ${size} and not of what is written down`,
    effects(block, around) {
      const { material } = block.circuit.cable;
      const other = materialHypotheses(material).find(({ asWritten }) => !asWritten)?.value;
      if (!block.cableKnown || other === undefined || !isKnownFact(material)) return [];
      const { line, cpc } = block.nominal;
      const ratio = other === "aluminium" ? BY_RESISTIVITY : 1 / BY_RESISTIVITY;
      const to = { ...block.nominal, line: line * ratio, cpc: cpc * ratio };
      return [changed(block, around, to, { weight: 1, size: other, part: 0.03 })];
    },
  },
];

/** Resistivity of aluminium over that of copper, 28.264 to 17.241 nΩ·m (IEC 60028 and IEC 60889). */
const BY_RESISTIVITY = 28.264 / 17.241;

/** Resistance of one size over that of another, of one material; undefined where the table has neither. */
function ratioOf(size: number, written: number, material: ConductorMaterial): number | undefined {
  const [is, was] = [size, written].map((one) => conductorResistance(TERM.conductorPerMetre, one, material));
  return is && was && isKnown(is) && isKnown(was) ? is.value / was.value : undefined;
}

/** The other sizes that a conductor may have; the protective conductor is never larger than the line conductor. */
function otherSizes(block: CircuitBlock, around: Surroundings, conductor: "line" | "cpc"): readonly Effect[] {
  const { nominal, cableKnown } = block;
  const { line, cpc, material } = block.circuit.cable;
  const written = conductor === "line" ? line : cpc;
  if (!cableKnown || !isKnown(line) || !isKnown(cpc) || !isKnown(written) || !isKnownFact(material)) return [];
  const others = sizeHypotheses(written).filter(
    ({ asWritten, value }) =>
      !asWritten && (conductor === "cpc" ? value <= Math.max(line.value, cpc.value) : value >= cpc.value),
  );
  const all = others.reduce((sum, { prior }) => sum + prior, 0);
  return others.flatMap(({ value, prior }): Effect[] => {
    const ratio = ratioOf(value, written.value, material.word);
    if (ratio === undefined) return [];
    const to: Nominal = { ...nominal, [conductor]: nominal[conductor] * ratio };
    const truth = conductor === "cpc" ? { cpcSize: value } : {};
    return [
      changed(block, around, to, { weight: prior / all, size: printQuantity(value, "square-millimetre"), truth }),
    ];
  });
}

/** Line conductor and protective conductor of flat cable by size, mm². */
const FLAT_CABLE: readonly (readonly [line: number, cpc: number])[] = [
  [1, 1],
  [1.5, 1],
  [2.5, 1.5],
  [4, 1.5],
  [6, 2.5],
  [10, 4],
  [16, 6],
];

function otherCables(block: CircuitBlock, around: Surroundings): readonly Effect[] {
  const { nominal, cableKnown } = block;
  const { line, cpc, material } = block.circuit.cable;
  if (!cableKnown || !isKnown(line) || !isKnown(cpc) || !isKnownFact(material)) return [];
  const at = FLAT_CABLE.findIndex(([one, other]) => one === line.value && other === cpc.value);
  if (at < 0) return [];
  return [FLAT_CABLE[at - 1], FLAT_CABLE[at + 1]].flatMap((cable): Effect[] => {
    if (cable === undefined) return [];
    const [a, b] = [ratioOf(cable[0], line.value, material.word), ratioOf(cable[1], cpc.value, material.word)];
    if (a === undefined || b === undefined) return [];
    const to = { ...nominal, line: nominal.line * a, cpc: nominal.cpc * b };
    const size = `${cable[0]}/${cable[1]} mm²`;
    return [changed(block, around, to, { weight: 0.5, size, truth: { cpcSize: cable[1] } })];
  });
}
