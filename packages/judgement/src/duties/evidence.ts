import { type Classification, type Fact, isKnownFact, type Nation, type Outcome } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import { mainRcd } from "./main-rcd.ts";
import { earliest } from "./uk-time.ts";

/** What the law's conditions and periods are asked of. Undefined: not known. */
export interface DutyEvidence {
  readonly nation: Nation | undefined;
  /** Whether somebody rents it as a home. */
  readonly isLetHome: boolean | undefined;
  readonly isPrivateLet: boolean | undefined;
  readonly isSocialLet: boolean | undefined;
  readonly isHmo: boolean | undefined;
  readonly isWorkplace: boolean | undefined;
  readonly isOccupied: boolean | undefined;
  readonly hasEquipment: boolean | undefined;
  readonly hasMainRcd: boolean | undefined;
  /** Whether an observation has one of these classes; not known while one is open or something decides and is open. */
  readonly has: (...classes: readonly Classification[]) => boolean | undefined;
  /** First and last day of the inspection; null where none is recorded. */
  readonly firstDay: string | null;
  readonly lastDay: string | null;
  /** Earliest day on which something was found that needs work. */
  readonly foundOn: string | null;
  /** When somebody was first told of a danger. */
  readonly toldAt: string | null;
  readonly starts: string | null;
  readonly granted: string | null;
  readonly equipmentChecked: string | null;
  readonly workWithinDays: number | null;
  readonly nextInspectionBy: string | null;
}

export function dutyEvidence(installation: Installation, outcome: Outcome): DutyEvidence {
  const { letting, nextInspectionBy, workWithinDays } = installation;
  const days = [installation.inspectedOn, ...installation.visits.map(({ date }) => date)]
    .filter((day) => day !== undefined)
    .sort();
  const [firstDay = null] = days;
  return {
    nation: wordOf(installation.nation),
    ...heldAs(installation),
    isOccupied: isOccupied(installation, firstDay),
    hasEquipment: wordOf(letting.equipment),
    hasMainRcd: mainRcd(installation),
    has: (...classes) => hasClass(classes, installation, outcome),
    firstDay,
    lastDay: days.at(-1) ?? null,
    foundOn: foundOn(installation, firstDay),
    toldAt: toldAt(installation),
    starts: letting.starts ?? null,
    granted: letting.granted ?? null,
    equipmentChecked: letting.equipmentChecked ?? null,
    workWithinDays: workWithinDays ?? null,
    nextInspectionBy: nextInspectionBy ?? null,
  };
}

function wordOf<W extends string | boolean>(fact: Fact<W>): W | undefined {
  return isKnownFact(fact) ? fact.word : undefined;
}

/** How the premises are held and used. Use and tenure "other" leave open what they are. */
function heldAs({ use: useFact, tenure: tenureFact }: Installation) {
  const use = wordOf(useFact);
  const tenure = wordOf(tenureFact);
  const isKnownUse = use !== undefined && use !== "other";
  const isHome = isKnownUse ? use === "dwelling" || use === "house-in-multiple-occupation" : undefined;
  const held = (as: typeof tenure) =>
    isHome === false ? false : tenure === undefined || tenure === "other" ? undefined : tenure !== as ? false : isHome;
  const isPrivateLet = held("private-rented");
  const isSocialLet = held("social-rented");
  const isLetHome =
    isPrivateLet === true || isSocialLet === true
      ? true
      : isPrivateLet === undefined || isSocialLet === undefined
        ? undefined
        : false;
  return {
    isPrivateLet,
    isSocialLet,
    isLetHome,
    isHmo: isKnownUse ? use === "house-in-multiple-occupation" : undefined,
    // Rooms that several households share are somebody's workplace where a cleaner or a warden is employed.
    isWorkplace: use === "house-in-multiple-occupation" || isHome === undefined ? undefined : !isHome,
  };
}

/** A tenant lives there where it is recorded, or where the tenancy began before the inspection. */
function isOccupied({ letting: { occupied, starts } }: Installation, firstDay: string | null): boolean | undefined {
  if (isKnownFact(occupied)) return occupied.word;
  return starts !== undefined && firstDay !== null && starts <= firstDay ? true : undefined;
}

/** Not found, while something is not classified or stands open, is not known. */
function hasClass(
  classes: readonly Classification[],
  { observations, observationsListed }: Installation,
  { points }: Outcome,
): boolean | undefined {
  if (observations.some(({ choice }) => choice !== undefined && classes.includes(choice.classification))) return true;
  const isOpen =
    !isKnownFact(observationsListed) || points.length > 0 || observations.some(({ choice }) => choice === undefined);
  return isOpen ? undefined : false;
}

const NEEDS_WORK: ReadonlySet<Classification> = new Set(["C1", "C2", "FI"]);

/** The first of the days on which what needs work was found; the first of the inspection where one has no day of its own. */
function foundOn({ observations }: Installation, firstDay: string | null): string | null {
  const days = observations
    .filter(({ choice }) => choice !== undefined && NEEDS_WORK.has(choice.classification))
    .map((one) => one.foundOn ?? firstDay)
    .filter((day) => day !== null)
    .sort();
  return days[0] ?? firstDay;
}

function toldAt({ observations }: Installation): string | null {
  return (
    earliest(
      observations.flatMap(({ choice, madeSafe }) =>
        choice?.classification === "C1" && madeSafe !== undefined ? [madeSafe.at] : [],
      ),
    ) ?? null
  );
}
