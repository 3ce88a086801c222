import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { parseInspectionData } from "./parse.ts";
import { contentHash, signatureStandings } from "./signed.ts";

const EXAMPLE = new URL("../../../examples/terraced-house.json", import.meta.url);

type Editable = { signatures: Record<string, unknown>[]; [name: string]: unknown };

function fileWith(edit: (file: Editable) => void = () => undefined) {
  const data = JSON.parse(readFileSync(EXAMPLE, "utf8"));
  edit(data);
  const parsed = parseInspectionData(data);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return parsed.file;
}

/** The file with every signature given for what stands in it. */
function signed(edit: (file: Editable) => void = () => undefined) {
  const content = contentHash(fileWith());
  return fileWith((file) => {
    file.signatures = file.signatures.map((one) => ({ ...one, content }));
    edit(file);
  });
}

describe("what a signature was given for", () => {
  test("is the same however the members of the file are ordered, and leaves private notes out", () => {
    const file = fileWith((data) => {
      data.ownFigures = [{ check: "zs-sum", note: "Looked at again." }];
    });
    expect(contentHash(file)).toBe(contentHash(fileWith()));
    expect(contentHash(backwards(file) as typeof file)).toBe(contentHash(file));
    expect(JSON.stringify(backwards(file))).not.toBe(JSON.stringify(file));
  });

  test("stands as earlier versions took it: of the printed file without signatures", () => {
    const text = `${JSON.stringify({ ...fileWith(), signatures: [] }, null, 2)}\n`;
    const content = createHash("sha256").update(text, "utf8").digest("hex");
    const file = fileWith(({ signatures }) => {
      for (const one of signatures) one.content = content;
    });
    expect(signatureStandings(file)).toEqual(["signed", "signed"]);
  });

  test("stands while nothing is changed, whoever else signs", () => {
    expect(signatureStandings(signed())).toEqual(["signed", "signed"]);
    const [first] = signed().signatures;
    const more = signed(({ signatures }) => signatures.push({ ...first, at: "2026-10-08T08:00:00+01:00" }));
    expect(signatureStandings(more)).toEqual(["signed", "signed", "signed"]);
  });

  test.each([
    ["a reading", (file: Editable) => Object.assign(readingsOf(file), { zs: { shown: "0.01 Ω" } })],
    ["the outcome", (file: Editable) => Object.assign(file.conclusion as object, { outcome: "satisfactory" })],
    ["a name", (file: Editable) => Object.assign((file.people as object[])[0] as object, { name: "Somebody Else" })],
    ["a limitation less", (file: Editable) => (file.limitations as unknown[]).pop()],
  ])("does not stand after a change of %s", (_, change) => {
    expect(signatureStandings(signed(change))).toEqual(["changed", "changed"]);
  });

  test("does not stand with a hash of nothing but zeros, and cannot be told without one", () => {
    const file = signed(({ signatures: [first, second] }) => {
      Object.assign(first as object, { content: "0".repeat(64) });
      delete second?.content;
    });
    expect(signatureStandings(file)).toEqual(["changed", "unbound"]);
  });
});

function readingsOf(file: Editable): object {
  const [board] = file.boards as { circuits: { readings: object }[] }[];
  return board?.circuits[0]?.readings ?? {};
}

/** The same data with the members of every object the other way round. */
function backwards(value: unknown): unknown {
  if (typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) return value.map(backwards);
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([name, inner]) => [name, backwards(inner)]),
  );
}
