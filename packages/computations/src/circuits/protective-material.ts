import { type ConductorMaterial, type CpcArrangement, type Fact, isKnownFact } from "@good-grounds/core";
import type { ProtectiveMaterial } from "@good-grounds/tables";

/** What the protective conductor is of: armour and conduit are steel whatever the cores are; a sheath is not known by its name. */
export function protectiveMaterial(
  arrangement: Fact<CpcArrangement>,
  material: Fact<ConductorMaterial>,
): ProtectiveMaterial | undefined {
  if (!isKnownFact(arrangement)) return undefined;
  switch (arrangement.word) {
    case "armour":
    case "conduit":
      return "steel";
    case "in-cable":
    case "separate":
      return isKnownFact(material) ? material.word : undefined;
    default:
      return undefined;
  }
}
