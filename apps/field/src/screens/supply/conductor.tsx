import { StatedQuantity } from "../../keypad/stated-quantity.tsx";
import { StatedWord } from "../../keypad/stated-word.tsx";
import { MATERIAL, SUPPLY } from "../../words/installation.ts";

/** Size, material and length of a conductor. */
export function Conductor({ path, usual }: { readonly path: string; readonly usual: readonly string[] }) {
  return (
    <>
      <StatedQuantity
        spot={{ path: `${path}/size` }}
        label={SUPPLY.size}
        unit="square-millimetre"
        symbol="mm²"
        usual={usual}
      />
      <StatedWord spot={{ path: `${path}/material` }} label={SUPPLY.material} options={MATERIAL} />
      <StatedQuantity spot={{ path: `${path}/length` }} label={SUPPLY.length} unit="metre" symbol="m" />
    </>
  );
}
