import { usePlace } from "../../engine/follow.ts";
import { NUMBER, StatedWord, YES_NO } from "../../keypad/stated-word.tsx";
import { usePicked } from "../../keypad/use-record.ts";
import { FindingLine } from "../../keypad/verdict.tsx";
import { Section } from "../../parts/section.tsx";
import { TextField } from "../../parts/text-field.tsx";
import { useSession } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { BOARD, CIRCUIT, INSTALLATION, LOAD, SHAPE } from "../../words/installation.ts";
import { ObserveHere } from "../observations/observe-here.tsx";
import { circuitName } from "../readings/names.ts";
import { CableFields, RouteFields } from "./cable-fields.tsx";
import { DeviceFields } from "./device-fields.tsx";
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
  const at = (member: string) => ({ path: `${path}/${member}` });
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
          <FindingsAt path={path} />
        </div>
      </div>
    </>
  );
}

/** What follows for one place. */
export function FindingsAt({ path }: { readonly path: string }) {
  const place = usePlace(path);
  const findings = place?.findings.filter(({ verdict }) => verdict !== "not-applicable") ?? [];
  if (place === undefined || findings.length === 0) return null;
  return (
    <Section title={CIRCUIT.findings(place.name)}>
      {findings.map((finding) => (
        <FindingLine key={finding.check} finding={finding} path={path} titled />
      ))}
    </Section>
  );
}
