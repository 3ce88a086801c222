import type { DutyBearer, DutyCondition, DutyCount, DutyEvent, DutyId, DutyRecipient } from "@good-grounds/core";
import { REPORT } from "./report-en.ts";

/** What each duty asks, as a sentence that begins after who has to do it: "has to ...". */
const ASKS: Readonly<Record<DutyId, string>> = Object.freeze({
  "england-while-let":
    "has to see that the installation meets the standard at all times while a tenant lives there. A report that asks for work does not end a letting by itself; the work has to be done in time.",
  "england-before-tenancy": "has to have the installation inspected and tested before a new tenancy begins.",
  "england-next-inspection": "has to have it inspected and tested again.",
  "england-report-names-next": "has to name the date of the next inspection in the report.",
  "england-copy-tenant": "has to give every tenant who lives there a copy of this report.",
  "england-copy-new-tenant": "has to give a new tenant a copy of the latest report before the tenant moves in.",
  "england-copy-prospective": "has to give a copy to anybody who may become a tenant and asks for it in writing.",
  "england-copy-authority": "has to give the local housing authority a copy when it asks in writing.",
  "england-keep":
    "has to keep the report until the next inspection is due, or made if that is later, and give it to whoever makes it.",
  "england-work":
    "has to have the work and the investigations done that the report asks for (C1, C2 and FI), by a qualified person.",
  "england-work-confirmation":
    "has to get it in writing from whoever did the work that the standard is met, or that more is needed, and give that with this report to every tenant and to the local housing authority. Where more is needed, the same period runs again.",
  "england-remedial-notice":
    "has to do what a remedial notice of the local housing authority asks, if one is served because work was not done; representations have to reach it within 21 days.",
  "england-reasonable-steps":
    "is not in breach where all reasonable steps were taken and, for example, a tenant would not let anybody in: keep every letter, call and refusal with its date. Otherwise the local housing authority may set a penalty, since 1 November 2025 of up to £40,000.",
  "england-social-first":
    "had to have the first inspection made, and provided equipment checked, by then: the tenancy was granted before 1 December 2025.",
  "england-equipment-check":
    "has to have the electrical equipment that goes with the letting checked by a qualified person, with a record for the tenant.",
  "england-equipment-repair":
    "has to have equipment that was found unsafe repaired or replaced, as soon as can reasonably be done.",
  "england-report-names-equipment":
    "has to say in the report whether the checks of the landlord's equipment are up to date.",
  "england-emergency-hazard":
    "has to look into an emergency (such as live parts that can be touched, or sparking) and make it safe within the hours given, or find the household another place to stay.",
  "wales-valid-report":
    "has to have a report that holds for the whole time a contract-holder lives there: until then it holds, and a new inspection has to be made.",
  "wales-copy-occupation":
    "has to give a new contract-holder the latest report, and written confirmation of work done since.",
  "wales-copy-later": "has to give the contract-holder who lives there a copy of this report.",
  "wales-work-confirmation":
    "has to give the contract-holder written confirmation of the work. No fixed time is set for the work itself; whether the home is fit to live in is asked meanwhile.",
  "wales-fit":
    "has to keep the home fit to live in. One without a report that holds counts as not fit, and rent may then not be owed; a dangerous installation bears on it too.",
  "wales-smoke-alarms":
    "has to keep a mains smoke alarm on every storey, linked to the others and working. This report does not test them.",
  "scotland-next-inspection": "has to have it inspected again, appliances of the landlord included.",
  "scotland-while-let":
    "has to meet the Repairing Standard when a tenancy starts and all through it; no tenancy may start without an inspection in the years before. The First-tier Tribunal may order work.",
  "scotland-copy-new-tenant": "has to give a new tenant a copy of the latest record before the tenancy starts.",
  "scotland-copy-tenant": "has to give the tenant a copy of the record of this inspection. No number of days is set.",
  "scotland-keep": "has to keep a copy of the record for at least six years.",
  "scotland-work":
    "has to have C1 and C2 put right for the home to meet the Repairing Standard, in a reasonable time; a tenant may go to the First-tier Tribunal.",
  "scotland-rcd":
    "has to have at least one RCD of no more than 30 mA in the main consumer unit, whatever class, or none, this report gives its absence.",
  "scotland-appliances": "has to have appliances that go with the letting tested, with a record.",
  "scotland-fire-alarms": "has to keep linked smoke and heat alarms. This report does not test them.",
  "scotland-social": "has to have it inspected again.",
  "ni-while-let": "has to see that the installation meets the standard whenever the home is let.",
  "ni-next-inspection": "has to have it inspected and tested again.",
  "ni-report-names-next": "has to name the date of the next inspection in the report.",
  "ni-copy-tenant": "has to give every tenant a copy of this report.",
  "ni-copy-new-tenant": "has to give a new tenant a copy of the latest report before the tenant moves in.",
  "ni-copy-prospective": "has to give a copy to anybody who may become a tenant and asks for it.",
  "ni-copy-council": "has to give the council a copy when it asks.",
  "ni-keep": "has to keep the report until the next inspection is due, and give it to whoever makes it.",
  "ni-work":
    "has to have the work and the investigations done that the report asks for (C1, C2 and FI), by a qualified person.",
  "ni-work-confirmation":
    "has to get it in writing from whoever did the work that it is complete, and give that to every tenant and to the council.",
  "ni-social":
    "is not asked anything by the rules for private tenancies: they do not cover social homes. The landlord's own duties to repair remain.",
  "hmo-england":
    "has to keep what the licence says, and give the authority the report when it asks. A licence or a local rule may set other dates, and then prevails.",
  "hmo-wales-interval": "has to have the fixed installation inspected and tested again.",
  "hmo-wales-authority": "has to give the local authority the certificate when it asks in writing.",
  "hmo-scotland": "has to keep what the licence says; it may ask more, and sooner.",
  "hmo-ni": "has to keep what the licence says; it may ask more, and sooner.",
  "work-maintain":
    "has to keep the installation in such a state, as far as reasonably practicable, that it gives rise to no danger. No law sets a number of years; the date is the one this report gives, if it gives one.",
  "work-defence":
    "may be asked to show that all reasonable steps were taken and all due diligence used: keep the report and the records of the work.",
  "work-maintain-ni":
    "has to keep the installation in such a state, as far as reasonably practicable, that it gives rise to no danger. No law sets a number of years; the date is the one this report gives, if it gives one.",
  "work-defence-ni":
    "may be asked to show that all reasonable steps were taken and all due diligence used: keep the report and the records of the work.",
  "inspector-safe-work":
    "works dead where that can be done, live only where nothing else is reasonable and with precautions, with room, access and light, and is competent.",
  "inspector-safe-work-ni":
    "works dead where that can be done, live only where nothing else is reasonable and with precautions, with room, access and light, and is competent.",
  "inspector-tell-danger":
    "has to tell whoever is in charge of a danger before leaving, and make it safe where they agree.",
  "inspector-tell-danger-ni":
    "has to tell whoever is in charge of a danger before leaving, and make it safe where they agree.",
});

/** A duty in a few words, for the first page and for a calendar. */
const SHORT: Readonly<Record<DutyId, string>> = Object.freeze({
  "england-while-let": "Standard met while it is let",
  "england-before-tenancy": "Inspected before a new tenancy",
  "england-next-inspection": "Next inspection",
  "england-report-names-next": "Date of the next inspection in the report",
  "england-copy-tenant": "Copy of the report to every tenant",
  "england-copy-new-tenant": "Copy of the report to a new tenant",
  "england-copy-prospective": "Copy of the report to whoever may become a tenant",
  "england-copy-authority": "Copy of the report to the local housing authority",
  "england-keep": "Report kept for the next inspector",
  "england-work": "Work and investigations done",
  "england-work-confirmation": "Written confirmation of the work to tenants and authority",
  "england-remedial-notice": "Remedial notice followed, if one is served",
  "england-reasonable-steps": "Record of reasonable steps",
  "england-social-first": "First inspection of an older social tenancy",
  "england-equipment-check": "Landlord's equipment checked",
  "england-equipment-repair": "Unsafe equipment repaired or replaced",
  "england-report-names-equipment": "Report says whether equipment checks are up to date",
  "england-emergency-hazard": "Emergency made safe",
  "wales-valid-report": "Next inspection",
  "wales-copy-occupation": "Copy of the report to a new contract-holder",
  "wales-copy-later": "Copy of the report to the contract-holder",
  "wales-work-confirmation": "Written confirmation of the work to the contract-holder",
  "wales-fit": "Home fit to live in",
  "wales-smoke-alarms": "Smoke alarms",
  "scotland-next-inspection": "Next inspection",
  "scotland-while-let": "Repairing Standard met while it is let",
  "scotland-copy-new-tenant": "Copy of the record to a new tenant",
  "scotland-copy-tenant": "Copy of the record to the tenant",
  "scotland-keep": "Record kept",
  "scotland-work": "C1 and C2 put right",
  "scotland-rcd": "RCD of 30 mA in the main consumer unit",
  "scotland-appliances": "Landlord's appliances tested",
  "scotland-fire-alarms": "Smoke and heat alarms",
  "scotland-social": "Next inspection",
  "ni-while-let": "Standard met while it is let",
  "ni-next-inspection": "Next inspection",
  "ni-report-names-next": "Date of the next inspection in the report",
  "ni-copy-tenant": "Copy of the report to every tenant",
  "ni-copy-new-tenant": "Copy of the report to a new tenant",
  "ni-copy-prospective": "Copy of the report to whoever may become a tenant",
  "ni-copy-council": "Copy of the report to the council",
  "ni-keep": "Report kept for the next inspector",
  "ni-work": "Work and investigations done",
  "ni-work-confirmation": "Written confirmation of the work to tenants and council",
  "ni-social": "Social homes are not covered",
  "hmo-england": "Licence of the house",
  "hmo-wales-interval": "Next inspection",
  "hmo-wales-authority": "Certificate to the local authority",
  "hmo-scotland": "Licence of the house",
  "hmo-ni": "Licence of the house",
  "work-maintain": "Kept safe at all times; next inspection as the report names it",
  "work-defence": "Records of due diligence",
  "work-maintain-ni": "Kept safe at all times; next inspection as the report names it",
  "work-defence-ni": "Records of due diligence",
  "inspector-safe-work": "Safe work",
  "inspector-safe-work-ni": "Safe work",
  "inspector-tell-danger": "Danger told before leaving",
  "inspector-tell-danger-ni": "Danger told before leaving",
});

const BEARER: Readonly<Record<DutyBearer, string>> = Object.freeze({
  landlord: "The landlord",
  "licence-holder": "The licence holder or manager",
  "duty-holder": "Whoever employs people there or is in control",
  inspector: "The inspector",
});

const RECIPIENT: Readonly<Record<DutyRecipient, string>> = Object.freeze({
  tenant: "tenant",
  "new-tenant": "new tenant",
  "prospective-tenant": "whoever may become a tenant",
  authority: "local authority",
  "tenant-and-authority": "tenant and local authority",
  "next-inspector": "next inspector",
  landlord: "landlord",
  "duty-holder": "whoever is in charge",
});

/** What would have to be so: after "if". */
const CONDITION: Readonly<Record<DutyCondition, string>> = Object.freeze({
  england: "the premises are in England",
  wales: "the premises are in Wales",
  scotland: "the premises are in Scotland",
  "northern-ireland": "the premises are in Northern Ireland",
  "great-britain": "the premises are in England, Wales or Scotland",
  "let-home": "somebody rents it as a home",
  "private-let": "a private landlord lets it as a home",
  "social-let": "a social landlord lets it as a home",
  "single-home": "it is no house in multiple occupation",
  hmo: "it is a house in multiple occupation",
  workplace: "people work there",
  occupied: "a tenant lives there now",
  "tenancy-to-come": "a tenancy is to begin",
  "older-social-tenancy": "a social landlord granted the tenancy before 1 December 2025",
  "social-in-force": "the tenancy was granted on or after 1 December 2025",
  equipment: "the landlord provides electrical equipment",
  "work-required": "what is still open turns out to be C1, C2 or FI",
  danger: "what is still open turns out to be C1",
  "danger-or-likely": "what is still open or to be investigated turns out to be C1 or C2",
  "no-main-rcd": "there is no RCD of 30 mA or less in the main board",
});

const EVENT: Readonly<Record<DutyEvent, string>> = Object.freeze({
  inspection: "the inspection",
  "inspection-completed": "the end of the inspection",
  finding: "the inspection that found it",
  told: "being told",
  request: "the request",
  occupation: "the day the tenant may move in",
  tenancy: "the start of the tenancy",
  "work-done": "the end of the work",
  notice: "the notice",
  "equipment-check": "the last check of the equipment",
});

const amount = ({ number, unit }: Pick<DutyCount, "number" | "unit">) => `${number} ${unit}${number === 1 ? "" : "s"}`;

/** A day, with the time of day behind it where there is one. */
function spoken(moment: string): string {
  return [REPORT.day(moment.slice(0, 10)), moment.slice(11)].filter(Boolean).join(", ");
}

/** Words of what the law asks. */
export const DUTY = Object.freeze({
  title: "What the law asks",
  notAdvice:
    "Reminders, not legal advice. They follow the nation, the letting, the use and the dates in the inspection file, and run whatever the technical outcome is. The law in force, a licence and stricter local rules prevail.",
  short: "Reminders, not legal advice.",
  passOn: (by: string) =>
    `Ordered by: ${by}. The duties stay with the landlord or whoever is in control: pass this report on to them.`,
  orderer: {
    owner: "the owner",
    landlord: "the landlord",
    agent: "the letting agent",
    tenant: "the tenant",
    buyer: "a buyer",
    employer: "the employer",
    authority: "an authority",
    insurer: "an insurer",
    other: "somebody else",
  },
  head: ["By when", "Who, and what", "Where it stands, and how it was counted"] as const,
  asks: ASKS,
  brief: SHORT,
  bearer: BEARER,
  recipient: RECIPIENT,
  condition: CONDITION,
  list: listOf,
  onlyIf: (conditions: readonly string[]) => `Would apply if ${listOf(conditions)}.`,
  onlyIfShort: (conditions: readonly string[]) => `if ${listOf(conditions)}`,
  sureTitle: "What applies",
  perhapsTitle: "What would apply, depending on what is not known",
  nothing: "Nothing is known here that the law asks because of this inspection.",
  more: (count: number) => `${count} more in “What the law asks”.`,
  moreHere: (count: number) => `and ${count} more; --all shows them`,
  column: (day: string, what: string, count: number) =>
    `law: ${day} ${what}${count > 1 ? `, and ${count - 1} more with a date` : ""}`,
  columnUndated: (count: number) => `law: ${count} ${count === 1 ? "duty" : "duties"} without a date`,
  when: {
    at: (day: string, clock: string) => `by ${REPORT.day(day)}, ${clock}`,
    by: (day: string) => `by ${REPORT.day(day)}`,
    before: (event: DutyEvent) => `before ${EVENT[event]}`,
    keep: (day: string) => `keep until ${REPORT.day(day)} or longer`,
    keepOn: "keep until the next inspection",
    after: (count: DutyCount) => `within ${amount(count)} of ${EVENT[count.from]}`,
    atOnce: "before leaving",
    always: "at all times",
    undated: "no date set",
    unknown: "date not known",
  },
  counted: {
    stated: (count: DutyCount, start: string) =>
      `${amount(count)} from ${EVENT[count.from]}; ${spoken(start)} counts as the first day, as the law says`,
    safer: (count: DutyCount, start: string) =>
      `${amount(count)} from ${EVENT[count.from]}; ${spoken(start)} is counted as the first day, the safer way`,
    elapsed: (count: DutyCount, start: string) => `${amount(count)} on the clock from ${spoken(start)}`,
    untimed: (count: DutyCount) =>
      `${amount(count)} from ${EVENT[count.from]}; the hour is not recorded, so at that hour of the next day at the latest`,
    shorter: (byLaw: number) => `the report sets this shorter period; the law's own is ${byLaw} days`,
    later: (day: string) => `the report names ${REPORT.day(day)}, which is later than the law allows`,
  },
  memory: "from memory, to be checked",
  doubt: (doubt: string) => `not certain: ${doubt}`,
  calendar: {
    name: (address: string) => `What the law asks: ${address}`,
    perhaps: (what: string) => `Perhaps: ${what}`,
    nothing: "There is no duty with a date to put into a calendar.",
  },
});

function listOf(words: readonly string[]): string {
  const [first = "", ...others] = words;
  return others.length === 0 ? first : `${[first, ...others.slice(0, -1)].join(", ")} and ${others.at(-1)}`;
}
