import { EARTHING_SYSTEMS } from "@good-grounds/core";
import { StatedQuantity } from "../../keypad/stated-quantity.tsx";
import { NUMBER, StatedWord, YES_NO } from "../../keypad/stated-word.tsx";
import { Section } from "../../parts/section.tsx";
import { BOARD, EARTHING, SUPPLY } from "../../words/installation.ts";
import { pick, YES } from "./choices.ts";

/** What the distributor brings in. */
export function System() {
  return (
    <Section title={SUPPLY.system}>
      <StatedWord
        spot={{ path: "supply/earthing" }}
        label={SUPPLY.earthing}
        options={pick(EARTHING, EARTHING_SYSTEMS)}
      />
      <StatedWord
        spot={{ path: "supply/phases" }}
        label={SUPPLY.phases}
        options={{ "1": BOARD.one, "3": BOARD.three }}
        written={NUMBER}
      />
      <StatedWord
        spot={{ path: "supply/liveConductors" }}
        label={SUPPLY.liveConductors}
        options={SUPPLY.liveCounts}
        written={NUMBER}
      />
      <StatedWord spot={{ path: "supply/current" }} label={SUPPLY.current} options={SUPPLY.currents} />
      <StatedQuantity
        spot={{ path: "supply/frequency" }}
        label={SUPPLY.frequency}
        unit="hertz"
        symbol="Hz"
        usual={["50"]}
      />
      <StatedQuantity
        spot={{ path: "supply/nominalVoltage" }}
        label={SUPPLY.nominal}
        unit="volt"
        symbol="V"
        usual={["230"]}
      />
      <StatedQuantity
        spot={{ path: "supply/lineVoltage" }}
        label={SUPPLY.lineVoltage}
        unit="volt"
        symbol="V"
        usual={["400"]}
      />
      <StatedWord spot={{ path: "supply/public" }} label={SUPPLY.public} options={YES} written={YES_NO} />
    </Section>
  );
}
