import { DUTY_IDS, type DutyId } from "@good-grounds/core";
import type { InspectionFile } from "@good-grounds/inspection";
import { describe, expect, test } from "vitest";
import { assemble } from "../../packages/assembly/src/index.ts";
import { dutiesIn, dutyIn, type Job, jobFile } from "./job.ts";

/** Whether a duty is there, only possible, or not there, and its day. */
function told(id: DutyId, job: Job) {
  const duty = dutyIn(id, job);
  if (duty === undefined) return "no";
  return `${duty.onlyIf.length === 0 ? "yes" : `if ${duty.onlyIf.join(" ")}`}${duty.time.day === null ? "" : ` ${duty.time.day}`}`;
}

const OCCUPIED: Job = { letting: { occupied: true } };

describe("England, SI 2020/312: homes let by private landlords", () => {
  test("work and investigations within 28 days that start with the date of the inspection: C1, C2 and FI, not C3", () => {
    for (const classification of ["C1", "C2", "FI"] as const)
      expect(told("england-work", { classes: [classification] })).toBe("yes 2026-12-07");
    // Nothing of the kind was found, but tests are missing, which stand open.
    expect(told("england-work", { classes: ["C3"] })).toBe("if work-required 2026-12-07");
    expect(told("england-work", { classes: ["none"] })).toBe("if work-required 2026-12-07");
  });

  test("the shorter period that the report states counts; a longer one does not", () => {
    const within = (days: number): Job => ({ classes: ["C2"], conclusion: { workWithin: { days } } });
    expect(told("england-work", within(7))).toBe("yes 2026-11-16");
    expect(told("england-work", within(1))).toBe("yes 2026-11-10");
    expect(told("england-work", within(60))).toBe("yes 2026-12-07");
    expect(dutyIn("england-work", within(7))?.time.count).toMatchObject({ number: 7, byLaw: 28, firstDay: "stated" });
  });

  test("a copy to every tenant within 28 days of the inspection, counted the safer way", () => {
    expect(told("england-copy-tenant", OCCUPIED)).toBe("yes 2026-12-07");
    expect(dutyIn("england-copy-tenant", OCCUPIED)?.time.count?.firstDay).toBe("safer");
    expect(told("england-copy-tenant", {})).toBe("if occupied 2026-12-07");
    expect(told("england-copy-tenant", { letting: { occupied: false } })).toBe("no");
    expect(told("england-copy-tenant", { letting: { starts: "2025-01-01" } })).toBe("yes 2026-12-07");
  });

  test("to the authority within 7 days of its request, to whoever may become a tenant within 28", () => {
    expect(dutyIn("england-copy-authority", {})?.time).toMatchObject({
      day: null,
      count: { number: 7, unit: "day", from: "request", start: null },
    });
    expect(dutyIn("england-copy-prospective", {})?.time.count).toMatchObject({ number: 28, from: "request" });
  });

  test("before a new tenant moves in; the day before that, where the day is known", () => {
    const coming: Job = { letting: { starts: "2026-12-01" } };
    expect(told("england-copy-new-tenant", coming)).toBe("yes 2026-11-30");
    expect(told("england-before-tenancy", coming)).toBe("yes 2026-11-30");
    expect(told("england-copy-new-tenant", {})).toBe("yes");
  });

  test("written confirmation within 28 days of the work, to tenant and authority", () => {
    expect(dutyIn("england-work-confirmation", { classes: ["C2"] })).toMatchObject({
      onlyIf: [],
      to: "tenant-and-authority",
      time: { day: null, count: { number: 28, from: "work-done" } },
    });
  });

  test("a remedial notice is followed within 28 days; nothing is asked where nothing needs work", () => {
    expect(dutyIn("england-remedial-notice", { classes: ["C2"] })?.time).toMatchObject({
      day: null,
      count: { number: 28, from: "notice" },
    });
  });

  test("again after no more than 5 years, or earlier where the report says so; a later date in it is told", () => {
    const next = (by: string): Job => ({ conclusion: { nextInspection: { by, reason: "usual" } } });
    expect(told("england-next-inspection", {})).toBe("yes 2031-11-09");
    expect(told("england-next-inspection", next("2029-11-09"))).toBe("yes 2029-11-09");
    expect(told("england-next-inspection", next("2036-11-09"))).toBe("yes 2031-11-09");
    expect(dutyIn("england-next-inspection", next("2036-11-09"))?.time.laterInReport).toBe("2036-11-09");
    expect(told("england-next-inspection", { days: ["2028-02-29"] })).toBe("yes 2033-02-28");
  });

  test("retention, reasonable steps and the date in the report are there", () => {
    for (const id of ["england-keep", "england-reasonable-steps", "england-report-names-next"] as const)
      expect(told(id, {})).toBe("yes");
    expect(dutyIn("england-keep", {})?.time.kind).toBe("keep");
  });
});

describe("England: homes of social landlords", () => {
  const SOCIAL: Job = { tenure: "social-rented", letting: { granted: "2026-01-10", equipment: true } };

  test("the same as of private ones, and the checks of equipment", () => {
    expect(told("england-work", { ...SOCIAL, classes: ["C2"] })).toBe("yes 2026-12-07");
    expect(told("england-equipment-check", SOCIAL)).toBe("yes");
    expect(
      told("england-equipment-check", { ...SOCIAL, letting: { equipmentChecked: "2026-05-01", equipment: true } }),
    ).toBe("yes 2031-04-30");
    expect(told("england-equipment-repair", { ...SOCIAL, letting: { equipmentChecked: "2026-11-01" } })).toBe(
      "yes 2026-11-28",
    );
    expect(told("england-equipment-check", { tenure: "social-rented" })).toBe("if equipment");
    expect(told("england-equipment-check", { letting: { equipment: true } })).toBe("no");
    expect(told("england-report-names-equipment", SOCIAL)).toBe("yes");
  });

  test("older tenancies since 1 May 2026, first inspection before 1 November 2026", () => {
    const older = (day: string): Job => ({ tenure: "social-rented", days: [day], letting: { granted: "2019-03-01" } });
    expect(told("england-while-let", older("2026-04-30"))).toBe("no");
    expect(told("england-while-let", older("2026-05-01"))).toBe("yes");
    expect(told("england-while-let", { tenure: "social-rented", days: ["2026-02-01"] })).toBe("if social-in-force");
    expect(told("england-while-let", { ...SOCIAL, days: ["2026-02-01"] })).toBe("yes");
    expect(told("england-while-let", { tenure: "social-rented", days: ["2025-10-31"] })).toBe("no");
    expect(told("england-social-first", older("2026-06-01"))).toBe("yes 2026-10-31");
    expect(told("england-social-first", SOCIAL)).toBe("no");
  });

  test("an emergency: 24 hours on the clock from being told, over the change of the clocks as well", () => {
    const danger = (at: string, day: string): Job => ({
      ...SOCIAL,
      days: [day],
      classes: ["C1"],
      edit: ({ observations: [first] }) => {
        if (first !== undefined) first.madeSafe = { done: "Switched off.", told: "the housing officer", at };
      },
    });
    expect(dutyIn("england-emergency-hazard", danger("2026-10-24T16:30:00+01:00", "2026-10-24"))?.time).toMatchObject({
      day: "2026-10-25",
      moment: "2026-10-25T15:30:00+00:00",
    });
    expect(told("england-emergency-hazard", { ...SOCIAL, classes: ["C1"] })).toBe("yes 2026-11-11");
    expect(told("england-emergency-hazard", { ...SOCIAL, classes: ["C2"] })).toBe("if danger 2026-11-11");
    expect(told("england-emergency-hazard", { classes: ["C1"] })).toBe("no");
  });
});

describe("Wales, WSI 2022/6", () => {
  const WALES: Job = { nation: "wales" };

  test("a report holds to the end of 5 years that begin with the day of the inspection", () => {
    expect(told("wales-valid-report", WALES)).toBe("yes 2031-11-09");
    expect(dutyIn("wales-valid-report", WALES)?.time.count?.firstDay).toBe("stated");
    expect(told("wales-fit", { ...WALES, tenure: "social-rented" })).toBe("yes");
  });

  test("14 days that start with the occupation date; for a later inspection, with the day it was completed", () => {
    expect(told("wales-copy-occupation", { ...WALES, letting: { starts: "2027-02-16" } })).toBe("yes 2027-03-01");
    expect(
      told("wales-copy-later", { ...WALES, days: ["2026-11-10", "2026-11-12"], letting: { occupied: true } }),
    ).toBe("yes 2026-11-25");
    expect(told("wales-copy-occupation", { ...WALES, letting: { starts: "2020-01-01" } })).toBe("no");
  });

  test("no fixed period for the work, and none of England", () => {
    const ids = dutiesIn({ ...WALES, classes: ["C1", "C2"] }).map(({ id }) => id);
    expect(ids.filter((id) => id.startsWith("england") || id.startsWith("scotland") || id.startsWith("ni-"))).toEqual(
      [],
    );
    expect(dutyIn("wales-work-confirmation", { ...WALES, classes: ["C2"] })?.time.count?.number).toBe(14);
  });
});

describe("Scotland, Housing (Scotland) Act 2006", () => {
  const SCOTLAND: Job = { nation: "scotland" };
  const withRcd =
    (residual: string, rest: object = {}) =>
    (file: InspectionFile) => {
      const [board] = file.boards;
      if (board !== undefined) Object.assign(board, { rcds: [{ id: "r", serves: "whole-board", residual }], ...rest });
    };

  test("every 5 years, before a tenancy, with a record kept 6 years from the end of the inspection", () => {
    expect(told("scotland-next-inspection", SCOTLAND)).toBe("yes 2031-11-09");
    expect(told("scotland-keep", SCOTLAND)).toBe("yes 2032-11-10");
    expect(told("scotland-copy-new-tenant", { ...SCOTLAND, letting: { starts: "2026-12-01" } })).toBe("yes 2026-11-30");
    expect(told("scotland-copy-tenant", { ...SCOTLAND, letting: { occupied: true } })).toBe("yes");
  });

  test("C1 and C2 have to be put right; FI may turn out to be one", () => {
    expect(told("scotland-work", { ...SCOTLAND, classes: ["C1"] })).toBe("yes");
    expect(told("scotland-work", { ...SCOTLAND, classes: ["C2"] })).toBe("yes");
    expect(told("scotland-work", { ...SCOTLAND, classes: ["FI"] })).toBe("if danger-or-likely");
  });

  test("an RCD of 30 mA or less in the main board, whatever class its absence has", () => {
    expect(told("scotland-rcd", SCOTLAND)).toBe("if no-main-rcd");
    expect(told("scotland-rcd", { ...SCOTLAND, edit: withRcd("30 mA") })).toBe("no");
    const none = (file: InspectionFile) => Object.assign(file.boards[0] ?? {}, { rcds: [] });
    for (const classes of [[], ["none"], ["C3"], ["C1"]] as const)
      expect(told("scotland-rcd", { ...SCOTLAND, classes, edit: none })).toBe("yes");
    expect(told("scotland-rcd", { ...SCOTLAND, edit: withRcd("100 mA") })).toBe("yes");
    expect(told("scotland-rcd", { ...SCOTLAND, days: ["2024-02-29"], edit: none })).toBe("no");
  });

  test("social homes have their own standard", () => {
    expect(told("scotland-social", { ...SCOTLAND, tenure: "social-rented" })).toBe("yes 2031-11-09");
    expect(told("scotland-work", { ...SCOTLAND, tenure: "social-rented", classes: ["C1"] })).toBe("no");
  });
});

describe("Northern Ireland, SR 2024/201", () => {
  const NI: Job = { nation: "northern-ireland" };

  test("28 days for work and copies, 7 to the council, 5 years", () => {
    expect(told("ni-work", { ...NI, classes: ["FI"] })).toBe("yes 2026-12-07");
    expect(told("ni-work", { ...NI, classes: ["C2"], conclusion: { workWithin: { days: 14 } } })).toBe(
      "yes 2026-11-23",
    );
    expect(told("ni-copy-tenant", { ...NI, letting: { occupied: true } })).toBe("yes 2026-12-07");
    expect(dutyIn("ni-copy-council", NI)?.time.count).toMatchObject({ number: 7, from: "request" });
    expect(told("ni-next-inspection", NI)).toBe("yes 2031-11-09");
  });

  test("not before 1 April 2025, not for social homes, which is said, and not for licensed houses", () => {
    expect(told("ni-work", { ...NI, classes: ["C1"], days: ["2025-03-31"] })).toBe("no");
    expect(told("ni-work", { ...NI, classes: ["C1"], tenure: "social-rented" })).toBe("no");
    expect(told("ni-social", { ...NI, tenure: "social-rented" })).toBe("yes");
    expect(told("ni-work", { ...NI, classes: ["C1"], use: "house-in-multiple-occupation" })).toBe("no");
    expect(told("hmo-ni", { ...NI, use: "house-in-multiple-occupation" })).toBe("yes");
  });
});

describe("houses in multiple occupation, work, and the inspector", () => {
  test("a licence in each nation; in England beside the rules for let homes", () => {
    const hmo = (nation: NonNullable<Job["nation"]>): Job => ({ nation, use: "house-in-multiple-occupation" });
    expect(told("hmo-england", hmo("england"))).toBe("yes");
    expect(told("england-work", { ...hmo("england"), classes: ["C2"] })).toBe("yes 2026-12-07");
    expect(told("hmo-wales-interval", hmo("wales"))).toBe("yes 2031-11-09");
    expect(told("hmo-scotland", hmo("scotland"))).toBe("yes");
    expect(told("hmo-england", {})).toBe("no");
  });

  test("a place of work is kept safe; no law sets a number of years, and the report's own date is given", () => {
    const shop: Job = { use: "shop", tenure: "commercial-lease" };
    expect(told("work-maintain", shop)).toBe("yes");
    expect(
      told("work-maintain", { ...shop, conclusion: { nextInspection: { by: "2029-06-01", reason: "dust" } } }),
    ).toBe("yes 2029-06-01");
    expect(told("work-maintain-ni", { ...shop, nation: "northern-ireland" })).toBe("yes");
    expect(told("work-maintain", { ...shop, nation: "northern-ireland" })).toBe("no");
    expect(told("work-maintain", {})).toBe("no");
    expect(dutiesIn({ ...shop, classes: ["C1"] }).filter(({ who }) => who === "landlord")).toEqual([]);
  });

  test("the inspector works safely everywhere, and tells of danger before leaving", () => {
    for (const use of ["dwelling", "farm", "shop"].map((one) =>
      one === "farm" ? "agricultural" : one,
    ) as Job["use"][])
      expect(told("inspector-safe-work", { ...(use === undefined ? {} : { use }), tenure: "owner-occupied" })).toBe(
        "yes",
      );
    expect(dutiesIn({ classes: ["C1"] })[0]).toMatchObject({ id: "inspector-tell-danger", onlyIf: [] });
    expect(told("inspector-tell-danger-ni", { nation: "northern-ireland", classes: ["C1"] })).toBe("yes");
  });
});

describe("what is not known", () => {
  const unknown = { notKnown: "not-verified", reason: "nobody could say" } as const;

  test("a nation that is not known: what each would ask is there, and nothing is asserted but what all have", () => {
    const duties = dutiesIn({ nation: unknown, classes: ["C2"] });
    expect(duties.filter(({ onlyIf }) => onlyIf.length === 0)).toEqual([]);
    const ids = duties.map(({ id }) => id);
    for (const id of ["england-work", "wales-fit", "scotland-work", "ni-work"]) expect(ids).toContain(id);
    expect(duties.find(({ id }) => id === "england-work")).toMatchObject({
      onlyIf: ["england"],
      time: { day: "2026-12-07" },
    });
  });

  test("a tenure or a use that is not known, or is another one, leaves every letting possible", () => {
    for (const tenure of [unknown, "other"] as const)
      expect(told("england-work", { tenure, classes: ["C2"] })).toBe("if let-home 2026-12-07");
    for (const use of [unknown, "other"] as const)
      expect(told("england-work", { use, classes: ["C2"] })).toBe("if let-home 2026-12-07");
    expect(told("england-work", { tenure: "owner-occupied", classes: ["C2"] })).toBe("no");
  });

  test("an observation without a class leaves open whether work is asked for", () => {
    const edit = ({ observations: [first] }: InspectionFile) => {
      delete first?.choice;
    };
    expect(told("england-work", { classes: ["C3"], edit })).toBe("if work-required 2026-12-07");
  });
});

test("of several days the first on which something was found counts, and the first of all where that is not recorded", () => {
  const days = ["2026-11-30", "2026-12-01", "2026-12-02"] as const;
  expect(told("england-work", { days, classes: ["C2"] })).toBe("yes 2026-12-27");
  const edit = ({ observations: [first] }: InspectionFile) => Object.assign(first ?? {}, { foundOn: "2026-12-02" });
  expect(told("england-work", { days, classes: ["C2"], edit })).toBe("yes 2026-12-29");
  expect(told("england-work", { days, classes: ["C2", "FI"], edit })).toBe("yes 2026-12-27");
});

test("every duty can come to be there, and rests on a statute with its provision", () => {
  const seen = new Set<DutyId>();
  for (const nation of ["england", "wales", "scotland", "northern-ireland"] as const)
    for (const [tenure, use] of [
      ["private-rented", "dwelling"],
      ["social-rented", "house-in-multiple-occupation"],
      ["social-rented", "dwelling"],
      ["commercial-lease", "shop"],
    ] as const)
      for (const duty of dutiesIn({ nation, tenure, use, classes: ["C1"], letting: { equipment: true } })) {
        seen.add(duty.id);
        expect(duty.provision).not.toBe("");
        expect(duty.source.work).toContain(duty.statute.number);
      }
  expect(DUTY_IDS.filter((id) => !seen.has(id))).toEqual([]);
});

test("duties are apart from the outcome: it is the same for every nation and tenure", () => {
  const outcomes = (["england", "scotland"] as const).flatMap((nation) =>
    (["owner-occupied", "private-rented"] as const).map(
      (tenure) => assemble(jobFile({ nation, tenure, classes: ["C2"] })).outcome,
    ),
  );
  for (const outcome of outcomes) expect(outcome).toEqual(outcomes[0]);
});
