import type { ChangeNote, ChangeSilence, ChangeVerdict, ComparedReading, MatchTrait } from "@good-grounds/core";

const counted = (count: number, one: string, several: string) => `${count} ${count === 1 ? one : several}`;

/** Words of the comparison with earlier inspections. */
export const EARLIER = Object.freeze({
  title: "Then and now",
  against: (on: string, id: string) => `Against the inspection of ${on} (${id})`,
  otherAddress: "Its address is written otherwise than that of this file: make sure that it is the same installation.",
  byNameOnly:
    "There are too many circuits to weigh against each other: only those with the same board, number and description in both files were matched.",
  matched: (same: number, divided: number, unsettled: number, gone: number, added: number) =>
    [
      `${counted(same, "circuit", "circuits")} matched`,
      divided === 0 ? "" : `${divided} divided or joined`,
      unsettled === 0 ? "" : counted(unsettled, "group that cannot be told apart", "groups that cannot be told apart"),
      gone === 0 ? "" : `${gone} only then`,
      added === 0 ? "" : `${added} only now`,
    ]
      .filter((part) => part !== "")
      .join(", "),
  counts: (changed: number, within: number, open: readonly (readonly [why: ChangeSilence, count: number])[]) => {
    const all = open.reduce((sum, [, count]) => sum + count, 0);
    const reasons = open.map(([why, count]) => `${count} ${EARLIER.silence[why]}`).join("; ");
    return `${counted(changed, "reading has", "readings have")} changed, ${within} within what repeating the test may give${all === 0 ? "." : `; of ${all} it cannot be said (${reasons}).`}`;
  },
  restOn: "The comparisons rest on",
  speaks: (favour: string, against: string) => (against === "" ? favour : `${favour}; against it ${against}`),
  change: Object.freeze({
    within: "within repeatability",
    up: "changed, up",
    down: "changed, down",
    "cannot-say": "cannot say",
  } satisfies Record<ChangeVerdict, string>),
  changeShort: Object.freeze({
    within: "same",
    up: "UP",
    down: "DOWN",
    "cannot-say": "open",
  } satisfies Record<ChangeVerdict, string>),
  reading: Object.freeze({
    r1: "ring line end to end, r1",
    rn: "ring neutral end to end, rn",
    r2: "ring protective conductor end to end, r2",
    r1r2: "R1+R2",
    r2Only: "R2",
    insulationLiveLive: "insulation between live conductors",
    insulationLiveEarth: "insulation to earth",
    zs: "circuit's part of Zs",
    ze: "Ze",
    zdb: "loop at the board, Zdb",
    ra: "earth electrode, RA",
    lineNeutralLoop: "line to neutral loop",
    bonding: "main bonding",
  } satisfies Record<ComparedReading, string>),
  at20: " at 20 °C",
  less: " less ",
  wholeZs: "Zs as a whole",
  silence: Object.freeze({
    "not-taken-then": "not taken then",
    "not-taken-now": "not taken now",
    "not-taken": "taken neither then nor now",
    "display-ended": "where the display ended",
    "supply-not-known": "where Zs has changed but the loop before the circuit is not known on both days",
    "test-voltages-differ": "tested at different voltages",
  } satisfies Record<ChangeSilence, string>),
  note: Object.freeze({
    "temperature-assumed": "conductor temperature not recorded, 0 to 30 °C assumed",
    "one-temperature": "one temperature stated for the whole job, ±5 K taken for this circuit",
    "accuracy-assumed": "accuracy not stated, the greatest its standard allows is taken",
    "leads-assumed": "±0.02 Ω taken for what nulling left of the leads",
    "same-instrument": "the same instrument, its common error cancels",
    surroundings: "an ordinary spread for moisture, warmth or season is allowed",
    "supply-taken-out": "the loop before the circuit is taken out on both days",
    "as-a-whole": "the loop before the circuit is not known on both days",
  } satisfies Record<ChangeNote, string>),
  amount: (amount: string, spread: string) => `${amount}, where repeating gives ±${spread}`,
  factor: (factor: string, spread: string) => `by a factor of ${factor}, where one of ${spread} either way is ordinary`,
  split: (pieces: string) => `divided into ${pieces}; its readings are not compared`,
  merged: (pieces: string) => `joined from ${pieces}; their readings are not compared`,
  was: (name: string) => `was ${name}`,
  sure: (percent: number) => `${percent} % sure`,
  trait: Object.freeze({
    words: "description",
    designation: "number",
    board: "board",
    load: "what it feeds",
    shape: "shape",
    phases: "phases",
    standard: "kind of device",
    type: "type of device",
    rated: "rating",
    line: "line conductor",
    cpc: "protective conductor",
    points: "points",
    length: "length",
    readings: "readings",
  } satisfies Record<MatchTrait, string>),
  unsettled: "Cannot be told apart",
  unsettledGroup: (past: string, now: string) => `then ${past}; now ${now}`,
  onlyThen: "Only then",
  onlyNow: "Only now",
  trends: "Trends",
  noNext: "No next inspection is stated in the file: trends are not carried on.",
  perYear: (factor: string, low: string, high: string) => `${factor} times a year (${low} to ${high})`,
  trendOpen: "Displays have ended: no line follows.",
  twoPoints: "a change between two days, and no forecast: that takes three dated readings",
  direction: Object.freeze({ falling: "Falling", rising: "Rising", "not-told": "No direction can be told" }),
  next: (on: string, value: string, low: string, high: string) =>
    `On ${on} the line stands at ${value}; a reading is expected between ${low} and ${high}`,
  noLow: "any lower value",
  noHigh: "any higher value",
  crossing: (limit: string, expected: string | null, earliest: string, latest: string | null) =>
    expected === null
      ? `The line does not reach the limit of ${limit} before the next inspection, but the band does, from ${earliest}.`
      : `The line reaches the limit of ${limit} about ${expected}; by the band from ${earliest}${latest === null ? ", or not before the next inspection" : ` to ${latest}`}.`,
  moreTrends: (count: number) =>
    `${counted(count, "further trend tells", "further trends tell")} no change worth a line.`,
  head: ["Where", "Reading", "Then", "Now", "", "Change"],
  trendHead: ["Where", "", "What the line says"],
  method: (level: string, assurance: string) =>
    `A change is called one where readings of something unchanged would differ as much less than once in ${level}. Bands of trends hold with ${assurance} assurance.`,
});
