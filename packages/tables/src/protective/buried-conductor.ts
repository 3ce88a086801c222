import { type Published, published, TERM } from "@good-grounds/core";
import { source } from "../sources.ts";

const COPPER = source(
  "BS 7671 542.3.1 and Table 54.1, quoted in a trade discussion",
  "17th edition and later",
  "published",
);
const STEEL = source("BS 7671 542.3.1 and Table 54.1", "17th edition and later", "memory");

const BURIED = Object.freeze({
  copper: {
    bare: published(TERM.requiredArea, 25, COPPER, "buried, not protected against corrosion, copper"),
    sheathed: published(TERM.requiredArea, 16, COPPER, "buried, sheathed, not mechanically protected, copper"),
    protected: published(TERM.requiredArea, 2.5, COPPER, "buried, sheathed and mechanically protected, copper"),
  },
  steel: {
    bare: published(TERM.requiredArea, 50, STEEL, "buried, not protected against corrosion, steel"),
    sheathed: published(TERM.requiredArea, 16, STEEL, "buried, sheathed, not mechanically protected, steel"),
    protected: published(TERM.requiredArea, 10, STEEL, "buried, sheathed and mechanically protected, steel"),
  },
});

/** Least size of a buried earthing conductor, mm². */
export function buriedEarthingConductor(
  run: { readonly sheathed: boolean; readonly mechanicallyProtected: boolean },
  material: "copper" | "steel" = "copper",
): Published<"square-millimetre"> {
  const of = BURIED[material];
  if (!run.sheathed) return of.bare;
  return run.mechanicallyProtected ? of.protected : of.sheathed;
}
