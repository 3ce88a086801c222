/** A thing of an installation that a subject can be opened on. */
export type OpenedOn = "circuit" | "board" | "bond" | "supply";

/** When the recorded installation asks for a subject by itself, and what is known of that subject then. */
export interface OpenedRow {
  /** Stable name, kebab case. */
  readonly id: string;
  /** The topic that is opened. */
  readonly topic: string;
  /** One subject for each of these. */
  readonly on: OpenedOn;
  /**
   * What the installation has to show: values of recorded properties, all of them. A property that is not known, of which
   * nothing is recorded there, or that still may have another value, opens nothing.
   */
  readonly when: Readonly<Record<string, readonly string[]>>;
  /** Facts of the topic that follow from this alone, several values as "one | other". The rest is left to the record. */
  readonly says: Readonly<Record<string, string>>;
}

const HOME = ["dwelling", "house-in-multiple-occupation"] as const;

/**
 * The schedule asks by itself. A row opens its topic only where what is recorded alone leads to a class or a departure, so
 * that a row may look wider than it opens. Order is the order in which points of one rank are shown.
 */
export const OPENED_ROWS: readonly OpenedRow[] = Object.freeze([
  {
    id: "no-rcd-on-tt",
    topic: "rcd-none-tt",
    on: "circuit",
    when: { "earthing-system": ["tt"], "rcd-present": ["no"], "board-fed-from": ["supply"] },
    says: { rcd: "none | proved-voltage-operated" },
  },
  {
    id: "electrode-beyond-its-limit",
    topic: "electrode-resistance",
    on: "supply",
    when: { "earthing-system": ["tt"] },
    says: {},
  },
  {
    id: "board-without-main-switch",
    topic: "main-switch-missing-or-faulty",
    on: "board",
    when: { "main-switch-fitted": ["no"], "board-fed-from": ["supply"] },
    says: { switch: "none", works: "well" },
  },
  {
    // The circuit that feeds it may have a switch far from it; nearer there is none.
    id: "sub-board-without-main-switch",
    topic: "main-switch-missing-or-faulty",
    on: "board",
    when: { "main-switch-fitted": ["no"], "board-fed-from": ["circuit"] },
    says: { switch: "far | none", works: "well" },
  },
  {
    id: "charging-point-behind-type-ac",
    topic: "rcd-type-ac",
    on: "circuit",
    when: { "circuit-load": ["vehicle-charging"], "rcd-type": ["ac"] },
    says: { loads: "pulsating | smooth" },
  },
  {
    id: "second-source-without-notice",
    topic: "notice-missing",
    on: "supply",
    when: { "other-source-notice": ["no"] },
    says: { which: "other-source", "other-notice": "missing" },
  },
  {
    id: "shower-without-rcd",
    topic: "bath-rcd-and-bonding",
    on: "circuit",
    when: { "circuit-load": ["shower"], "rcd-30-ma": ["no"] },
    says: {},
  },
  {
    id: "sockets-without-rcd",
    topic: "sockets-no-rcd",
    on: "circuit",
    when: { "circuit-load": ["socket-outlets", "mixed"], "rcd-30-ma": ["no"], "premises-use": HOME },
    says: { "used-by": "ordinary" },
  },
  {
    id: "lights-without-rcd",
    topic: "lighting-no-rcd",
    on: "circuit",
    when: { "circuit-load": ["lighting"], "rcd-30-ma": ["no"], "premises-use": HOME },
    says: {},
  },
  {
    id: "earthing-conductor-too-small",
    topic: "earthing-conductor-undersized",
    on: "supply",
    when: { "earthing-system": ["tn-s", "tn-c-s"] },
    says: {},
  },
  {
    id: "bond-too-small",
    topic: "main-bonding-undersized",
    on: "bond",
    when: { "bond-extraneous": ["yes"], "bond-connected": ["yes"] },
    says: {},
  },
  {
    id: "surge-protection-absent",
    topic: "surge-protection-absent",
    on: "board",
    when: { "surge-protection": ["not-fitted"] },
    says: {},
  },
]);
