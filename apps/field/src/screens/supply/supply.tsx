import { StatedQuantity } from "../../keypad/stated-quantity.tsx";
import { usePicked } from "../../keypad/use-record.ts";
import { Section } from "../../parts/section.tsx";
import { TextField } from "../../parts/text-field.tsx";
import { useSession } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import type { ScreenProps } from "../../shell/screens.ts";
import { CIRCUIT, SUPPLY } from "../../words/installation.ts";
import { DeviceFields } from "../circuit/device-fields.tsx";
import { FindingsAt } from "../circuit/findings-at.tsx";
import { MainSwitchFields } from "../circuit/main-switch-fields.tsx";
import { MisfitsAt } from "../circuit/misfits-at.tsx";
import { ThingsHere } from "../things/things-here.tsx";
import { Bonding } from "./bonding.tsx";
import { Conductor } from "./conductor.tsx";
import { EarthingConductor } from "./earthing-conductor.tsx";
import { OtherSources } from "./other-sources.tsx";
import { SupplyReadings } from "./supply-readings.tsx";
import { System } from "./system.tsx";

/** The origin: what the distributor brings in and how it is earthed and protected; its readings on a page of their own. */
export default function Supply({ rest: [page] }: ScreenProps) {
  return page === "readings" ? <SupplyReadings /> : <Particulars />;
}

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
          <System />
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
          <EarthingConductor />
        </div>
        <div>
          <Section title={SUPPLY.bonding}>
            <Bonding />
          </Section>
          <Section title={SUPPLY.mainSwitch}>
            <MainSwitchFields path="supply/mainSwitch" rated={CIRCUIT.rated} usual={["63", "80", "100"]} />
          </Section>
          <details>
            <summary>{SUPPLY.sources}</summary>
            <OtherSources />
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
          <ThingsHere />
          <FindingsAt path="supply" />
          <MisfitsAt path="supply" />
        </div>
      </div>
    </>
  );
}
