import { isKnown, isKnownFact } from "@good-grounds/core";
import { withoutCommonOffsets } from "../common-offset.ts";
import { MeanRatio } from "../evidence.ts";
import { type Job, type Look, RATIO_SHOWN_BELOW } from "../look.ts";
import type { Kind } from "../repeatability.ts";
import { CABLE_ASSUMED, type Figure, type Row, UNSTATED } from "../rows.ts";
import { logNormal, logSum } from "../statistics/chances.ts";
import { leavesOf, number } from "../words.ts";

/** What a reading should be, as something else foretells it. */
interface Witness {
  readonly what: string;
  readonly value: number;
  /** Standard deviation. */
  readonly doubt: number;
  /** Whether it is another reading; a cable alone cannot tell a slip from a joint. */
  readonly read: boolean;
}

interface Suspect {
  readonly name: string;
  readonly what: string;
  readonly figure: Figure;
  readonly witnesses: readonly Witness[];
  /** Part of sound jobs' readings of this kind that are off by any factor while all that foretells them agrees. */
  readonly odd: number;
  /** The same for readings below what is foretold. */
  readonly oddBelow: number;
  readonly kind: Kind;
}

/**
 * A sound reading that stands alone against two witnesses that agree, with no slip: one in fifty thousand. Something must
 * have been put right between two tests of one circuit.
 */
const ODD = 2e-5;
/** Zs under TT is often lowered by other earths. */
const ODD_UNDER_TT = 0.02;
/** One witness may itself be what is wrong. */
const ODD_BESIDE_ONE = 0.02;
/** Witnesses further apart than this many deviations do not tell one story. */
const APART = 3.5;
/** Places a decimal point slips: mostly one. */
const SLIPS = [
  { places: 1, weight: 0.45 },
  { places: -1, weight: 0.45 },
  { places: 2, weight: 0.05 },
  { places: -2, weight: 0.05 },
] as const;
/** Resolution of ohmmeters and loop testers in their lowest range, Ω. */
const USUAL_RESOLUTION = 0.01;
const SOUND = { odd: ODD, oddBelow: ODD, kind: "continuity" } as const;
const LOOP = { odd: ODD, oddBelow: ODD, kind: "loop" } as const;
const ANYWHERE = Math.log(1 / (2 * Math.LN10));
const RING_SPREAD = 0.15;

const read = (what: string, value: number, ...doubts: readonly number[]): Witness => ({
  what,
  value,
  doubt: Math.hypot(...doubts),
  read: true,
});

/** The readings of a ring and of its cable that foretell each other. */
function ringSuspects(row: Row): readonly Suspect[] {
  const { r1, rn, r2, cable, name, crossLineNeutral, crossLineCpc } = row;
  const sizes = row.circuit.cable;
  const ratio = isKnown(sizes.line) && isKnown(sizes.cpc) ? sizes.line.value / sizes.cpc.value : undefined;
  const other = (what: string, figure: Figure | undefined, factor: number | undefined): readonly Witness[] =>
    figure === undefined || factor === undefined
      ? []
      : [read(what, figure.value * factor, figure.doubt * factor, 0.03 * figure.value * factor)];
  const ofCable = (value: number | undefined): readonly Witness[] =>
    cable === undefined || value === undefined
      ? []
      : [{ what: "the length of the cable", value, doubt: value * cable.spread, read: false }];
  const suspects: readonly (readonly [string, Figure | undefined, readonly Witness[]])[] = [
    [
      "r1",
      r1,
      [...other("rn", rn, 1), ...other("r2", r2, ratio === undefined ? undefined : 1 / ratio), ...ofCable(cable?.line)],
    ],
    [
      "rn",
      rn,
      [...other("r1", r1, 1), ...other("r2", r2, ratio === undefined ? undefined : 1 / ratio), ...ofCable(cable?.line)],
    ],
    ["r2", r2, [...other("r1", r1, ratio), ...other("rn", rn, ratio), ...ofCable(cable?.cpc)]],
  ];
  const points = (what: string, figures: readonly Figure[], ends: Figure | undefined) =>
    figures.map((figure, i) => {
      const rest = figures
        .filter((_, j) => j !== i)
        .map(({ value }) => value)
        .sort((a, b) => a - b);
      const middle = rest[Math.floor(rest.length / 2)];
      const quarter = r1 === undefined || ends === undefined ? undefined : (r1.value + ends.value) / 4;
      return [
        `${what} at point ${i + 1}`,
        figure,
        [
          ...(middle === undefined || rest.length < 2
            ? []
            : [read("the other points", middle, figure.resolution, RING_SPREAD * middle)]),
          ...(quarter === undefined
            ? []
            : [read("the ends of the ring", quarter, figure.resolution, RING_SPREAD * quarter)]),
        ],
      ] as const;
    });
  return [
    ...suspects,
    ...points("line to neutral", crossLineNeutral, rn),
    ...points("line to cpc", crossLineCpc, r2),
  ].flatMap(([what, figure, witnesses]) => (figure === undefined ? [] : [{ name, what, figure, witnesses, ...SOUND }]));
}

function circuitSuspects(row: Row, tt: boolean): readonly Suspect[] {
  const { r1, r2, r1r2, zs, before, cable, ring, name } = row;
  const far = cable === undefined ? undefined : (cable.line + cable.cpc) * (ring ? 1 / 4 : 1);
  const spread = cable === undefined ? 0 : Math.hypot(cable.spread, ring ? RING_SPREAD : 0);
  const suspects: Suspect[] = [];
  if (r1r2 !== undefined) {
    const witnesses: Witness[] =
      far === undefined ? [] : [{ what: "the cable", value: far, doubt: far * spread, read: false }];
    if (zs !== undefined && before !== undefined && zs.value > before.value)
      witnesses.push(read("Zs less the loop before it", zs.value - before.value, zs.doubt, before.doubt));
    if (r1 !== undefined && r2 !== undefined)
      witnesses.push(
        read("the ends of the ring", (r1.value + r2.value) / 4, (RING_SPREAD * (r1.value + r2.value)) / 4),
      );
    suspects.push({ name, what: "R1+R2", figure: r1r2, witnesses, ...SOUND });
  }
  if (zs !== undefined && before !== undefined) {
    const witnesses: Witness[] = [];
    if (r1r2 !== undefined)
      witnesses.push(read("the loop before it and R1+R2", before.value + r1r2.value, before.doubt, r1r2.doubt));
    if (far !== undefined)
      witnesses.push({
        what: "the loop before it and the cable",
        value: before.value + far,
        doubt: Math.hypot(before.doubt, far * spread),
        read: false,
      });
    suspects.push({
      name,
      what: "Zs",
      figure: zs,
      witnesses,
      odd: ODD,
      oddBelow: tt ? ODD_UNDER_TT : ODD,
      kind: "loop",
    });
  }
  return suspects;
}

/** The loop at a board, which every Zs behind it contains, and Ze before boards at the origin. */
function loopSuspects({ rows, installation }: Job): readonly Suspect[] {
  return [...installation.boards.entries()].flatMap(([at, board]) => {
    const here = rows.filter((row) => row.board === at);
    const [first] = here;
    if (first?.before === undefined) return [];
    const implied = here
      .flatMap(({ zs, r1r2 }) =>
        zs === undefined || r1r2 === undefined
          ? []
          : [{ value: zs.value - r1r2.value, doubt: Math.hypot(zs.doubt, r1r2.doubt) }],
      )
      .filter(({ value }) => value > 0)
      .sort((a, b) => a.value - b.value);
    const middle = implied[Math.floor(implied.length / 2)];
    const circuits =
      middle === undefined || implied.length < 3
        ? []
        : [read("Zs less R1+R2 of its circuits", middle.value, middle.doubt)];
    const loop = (what: string, figure: Figure): Witness => read(what, figure.value, figure.doubt);
    const { before, ze } = first;
    if (ze === undefined || ze === before)
      return [
        { name: board.name, what: ze === undefined ? "Zdb" : "Ze", figure: before, witnesses: circuits, ...LOOP },
      ];
    return [
      { name: board.name, what: "Zdb", figure: before, witnesses: [loop("Ze", ze), ...circuits], ...LOOP },
      { name: board.name, what: "Ze", figure: ze, witnesses: [loop("Zdb", before), ...circuits], ...LOOP },
    ];
  });
}

interface Foretold {
  readonly value: number;
  /** Standard deviation as a part of the value. */
  readonly spread: number;
}

/**
 * What witnesses foretell together. Where they do not agree, a joint may be what keeps them apart: then the other reading
 * counts, if the reading itself lies to one side of all of them. Undefined where they tell no one story.
 */
function together({ witnesses, figure }: Suspect): Foretold | undefined {
  const usable = witnesses
    .filter(({ value }) => value > 0)
    .map((one) => ({ ...one, spread: Math.hypot(one.doubt, figure.resolution / 4) / one.value }));
  if (usable.length === 0) return undefined;
  const weights = usable.map(({ spread }) => 1 / spread ** 2);
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  const log = usable.reduce((sum, one, i) => sum + Math.log(one.value) * (weights[i] as number), 0) / all;
  if (usable.every((one) => Math.abs(Math.log(one.value) - log) <= APART * one.spread))
    return { value: Math.exp(log), spread: 1 / Math.sqrt(all) };
  const readings = usable.filter((one) => one.read);
  const [only] = readings;
  const below = usable.every((one) => figure.value + APART * figure.doubt < one.value * (1 - APART * one.spread));
  const above = usable.every((one) => figure.value - APART * figure.doubt > one.value * (1 + APART * one.spread));
  return readings.length === 1 && only !== undefined && (below || above) ? only : undefined;
}

/** Part of a sound reading of this kind that is off by any factor while its witnesses stand as they do. */
function oddPart({ witnesses, figure, oddBelow, odd }: Suspect, foretold: Foretold): number {
  const usual = figure.value < foretold.value ? oddBelow : odd;
  return witnesses.length < 2 || witnesses.every((one) => !one.read) ? Math.max(usual, ODD_BESIDE_ONE) : usual;
}

/** Doubt of a reading of the size foretold, as a part of it: small readings are coarse. */
function doubtAt({ kind }: Suspect, { value }: Foretold): number {
  const [part, digits] = UNSTATED[kind];
  return (part * value + digits * USUAL_RESOLUTION) / (Math.sqrt(3) * value);
}

/** ln likelihood ratio of a slip by so many places against the reading as it stands, in the logarithm of the reading. */
function slipRatio(suspect: Suspect, places: number): number {
  const { figure } = suspect;
  const foretold = together(suspect);
  if (foretold === undefined || !(figure.value > 0)) return Number.NEGATIVE_INFINITY;
  const off = Math.log(figure.value / foretold.value);
  const deviation = Math.hypot(
    foretold.spread,
    0.02,
    Math.max(figure.doubt / figure.value, doubtAt(suspect, foretold)),
  );
  const standing = Math.hypot(foretold.spread * foretold.value, figure.doubt);
  const asWritten = logSum(
    logNormal(figure.value, foretold.value, standing) + Math.log(figure.value),
    Math.log(oddPart(suspect, foretold)) + ANYWHERE,
  );
  return logNormal(off - places * Math.LN10, 0, deviation) - asWritten;
}

/** One reading that is a factor of ten, or a hundred, from what its cable, its neighbours and other readings explain. */
export const slippedDecimal: Look = {
  id: "slipped-decimal",
  shownBelow: RATIO_SHOWN_BELOW,
  title: "A decimal point may have slipped",
  test: "Foretells each resistance from the others of its circuit, its cable and its neighbours; where these agree, compares how well the reading fits as it stands with how well it fits ten or a hundred times larger or smaller.",
  assumed: [
    CABLE_ASSUMED,
    "one sound reading in 50,000 stands off by any factor while all that foretells it agrees (Zs under TT: one in 50)",
  ],
  innocent: [
    "the range of the instrument changed and the unit was read wrong",
    "a joint or an open point that was put right between two tests",
    "a second way to earth, which lowers Zs alone",
  ],
  look(job) {
    const { earthing } = job.installation.supply;
    const tt = isKnownFact(earthing) && earthing.word === "TT";
    const suspects = [
      ...loopSuspects(job),
      ...withoutCommonOffsets(job.rows).flatMap((row) => [...ringSuspects(row), ...circuitSuspects(row, tt)]),
    ].filter(({ witnesses }) => witnesses.length > 0);
    if (suspects.length === 0) return { because: "nothing foretells any resistance: no cables, no second reading" };
    const ratio = new MeanRatio();
    const each = suspects.map((suspect) => {
      const slips = SLIPS.map(({ places, weight }) => {
        const log = slipRatio(suspect, places);
        ratio.add(log, weight);
        return { places, log: log + Math.log(weight) };
      });
      return { suspect, slip: slips.reduce((a, b) => (b.log > a.log ? b : a)) };
    });
    const best = each.reduce((a, b) => (b.slip.log > a.slip.log ? b : a));
    const { name, what, figure, witnesses } = best.suspect;
    const foretold = together(best.suspect);
    if (foretold === undefined) return [];
    const times = 10 ** Math.abs(best.slip.places);
    return [
      {
        words: `${name}: ${what} is ${figure.leaf.detail.text}, about ${times} times ${best.slip.places > 0 ? "more" : "less"} than ${witnesses.map((one) => one.what).join(" and ")} foretell.`,
        numbers: [
          number("foretold", `${foretold.value.toPrecision(2)} Ω`),
          number("read", figure.leaf.detail.text),
          number("readings that can be foretold", String(suspects.length)),
        ],
        readings: leavesOf([figure]),
        chance: ratio.chance,
      },
    ];
  },
};
