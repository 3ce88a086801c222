import { OTHER_SOURCES } from "@good-grounds/core";
import { StatedQuantity } from "../../keypad/stated-quantity.tsx";
import { StatedWord, YES_NO } from "../../keypad/stated-word.tsx";
import { Members } from "../../parts/members.tsx";
import { TextField } from "../../parts/text-field.tsx";
import { CIRCUIT, SOURCE, SUPPLY } from "../../words/installation.ts";
import { pick, YES } from "./choices.ts";

/** What feeds the installation besides the distributor. */
export function OtherSources() {
  return (
    <Members
      path="supply/otherSources"
      one={SUPPLY.source}
      add={SUPPLY.addSource}
      prefix="s"
      fresh={() => ({ kind: "photovoltaic" })}
      title={(_, number) => `${SUPPLY.source} ${number}`}
    >
      {(at) => (
        <>
          <StatedWord
            spot={{ path: `${at}/kind` }}
            label={SUPPLY.sourceKind}
            options={pick(SOURCE, OTHER_SOURCES)}
            isStated={false}
          />
          <StatedQuantity spot={{ path: `${at}/rated` }} label={CIRCUIT.rated} unit="ampere" symbol="A" />
          <StatedWord spot={{ path: `${at}/notice` }} label={SUPPLY.sourceNotice} options={YES} written={YES_NO} />
          <TextField path={`${at}/note`} label={SUPPLY.note} />
        </>
      )}
    </Members>
  );
}
