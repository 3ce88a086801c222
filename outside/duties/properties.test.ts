import { NATIONS, PREMISES_USES, TENURES } from "@good-grounds/core";
import fc from "fast-check";
import { expect, test } from "vitest";
import { Chance } from "../../examples/simulate/chance.ts";
import { assemble } from "../../packages/assembly/src/index.ts";
import { parseInspectionData } from "../../packages/inspection/src/index.ts";
import { daysAfter } from "../../packages/judgement/src/duties/calendar-days.ts";
import { randomInstallation, writtenFile } from "../diagnosis/random-installation.ts";
import { complete } from "../outcome/complete.ts";
import { dutiesIn, type Job } from "./job.ts";

/** Classes from the best to the worst. */
const CLASSES = ["none", "C3", "FI", "C2", "C1"] as const;

const aDay = fc.integer({ min: 0, max: 3000 }).map((days) => daysAfter("2026-06-01", days));
const unknown = fc.constant({ notKnown: "not-verified" as const, reason: "nobody could say" });
const yesNo = fc.option(fc.boolean(), { nil: undefined });
const letting = fc
  .record({ occupied: yesNo, equipment: yesNo, equipmentChecked: fc.option(aDay, { nil: undefined }) })
  .map((all) => Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined)));
const job = fc.record({
  nation: fc.oneof(fc.constantFrom(...NATIONS), unknown),
  tenure: fc.oneof(fc.constantFrom(...TENURES), unknown),
  use: fc.oneof({ weight: 5, arbitrary: fc.constant("dwelling" as const) }, fc.constantFrom(...PREMISES_USES), unknown),
  letting,
  days: aDay.map((day) => [day] as const),
  classes: fc.array(fc.constantFrom(...CLASSES), { minLength: 1, maxLength: 3 }),
  workWithin: fc.option(fc.integer({ min: 1, max: 60 }), { nil: undefined }),
});

function asked({ workWithin, ...rest }: typeof job extends fc.Arbitrary<infer T> ? T : never): Job {
  return { ...rest, ...(workWithin === undefined ? {} : { conclusion: { workWithin: { days: workWithin } } }) };
}

test("a later inspection never gives an earlier date", () => {
  fc.assert(
    fc.property(job, fc.integer({ min: 1, max: 800 }), (data, later) => {
      const before = dutiesIn(asked(data));
      const after = dutiesIn(asked({ ...data, days: [daysAfter(data.days[0], later)] }));
      for (const duty of before) {
        const same = after.find(({ id }) => id === duty.id);
        const [day, other] = [duty.time.day, same?.time.day];
        if (day !== null && other != null) expect(other >= day).toBe(true);
      }
    }),
    { numRuns: 60 },
  );
});

test("a worse class never removes a duty, makes it less sure or moves its date back", () => {
  fc.assert(
    fc.property(job, fc.nat(), fc.nat(), (data, which, how) => {
      const at = which % data.classes.length;
      const now = CLASSES.indexOf(data.classes[at] ?? "none");
      const worse = CLASSES[Math.min(CLASSES.length - 1, now + 1 + (how % 4))] ?? "C1";
      const before = dutiesIn(asked(data));
      const after = dutiesIn(asked({ ...data, classes: data.classes.map((one, i) => (i === at ? worse : one)) }));
      for (const duty of before) {
        const same = after.find(({ id }) => id === duty.id);
        expect(same).toBeDefined();
        for (const condition of same?.onlyIf ?? []) expect(duty.onlyIf).toContain(condition);
        if (duty.time.day !== null) expect((same?.time.day ?? "9999") <= duty.time.day).toBe(true);
      }
    }),
    { numRuns: 60 },
  );
});

test("what comes to be known takes nothing away that applies, and what applies was possible before", () => {
  fc.assert(
    fc.property(
      job,
      fc.constantFrom(...NATIONS),
      fc.constantFrom("private-rented", "social-rented"),
      (data, nation, tenure) => {
        const unclear = { notKnown: "not-verified", reason: "nobody could say" } as const;
        const known = dutiesIn(asked({ ...data, nation, tenure }));
        const open = dutiesIn(asked({ ...data, nation: unclear, tenure: unclear }));
        for (const { id } of known) expect(open.map((one) => one.id)).toContain(id);
        for (const { id, onlyIf } of open) if (onlyIf.length === 0) expect(known.map((one) => one.id)).toContain(id);
      },
    ),
    { numRuns: 60 },
  );
});

test("a sound home that was tested and answered in full asks for no work", () => {
  const data = complete(writtenFile(randomInstallation(4001, new Chance(4001)))) as { brief: object };
  Object.assign(data.brief, { nation: "england", tenure: "private-rented", use: "dwelling" });
  const parsed = parseInspectionData(data);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues.slice(0, 3)));
  const { duties, outcome } = assemble(parsed.file);
  expect(outcome.outcome).toBe("satisfactory");
  expect(duties.map(({ id }) => id).filter((id) => id.includes("work") && !id.startsWith("inspector"))).toEqual([]);
  expect(duties.map(({ id }) => id)).toContain("england-next-inspection");
});
