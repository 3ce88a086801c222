import { NUMBER, StatedWord, YES_NO } from "../../keypad/stated-word.tsx";
import { Section } from "../../parts/section.tsx";
import { TextField } from "../../parts/text-field.tsx";
import { BOARD, CIRCUIT, LOAD, SHAPE } from "../../words/installation.ts";

/** What a circuit is called, how it runs and what it supplies. */
export function AboutCircuit({ path }: { readonly path: string }) {
  const at = (member: string) => ({ path: `${path}/${member}` });
  return (
    <Section title={CIRCUIT.about}>
      <div class="number-and-name">
        <TextField path={`${path}/designation`} label={CIRCUIT.designation} />
        <TextField
          path={`${path}/description`}
          label={CIRCUIT.description}
          suggestions={CIRCUIT.descriptions}
          startsHere
        />
      </div>
      <StatedWord spot={at("shape")} label={CIRCUIT.shape} options={SHAPE} />
      <StatedWord spot={at("load")} label={CIRCUIT.load} options={LOAD} />
      <StatedWord
        spot={at("socketOutlets")}
        label={CIRCUIT.sockets}
        options={{ yes: CIRCUIT.yes, no: CIRCUIT.no }}
        written={YES_NO}
      />
      <StatedWord
        spot={at("phases")}
        label={CIRCUIT.phases}
        options={{ "1": BOARD.one, "3": BOARD.three }}
        written={NUMBER}
      />
      <TextField path={`${path}/points`} label={CIRCUIT.points} kind="count" />
    </Section>
  );
}
