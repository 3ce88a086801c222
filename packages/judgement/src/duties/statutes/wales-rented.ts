import type { DutyCondition } from "@good-grounds/core";
import { ALWAYS, type DutyTable, days, next } from "../row.ts";

const LET: readonly DutyCondition[] = ["wales", "let-home"];
const SINCE = "2022-12-01";
const AS_MADE = "14 days as amended, 7 as made; this paragraph was read as made, so check the text in force";

/** Homes under occupation contracts in Wales. */
export const WALES_RENTED: DutyTable = {
  statute: {
    id: "wales-rented",
    title: "Renting Homes (Fitness for Human Habitation) (Wales) Regulations 2022",
    number: "WSI 2022/6",
  },
  edition: "as amended",
  rows: [
    {
      id: "wales-valid-report",
      provision: "reg. 6(1) and 6(2)",
      basis: "published",
      who: "landlord",
      when: LET,
      since: SINCE,
      time: next(5, "stated"),
    },
    {
      id: "wales-copy-occupation",
      provision: "reg. 6(3)",
      basis: "published",
      who: "landlord",
      to: "new-tenant",
      when: [...LET, "tenancy-to-come"],
      since: SINCE,
      time: days(14, "occupation", "stated"),
    },
    {
      id: "wales-copy-later",
      provision: "reg. 6(4)",
      basis: "published",
      doubt: AS_MADE,
      who: "landlord",
      to: "tenant",
      when: [...LET, "occupied"],
      since: SINCE,
      time: days(14, "inspection-completed", "stated"),
    },
    {
      id: "wales-work-confirmation",
      provision: "reg. 6(5)",
      basis: "memory",
      doubt: AS_MADE,
      who: "landlord",
      to: "tenant",
      when: [...LET, "work-required"],
      since: SINCE,
      time: days(14, "work-done", "safer"),
    },
    {
      id: "wales-fit",
      provision: "reg. 6(6), with section 91 of the Renting Homes (Wales) Act 2016",
      basis: "memory",
      doubt: "the number of the paragraph is not checked",
      who: "landlord",
      when: LET,
      since: SINCE,
      time: ALWAYS,
    },
    {
      id: "wales-smoke-alarms",
      provision: "reg. 5",
      basis: "published",
      who: "landlord",
      when: LET,
      since: SINCE,
      time: ALWAYS,
    },
  ],
};
