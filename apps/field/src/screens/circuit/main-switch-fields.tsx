import { StatedQuantity } from "../../keypad/stated-quantity.tsx";
import { NUMBER, StatedWord } from "../../keypad/stated-word.tsx";
import { BOARD } from "../../words/installation.ts";

interface MainSwitchFieldsProps {
  /** The place of the switch, which is one value. */
  readonly path: string;
  /** What its rating is called. */
  readonly rated: string;
  readonly usual: readonly string[];
}

/** A main switch as marked. */
export function MainSwitchFields({ path, rated, usual }: MainSwitchFieldsProps) {
  return (
    <>
      <StatedQuantity spot={{ path, inner: ["rated"] }} label={rated} unit="ampere" symbol="A" usual={usual} />
      <StatedWord
        spot={{ path, inner: ["poles"] }}
        label={BOARD.poles}
        options={{ "1": "1", "2": "2", "3": "3", "4": "4" }}
        written={NUMBER}
        isStated={false}
      />
    </>
  );
}
