import { StatedWord, YES_NO } from "../../keypad/stated-word.tsx";
import { Members } from "../../parts/members.tsx";
import { TextField } from "../../parts/text-field.tsx";
import { BONDED, SUPPLY } from "../../words/installation.ts";
import { FindingsAt } from "../circuit/findings-at.tsx";
import { YES } from "./choices.ts";
import { Conductor } from "./conductor.tsx";

/** Parts that main bonding goes to, or that need none. */
export function Bonding() {
  return (
    <Members
      path="supply/bonding"
      one={SUPPLY.bond}
      add={SUPPLY.addBond}
      prefix="bond"
      fresh={() => ({ to: "water" })}
      title={(_, number) => `${SUPPLY.bond} ${number}`}
    >
      {(at) => (
        <>
          <StatedWord spot={{ path: `${at}/to` }} label={SUPPLY.bondTo} options={BONDED} isStated={false} />
          <TextField path={`${at}/description`} label={SUPPLY.bondDescription} />
          <StatedWord spot={{ path: `${at}/extraneous` }} label={SUPPLY.extraneous} options={YES} written={YES_NO} />
          <StatedWord spot={{ path: `${at}/connected` }} label={SUPPLY.connected} options={YES} written={YES_NO} />
          <Conductor path={at} usual={["6", "10", "16"]} />
          <StatedWord spot={{ path: `${at}/heatDamage` }} label={SUPPLY.heatDamage} options={YES} written={YES_NO} />
          <FindingsAt path={at} />
        </>
      )}
    </Members>
  );
}
