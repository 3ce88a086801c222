import { type Fact, fact, factNotKnown, isKnownFact, matter, type PremisesUse, type Tenure } from "@good-grounds/core";
import { ofPremises } from "../of-things.ts";
import { stated } from "../property.ts";

const LET_DWELLING = matter("let-dwelling", "a home that is let");

/** Whether it is a home that somebody rents. Tenure "other" leaves it open. */
export const letDwelling = stated("let-dwelling", "a home that is let", (spoken) =>
  ofPremises(spoken, ({ use, tenure }) => {
    const isLet = isLetHome(use, tenure);
    return isLet === undefined
      ? factNotKnown(LET_DWELLING, ["brief", "tenure"])
      : fact(LET_DWELLING, isLet, ["brief", "tenure"]);
  }),
);

function isLetHome(use: Fact<PremisesUse>, tenure: Fact<Tenure>): boolean | undefined {
  const isHome = isKnownFact(use) ? use.word === "dwelling" || use.word === "house-in-multiple-occupation" : undefined;
  if (isHome === false) return false;
  if (!isKnownFact(tenure) || tenure.word === "other") return undefined;
  return tenure.word === "private-rented" || tenure.word === "social-rented" ? isHome : false;
}
