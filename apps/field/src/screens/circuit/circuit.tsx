import { usePicked } from "../../keypad/use-record.ts";
import { Section } from "../../parts/section.tsx";
import { TextField } from "../../parts/text-field.tsx";
import { useSession } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { CIRCUIT, INSTALLATION } from "../../words/installation.ts";
import { ObserveHere } from "../observations/observe-here.tsx";
import { circuitName } from "../readings/names.ts";
import { ThingsHere } from "../things/things-here.tsx";
import { AboutCircuit } from "./about-circuit.tsx";
import { CableFields, RouteFields } from "./cable-fields.tsx";
import { DeviceFields } from "./device-fields.tsx";
import { FindingsAt } from "./findings-at.tsx";
import { MisfitsAt } from "./misfits-at.tsx";
import { WhichRcd } from "./which-rcd.tsx";

interface CircuitProps {
  readonly board: string;
  readonly circuit: string;
}

/** The particulars of one circuit. */
export function Circuit({ board, circuit }: CircuitProps) {
  const { job } = useSession();
  const path = `boards/${board}/circuits/${circuit}`;
  const name = usePicked((record) => circuitName(record, board, circuit));
  return (
    <>
      <h2 tabIndex={-1} data-start="">
        {name}
      </h2>
      <p class="way-links">
        <a href={linkTo("job", job, "readings", board, circuit)}>{INSTALLATION.toReadings}</a>
        <a class="up-link" href={linkTo("job", job, "installation")}>
          {INSTALLATION.back}
        </a>
        <ObserveHere board={board} circuit={circuit} />
      </p>
      <div class="columns">
        <div>
          <AboutCircuit path={path} />
          <Section title={CIRCUIT.device}>
            <DeviceFields
              path={`${path}/device`}
              usual={["6", "10", "16", "20", "32", "40", "45", "50"]}
              usualBreaking={["3", "6", "10"]}
              withEnergy
            />
          </Section>
          <Section title={CIRCUIT.rcd}>
            <WhichRcd board={`boards/${board}`} circuit={path} />
          </Section>
        </div>
        <div>
          <Section title={CIRCUIT.cable}>
            <CableFields circuit={path} />
          </Section>
          <details>
            <summary>{CIRCUIT.route}</summary>
            <RouteFields circuit={path} />
            <TextField path={`${path}/note`} label={CIRCUIT.note} kind="paragraph" />
          </details>
          <ThingsHere board={board} circuit={circuit} />
          <FindingsAt path={path} />
          <MisfitsAt path={path} />
        </div>
      </div>
    </>
  );
}
