import type { Circuit, Installation } from "@good-grounds/inspection";
import { diagnoseRing, lookAtRings, type RingLook } from "@good-grounds/readings";
import { renderRing, ringMisfit, wrapped } from "@good-grounds/report";
import { EXIT, type ExitCode, type Host, widthOf } from "../../host.ts";
import { misfitJson, missingJson, number, problemsJson } from "../../json.ts";
import { issueLines } from "../../words.ts";
import { oneRing, RING_NEEDS } from "./one-ring.ts";

export interface RingOptions {
  readonly help: boolean;
  readonly json: boolean;
}

/** `goodgrounds ring`: what explains the readings of one ring final circuit, given by hand. */
export function ringCommand(pairs: readonly string[], { help, json }: RingOptions, host: Host): ExitCode {
  const width = widthOf(host);
  if (help || pairs.length === 0) {
    (help ? host.stdout : host.stderr).write(describe(width));
    return help ? EXIT.done : EXIT.input;
  }
  const made = oneRing(pairs);
  if (!made.ok) {
    if (json) host.stdout.write(`${JSON.stringify(problemsJson("ring", made.issues), null, 2)}\n`);
    host.stderr.write(issueLines("ring", made.issues));
    return EXIT.input;
  }
  const [look] = lookAtRings(made.installation);
  host.stdout.write(look === undefined ? nothing(made.installation, json, width) : found(look, json, width));
  return EXIT.done;
}

/** Name and version of the JSON output; the version changes when a member changes its meaning or goes. */
const OUTPUT = Object.freeze({ format: "good-grounds-ring", version: 1 });

function found(look: RingLook, json: boolean, width: number): string {
  if (!json) return renderRing(look, width);
  const drawn = ({ shown, expected }: RingLook["points"][number]["lineCpc"]) => ({
    shown: number(shown),
    expected: number(expected),
  });
  const points = look.points.map(({ name, at, lineNeutral, lineCpc }) => ({
    name,
    at: number(at),
    lineNeutral: drawn(lineNeutral),
    lineCpc: drawn(lineCpc),
  }));
  const metres = look.metres === undefined ? null : number(look.metres);
  return `${JSON.stringify({ ...OUTPUT, metres, points, accounts: look.accounts, ...misfitJson(ringMisfit(look), true) }, null, 2)}\n`;
}

/** Why nothing can be said of the ring, and what is missing. */
function nothing(installation: Installation, json: boolean, width: number): string {
  const ring = diagnoseRing(installation.circuits[0] as Circuit, installation);
  if (ring.diagnosis !== undefined) throw new Error("a ring with its readings was not looked at");
  if (json)
    return `${JSON.stringify({ ...OUTPUT, reason: ring.reason, missing: missingJson(ring.missing) }, null, 2)}\n`;
  return `${wrapped(`Nothing can be said of this ring: ${ring.reason}.`, width).join("\n")}\n`;
}

function describe(width: number): string {
  const needs = Object.entries(RING_NEEDS).flatMap(([name, { words, hint }]) =>
    wrapped(`${words} (${hint})`, width, `  ${name.padEnd(14)}`, " ".repeat(16)),
  );
  return `${[
    ...wrapped("What explains the readings of one ring final circuit, and what to read next.", width),
    "",
    ...needs,
    "",
    "Example:",
    '  goodgrounds ring r1="0.45 Ω" rn="0.44 Ω" r2="0.74 Ω" material=copper \\',
    '    line="2.5 mm²" cpc="1.5 mm²" point="hall; 0.22 Ω; 0.28 Ω" \\',
    '    point="window; 0.31 Ω; 0.42 Ω" point="kitchen; 0.22 Ω; 0.29 Ω"',
  ].join("\n")}\n`;
}
