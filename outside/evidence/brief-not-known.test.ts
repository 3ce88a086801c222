import { parseInspection, parseInspectionData, resolveInstallation } from "@good-grounds/inspection";
import { reasonObservations, weigh } from "@good-grounds/judgement";
import { describe, expect, test } from "vitest";
import { changed } from "../reports/example.ts";

const SILENT = { notKnown: "limited", reason: "the order does not say, and nobody could be asked" };

describe.each(["use", "tenure", "nation"] as const)("the %s of the premises", (member) => {
  const parsed = (value: unknown) =>
    parseInspection(
      changed((file) => {
        Object.assign(file.brief as object, { [member]: value });
        Object.assign(file, {
          inspected: [],
          observations: [
            { id: "x", place: "hall", what: "lights", topic: "lighting-no-rcd", board: "cu", circuit: "c5", facts: {} },
          ],
        });
      }),
    );

  test("may be said not to be known, with why, and reads as that", () => {
    const made = parsed(SILENT);
    if (!made.ok) throw new Error(JSON.stringify(made.issues));
    const installation = resolveInstallation(made.file);
    expect(installation[member]).toMatchObject({
      kind: "fact-not-known",
      detail: { silence: "limited", path: ["brief", member] },
    });
    const [one] = reasonObservations(installation, weigh(installation));
    if (member === "use") expect(one?.reasoning.open).toContain("premises");
  });

  test("left out, it is asked for, and the error names what is accepted", () => {
    const file = JSON.parse(changed(() => {})) as { readonly brief: Record<string, unknown> };
    const { [member]: _, ...brief } = file.brief;
    const made = parseInspectionData({ ...file, brief });
    expect(made.ok).toBe(false);
    if (made.ok) return;
    const [issue] = made.issues;
    expect(issue?.path).toEqual(["brief", member]);
    expect(issue?.expected).toContain("says why it is not known");
  });
});
