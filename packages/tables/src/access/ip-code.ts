import { OBJECT_NUMERALS, type ObjectProtection, objectProtection } from "./objects.ts";
import { ACCESS_LETTERS, type AccessLetter, type AccessProbe, accessProbe } from "./probes.ts";
import { type WaterProtection, waterProtection } from "./water.ts";

/** An IP code taken apart. Null stands for X or a letter that is not there: nothing is claimed. Zero is no protection. */
export interface IpCode {
  readonly objects: ObjectProtection | 0 | null;
  readonly water: WaterProtection | 0 | null;
  /** The strictest access probe the code claims clearance for, by its letter or its first numeral. */
  readonly access: AccessProbe | null;
}

const FORM = /^IP([0-6X])([0-8X])([A-D])?$/;

/** Reads "IP2X", "IPXXB", "IP44" or "IP20C"; undefined for anything else. */
export function ipCode(text: string): IpCode | undefined {
  const [, first, second, letter] = FORM.exec(text) ?? [];
  if (first === undefined || second === undefined) return undefined;
  const numeral = OBJECT_NUMERALS.find((one) => String(one) === first);
  const objects = numeral === undefined ? none(first) : objectProtection(numeral);
  const water = waterProtection(Number(second)) ?? none(second);
  const byNumeral = objects === null || objects === 0 ? undefined : objects.probe;
  const strictest = stricter(
    byNumeral,
    ACCESS_LETTERS.find((one) => one === letter),
  );
  return Object.freeze({ objects, water, access: strictest === undefined ? null : accessProbe(strictest) });
}

function none(character: string): 0 | null {
  return character === "0" ? 0 : null;
}

function stricter(a: AccessLetter | undefined, b: AccessLetter | undefined): AccessLetter | undefined {
  if (a === undefined || b === undefined) return a ?? b;
  return a > b ? a : b;
}
