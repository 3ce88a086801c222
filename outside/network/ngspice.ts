import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** A resistor between two nodes; node "0" is the reference. */
export interface Resistor {
  readonly from: string;
  readonly to: string;
  readonly ohms: number;
}

/** One question: the resistance seen between two nodes of a network. */
export interface Probe {
  readonly network: readonly Resistor[];
  readonly between: readonly [string, string];
}

/**
 * Resistances seen between pairs of nodes, worked out by ngspice from a unit current. One process answers all probes:
 * each network gets its own node names and its own source.
 */
export function simulatedResistances(probes: readonly Probe[]): readonly number[] {
  const lines = ["* resistance networks"];
  let resistors = 0;
  for (const [p, { network, between }] of probes.entries()) {
    const node = (name: string) => (name === between[1] ? "0" : `p${p}_${name}`);
    for (const { from, to, ohms } of network) {
      lines.push(`R${resistors} ${node(from)} ${node(to)} ${ohms.toExponential(17)}`);
      resistors += 1;
    }
    lines.push(`I${p} 0 ${node(between[0])} DC 1`);
  }
  lines.push(".options gmin=1e-18 reltol=1e-12 abstol=1e-18 vntol=1e-15", ".control", "set numdgt=15", "op");
  for (const [p, { between }] of probes.entries()) lines.push(`print v(p${p}_${between[0]})`);
  lines.push("quit", ".endc", ".end", "");

  const folder = mkdtempSync(join(tmpdir(), "good-grounds-ngspice-"));
  try {
    const netlist = join(folder, "network.cir");
    writeFileSync(netlist, lines.join("\n"));
    const output = execFileSync("ngspice", ["-b", netlist], { encoding: "utf8", stdio: ["ignore", "pipe", "ignore"] });
    const values = [...output.matchAll(/^v\(p\d+_[^)]*\) = (\S+)$/gm)].map(([, value]) => Number(value));
    if (values.length !== probes.length)
      throw new Error(`ngspice answered ${values.length} of ${probes.length} probes`);
    return values;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
