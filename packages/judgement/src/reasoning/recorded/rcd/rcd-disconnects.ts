import { rcdWorks, residualsBefore } from "@good-grounds/computations";
import { type Fact, fact, factNotKnown, isKnownFact, type Judgement, matter, Reckoner } from "@good-grounds/core";
import type { Circuit, ResidualDevice } from "@good-grounds/inspection";
import { keyOf, type SpokenOf } from "../../spoken-of/index.ts";
import type { RecordedProperty } from "../property.ts";

const RECKON = new Reckoner(false);
const DISCONNECTS = matter("rcd-disconnects", "the RCD is what disconnects an earth fault");

/**
 * Whether the RCD is what disconnects an earth fault of the circuits behind it: yes where for one of them it is the only
 * RCD, and either the fuse or breaker does not disconnect in time, or the system is TT and nothing shows that it does. No
 * where the fuse or breaker of each is proven to. With several RCDs on the way it is open which of them does, unless none
 * of them works: then each was to. What its test showed is another matter.
 */
export const rcdDisconnects: RecordedProperty = Object.freeze({
  id: "rcd-disconnects",
  name: DISCONNECTS.name,
  values: ["yes", "no"],
  read: (spoken: SpokenOf) =>
    spoken.rcds.map((rcd) => {
      const leaf = leafOf(rcd, spoken);
      return { of: rcd.path, leaf, values: isKnownFact(leaf) ? [leaf.word ? "yes" : "no"] : [] };
    }),
});

function leafOf(rcd: ResidualDevice, spoken: SpokenOf): Fact<boolean> {
  const said = behind(rcd, spoken).map((circuit) => ({ circuit, says: saysOf(circuit, spoken) }));
  const [first] = said;
  const alone = said.find(({ says }) => says === "yes")?.circuit;
  if (alone !== undefined)
    return fact(DISCONNECTS, true, alone.path, `no other device is shown to, for ${nameOf(alone)}`, "seen");
  return first !== undefined && said.every(({ says }) => says === "no")
    ? fact(DISCONNECTS, false, rcd.path, "the fuse or breaker does by itself", "measured")
    : factNotKnown(DISCONNECTS, rcd.path);
}

/** The circuit spoken of where the RCD stands before it, else every circuit with it in its board. */
function behind(rcd: ResidualDevice, { installation, circuit }: SpokenOf): readonly Circuit[] {
  const circuits = installation.circuits.filter(({ residual }) => residual.devices.includes(rcd));
  return circuit !== undefined && circuits.includes(circuit) ? [circuit] : circuits;
}

function saysOf(circuit: Circuit, spoken: SpokenOf): "yes" | "no" | "open" {
  const byBreaker = overcurrentOf(circuit, spoken);
  if (byBreaker?.verdict === "met") return byBreaker.grade === "proven" ? "no" : "open";
  const { devices } = residualsBefore(circuit);
  if (devices.length !== 1 && !devices.every(({ test }) => rcdWorks(test, RECKON).verdict === "not-met")) return "open";
  const { earthing } = spoken.installation.supply;
  const isTt = isKnownFact(earthing) && earthing.word === "TT";
  return byBreaker?.verdict === "not-met" || isTt ? "yes" : "open";
}

/** What the check of disconnection says of the fuse or breaker alone. */
function overcurrentOf(circuit: Circuit, { installation, weighing }: SpokenOf): Judgement | undefined {
  const at = installation.circuits.findIndex(({ path }) => keyOf(path) === keyOf(circuit.path));
  const finding = weighing.circuits[at]?.find(({ check }) => check === "maximum-zs");
  return finding?.settles?.find((one) => one.matter.id === "overcurrent-disconnects");
}

function nameOf({ designation, description }: Circuit): string {
  return `${designation} ${description}`.trim();
}
