import { ALWAYS, AT_ONCE, type DutyTable, next, UNDATED } from "../row.ts";

/** Work and places of work, and the inspector's own work everywhere. */
export const ELECTRICITY_AT_WORK: DutyTable = {
  statute: { id: "electricity-at-work", title: "Electricity at Work Regulations 1989", number: "SI 1989/635" },
  edition: "with HSE guidance",
  rows: [
    {
      id: "work-maintain",
      provision: "reg. 4(2)",
      basis: "memory",
      who: "duty-holder",
      when: ["great-britain", "workplace"],
      time: next(null, "safer"),
    },
    {
      id: "work-defence",
      provision: "reg. 29",
      basis: "memory",
      who: "duty-holder",
      when: ["great-britain", "workplace"],
      time: UNDATED,
    },
    {
      id: "inspector-safe-work",
      provision: "regs 13 to 16",
      basis: "memory",
      who: "inspector",
      when: ["great-britain"],
      time: ALWAYS,
    },
    {
      id: "inspector-tell-danger",
      provision: "regs 3, 4 and 16, with section 3 of the Health and Safety at Work etc. Act 1974",
      basis: "memory",
      who: "inspector",
      to: "duty-holder",
      when: ["great-britain", "danger"],
      time: AT_ONCE,
    },
  ],
};

export const ELECTRICITY_AT_WORK_NORTHERN_IRELAND: DutyTable = {
  statute: {
    id: "electricity-at-work-northern-ireland",
    title: "Electricity at Work Regulations (Northern Ireland) 1991",
    number: "SR 1991/13",
  },
  edition: "with HSENI guidance",
  rows: [
    {
      id: "work-maintain-ni",
      provision: "reg. 4(2)",
      basis: "memory",
      who: "duty-holder",
      when: ["northern-ireland", "workplace"],
      time: next(null, "safer"),
    },
    {
      id: "work-defence-ni",
      provision: "defence",
      basis: "memory",
      doubt: "the number of the regulation is not checked",
      who: "duty-holder",
      when: ["northern-ireland", "workplace"],
      time: UNDATED,
    },
    {
      id: "inspector-safe-work-ni",
      provision: "regs 13 to 16",
      basis: "memory",
      who: "inspector",
      when: ["northern-ireland"],
      time: ALWAYS,
    },
    {
      id: "inspector-tell-danger-ni",
      provision: "regs 3, 4 and 16, with article 5 of the Health and Safety at Work (Northern Ireland) Order 1978",
      basis: "memory",
      doubt: "the number of the article is not checked",
      who: "inspector",
      to: "duty-holder",
      when: ["northern-ireland", "danger"],
      time: AT_ONCE,
    },
  ],
};
