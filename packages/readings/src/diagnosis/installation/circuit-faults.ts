import { isKnown, isKnownFact, printQuantity, TERM } from "@good-grounds/core";
import { conductorResistance } from "@good-grounds/tables";
import { type CircuitBlock, type Nominal, recorded } from "./circuit-model.ts";
import { type CircuitFault, type Effect, logGrid, type Surroundings, type Truth } from "./fault.ts";
import { isLive, type Slot } from "./slot.ts";

const ohms = (value: number) => printQuantity(value, "ohm");

/** What is recorded under a fault of one size: the reading itself, not its change. */
type Shown = (slot: Slot, x: number) => number;

interface Family {
  readonly low: number;
  readonly high: number;
  readonly count: number;
  readonly shown: Shown;
  readonly truth: (x: number) => Truth;
  readonly size: (x: number) => string;
  readonly beforeShare?: (x: number) => number;
  /** How much more likely a size is than others, in proportion; all alike where left out. */
  readonly weight?: (x: number) => number;
}

/** A fault whose size may lie anywhere on a logarithmic scale. */
function spread(block: CircuitBlock, family: Family): readonly Effect[] {
  const { low, high, count, shown, truth, size, beforeShare, weight = () => 1 } = family;
  const { values, ratio } = logGrid(low, high, count);
  const whole = values.reduce((sum, x) => sum + weight(x), 0);
  const half = Math.sqrt(ratio);
  return values.map((x) => ({
    shift: (slot) => shown(slot, x) - recorded(slot, block.nominal),
    // Within a step the size is as likely anywhere: a twelfth of its width squared.
    step: (slot) => (shown(slot, x * half) - shown(slot, x / half)) / Math.sqrt(12),
    beforeShare: beforeShare?.(x) ?? 1,
    logWeight: Math.log(weight(x) / whole),
    truth: truth(x),
    size: size(x),
  }));
}

/** What new readings of a circuit with these conductors show. */
function truthOf({ line, cpc, before }: Nominal): Truth {
  return { r1r2: line + cpc, r2: cpc, r1rn: 2 * line, zs: before + line + cpc };
}

const added = (truth: Truth, x: number, ...keys: readonly ("r1r2" | "r2" | "r1rn" | "zs")[]): Truth => ({
  ...truth,
  ...Object.fromEntries(keys.map((key) => [key, (truth[key] ?? 0) + x])),
});

/** The nominal circuit with the loop before it as the rest of the board has it. */
const here = ({ nominal }: CircuitBlock, { before }: Surroundings): Nominal => ({ ...nominal, before });

const inParallel = (a: number, b: number) => (a * b) / (a + b);

/** Where the furthest point of a ring is at the end of a spur, or a radial anywhere: a joint of some ohms. */
function joint(block: CircuitBlock, around: Surroundings, conductor: "line" | "cpc"): readonly Effect[] {
  const { nominal } = block;
  const feels = (slot: Slot) =>
    slot === "r1r2" || isLive(slot) || (conductor === "cpc" && slot === "r2" && !block.ring);
  return spread(block, {
    low: 0.03,
    high: 100,
    count: 60,
    shown: (slot, x) => recorded(slot, nominal) + (feels(slot) ? x : 0),
    truth: (x) =>
      added(
        truthOf(here(block, around)),
        x,
        "r1r2",
        "zs",
        ...(conductor === "cpc" ? (["r2"] as const) : (["r1rn"] as const)),
      ),
    size: ohms,
  });
}

/** How much more often an end reads as open where a conductor is than where anything else is wrong, as a logarithm. */
const SEEN_OPEN = Math.log(100);

const END = { r1: "r1", rn: "rn", re: "r2" } as const;
const isEnd = (slot: Slot): slot is keyof typeof END => slot in END;

const SIZES = [1, 1.5, 2.5, 4, 6, 10, 16, 25, 35];

function otherSize(block: CircuitBlock, around: Surroundings): readonly Effect[] {
  const { circuit, nominal, cpc, length } = block;
  const { size, material } = { size: circuit.cable.cpc, material: circuit.cable.material };
  if (!isKnown(size) || cpc === undefined || length === undefined || !isKnownFact(material)) return [];
  const own = conductorResistance(TERM.conductorPerMetre, size.value, material.word);
  if (!isKnown(own)) return [];
  const line = isKnown(circuit.cable.line) ? circuit.cable.line.value : 0;
  const sizes = SIZES.filter((one) => one !== size.value && one <= Math.max(line, size.value));
  const from = SIZES.indexOf(size.value);
  const weights = sizes.map((one) => 0.4 ** (Math.abs(SIZES.indexOf(one) - from) - 1));
  const all = weights.reduce((sum, one) => sum + one, 0);
  return sizes.flatMap((one, i): Effect[] => {
    const figure = conductorResistance(TERM.conductorPerMetre, one, material.word);
    if (!isKnown(figure)) return [];
    const ratio = figure.value / own.value;
    const with_ = (slot: Slot) => recorded(slot, { ...nominal, cpc: nominal.cpc * ratio });
    const truth = truthOf({ ...here(block, around), cpc: nominal.cpc * ratio });
    return [
      {
        shift: (slot) => with_(slot) - recorded(slot, nominal),
        step: (slot) => 0.02 * (with_(slot) - recorded(slot, nominal)),
        beforeShare: 1,
        logWeight: Math.log((weights[i] as number) / all),
        truth: { ...truth, cpcSize: one },
        size: `${one} mm²`,
      },
    ];
  });
}

/** The circuit as it is where a reading does not count: without a cable to go by, R1+R2 comes from Zs instead. */
function withoutReading(block: CircuitBlock, around: Surroundings, slot: "r1r2" | "zs"): Nominal {
  const nominal = here(block, around);
  const zs = block.readings[block.slots.indexOf("zs")]?.value;
  if (block.cableKnown || slot === "zs" || zs === undefined) return nominal;
  const whole = Math.max(0.01, zs - around.before);
  const share = nominal.line / (nominal.line + nominal.cpc) || 0.5;
  return { ...nominal, line: whole * share, cpc: whole * (1 - share) };
}

/** A reading that belongs elsewhere: another circuit's, to the digit, or anything a circuit of this kind may show. */
function foreign(block: CircuitBlock, around: Surroundings, slot: "r1r2" | "zs"): readonly Effect[] {
  if (!block.slots.some((one) => one !== slot && (block.cableKnown || isLive(one) !== isLive(slot)))) return [];
  const at = block.slots.indexOf(slot);
  const reading = block.readings[at];
  if (reading === undefined) return [];
  // A display of nought means less than its last digit.
  const value = Math.max(reading.value, reading.evidence.detail.resolution / 2);
  if (!(value > 0)) return [];
  const shift = () => 0;
  const truth = truthOf(withoutReading(block, around, slot));
  const effect = (logDensity: number, logWeight: number, size: string): Effect => ({
    shift,
    step: shift,
    beforeShare: 1,
    foreign: { slot, logDensity },
    logWeight,
    truth,
    size,
  });
  // Readings of circuits lie anywhere over three decades.
  const anywhere = effect(-Math.log(value * Math.log(1000)), Math.log(0.5), "");
  const twins = around.others.filter(
    (other) => other.readings[other.slots.indexOf(slot)]?.evidence.detail.text === reading.evidence.detail.text,
  );
  const twin = twins[0];
  if (twin === undefined) return [anywhere];
  const odds = Math.log((0.5 * twins.length) / around.others.length);
  return [anywhere, effect(-Math.log(reading.evidence.detail.resolution), odds, twin.circuit.designation)];
}

/** A ring whose conductors are in a reading this many times; a dead reading and all that is read live differ. */
function ringOnly(block: CircuitBlock, around: Surroundings, times: (slot: Slot) => number): readonly Effect[] {
  if (!block.ring || !block.slots.includes("r1r2")) return [];
  const { nominal } = block;
  const both = nominal.line + nominal.cpc;
  return [
    {
      shift: (slot) => (slot === "r1r2" || isLive(slot) ? (times(slot) - 1) * both : 0),
      step: () => 0,
      beforeShare: 1,
      logWeight: 0,
      truth: truthOf(here(block, around)),
      size: "",
    },
  ];
}

/** The explanations of one circuit's readings that do not agree. Shares are a judgement of how often each is met. */
export const CIRCUIT_FAULTS: readonly CircuitFault[] = [
  {
    id: "joint-in-protective-conductor",
    innocent: false,
    prior: 0.14,
    words: (size) => `a joint of about ${size} in the protective conductor, there in the dead and in the live test`,
    effects: (block, around) => joint(block, around, "cpc"),
  },
  {
    id: "joint-in-line",
    innocent: false,
    prior: 0.07,
    words: (size) => `a joint of about ${size} in the line conductor, there in the dead and in the live test`,
    effects: (block, around) => joint(block, around, "line"),
  },
  {
    id: "length-wrong",
    innocent: true,
    prior: 0.2,
    words: (size) => `the cable to the point of the reading is about ${size} long and not as written`,
    effects: (block, around) => {
      const { nominal, length } = block;
      if (!block.cableKnown || length === undefined) return [];
      const scaled = (k: number): Nominal => ({ ...nominal, line: nominal.line * k, cpc: nominal.cpc * k });
      return spread(block, {
        low: 0.2,
        high: 5,
        count: 40,
        shown: (slot, k) => recorded(slot, scaled(k)),
        truth: (k) => ({ ...truthOf({ ...scaled(k), before: around.before }), length: k * length }),
        size: (k) => printQuantity(Math.round(k * length * 2) / 2, "metre"),
        // Guesses are more often out by a third than by half or twice.
        weight: (k) => Math.exp(-Math.abs(Math.log(k)) / 0.4),
      });
    },
  },
  {
    id: "protective-conductor-size-wrong",
    innocent: false,
    prior: 0.12,
    words: (size) => `the protective conductor has ${size} and not the size written down`,
    effects: otherSize,
  },
  {
    id: "leads-not-nulled-here",
    innocent: true,
    prior: 0.05,
    words: (size) => `the leads were not nulled for the dead test of this circuit: about ${size} too much`,
    effects: (block, around) =>
      spread(block, {
        low: 0.04,
        high: 0.8,
        count: 25,
        shown: (slot, x) => recorded(slot, block.nominal) + (isLive(slot) ? 0 : x),
        truth: () => truthOf(here(block, around)),
        size: ohms,
      }),
  },
  {
    id: "r1r2-at-nearer-point",
    innocent: true,
    prior: 0.08,
    words: (size) => `R1+R2 was read at a nearer point, about ${size} of the way`,
    effects: (block, around) =>
      spread(block, {
        low: 0.1,
        high: 0.95,
        count: 25,
        shown: (slot, k) => recorded(slot, block.nominal) * (slot === "r1r2" || slot === "r2" ? k : 1),
        truth: () => truthOf(here(block, around)),
        size: (k) => `${Math.round(k * 100)} %`,
      }),
  },
  {
    id: "r1r2-not-of-this-circuit",
    innocent: true,
    prior: 0.12,
    words: (size) =>
      size === ""
        ? "R1+R2 as written is not of this circuit: misread, mistyped or of another circuit"
        : `R1+R2 as written is not of this circuit; it is that of circuit ${size} to the digit`,
    effects: (block, around) => foreign(block, around, "r1r2"),
  },
  {
    id: "r1r2-not-quartered",
    innocent: true,
    prior: 0.05,
    words: () => "R1+R2 as written is r1 and r2 added up, and not what the furthest point of the ring reads",
    effects: (block, around) => ringOnly(block, around, (slot) => (slot === "r1r2" ? 4 : 1)),
  },
  {
    id: "no-ring-or-open",
    innocent: false,
    prior: 0.15,
    words: () => "the circuit reads as a radial of this length: it is no ring, or the ring is open",
    // With its ends read, they say whether a ring is open.
    effects: (block, around) =>
      block.slots.some(isEnd) || block.openEnds.length > 0 ? [] : ringOnly(block, around, () => 4),
  },
  {
    id: "ring-ends-exchanged",
    innocent: true,
    prior: 0.05,
    words: () => "r1 and r2 changed places in the schedule",
    effects: (block, around) => {
      if (!block.slots.includes("r1") || !block.slots.includes("re")) return [];
      const { nominal } = block;
      const other: Readonly<Partial<Record<Slot, Slot>>> = { r1: "re", re: "r1" };
      return [
        {
          shift: (slot) => recorded(other[slot] ?? slot, nominal) - recorded(slot, nominal),
          step: () => 0,
          beforeShare: 1,
          logWeight: 0,
          truth: truthOf(here(block, around)),
          size: "",
        },
      ];
    },
  },
  {
    id: "zs-not-of-this-circuit",
    innocent: true,
    prior: 0.08,
    words: (size) =>
      size === ""
        ? "Zs as written is not of this circuit: misread, mistyped or of another circuit"
        : `Zs as written is not of this circuit; it is that of circuit ${size} to the digit`,
    effects: (block, around) => foreign(block, around, "zs"),
  },
  {
    id: "resistance-in-loop-test-only",
    innocent: false,
    prior: 0.1,
    words: (size) =>
      `about ${size} in the way of the loop test that the dead test does not have: a contact that opens under current, a protective conductor that is not on the earth terminal, a poor probe or plug contact, or another point`,
    effects: (block, around) => {
      const felt = (feels: (slot: Slot) => boolean) =>
        spread(block, {
          low: 0.05,
          high: 2000,
          count: 75,
          shown: (slot, x) => recorded(slot, block.nominal) + (feels(slot) ? x : 0),
          truth: (x) => added(truthOf(here(block, around)), x, "zs"),
          size: ohms,
        });
      if (!block.slots.includes("fed")) return felt((slot) => slot === "zs");
      // A poor contact of the probe is in one reading, one in the circuit in that of the board behind it as well.
      return [...felt((slot) => slot === "zs"), ...felt(isLive)].map((effect) => ({
        ...effect,
        logWeight: effect.logWeight - Math.LN2,
      }));
    },
  },
  {
    id: "warm-conductors",
    innocent: true,
    prior: 0.05,
    words: (size) =>
      `the conductors were warm from load in the live test: ${size} more resistance than in the dead test`,
    effects: (block, around) =>
      spread(block, {
        low: 0.04,
        high: 0.2,
        count: 8,
        shown: (slot, w) =>
          recorded(slot, block.nominal) + (isLive(slot) ? w * (block.nominal.line + block.nominal.cpc) : 0),
        truth: () => truthOf(here(block, around)),
        size: (w) => `${Math.round(w * 100)} %`,
      }),
  },
  {
    id: "ring-bridged",
    innocent: false,
    prior: 0.1,
    words: (size) =>
      `a cable bridges the ring, so that its ends read about ${size} of what the length gives while the furthest point does not`,
    effects: (block, around) =>
      block.ring && block.cableKnown
        ? spread(block, {
            low: 0.15,
            high: 0.93,
            count: 25,
            shown: (slot, k) => recorded(slot, block.nominal) * (isEnd(slot) ? k : 1),
            truth: () => truthOf(here(block, around)),
            size: (k) => `${Math.round(k * 100)} %`,
          })
        : [],
  },
  {
    id: "ring-conductor-open",
    innocent: false,
    prior: 1,
    words: (size) => `the ring is open: no continuity from end to end, ${size}`,
    // An end that reads as open says it by itself; the rest only has to go with it.
    effects: (block, around) =>
      block.openEnds.length === 0
        ? []
        : spread(block, {
            low: 1.02,
            high: 4.5,
            count: 25,
            shown: (slot, k) => {
              const { line, cpc } = block.nominal;
              return recorded(slot, block.nominal) + (slot === "r1r2" || isLive(slot) ? (k - 1) * (line + cpc) : 0);
            },
            truth: () => truthOf(here(block, around)),
            size: () => block.openEnds.join(", "),
          }).map((effect) => ({ ...effect, logWeight: effect.logWeight + SEEN_OPEN })),
  },
  {
    id: "ring-conductor-high",
    innocent: false,
    prior: 0.1,
    words: (size) => `a joint or a misreading in one conductor of the ring: ${size}`,
    effects: (block, around) =>
      (["r1", "rn", "re"] as const).flatMap((end) =>
        block.slots.includes(end)
          ? spread(block, {
              low: 0.05,
              high: 20,
              count: 30,
              shown: (slot, x) => recorded(slot, block.nominal) + (slot === end ? x : 0),
              truth: () => truthOf(here(block, around)),
              size: (x) => `about ${ohms(x)} too much in ${END[end]}`,
            }).map((effect) => ({ ...effect, logWeight: effect.logWeight - Math.log(3) }))
          : [],
      ),
  },
  {
    id: "parallel-path",
    innocent: false,
    prior: 0.15,
    words: (size) =>
      `another way back to the main earthing terminal of about ${size} (bonded pipes, steelwork, another circuit's conductor) carries part of the loop test's current`,
    effects: (block, around) => parallel(block, around, false),
  },
  {
    id: "parallel-path-in-both-tests",
    innocent: false,
    prior: 0.05,
    words: (size) =>
      `a way of about ${size} beside the protective conductor (shared conductor, armour, conduit, bonding left on) took part in the dead test as well`,
    effects: (block, around) => parallel(block, around, true),
  },
  {
    id: "other-earth",
    innocent: false,
    prior: 0.08,
    words: (size) =>
      `an earth of its own at the far end, about ${size}: the earth of another supply, bonded metal in the ground, an electrode`,
    effects: (block, around) => {
      const { line, cpc, before } = here(block, around);
      if (!(before > 0.02)) return [];
      const way = before + cpc;
      return spread(block, {
        low: 0.05,
        high: Math.max(0.5, 3 * before),
        count: 60,
        shown: (slot, p) =>
          isLive(slot)
            ? line + inParallel(way, p) + (p / (way + p)) ** 2 * (block.nominal.before - before)
            : recorded(slot, block.nominal),
        truth: (p) => ({ ...truthOf(here(block, around)), zs: line + inParallel(way, p), beyond: before + p }),
        size: ohms,
        beforeShare: (p) => (p / (way + p)) ** 2,
      });
    },
  },
  {
    id: "loop-line-to-neutral",
    innocent: true,
    prior: 0.05,
    words: () => "Zs was read between line and neutral",
    effects: (block, around) => {
      const { lineNeutral } = around;
      if (lineNeutral === undefined) return [];
      const shown = lineNeutral + 2 * block.nominal.line;
      return spread(block, {
        low: 0.9,
        high: 1.1,
        count: 5,
        shown: (slot, k) => (slot === "zs" ? k * shown : recorded(slot, block.nominal)),
        truth: () => truthOf(here(block, around)),
        size: () => "",
        beforeShare: () => 0,
      });
    },
  },
];

function parallel(block: CircuitBlock, around: Surroundings, dead: boolean): readonly Effect[] {
  const { nominal } = block;
  if (!(nominal.cpc > 0)) return [];
  const feels = (slot: Slot) => isLive(slot) || (dead && (slot === "r1r2" || slot === "r2"));
  const less = (x: number) => nominal.cpc - inParallel(nominal.cpc, x);
  return spread(block, {
    low: nominal.cpc / 30,
    high: nominal.cpc * 8,
    count: 30,
    shown: (slot, x) => recorded(slot, nominal) - (feels(slot) ? less(x) : 0),
    truth: (x) => ({
      ...added(truthOf(here(block, around)), -less(x), "zs", ...(dead ? (["r1r2", "r2"] as const) : [])),
      beyond: x,
    }),
    size: ohms,
  });
}
