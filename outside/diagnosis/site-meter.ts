import { type InspectionFile, parseInspectionData } from "@good-grounds/inspection";
import type { Chance } from "../../examples/simulate/chance.ts";
import { smallestFile } from "../files/arbitrary-file.ts";
import { type Planted, type TrueRing, trueReadings } from "./simulated-ring.ts";

/**
 * Rings, conductors and a meter on site, with other assumptions than those of the diagnosis and of the other simulator:
 * conductors anywhere within 6 % of the greatest resistance, a gain for each instrument, a last digit that wanders by
 * one either way, two contacts that are never perfect, leads nulled to a hundredth of an ohm, a length that was paced.
 */

/** Greatest resistance of copper conductors by size, mΩ/m at 20 °C. */
const GREATEST: ReadonlyMap<number, number> = new Map([
  [1, 18.1],
  [1.5, 12.1],
  [2.5, 7.41],
  [4, 4.61],
]);

/** Sizes of a ring's conductors, mm². */
export interface RingSizes {
  readonly line: number;
  readonly cpc: number;
}

export interface SiteRing {
  readonly ring: TrueRing;
  /** Length as it was paced, m; undefined where it was not. */
  readonly paced: number | undefined;
}

/** A ring of given length with 4 to 12 points at uneven distances. `leg` of a joint is drawn. */
export function siteRing(
  chance: Chance,
  metres: number,
  { line, cpc }: RingSizes,
  plant: (legs: number) => Planted,
): SiteRing {
  const count = 4 + Math.floor(9 * chance.uniform());
  const gaps = Array.from({ length: count + 1 }, () => 0.2 + chance.uniform() ** 2);
  const whole = gaps.reduce((a, b) => a + b, 0);
  let at = 0;
  const points = gaps.slice(0, count).map((gap) => {
    at += (gap / whole) * metres;
    return at;
  });
  const warm = 1 + 0.00393 * (chance.between(6, 24) - 20);
  const drawn = (size: number) => ((GREATEST.get(size) ?? Number.NaN) / 1000) * warm * chance.between(0.94, 1);
  const ofLine = drawn(line);
  const planted = plant(count + 1);
  return {
    ring: {
      metres,
      points,
      perMetre: [ofLine, ofLine * chance.between(0.993, 1.007), drawn(cpc)],
      nominal: [Number.NaN, Number.NaN],
      planted,
    },
    paced: chance.uniform() < 0.5 ? Math.round(metres * chance.between(0.92, 1.08)) : undefined,
  };
}

/** The greatest error of the meter's gain, as a part, within its stated 2 %. */
const GAIN = 0.015;

/** What a display with a last digit of 0.01 Ω shows of resistances, with the errors of one meter and its leads. */
export function siteMeter(chance: Chance, gain = GAIN): (ohms: number) => string {
  const scale = 1 + chance.between(-gain, gain);
  const leads = chance.between(-0.005, 0.01);
  const contact = () => -0.003 * Math.log(1 - chance.uniform());
  return (ohms) => {
    if (!(ohms < 99.9)) return ">99.9 Ω";
    const shown = ohms * scale + leads + contact() + contact() + chance.between(-0.01, 0.01);
    return `${Math.max(0, shown).toFixed(2)} Ω`;
  };
}

/** An inspection file with one ring, as it would be written down: sizes and material, the readings, the length if paced. */
export function siteFile(
  { ring, paced }: SiteRing,
  read: (ohms: number) => string,
  written: RingSizes,
  accuracy: string | undefined,
): InspectionFile {
  const truth = trueReadings(ring);
  const shown = (ohms: number) => ({ shown: read(ohms), with: "m" });
  const [r1, rn, r2] = truth.ends.map(shown);
  const listed = (values: readonly number[]) =>
    values.map((ohms, i) => ({ point: `socket ${i + 1}`, reading: shown(ohms) }));
  const circuit = {
    id: "ring",
    designation: "1",
    description: "ring final circuit",
    shape: "ring",
    cable: {
      line: `${written.line} mm²`,
      cpc: `${written.cpc} mm²`,
      cpcArrangement: "in-cable",
      material: "copper",
      ...(paced === undefined ? {} : { length: `${paced} m` }),
    },
    readings: { r1, rn, r2, crossLineNeutral: listed(truth.lineNeutral), crossLineCpc: listed(truth.lineCpc) },
  };
  const parsed = parseInspectionData({
    ...smallestFile(),
    instruments: [
      {
        id: "m",
        kind: "tester",
        serial: "1",
        ...(accuracy === undefined ? {} : { accuracy: { continuity: accuracy } }),
      },
    ],
    boards: [{ id: "b", name: "Board", fedFrom: "supply", circuits: [circuit] }],
  });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return parsed.file;
}
