import { RCD_STANDARDS, RCD_TYPES } from "@good-grounds/core";
import type { Spot } from "../../keypad/spot.ts";
import { StatedQuantity } from "../../keypad/stated-quantity.tsx";
import { StatedWord } from "../../keypad/stated-word.tsx";
import { CIRCUIT, DELAY } from "../../words/installation.ts";
import { asThemselves } from "./device-fields.tsx";

const STANDARDS = asThemselves(RCD_STANDARDS);
const TYPES = asThemselves(RCD_TYPES);

/** What an RCD is, as marked; its tests belong to the readings. */
export function RcdParticulars({ path, inner = [] }: Spot) {
  const at = (name: string): Spot =>
    inner.length === 0 ? { path: `${path}/${name}` } : { path, inner: [...inner, name] };
  return (
    <>
      <StatedWord spot={at("type")} label={CIRCUIT.rcdType} options={TYPES} />
      <StatedQuantity
        spot={at("residual")}
        label={CIRCUIT.rcdResidual}
        unit="ampere"
        symbol="mA"
        usual={["10", "30", "100", "300"]}
      />
      <StatedWord spot={at("delay")} label={CIRCUIT.rcdDelay} options={DELAY} />
      <StatedWord spot={at("standard")} label={CIRCUIT.standard} options={STANDARDS} />
      <StatedQuantity spot={at("rated")} label={CIRCUIT.rated} unit="ampere" symbol="A" usual={["63", "80", "100"]} />
    </>
  );
}
