import type { Classification, Outcome, Silence } from "@good-grounds/core";

/** Every sentence of the printed report that is not the inspector's own. */
export const REPORT = Object.freeze({
  kind: "CONDITION REPORT ON AN ELECTRICAL INSTALLATION",
  documentTitle: (address: string) => `Electrical condition report, ${address}`,
  documentDescription: (id: string, edition: string) => `Condition report ${id} to ${edition}`,
  header: (address: string) => `Electrical condition report – ${address}`,
  footer: (id: string, day: string) =>
    `Report ${id}, ${day}. The inspection file with every reading is attached to this document.`,
  inventedShort: "INVENTED EXAMPLE – NOT A REAL PROPERTY",
  facts: (day: string, edition: string, description: string, client: string, purpose: string) =>
    [`Inspected ${day} to ${edition}`, description, `for ${client}`, purpose].filter((part) => part !== "").join(" · "),
  outcome: Object.freeze({
    satisfactory: "Satisfactory",
    unsatisfactory: "Unsatisfactory",
    "not-determined": "Not determined yet",
  } satisfies Record<Outcome["outcome"], string>),
  because: ({ outcome, because, open }: Outcome) => {
    if (outcome === "unsatisfactory")
      return `${because.length} ${because.length === 1 ? "matter makes" : "matters make"} it so.`;
    if (outcome === "not-determined")
      return `${open.length} ${open.length === 1 ? "observation has" : "observations have"} no classification yet.`;
    return "Nothing that was seen or measured makes it unsatisfactory.";
  },
  differs: (stated: string, derived: string) =>
    `The inspector states “${stated}”; by the classifications chosen it comes out “${derived}”.`,
  todoTitle: "What was found and what to do",
  nothing: "Nothing that needs work was found.",
  key: (words: Readonly<Record<Classification, string>>) =>
    (["C1", "C2", "FI", "C3"] as const).map((code) => `${code}: ${words[code]}`).join("  ·  "),
  unseenTitle: "What was not seen",
  noneUnseen: "No limits are recorded.",
  nextTitle: "Next inspection",
  next: (by: string, reason: string) => `By ${by}. ${reason}`,
  noNext: "No date is recorded.",
  whoTitle: "Who inspected and who answers for it",
  whoHead: ["As", "Name", "Signed"],
  unsigned: "Not signed yet",
  capacity: Object.freeze({
    "inspected-and-tested": "Inspected and tested",
    "authorised-for-issue": "Authorised for issue",
  }),
  challenge:
    "You may question anything here. Ask the inspector for the reason: each conclusion is laid out below with the readings and figures it rests on. Another inspector can judge the same evidence again from the attached file.",
  observationsTitle: "Observations and their reasons",
  noObservations: "No observations were recorded.",
  checksLabel: "What the calculations say about this circuit:",
  choiceLabel: "Classification",
  openChoice: "Not classified yet.",
  noChoice: "–",
  regulationLabel: "Regulations",
  remedyLabel: "What would put it right",
  madeSafeLabel: "Made safe",
  madeSafeShort: (done: string) => `Made safe on the day: ${done}`,
  madeSafe: (done: string, told: string, at: string, reply: string) =>
    [`${done} Told: ${told}, ${at}.`, reply === "" ? "" : `Reply: ${reply}.`].filter((part) => part !== "").join(" "),
  photosLabel: "Photographs",
  supplyTitle: "Supply, earthing and bonding",
  supplyHead: ["Particular", "Recorded"],
  supply: Object.freeze({
    earthing: "System earthing",
    phases: "Phases and voltage",
    measured: "measured",
    ze: "External loop impedance Ze",
    ra: "Earth electrode RA",
    faultCurrent: "Prospective fault current",
    polarity: "Polarity of supply",
    device: "Supply device",
    tails: "Meter tails",
    mainSwitch: "Main switch",
    earthingConductor: "Earthing conductor",
    bonding: (to: string) => `Main bonding, ${to}`,
    notExtraneous: "not an extraneous-conductive-part",
    resistance: "resistance",
    connected: "connected:",
    demand: "Maximum demand as stated",
  }),
  diagramTitle: "The installation from the origin outwards",
  diagramWords: (boards: number, circuits: number, part: number) =>
    `Line diagram, part ${part}: ${boards} ${boards === 1 ? "board" : "boards"} and ${circuits} circuits; the same facts stand in the tables of circuits`,
  diagramNote:
    "Each way shows its device, its RCD with the residual current in mA, and the worst verdict of its circuit.",
  circuitsTitle: "Circuits and readings",
  circuitsHead: ["No", "Circuit", "Device", "RCD", "Cable", "R1+R2", "Zs", "Disconnection", "Insulation", "Worst"],
  circuitsNote:
    "Cable: line/protective conductor, reference methods. Disconnection: the loop at operating temperature, or the RCD's touch voltage, against its limit; the copper stroke is the limit, the grey band what the instrument leaves open, the fine strokes the forbidden side. Insulation: live conductors to earth.",
  boardDetail: (from: string, zdb: string, fault: string, main: string) =>
    `Fed from ${from}. Zdb ${zdb}; fault current ${fault}; main switch ${main}.`,
  fromSupply: "the supply",
  noRcd: "none",
  silence: Object.freeze({
    absent: "not recorded",
    limited: "limited",
    "not-verified": "not verified",
    "not-applicable": "n/a",
    "not-tabulated": "not tabulated",
  } satisfies Record<Silence, string>),
  findingsTitle: "Findings that need attention, with their grounds",
  findingsIntro: (met: number) =>
    `Every circuit was checked by calculation. ${met} checks are met and are not repeated here. A finding is not a classification: what it means for safety is judged by the inspector.`,
  memory: "This rests on a figure from memory that should be checked against the standard.",
  curvesTitle: "Time-current drawings of circuits in doubt",
  curvesIntro: "Only known points of a device are drawn, joined straight; nothing between them is made up.",
  curveWords: (device: string, conductor: string) =>
    `Time-current drawing of ${device} with the limit of the ${conductor}`,
  itemsTitle: "What was inspected",
  itemsHead: ["Item", "Outcome", "Note"],
  itemOutcome: Object.freeze({
    "in-order": "in order",
    observed: "observation",
    limited: "limited",
    "not-verified": "not verified",
    "not-applicable": "does not arise",
  }),
  unanswered: "not answered",
  seeObservation: (place: string) => `see observation: ${place}`,
  extentTitle: "Extent, sampling and limitations",
  extent: Object.freeze({
    covered: "Covered",
    notCovered: "Not covered",
    agreed: "Agreed with",
    visits: "Visits",
    records: "Earlier records",
  }),
  noRecords: "none available",
  samplingTitle: "Parts inspected as a sample",
  samplingHead: ["What", "Present", "Opened", "Defective", "How chosen"],
  limitationsTitle: "Limitations",
  limitationsHead: ["Kind", "What", "Why", "Agreed with"],
  limitationKind: Object.freeze({ agreed: "agreed", operational: "met on site" }),
  noLimitations: "None recorded.",
  agreedWithNobody: "nobody recorded",
  instrumentsTitle: "Instruments",
  instrumentsHead: ["Instrument", "Serial", "Checked", "Accuracy"],
  notChecked: "no check recorded",
  noAccuracy: "not stated: readings are taken as shown",
  sourcesTitle: "Sources of the figures",
  sourcesIntro: "Where limits and factors come from, and how well each is founded.",
  sourcesHead: ["Source", "Edition", "Basis"],
  recipientsTitle: "For whoever receives this report",
  recipients: (edition: string): readonly string[] => [
    `This report tells how safe the fixed electrical installation was found on the day, measured against ${edition}. An older installation is not unsafe merely because rules have changed since: a matter is classified by the danger it brings.`,
    "Keep the report with the papers of the building and hand it on to the next owner and the next inspector. Give it to whoever does the work that follows; ask for a certificate for that work and keep it with this report. A new report is not needed only because something was put right.",
    "Where danger now is noted, it was made safe as far as was agreed, and you were told. Work marked as soon should not wait. Where something could not be settled, it has to be looked into: until then nobody can say that it is safe.",
    "Law may ask more of a landlord than this outcome: dates for work, copies for tenants and the local authority. That duty runs whatever this page says.",
    "Press the test button of each RCD twice a year. If anything gives a tingle, smells burnt or feels hot, switch it off and call an electrician.",
  ],
  cautionsTitle: "Cautions",
  attachment: "The inspection file from which this report was made",
});
