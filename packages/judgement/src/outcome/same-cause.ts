import type { Finding, Path } from "@good-grounds/core";
import type { Circuit, Installation } from "@good-grounds/inspection";

/** Checks that an RCD carries for the circuits behind it. */
const OF_THE_CIRCUITS: readonly string[] = ["additional-protection", "maximum-zs", "cpc-adiabatic"];

/** Circuits whose current passes a device on its way to the origin. */
function behind(rcd: Path, { circuits }: Installation): readonly Circuit[] {
  const key = rcd.join("/");
  return circuits.filter((circuit) => {
    for (let at: Circuit | undefined = circuit; at !== undefined; at = at.board.feeder)
      if (at.residual.devices.some(({ path }) => path.join("/") === key)) return true;
    return false;
  });
}

/**
 * Findings that are as they are because another is: what an RCD that fails its test leaves of the circuits behind it, and
 * what an electrode that is too high leaves of the loops of a TT installation.
 */
export function followFrom(
  { check, path }: Finding,
  findings: readonly Finding[],
  installation: Installation,
): readonly Finding[] {
  if (check === "electrode") return findings.filter((one) => one.check === "maximum-zs");
  if (check !== "rcd-time") return [];
  const circuits = new Set(behind(path, installation).map((circuit) => circuit.path.join("/")));
  return findings.filter((one) => OF_THE_CIRCUITS.includes(one.check) && circuits.has(one.path.join("/")));
}
