import { StatedQuantity } from "../../keypad/stated-quantity.tsx";
import { NUMBER, StatedWord, YES_NO } from "../../keypad/stated-word.tsx";
import { BOARD } from "../../words/installation.ts";
import { YES } from "../supply/choices.ts";

interface MainSwitchFieldsProps {
  /** The place of the switch, which is one value. */
  readonly path: string;
  /** What its rating is called. */
  readonly rated: string;
  readonly usual: readonly string[];
  /** Whether it is asked if there is one at all. */
  readonly asksFitted?: boolean;
}

/** A main switch as marked. */
export function MainSwitchFields({ path, rated, usual, asksFitted = false }: MainSwitchFieldsProps) {
  return (
    <>
      {asksFitted && (
        <StatedWord spot={{ path, inner: ["fitted"] }} label={BOARD.switchFitted} options={YES} written={YES_NO} />
      )}
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
