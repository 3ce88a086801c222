import { StatedWord, YES_NO } from "../../keypad/stated-word.tsx";
import { Section } from "../../parts/section.tsx";
import { SUPPLY } from "../../words/installation.ts";
import { YES } from "./choices.ts";
import { Conductor } from "./conductor.tsx";

/** The conductor from the main earthing terminal to the means of earthing. */
export function EarthingConductor() {
  return (
    <Section title={SUPPLY.conductor}>
      <Conductor path="supply/earthingConductor" usual={["6", "10", "16"]} />
      <StatedWord
        spot={{ path: "supply/earthingConductor/connected" }}
        label={SUPPLY.conductorConnected}
        options={YES}
        written={YES_NO}
      />
      <StatedWord
        spot={{ path: "supply/earthingConductor/arrangement" }}
        label={SUPPLY.arrangement}
        options={SUPPLY.arrangements}
        isStated={false}
      />
      <StatedWord
        spot={{ path: "supply/earthingConductor/sheathed" }}
        label={SUPPLY.sheathed}
        options={YES}
        written={YES_NO}
      />
      <StatedWord
        spot={{ path: "supply/earthingConductor/mechanicallyProtected" }}
        label={SUPPLY.protected}
        options={YES}
        written={YES_NO}
      />
    </Section>
  );
}
