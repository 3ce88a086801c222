import { Chance } from "../../examples/simulate/chance.ts";
import { compute } from "../compute.ts";
import { trueReadings } from "./simulated-ring.ts";
import { siteMeter, siteRing } from "./site-meter.ts";

/**
 * Circuits as they are, read by meters with other errors than those the checks allow for, and the figures typed into
 * computations by hand: sound ones, and ones with a fault of a stated size.
 */

/** Line and protective conductor of radial circuits, mm², with their greatest resistances, mΩ/m at 20 °C. */
const RADIALS = [
  { line: 1.5, cpc: 1, ohms: [12.1, 18.1] },
  { line: 2.5, cpc: 1.5, ohms: [7.41, 12.1] },
  { line: 4, cpc: 1.5, ohms: [4.61, 12.1] },
  { line: 6, cpc: 2.5, ohms: [3.08, 7.41] },
] as const;

/** Greatest resistance of a protective conductor one size smaller than it was written down, mΩ/m. */
const A_SIZE_LESS: Readonly<Record<number, number>> = { 1: 36, 1.5: 18.1, 2.5: 12.1 };

type RadialFault =
  | "sound"
  | "joint of 0.3 Ω"
  | "joint of 0.3 Ω in the loop only"
  | "decimal slipped"
  | "size wrong"
  | "Zs of another circuit";

type Figures = Record<string, string | string[]>;

interface Radial {
  readonly agreement: Figures;
  readonly length: Figures;
}

/** Loop meters: a gain within ±4 %, a last digit that wanders by two, a contact. */
function loopMeter(chance: Chance): (ohms: number) => string {
  const scale = 1 + chance.between(-0.04, 0.04);
  return (ohms) => `${Math.max(0, ohms * scale + 0.005 * chance.uniform() + chance.between(-0.02, 0.02)).toFixed(2)} Ω`;
}

function radial(chance: Chance, fault: RadialFault): Radial {
  const cable = RADIALS[Math.floor(RADIALS.length * chance.uniform())] as (typeof RADIALS)[number];
  const metres = chance.between(5, 40);
  const celsius = chance.between(6, 24);
  const warm = 1 + 0.00393 * (celsius - 20);
  const ofLine = (cable.ohms[0] / 1000) * chance.between(0.94, 1);
  const greatest = fault === "size wrong" ? (A_SIZE_LESS[cable.cpc] ?? Number.NaN) : cable.ohms[1];
  const ofCpc = (greatest / 1000) * chance.between(0.94, 1);
  const joint = fault === "joint of 0.3 Ω" ? 0.3 : 0;
  const dead = metres * (ofLine + ofCpc) * warm + joint;
  const before = chance.between(0.08, 0.6);
  const elsewhere = fault === "Zs of another circuit" ? chance.between(0.5, 1.2) : 0;
  const live = before + dead + elsewhere + (fault === "joint of 0.3 Ω in the loop only" ? 0.3 : 0);
  const loop = loopMeter(chance);
  const shown = siteMeter(chance)(dead);
  const slipped = (text: string) => {
    const ohms = Number.parseFloat(text);
    return ohms < 1 && chance.uniform() < 0.5 ? `${(ohms * 10).toFixed(1)} Ω` : `${(ohms / 10).toFixed(2)} Ω`;
  };
  const r1r2 = fault === "decimal slipped" ? slipped(shown) : shown;
  return {
    agreement: { zs: loop(live), zdb: loop(before), r1r2 },
    length: {
      r1r2,
      line: `${cable.line} mm²`,
      cpc: `${cable.cpc} mm²`,
      material: "copper",
      length: `${Math.max(1, Math.round(metres * chance.between(0.97, 1.03)))} m`,
      lengthFound: "by-drawing",
      ...(chance.uniform() < 0.5 ? { temperature: `${Math.round(celsius)} °C` } : {}),
    },
  };
}

type RingFaultByHand = "sound" | "joint of 0.3 Ω" | "size wrong" | "line open" | "decimal slipped";

function ringFigures(chance: Chance, fault: RingFaultByHand): Figures {
  const plant = (legs: number) => {
    const leg = Math.floor(legs * chance.uniform());
    if (fault === "joint of 0.3 Ω") return { kind: "joint", conductor: "cpc", leg, ohms: 0.3 } as const;
    return fault === "line open"
      ? ({ kind: "open", conductors: ["line"], leg } as const)
      : ({ kind: "sound" } as const);
  };
  const { ring, paced } = siteRing(
    chance,
    chance.between(25, 90),
    { line: 2.5, cpc: fault === "size wrong" ? 1 : 1.5 },
    plant,
  );
  const read = siteMeter(chance);
  const truth = trueReadings(ring);
  const [r1 = "", rn = "", r2 = ""] = truth.ends.map(read);
  return {
    r1,
    rn,
    r2: fault === "decimal slipped" ? `${(Number.parseFloat(r2) / 10).toFixed(2)} Ω` : r2,
    crossLineNeutral: truth.lineNeutral.map(read),
    crossLineCpc: truth.lineCpc.map(read),
    r1r2: read(Math.max(...truth.lineCpc)),
    line: "2.5 mm²",
    cpc: "1.5 mm²",
    material: "copper",
    ...(paced === undefined ? {} : { length: `${paced} m` }),
  };
}

type BondFault = "sound" | "clamp of 0.3 Ω";

function bondFigures(chance: Chance, fault: BondFault): Figures {
  const metres = chance.between(2, 25);
  const joints = chance.between(0.005, 0.04) + (fault === "sound" ? 0 : 0.3);
  const shown = siteMeter(chance)(metres * 0.00183 * chance.between(0.94, 1) + joints);
  return { resistance: shown, bond: "10 mm²", material: "copper", length: `${Math.round(metres)} m` };
}

/** How a check of agreement is asked, and of what. */
export interface ByHand {
  readonly check: "zs-agreement" | "r1r2-length" | "ring-continuity" | "bonding-continuity";
  readonly fault: string;
  readonly figures: (chance: Chance) => Figures;
}

const radials = (check: "zs-agreement" | "r1r2-length", fault: RadialFault): ByHand => ({
  check,
  fault,
  figures: (chance) => radial(chance, fault)[check === "zs-agreement" ? "agreement" : "length"],
});
const rings = (fault: RingFaultByHand): ByHand => ({
  check: "ring-continuity",
  fault,
  figures: (chance) => ringFigures(chance, fault),
});
const bonds = (fault: BondFault): ByHand => ({
  check: "bonding-continuity",
  fault,
  figures: (chance) => bondFigures(chance, fault),
});

export const BY_HAND: readonly ByHand[] = [
  radials("zs-agreement", "sound"),
  radials("r1r2-length", "sound"),
  rings("sound"),
  bonds("sound"),
  radials("zs-agreement", "decimal slipped"),
  radials("zs-agreement", "Zs of another circuit"),
  radials("zs-agreement", "joint of 0.3 Ω in the loop only"),
  radials("r1r2-length", "decimal slipped"),
  radials("r1r2-length", "joint of 0.3 Ω"),
  radials("r1r2-length", "size wrong"),
  rings("decimal slipped"),
  rings("joint of 0.3 Ω"),
  rings("size wrong"),
  rings("line open"),
  bonds("clamp of 0.3 Ω"),
];

/** What half of a reading's error is taken for where somebody types it: a gain of 5 % and two digits. */
export function withDoubt(text: string | string[]): string | string[] {
  if (Array.isArray(text)) return text.map((one) => withDoubt(one) as string);
  if (!/^\d+\.\d+ Ω$/.test(text)) return text;
  const ohms = Number.parseFloat(text);
  return `${ohms.toFixed(2)} ± ${(0.05 * ohms + 0.02).toFixed(3)} Ω`;
}

/** What is said of so many circuits: how many not met, and how many too near to call. */
export interface SaidByHand {
  readonly notMet: number;
  readonly tooNear: number;
}

/** Asks a check of so many circuits. The same seed gives the same circuits. */
export function saidByHand(
  { check, figures }: ByHand,
  circuits: number,
  seed: number,
  typed = (figure: string | string[]): string | string[] => figure,
): SaidByHand {
  const chance = new Chance(seed);
  const count = { notMet: 0, tooNear: 0 };
  for (let i = 0; i < circuits; i++) {
    const given = Object.fromEntries(Object.entries(figures(chance)).map(([need, figure]) => [need, typed(figure)]));
    const verdict = compute(check, given).judgement?.verdict;
    if (verdict === "not-met") count.notMet++;
    if (verdict === "too-near") count.tooNear++;
  }
  return count;
}
