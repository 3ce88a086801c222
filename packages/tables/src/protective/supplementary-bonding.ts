import { type NotKnown, type Published, published, TERM } from "@good-grounds/core";
import { byKey } from "../by-key.ts";
import { notTabulated } from "../not-tabulated.ts";
import { remembered } from "../remembered.ts";
import { source } from "../sources.ts";

type Answer = Published<"square-millimetre"> | NotKnown<"square-millimetre">;

/**
 * The two parts a supplementary bond joins. `smallerCpc`: the smaller protective conductor of the two exposed parts;
 * `cpc`: that of the exposed part. Sizes in mm² of copper. Where one of two extraneous parts is also bonded to an exposed
 * part, ask as for that exposed part.
 */
export type SupplementaryBond = { readonly mechanicallyProtected: boolean } & (
  | { readonly between: "exposed-and-exposed"; readonly smallerCpc: number }
  | { readonly between: "exposed-and-extraneous"; readonly cpc: number }
  | { readonly between: "extraneous-and-extraneous" }
);

/** Least size without mechanical protection, and with it between two extraneous parts, mm². */
const FLOOR = { unprotected: 4, extraneousProtected: 2.5 } as const;

const R54421 = source("BS 7671 544.2.1", "2008 to 2018+A4", "memory", {
  formula: "conductance of the smaller protective conductor, at least 4 mm² without mechanical protection",
});
const R54422 = source("BS 7671 544.2.2", "2008 to 2018+A4", "memory", {
  formula: "half the conductance of the protective conductor, at least 4 mm² without mechanical protection",
});
const R54423 = source("BS 7671 544.2.3", "2008 to 2018+A4", "published");

const bySize = (part: number, from: typeof R54421, mechanicallyProtected: boolean): ((area: number) => Answer) =>
  remembered((area) => {
    const words = `protective conductor of ${area} mm², ${mechanicallyProtected ? "" : "not "}mechanically protected`;
    if (!(area > 0)) return notTabulated(TERM.requiredArea, from.work, words);
    const wanted = mechanicallyProtected ? area * part : Math.max(FLOOR.unprotected, area * part);
    return published(TERM.requiredArea, wanted, from, words);
  });

const FROM_CPC = byKey(
  [true, false].flatMap((mechanicallyProtected) => [
    [`exposed-and-exposed ${mechanicallyProtected}`, bySize(1, R54421, mechanicallyProtected)] as const,
    [`exposed-and-extraneous ${mechanicallyProtected}`, bySize(0.5, R54422, mechanicallyProtected)] as const,
  ]),
);

const PROTECTED = published(TERM.requiredArea, FLOOR.extraneousProtected, R54423, "mechanically protected");
const UNPROTECTED = published(TERM.requiredArea, FLOOR.unprotected, R54423, "not mechanically protected");

/** Least size of a supplementary bonding conductor, mm² copper. */
export function supplementaryBond(bond: SupplementaryBond): Answer {
  if (bond.between === "extraneous-and-extraneous") return bond.mechanicallyProtected ? PROTECTED : UNPROTECTED;
  const area = bond.between === "exposed-and-exposed" ? bond.smallerCpc : bond.cpc;
  const answer = FROM_CPC.get(`${bond.between} ${bond.mechanicallyProtected}`);
  return answer?.(area) ?? notTabulated(TERM.requiredArea, "544.2", bond.between);
}
