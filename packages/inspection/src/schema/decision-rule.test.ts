import { describe, expect, test } from "vitest";
import { smallestFile } from "../../../../outside/files/arbitrary-file.ts";
import { parseInspectionData } from "../parse.ts";

function file(more: object, instrument: object = {}) {
  return { ...smallestFile(), instruments: [{ id: "mft", kind: "tester", serial: "1", ...instrument }], ...more };
}

const issuesOf = (more: object, instrument: object = {}) => {
  const parsed = parseInspectionData(file(more, instrument));
  return parsed.ok ? [] : parsed.issues.map(({ path }) => path.join("/"));
};

describe("decision rule and nulling of leads", () => {
  test("both may be left out, and both are kept", () => {
    expect(issuesOf({})).toEqual([]);
    const leadsNulled = [{ at: "2026-10-20T09:05:00+01:00" }, { at: "2026-10-20T13:10:00+01:00", showed: "0.03 Ω" }];
    const parsed = parseInspectionData(file({ decisionRule: "guarded" }, { leadsNulled }));
    expect(parsed).toMatchObject({ ok: true, file: { decisionRule: "guarded", instruments: [{ leadsNulled }] } });
  });

  test("a rule nobody knows, a moment without its offset and a reading with an open end are refused", () => {
    expect(issuesOf({ decisionRule: "lenient" })).toEqual(["decisionRule"]);
    expect(issuesOf({}, { leadsNulled: [{ at: "2026-10-20" }] })).toEqual(["instruments/0/leadsNulled/0/at"]);
    for (const showed of [">0.03 Ω", "0.03", "0.03 V", "-0.01 Ω"])
      expect(issuesOf({}, { leadsNulled: [{ at: "2026-10-20T09:05:00Z", showed }] })).toEqual([
        "instruments/0/leadsNulled/0/showed",
      ]);
  });
});
