import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import {
  type InspectionFile,
  parseInspectionData,
  resolveInstallation,
  signatureStandings,
} from "@good-grounds/inspection";
import { outcomeOf, reasonObservations, weigh } from "@good-grounds/judgement";
import { describe, expect, test } from "vitest";
import { asVersion2 } from "../../packages/inspection/src/migrations/as-version-2.ts";

const NAMES = ["terraced-house", "farmhouse", "workshop"] as const;

function opened(data: unknown): InspectionFile {
  const parsed = parseInspectionData(data);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return parsed.file;
}

const example = (name: string) =>
  opened(JSON.parse(readFileSync(new URL(`../../examples/${name}.json`, import.meta.url), "utf8")));

/** An example in the words of version 2: what that version could not say is left out. */
function inVersion2(file: InspectionFile): object {
  const { surgeDevices = [] } = file.things ?? {};
  const observations = file.observations.map(({ things: _, brings: __, ...rest }) => rest);
  const older = asVersion2({
    ...file,
    observations,
    ...(surgeDevices.length === 0 ? {} : { things: { surgeDevices } }),
  });
  if (older === undefined) throw new Error("the example says something that version 2 could not say");
  return older;
}

/** Everything that is concluded: each finding with its argument, and the outcome. */
function concluded(file: InspectionFile) {
  const installation = resolveInstallation(file);
  const weighing = weigh(installation);
  const { supply, boards, circuits } = weighing;
  return {
    findings: [...supply, ...boards.flat(), ...circuits.flat()],
    outcome: outcomeOf(installation, weighing, reasonObservations(installation, weighing), []),
  };
}

describe.each(NAMES)("%s as version 2 wrote it", (name) => {
  const older = inVersion2(example(name));

  test("was read as version 2 and leads to the same findings, with the same arguments, and the same outcome", () => {
    expect(older).toMatchObject({ version: 2 });
    expect(JSON.stringify(older)).toMatch(/"surgeProtection":"not-fitted"/);
    const [before, now] = [concluded(opened(older)), concluded(example(name))];
    expect(before.findings.length).toBeGreaterThan(50);
    expect(before).toEqual(now);
  });

  test.each([
    ["of the content in the order of names", (content: object) => JSON.stringify(sorted(content))],
    ["of the printed file", (content: object) => `${JSON.stringify(content, null, 2)}\n`],
  ])("stays signed when it is opened, by a hash %s", (_, print) => {
    const content = createHash("sha256")
      .update(print({ ...older, signatures: [] }), "utf8")
      .digest("hex");
    const signatures = example(name).signatures.map((one) => ({ ...one, content }));
    const file = opened({ ...older, signatures });
    expect(signatureStandings(file)).toEqual(signatures.map(() => "signed"));
    expect(signatureStandings({ ...file, title: "another" })).toEqual(signatures.map(() => "changed"));
  });
});

function sorted(value: unknown): unknown {
  if (typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) return value.map(sorted);
  return Object.fromEntries(
    Object.entries(value)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([name, inner]) => [name, sorted(inner)]),
  );
}
