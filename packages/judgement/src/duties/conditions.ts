import type { DutyCondition, Nation } from "@good-grounds/core";
import type { DutyEvidence } from "./evidence.ts";

type Asked = (evidence: DutyEvidence) => boolean | undefined;

const isIn =
  (...nations: readonly Nation[]): Asked =>
  ({ nation }) =>
    nation === undefined ? undefined : nations.includes(nation);

const not = (answer: boolean | undefined) => (answer === undefined ? undefined : !answer);

/** Day from which social tenancies are asked in England what private ones were asked before: new, and granted earlier. */
const SOCIAL = Object.freeze({ inForce: "2025-11-01", isNew: "2025-12-01", older: "2026-05-01" });

/** Each condition asked of the evidence: yes, no, or not known. */
export const CONDITION: Readonly<Record<DutyCondition, Asked>> = Object.freeze({
  england: isIn("england"),
  wales: isIn("wales"),
  scotland: isIn("scotland"),
  "northern-ireland": isIn("northern-ireland"),
  "great-britain": isIn("england", "wales", "scotland"),
  "let-home": ({ isLetHome }) => isLetHome,
  "private-let": ({ isPrivateLet }) => isPrivateLet,
  "social-let": ({ isSocialLet }) => isSocialLet,
  "single-home": ({ isHmo }) => not(isHmo),
  hmo: ({ isHmo }) => isHmo,
  workplace: ({ isWorkplace }) => isWorkplace,
  occupied: ({ isOccupied }) => isOccupied,
  // A tenancy that began before the inspection is none to come; of others nobody knows.
  "tenancy-to-come": ({ starts, firstDay }) => !(starts !== null && firstDay !== null && starts <= firstDay),
  "older-social-tenancy": ({ isSocialLet, granted, starts }) => {
    if (isSocialLet === false) return false;
    const since = granted ?? starts;
    return since === null ? undefined : since < SOCIAL.isNew ? isSocialLet : false;
  },
  "social-in-force": ({ isSocialLet, granted, firstDay }) => {
    if (isSocialLet !== true || firstDay === null || firstDay >= SOCIAL.older) return true;
    if (firstDay < SOCIAL.inForce) return false;
    return granted === null ? undefined : granted >= SOCIAL.isNew;
  },
  equipment: ({ hasEquipment, equipmentChecked }) => hasEquipment ?? (equipmentChecked === null ? undefined : true),
  "work-required": ({ has }) => has("C1", "C2", "FI"),
  danger: ({ has }) => has("C1"),
  // What has to be investigated may turn out to be one or the other.
  "danger-or-likely": ({ has }) => (has("C1", "C2") === false && has("FI") !== false ? undefined : has("C1", "C2")),
  "no-main-rcd": ({ hasMainRcd }) => not(hasMainRcd),
});
