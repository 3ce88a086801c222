import { GROUPINGS, REFERENCE_METHODS } from "@good-grounds/core";
import { StatedQuantity } from "../../keypad/stated-quantity.tsx";
import { StatedWord } from "../../keypad/stated-word.tsx";
import { Toggle } from "../../parts/toggle.tsx";
import { join } from "../../record/document.ts";
import { put, useField, useSession } from "../../shell/job.ts";
import { CABLE, CIRCUIT, CPC, GROUPING, INSULATION, LENGTH_FOUND, MATERIAL } from "../../words/installation.ts";
import { cableChanges, USUAL_CABLES } from "./usual-cables.ts";

/** The cable of a circuit. */
export function CableFields({ circuit }: { readonly circuit: string }) {
  const at = (name: string) => ({ path: join(circuit, `cable/${name}`) });
  return (
    <>
      <UsualCables circuit={circuit} />
      <StatedWord spot={at("kind")} label={CIRCUIT.kind} options={CABLE} />
      <StatedWord spot={at("insulation")} label={CIRCUIT.insulation} options={INSULATION} />
      <StatedWord spot={at("material")} label={CIRCUIT.material} options={MATERIAL} />
      <StatedQuantity
        spot={at("line")}
        label={CIRCUIT.line}
        unit="square-millimetre"
        symbol="mm²"
        usual={["1", "1.5", "2.5", "4", "6", "10", "16"]}
      />
      <StatedQuantity
        spot={at("cpc")}
        label={CIRCUIT.cpc}
        unit="square-millimetre"
        symbol="mm²"
        usual={["1", "1.5", "2.5", "4", "6"]}
      />
      <StatedWord spot={at("cpcArrangement")} label={CIRCUIT.cpcArrangement} options={CPC} />
      <StatedQuantity spot={at("length")} label={CIRCUIT.length} unit="metre" symbol="m" />
      <StatedWord spot={at("lengthFound")} label={CIRCUIT.lengthFound} options={LENGTH_FOUND} isStated={false} />
      <Methods path={join(circuit, "cable/methods")} />
    </>
  );
}

/** What bears on the cable along its way. */
export function RouteFields({ circuit }: { readonly circuit: string }) {
  const at = (name: string) => ({ path: join(circuit, `cable/${name}`) });
  return (
    <>
      <StatedQuantity spot={at("neutral")} label={CIRCUIT.neutral} unit="square-millimetre" symbol="mm²" />
      <StatedQuantity
        spot={at("ambient")}
        label={CIRCUIT.ambient}
        unit="celsius"
        symbol="°C"
        usual={["25", "30", "35"]}
      />
      <Grouped path={join(circuit, "cable/grouped")} />
      <StatedQuantity spot={at("surroundedByInsulation")} label={CIRCUIT.surrounded} unit="metre" symbol="m" />
      <StatedQuantity
        spot={{ path: join(circuit, "designCurrent") }}
        label={CIRCUIT.designCurrent}
        unit="ampere"
        symbol="A"
      />
    </>
  );
}

/** Cables as they are made: one touch for what would be six fields. */
function UsualCables({ circuit }: { readonly circuit: string }) {
  const session = useSession();
  const line = useField(join(circuit, "cable/line")).value;
  const cpc = useField(join(circuit, "cable/cpc")).value;
  return (
    <fieldset class="field">
      <legend>{CIRCUIT.usualCables}</legend>
      <div class="choices">
        {USUAL_CABLES.map((cable) => (
          <button
            key={cable.join("/")}
            type="button"
            class="choice"
            aria-pressed={line === `${cable[0]} mm²` && cpc === `${cable[1]} mm²` ? "true" : "false"}
            onClick={() => put(session, ...cableChanges(circuit, cable))}
          >
            {cable.join("/")}
          </button>
        ))}
      </div>
    </fieldset>
  );
}

/** Every reference method the unseen route may have. */
function Methods({ path }: { readonly path: string }) {
  const { value, write } = useField(path);
  const chosen = Array.isArray(value) ? value : [];
  return (
    <fieldset class="field">
      <legend>{CIRCUIT.methods}</legend>
      <p class="quiet small help">{CIRCUIT.methodsHelp}</p>
      <div class="choices">
        {REFERENCE_METHODS.map((method, i) => (
          <label key={method} class="choice">
            <input
              type="checkbox"
              id={i === 0 ? `at:${path}` : `at:${path}=${method}`}
              checked={chosen.includes(method)}
              onChange={({ currentTarget }) => {
                const fresh = REFERENCE_METHODS.filter((one) =>
                  one === method ? currentTarget.checked : chosen.includes(one),
                );
                write(fresh.length === 0 ? null : fresh);
              }}
            />
            <span>{method}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

/** How many circuits lie together, and how. */
function Grouped({ path }: { readonly path: string }) {
  const { value, write } = useField(path);
  const grouped =
    typeof value === "object" && value !== null && !Array.isArray(value)
      ? (value as { readonly arrangement?: string; readonly circuits?: number })
      : undefined;
  const first = GROUPINGS[0];
  return (
    <>
      <Toggle
        id={`at:${path}`}
        checked={grouped !== undefined}
        onChange={(checked) => write(checked ? { arrangement: first, circuits: 2 } : null)}
      >
        {CIRCUIT.grouped}
      </Toggle>
      {grouped !== undefined && (
        <>
          <StatedWord
            spot={{ path, inner: ["arrangement"] }}
            label={CIRCUIT.grouped}
            options={GROUPING}
            isStated={false}
          />
          <div class="field">
            <label for={`at:${path}/circuits`}>{CIRCUIT.groupedCount}</label>
            <input
              id={`at:${path}/circuits`}
              class="short"
              inputMode="numeric"
              value={grouped.circuits ?? ""}
              onChange={({ currentTarget }) => {
                const circuits = Number(currentTarget.value);
                if (Number.isInteger(circuits) && circuits >= 1 && circuits <= 100) write({ ...grouped, circuits });
              }}
            />
          </div>
        </>
      )}
    </>
  );
}
