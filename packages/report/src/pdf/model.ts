import {
  type Classification,
  type Evidence,
  type Finding,
  isKnown,
  missingOf,
  type Path,
  SEVERITY,
  type Source,
  sourcesOf,
  type Unit,
  type Verdict,
  weakestBasis,
} from "@good-grounds/core";
import { type Circuit, ITEM_GROUPS } from "@good-grounds/inspection";
import { classificationMark } from "../drawings/classification-mark.ts";
import { lineDiagram } from "../drawings/line-diagram.ts";
import { marginBar } from "../drawings/margin-bar.ts";
import { timeCurrentCurve } from "../drawings/time-current.ts";
import type { ReportInput } from "../input.ts";
import { BASIS, CAUTIONS, CLASSIFICATION, VERDICT, VERDICT_SHORT, WORDS } from "../locales/en.ts";
import { REPORT } from "../locales/report-en.ts";
import { argumentLines } from "../words/argument.ts";
import { comparisonWords, decidingComparison, decidingFacts, sides } from "../words/comparison.ts";
import { bandWords, marginWords, valueWords } from "../words/figure.ts";
import { placeWords } from "../words/place.ts";

/** A file the layout refers to by name. */
interface Part {
  readonly name: string;
  readonly svg: string;
}

/** Everything the layout needs: plain data with every sentence made, and the drawings beside it. */
export interface ReportModel {
  readonly data: Record<string, unknown>;
  readonly parts: readonly Part[];
}

/** Collects drawings and gives each a name; the same drawing is kept once. */
class Drawings {
  readonly #names = new Map<string, string>();

  add(svg: string): string {
    const held = this.#names.get(svg);
    if (held !== undefined) return held;
    const name = `drawing-${this.#names.size}.svg`;
    this.#names.set(svg, name);
    return name;
  }

  parts(): readonly Part[] {
    return [...this.#names].map(([svg, name]) => ({ name, svg }));
  }
}

const URGENCY: Readonly<Record<Classification, number>> = { C1: 0, C2: 1, FI: 2, C3: 3, none: 4 };

/** Makes the data of the report. */
export function reportModel(input: ReportInput): ReportModel {
  const drawings = new Drawings();
  const data = {
    ...frame(input),
    first: firstPage(input, drawings),
    observations: observations(input, drawings),
    supply: supply(input),
    diagram: diagram(input, drawings),
    circuits: circuits(input, drawings),
    findings: findings(input, drawings),
    curves: curves(input, drawings),
    items: items(input),
    extent: extent(input),
    instruments: instruments(input),
    sources: sources(input),
    recipients: {
      title: REPORT.recipientsTitle,
      paragraphs: REPORT.recipients(input.edition.label),
      "cautions-title": REPORT.cautionsTitle,
      cautions: [CAUTIONS.competent, CAUTIONS.danger, CAUTIONS.isolation, CAUTIONS.dates],
    },
    attachment: REPORT.attachment,
  };
  return { data, parts: drawings.parts() };
}

function frame({ installation, edition }: ReportInput) {
  const { file } = installation;
  const day = reportDay(file);
  return {
    title: REPORT.documentTitle(file.brief.premises.address.join(", ")),
    description: REPORT.documentDescription(file.id, edition.label),
    authors: file.signatures.map(({ person }) => nameOf(file, person)),
    date: day.split("-").map(Number),
    header: REPORT.header(file.brief.premises.address.join(", ")),
    footer: REPORT.footer(file.id, day),
    invented: file.invented === true ? REPORT.inventedShort : "",
  };
}

/** The day the report bears: that of the last signature, or of the inspection while nobody has signed. */
function reportDay(file: ReportInput["installation"]["file"]): string {
  const signed = file.signatures.map(({ at }) => at.slice(0, 10)).sort();
  return signed.at(-1) ?? file.inspectedOn;
}

function nameOf(file: ReportInput["installation"]["file"], id: string): string {
  return file.people.find((person) => person.id === id)?.name ?? id;
}

type Observation = ReportInput["installation"]["file"]["observations"][number];

function codeOf(observation: Observation): string {
  return observation.choice?.classification ?? REPORT.noChoice;
}

function markOf(observation: Observation, drawings: Drawings): string {
  return drawings.add(classificationMark(observation.choice?.classification ?? "none"));
}

function ordered(list: readonly Observation[]): readonly Observation[] {
  const urgency = ({ choice }: Observation) => (choice === undefined ? 2.5 : URGENCY[choice.classification]);
  return [...list].sort((a, b) => urgency(a) - urgency(b));
}

function firstPage({ installation, outcome, edition }: ReportInput, drawings: Drawings) {
  const { file } = installation;
  const { brief, conclusion } = file;
  const stated = conclusion?.outcome;
  const differs = stated !== undefined && stated !== outcome.outcome ? REPORT.differs(stated, outcome.outcome) : "";
  const todo = ordered(file.observations).filter(({ choice }) => choice?.classification !== "none");
  const unseen = [
    ...(file.extent.notCovered === undefined ? [] : [file.extent.notCovered]),
    ...file.limitations.map(({ what, why }) => `${what}: ${why}`),
  ];
  const next = conclusion?.nextInspection;
  return {
    kind: REPORT.kind,
    address: brief.premises.address.join(", "),
    facts: REPORT.facts(
      file.inspectedOn,
      edition.label,
      brief.premises.description ?? "",
      brief.client.name,
      brief.purpose,
    ),
    outcome: REPORT.outcome[outcome.outcome],
    because: [REPORT.because(outcome), ...outcome.remarks.map(({ words }) => words), conclusion?.generalCondition ?? ""]
      .filter((s) => s !== "")
      .join(" "),
    differs,
    "todo-title": REPORT.todoTitle,
    nothing: REPORT.nothing,
    todo: todo.map((one) => ({
      mark: markOf(one, drawings),
      code: codeOf(one),
      place: one.place,
      what: one.what,
      remedy: one.remedy ?? "",
      safe: one.madeSafe === undefined ? "" : REPORT.madeSafeShort(one.madeSafe.done),
    })),
    key: REPORT.key(CLASSIFICATION),
    "unseen-title": REPORT.unseenTitle,
    unseen,
    "none-unseen": REPORT.noneUnseen,
    "next-title": REPORT.nextTitle,
    next: next === undefined ? REPORT.noNext : REPORT.next(next.by, next.reason),
    "who-title": REPORT.whoTitle,
    "who-head": REPORT.whoHead,
    who:
      file.signatures.length === 0
        ? [[REPORT.unsigned, "", ""]]
        : file.signatures.map(({ person, capacity, at }) => {
            const found = file.people.find(({ id }) => id === person);
            return [
              REPORT.capacity[capacity],
              [found?.name ?? person, found?.position, found?.firm, found?.registration].filter(Boolean).join(", "),
              at.slice(0, 16).replace("T", " "),
            ];
          }),
    challenge: REPORT.challenge,
  };
}

function observations({ installation, weighing, checks }: ReportInput, drawings: Drawings) {
  const { file } = installation;
  return {
    title: REPORT.observationsTitle,
    none: REPORT.noObservations,
    "checks-label": REPORT.checksLabel,
    list: ordered(file.observations).map((one) => {
      const details: [string, string][] = [];
      if (one.choice !== undefined) {
        details.push([
          REPORT.choiceLabel,
          `${CLASSIFICATION[one.choice.classification]}. ${one.choice.reason} (${nameOf(file, one.choice.by)})`,
        ]);
      } else details.push([REPORT.choiceLabel, REPORT.openChoice]);
      if ((one.regulations ?? []).length > 0)
        details.push([REPORT.regulationLabel, `BS 7671 ${one.regulations?.join(", ")}`]);
      if (one.remedy !== undefined) details.push([REPORT.remedyLabel, one.remedy]);
      if (one.madeSafe !== undefined) {
        const { done, told, at, reply } = one.madeSafe;
        details.push([
          REPORT.madeSafeLabel,
          REPORT.madeSafe(done, told, at.slice(0, 16).replace("T", " "), reply ?? ""),
        ]);
      }
      const photos = (one.photographs ?? [])
        .map((hash) => file.photographs.find(({ sha256 }) => sha256 === hash))
        .filter((photo) => photo !== undefined);
      if (photos.length > 0) {
        details.push([
          REPORT.photosLabel,
          photos.map(({ name, description, sha256 }) => `${name}: ${description} (${sha256.slice(0, 8)})`).join("; "),
        ]);
      }
      const index = installation.circuits.findIndex(({ id, board }) => id === one.circuit && board.id === one.board);
      const related =
        index < 0 ? [] : (weighing.circuits[index] ?? []).filter(({ judgement }) => needsAttention(judgement.verdict));
      return {
        mark: markOf(one, drawings),
        code: codeOf(one),
        place: one.place,
        what: one.what,
        details,
        checks: related.map((finding) => `${titleOf(checks, finding.check)}: ${shortWords(finding)}`),
      };
    }),
  };
}

function needsAttention(verdict: Verdict): boolean {
  return verdict === "not-met" || verdict === "too-near" || verdict === "not-known";
}

function titleOf(checks: ReportInput["checks"], id: string): string {
  return checks.find((label) => label.id === id)?.title ?? id;
}

/** A finding in one clause. */
function shortWords({ judgement }: Finding): string {
  const compared = decidingComparison(judgement);
  if (judgement.verdict === "not-known") {
    return `${VERDICT["not-known"]}; ${WORDS.missing}: ${missingWords(judgement)}`;
  }
  const words = compared === undefined ? decidingFacts(judgement) : comparisonWords(compared);
  return words === "" ? VERDICT[judgement.verdict] : `${VERDICT[judgement.verdict]}; ${words}`;
}

function missingWords(judgement: Finding["judgement"]): string {
  return [
    ...new Set(
      missingOf(judgement).map((leaf) => {
        const name = leaf.kind === "not-known" ? leaf.term.name : leaf.matter.name;
        return leaf.detail.reason === "" ? name : `${name} (${leaf.detail.reason})`;
      }),
    ),
  ].join("; ");
}

function supply({ installation }: ReportInput) {
  const { supply: s } = installation;
  const word = (fact: {
    readonly kind: string;
    readonly word?: string | boolean;
    readonly detail: { readonly text?: string; readonly reason?: string };
  }) =>
    fact.kind === "fact"
      ? fact.word === true
        ? WORDS.yes
        : fact.word === false
          ? WORDS.no
          : String(fact.word)
      : [WORDS.notKnown, fact.detail.reason].filter(Boolean).join(": ");
  const value = (evidence: Evidence<Unit>) => withReason(evidence);
  return {
    title: REPORT.supplyTitle,
    head: REPORT.supplyHead,
    rows: [
      [REPORT.supply.earthing, word(s.earthing)],
      [
        REPORT.supply.phases,
        `${word(s.phases)}; ${value(s.nominalVoltage)}; ${REPORT.supply.measured} ${value(s.voltage)}`,
      ],
      [REPORT.supply.ze, value(s.ze)],
      [REPORT.supply.ra, value(s.ra)],
      [REPORT.supply.faultCurrent, value(s.faultCurrent)],
      [REPORT.supply.polarity, word(s.polarity)],
      [
        REPORT.supply.device,
        `${word(s.device.standard)}, ${value(s.device.rated)}, ${value(s.device.breakingCapacity)}`,
      ],
      [REPORT.supply.tails, value(s.tails.size)],
      [REPORT.supply.mainSwitch, value(s.mainSwitchRated)],
      [REPORT.supply.earthingConductor, `${value(s.earthingConductor.size)}, ${word(s.earthingConductor.material)}`],
      ...s.bonding.map((bond) => [
        REPORT.supply.bonding(bond.to),
        bond.extraneous.kind === "fact" && !bond.extraneous.word
          ? REPORT.supply.notExtraneous
          : `${value(bond.size)}; ${REPORT.supply.resistance} ${value(bond.resistance)}; ${REPORT.supply.connected} ${word(bond.connected)}`,
      ]),
      [REPORT.supply.demand, value(s.statedDemand)],
    ],
  };
}

function withReason(evidence: Evidence<Unit>): string {
  if (isKnown(evidence)) {
    const band = bandWords(evidence);
    return band === "" || evidence.kind !== "measured" ? valueWords(evidence) : `${valueWords(evidence)} (${band})`;
  }
  const reason = evidence.kind === "not-known" ? evidence.detail.reason : "";
  return reason === "" ? WORDS.notKnown : `${WORDS.notKnown}: ${reason}`;
}

function worstVerdict(findings: readonly Finding[]): Verdict {
  let worst: Verdict = "not-applicable";
  for (const { judgement } of findings) if (SEVERITY[judgement.verdict] > SEVERITY[worst]) worst = judgement.verdict;
  return worst;
}

function diagram({ installation, weighing }: ReportInput, drawings: Drawings) {
  const byPath = new Map(
    installation.circuits.map((circuit, i) => [circuit.path, worstVerdict(weighing.circuits[i] ?? [])]),
  );
  const pages = lineDiagram(installation, { verdictOf: (path: Path) => byPath.get(path) ?? "not-known" });
  return {
    title: REPORT.diagramTitle,
    note: REPORT.diagramNote,
    drawings: pages.map((svg, i) => ({
      file: drawings.add(svg),
      words: REPORT.diagramWords(installation.boards.length, installation.circuits.length, i + 1),
    })),
  };
}

function circuits({ installation, weighing }: ReportInput, drawings: Drawings) {
  return {
    title: REPORT.circuitsTitle,
    note: REPORT.circuitsNote,
    head: REPORT.circuitsHead,
    boards: installation.boards.map((board) => ({
      title: board.name,
      detail: REPORT.boardDetail(
        board.feeder === undefined ? REPORT.fromSupply : `${board.feeder.board.name}, ${board.feeder.description}`,
        withReason(board.zdb),
        withReason(board.faultCurrent),
        withReason(board.mainSwitchRated),
      ),
      rows: board.circuits.map((circuit) => {
        const found = weighing.circuits[installation.circuits.indexOf(circuit)] ?? [];
        const worst = worstVerdict(found);
        const loop = found.find(({ check }) => check === "maximum-zs");
        const bar = loop === undefined ? undefined : barOf(loop);
        return {
          no: circuit.designation,
          name: circuit.description,
          device: deviceWords(circuit),
          rcd: rcdWords(circuit),
          cable: cableWords(circuit),
          r1r2: readingWords(circuit.readings.r1r2),
          zs: readingWords(circuit.readings.zs),
          bar: bar === undefined ? "" : drawings.add(bar.svg),
          "bar-words": bar?.words ?? VERDICT_SHORT[loop?.judgement.verdict ?? "not-known"],
          limit: bar?.limit ?? "",
          insulation: readingWords(circuit.readings.insulationLiveEarth),
          worst: VERDICT_SHORT[worst].toLowerCase(),
          heavy: worst === "not-met",
        };
      }),
    })),
  };
}

/** Readings in a table: the figure as shown, or why there is none, short. */
function readingWords(evidence: Evidence<Unit>): string {
  if (evidence.kind === "not-known") return REPORT.silence[evidence.detail.silence];
  return valueWords(evidence);
}

function deviceWords({ device }: Circuit): string {
  const type = device.type.kind === "fact" && device.type.word !== "gG" ? ` ${device.type.word}` : "";
  const standard = device.standard.kind === "fact" ? device.standard.word.replace("BS EN ", "EN ") : WORDS.notKnown;
  return `${valueWords(device.rated)}${type}, ${standard}`;
}

function rcdWords({ residual }: Circuit): string {
  const [nearest] = residual.devices;
  if (nearest !== undefined) return `${valueWords(nearest.residual)}, ${readingWords(nearest.timeAtRated)}`;
  return residual.present.kind === "fact" ? REPORT.noRcd : WORDS.notKnown;
}

function cableWords({ cable }: Circuit): string {
  const methods = cable.methods.map((method) => (method.kind === "fact" ? method.word : "")).join("/");
  return `${valueWords(cable.line).replace(" mm²", "")}/${valueWords(cable.cpc)}${methods === "" ? "" : `, ${methods}`}`;
}

function barOf(finding: Finding) {
  const compared = decidingComparison(finding.judgement);
  if (compared === undefined) return undefined;
  const [left, limit] = sides(compared);
  if (left === undefined || limit === undefined || !isKnown(left) || !isKnown(limit) || !(limit.value > 0))
    return undefined;
  const words = [comparisonWords(compared), VERDICT[finding.judgement.verdict], marginWords(compared)]
    .filter((part) => part !== "")
    .join(", ");
  const svg = marginBar({
    value: left.value,
    low: left.low,
    high: left.high,
    limit: limit.value,
    relation: compared.relation,
    verdict: finding.judgement.verdict,
    words,
  });
  return { svg, words, limit: `${limit.term.symbol} ${valueWords(limit)}` };
}

function findings(input: ReportInput, drawings: Drawings) {
  const { installation, weighing } = input;
  const place = (path: Path) => placeWords(path, installation);
  const places = [
    { heading: WORDS.supply, findings: weighing.supply },
    ...installation.boards.map((board, i) => ({
      heading: WORDS.board(board.name),
      findings: weighing.boards[i] ?? [],
    })),
    ...installation.circuits.map((circuit, i) => ({
      heading: `${circuit.board.name}, ${WORDS.circuit(circuit.designation, circuit.description)}`,
      findings: weighing.circuits[i] ?? [],
    })),
  ];
  const shown = places
    .map(({ heading, findings: all }) => ({
      heading,
      findings: all.filter(({ judgement }) => needsAttention(judgement.verdict)),
    }))
    .filter(({ findings: some }) => some.length > 0)
    .sort((a, b) => SEVERITY[worstVerdict(b.findings)] - SEVERITY[worstVerdict(a.findings)]);
  const met = places.flatMap(({ findings: all }) => all).filter(({ judgement }) => judgement.verdict === "met").length;
  return {
    title: REPORT.findingsTitle,
    intro: REPORT.findingsIntro(met),
    places: shown.map(({ heading, findings: some }) => ({
      heading,
      findings: [...some]
        .sort((a, b) => SEVERITY[b.judgement.verdict] - SEVERITY[a.judgement.verdict])
        .map((finding) => {
          const bar = finding.judgement.verdict === "not-known" ? undefined : barOf(finding);
          const compared = decidingComparison(finding.judgement);
          const open = finding.judgement.verdict === "not-known";
          return {
            title: titleOf(input.checks, finding.check),
            verdict: VERDICT[finding.judgement.verdict],
            bar: bar === undefined ? "" : drawings.add(bar.svg),
            "bar-words": bar?.words ?? "",
            words: open
              ? `${WORDS.missing}: ${missingWords(finding.judgement)}`
              : compared === undefined
                ? decidingFacts(finding.judgement)
                : comparisonWords(compared),
            margin: open || compared === undefined ? "" : marginWords(compared),
            remarks: finding.remarks.map(({ words }) => words),
            memory: weakestBasis(finding.judgement) === "memory" ? REPORT.memory : "",
            // What is missing is already named; the argument of an open finding would repeat it.
            argument: open
              ? []
              : argumentLines(finding.judgement, place).map(({ depth, tag, words, note }) => ({
                  depth: Math.min(depth, 9),
                  tag,
                  words,
                  note,
                })),
          };
        }),
    })),
  };
}

function curves({ curves: list, installation }: ReportInput, drawings: Drawings) {
  return {
    title: REPORT.curvesTitle,
    intro: REPORT.curvesIntro,
    list: list.map((one) => ({
      caption: `${placeWords(one.circuit, installation)}: ${one.device}`,
      file: drawings.add(timeCurrentCurve(one)),
      words: REPORT.curveWords(one.device, one.conductor),
    })),
  };
}

function items({ installation }: ReportInput) {
  const answers = new Map(installation.file.inspected.map((answer) => [answer.item as string, answer]));
  return {
    title: REPORT.itemsTitle,
    head: REPORT.itemsHead,
    groups: ITEM_GROUPS.map((group) => ({
      title: group.title,
      rows: group.items.map((item) => {
        const answer = answers.get(item.id);
        if (answer === undefined) return [item.asks, REPORT.unanswered, ""];
        const note = [
          answer.reason ?? "",
          ...(answer.observations ?? []).map((id) =>
            REPORT.seeObservation(installation.file.observations.find((one) => one.id === id)?.place ?? id),
          ),
        ];
        return [item.asks, REPORT.itemOutcome[answer.outcome], note.filter((part) => part !== "").join("; ")];
      }),
    })),
  };
}

function extent({ installation }: ReportInput) {
  const { extent: e, limitations, brief, visits } = installation.file;
  return {
    title: REPORT.extentTitle,
    rows: [
      [REPORT.extent.covered, e.covered],
      ...(e.notCovered === undefined ? [] : [[REPORT.extent.notCovered, e.notCovered]]),
      ...(e.agreedWith === undefined
        ? []
        : [[REPORT.extent.agreed, [e.agreedWith, e.agreedOn].filter(Boolean).join(", ")]]),
      [
        REPORT.extent.visits,
        visits
          .map(({ date, arrived, left }) =>
            [date, arrived?.slice(11, 16), left?.slice(11, 16)].filter(Boolean).join(" "),
          )
          .join("; "),
      ],
      ...(brief.records.length === 0
        ? [[REPORT.extent.records, REPORT.noRecords]]
        : [
            [
              REPORT.extent.records,
              brief.records
                .map(({ kind, date, reference }) => [kind, date, reference].filter(Boolean).join(", "))
                .join("; "),
            ],
          ]),
    ],
    "sampling-title": REPORT.samplingTitle,
    "sampling-head": REPORT.samplingHead,
    sampling: e.sampling.map(({ what, population, inspected, defective, how }) => [
      what,
      String(population),
      String(inspected),
      String(defective),
      how ?? "",
    ]),
    "limitations-title": REPORT.limitationsTitle,
    "limitations-head": REPORT.limitationsHead,
    "no-limitations": REPORT.noLimitations,
    limitations: limitations.map(({ kind, what, why, agreedWith }) => [
      REPORT.limitationKind[kind],
      what,
      why,
      agreedWith ?? REPORT.agreedWithNobody,
    ]),
  };
}

function instruments({ installation }: ReportInput) {
  return {
    title: REPORT.instrumentsTitle,
    head: REPORT.instrumentsHead,
    rows: installation.file.instruments.map(({ kind, serial, checked, checkReference, accuracy }) => [
      kind,
      serial,
      [checked ?? REPORT.notChecked, checkReference].filter(Boolean).join(", "),
      Object.entries(accuracy ?? {})
        .map(([range, text]) => `${range} ${text}`)
        .join("; ") || REPORT.noAccuracy,
    ]),
  };
}

function sources({ weighing }: ReportInput) {
  const all = [...weighing.supply, ...weighing.boards.flat(), ...weighing.circuits.flat()];
  const found = new Set<Source>();
  for (const { judgement } of all) for (const source of sourcesOf(judgement)) found.add(source);
  const rows = [...found]
    .map((source) => [
      [source.work, source.formula, source.doubt].filter(Boolean).join("; "),
      source.edition,
      BASIS[source.basis],
    ])
    .sort((a, b) => ((a[0] ?? "") < (b[0] ?? "") ? -1 : 1));
  return {
    title: REPORT.sourcesTitle,
    intro: REPORT.sourcesIntro,
    head: REPORT.sourcesHead,
    rows: [...new Map(rows.map((row) => [row.join("|"), row])).values()],
  };
}
