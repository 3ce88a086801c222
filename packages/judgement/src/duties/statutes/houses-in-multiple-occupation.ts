import { ALWAYS, type DutyTable, days, next } from "../row.ts";

/** Licensed houses of several households. Each nation has its own law; local rules and the licence prevail. */
export const HMO_ENGLAND: DutyTable = {
  statute: { id: "hmo-england", title: "Housing Act 2004, Part 2 and Schedule 4", number: "2004 c. 34" },
  edition: "with the conditions of the licence",
  rows: [
    {
      id: "hmo-england",
      provision: "Sch. 4 and the licence",
      basis: "memory",
      doubt: "the licence itself was not read; local rules prevail",
      who: "licence-holder",
      to: "authority",
      when: ["england", "hmo"],
      time: days(7, "request", "safer"),
    },
  ],
};

export const HMO_WALES: DutyTable = {
  statute: {
    id: "hmo-wales",
    title: "Management of Houses in Multiple Occupation (Wales) Regulations 2006",
    number: "WSI 2006/1715",
  },
  edition: "as amended",
  rows: [
    {
      id: "hmo-wales-interval",
      provision: "reg. 6(3)",
      basis: "memory",
      who: "licence-holder",
      when: ["wales", "hmo"],
      time: next(5, "safer"),
    },
    {
      id: "hmo-wales-authority",
      provision: "reg. 6(3)",
      basis: "memory",
      who: "licence-holder",
      to: "authority",
      when: ["wales", "hmo"],
      time: days(7, "request", "safer"),
    },
  ],
};

export const HMO_SCOTLAND: DutyTable = {
  statute: { id: "hmo-scotland", title: "Housing (Scotland) Act 2006, Part 5", number: "2006 asp 1" },
  edition: "with the conditions of the licence",
  rows: [
    {
      id: "hmo-scotland",
      provision: "Part 5 and the licence",
      basis: "memory",
      doubt: "the licence itself was not read; local rules prevail",
      who: "licence-holder",
      to: "authority",
      when: ["scotland", "hmo"],
      time: ALWAYS,
    },
  ],
};

export const HMO_NORTHERN_IRELAND: DutyTable = {
  statute: {
    id: "hmo-northern-ireland",
    title: "Houses in Multiple Occupation Act (Northern Ireland) 2016",
    number: "2016 c. 22 (N.I.)",
  },
  edition: "with the conditions of the licence",
  rows: [
    {
      id: "hmo-ni",
      provision: "the licence",
      basis: "memory",
      doubt: "the licence itself was not read; local rules prevail",
      who: "licence-holder",
      to: "authority",
      when: ["northern-ireland", "hmo"],
      time: ALWAYS,
    },
  ],
};
