import { EARTHING_SYSTEMS, OTHER_SOURCES } from "@good-grounds/core";
import { StatedQuantity } from "../../keypad/stated-quantity.tsx";
import { NUMBER, StatedWord, YES_NO } from "../../keypad/stated-word.tsx";
import { usePicked } from "../../keypad/use-record.ts";
import { Members } from "../../parts/members.tsx";
import { Section } from "../../parts/section.tsx";
import { TextField } from "../../parts/text-field.tsx";
import { useSession } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import type { ScreenProps } from "../../shell/screens.ts";
import { BOARD, BONDED, CIRCUIT, EARTHING, MATERIAL, SOURCE, SUPPLY } from "../../words/installation.ts";
import { FindingsAt } from "../circuit/circuit.tsx";
import { DeviceFields } from "../circuit/device-fields.tsx";
import { SupplyReadings } from "./supply-readings.tsx";

/** The origin: what the distributor brings in and how it is earthed and protected; its readings on a page of their own. */
export default function Supply({ rest: [page] }: ScreenProps) {
  return page === "readings" ? <SupplyReadings /> : <Particulars />;
}

const pick = <T extends string>(words: Readonly<Record<T, string>>, order: readonly T[]) =>
  Object.fromEntries(order.map((word) => [word, words[word]]));

const YES = { yes: CIRCUIT.yes, no: CIRCUIT.no };

function Particulars() {
  const { job } = useSession();
  const isTT = usePicked((record) => record.value("supply/earthing") === "TT");
  return (
    <>
      <p>
        <a class="button main wide" href={linkTo("job", job, "supply", "readings")}>
          {SUPPLY.toReadings}
        </a>
      </p>
      <div class="columns">
        <div>
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
            <StatedQuantity
              spot={{ path: "supply/nominalVoltage" }}
              label={SUPPLY.nominal}
              unit="volt"
              symbol="V"
              usual={["230"]}
            />
            <StatedWord spot={{ path: "supply/public" }} label={SUPPLY.public} options={YES} written={YES_NO} />
          </Section>
          {isTT && (
            <Section title={SUPPLY.electrode}>
              <TextField path="supply/electrode/kind" label={SUPPLY.electrodeKind} />
              <TextField path="supply/electrode/location" label={SUPPLY.electrodePlace} />
            </Section>
          )}
          <Section title={SUPPLY.device}>
            <DeviceFields path="supply/device" usual={["60", "80", "100"]} usualBreaking={["16.5", "33"]} />
          </Section>
          <Section title={SUPPLY.tails}>
            <Conductor path="supply/tails" usual={["16", "25", "35"]} />
          </Section>
          <Section title={SUPPLY.neutral} help={SUPPLY.neutralHelp}>
            <StatedQuantity
              spot={{ path: "supply/neutral/size" }}
              label={SUPPLY.size}
              unit="square-millimetre"
              symbol="mm²"
              usual={["16", "25", "35"]}
            />
          </Section>
          <Section title={SUPPLY.conductor}>
            <Conductor path="supply/earthingConductor" usual={["6", "10", "16"]} />
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
        </div>
        <div>
          <Section title={SUPPLY.bonding}>
            <Bonding />
          </Section>
          <Section title={SUPPLY.mainSwitch}>
            <StatedQuantity
              spot={{ path: "supply/mainSwitch", inner: ["rated"] }}
              label={CIRCUIT.rated}
              unit="ampere"
              symbol="A"
              usual={["63", "80", "100"]}
            />
            <StatedWord
              spot={{ path: "supply/mainSwitch", inner: ["poles"] }}
              label={BOARD.poles}
              options={{ "1": "1", "2": "2", "3": "3", "4": "4" }}
              written={NUMBER}
              isStated={false}
            />
          </Section>
          <details>
            <summary>{SUPPLY.sources}</summary>
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
                  <TextField path={`${at}/note`} label={SUPPLY.note} />
                </>
              )}
            </Members>
          </details>
          <details>
            <summary>{SUPPLY.demand}</summary>
            <StatedQuantity
              spot={{ path: "supply/maximumDemand/value" }}
              label={SUPPLY.demand}
              unit="ampere"
              symbol="A"
            />
            <TextField path="supply/maximumDemand/method" label={SUPPLY.demandMethod} />
            <TextField path="supply/note" label={SUPPLY.note} kind="paragraph" />
          </details>
          <FindingsAt path="supply" />
        </div>
      </div>
    </>
  );
}

/** Size, material and length of a conductor. */
function Conductor({ path, usual }: { readonly path: string; readonly usual: readonly string[] }) {
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

/** Parts that main bonding goes to, or that need none. */
function Bonding() {
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
