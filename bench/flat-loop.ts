/**
 * The same checks as one flat loop over plain numbers: no evidence nodes, no reasons, nothing to show for a result but a
 * verdict. It is what the cost of grounds is measured against, and its verdicts have to be the same.
 */
import type { Evidence, Fact, Unit, Verdict } from "@good-grounds/core";
import { notKnown, TERM } from "@good-grounds/core";
import type { BondingConductor, Circuit, Installation, ResidualDevice } from "@good-grounds/inspection";
import {
  ambientFactor,
  breakerType,
  breakingCapacityOf,
  buriedEarthingConductor,
  conductorResistance,
  cpcBySelection,
  DIVERSITY,
  DIVERSITY_LOADS,
  energyLimitCeiling,
  FIRST_LOOPS,
  FUSES,
  fallsUnderTable411,
  groundFactor,
  groupingFactor,
  leastMeltingEnergy,
  lineHotFactor,
  mainBondingOther,
  mainBondingPme,
  operatingCurrent,
  operatingTemperature,
  permittedDisconnectionTime,
  permittedDrop,
  permittedInsulation,
  permittedRcdTime,
  protectiveConductorK,
  tabulatedCapacity,
  tabulatedDrop,
  thermalInsulationFactor,
  typicalZe,
} from "@good-grounds/tables";
import { diversityLoad, diversityPremises } from "../packages/computations/src/circuits/demand.ts";

import {
  apart,
  between,
  by,
  cores,
  foundAmong,
  type Loose,
  loose,
  mix,
  remembered,
  run,
  span,
  sure,
} from "./flat-errors.ts";

/** A verdict with the nominal margin, packed so that a loop can add them up. */
export interface Flat {
  verdict: Verdict;
  margin: number;
}

const EPS = 1e-9;
const word = <W extends string | boolean>(fact: Fact<W>): W | undefined =>
  fact.kind === "fact" ? fact.word : undefined;
const exact = (e: Evidence<Unit>) => has(e) && e.low === e.high;
const has = (e: Evidence<Unit>) => e.kind !== "not-known" && e.kind !== "lacking";

function atMost(value: number, low: number, high: number, limit: number, limitLow = limit, limitHigh = limit): Flat {
  const verdict: Verdict =
    Number.isNaN(value) || Number.isNaN(limit)
      ? "not-known"
      : high <= limitLow * (1 + EPS)
        ? "met"
        : low > limitHigh * (1 + EPS)
          ? "not-met"
          : "too-near";
  return { verdict, margin: 1 - value / limit };
}
function atLeast(value: number, low: number, high: number, limit: number, limitLow = limit, limitHigh = limit): Flat {
  const verdict: Verdict =
    Number.isNaN(value) || Number.isNaN(limit)
      ? "not-known"
      : limitHigh <= low * (1 + EPS)
        ? "met"
        : limitLow > high * (1 + EPS)
          ? "not-met"
          : "too-near";
  return { verdict, margin: value >= limit ? 1 - limit / value : value / limit - 1 };
}
function all(...parts: Flat[]): Flat {
  let verdict: Verdict = "not-applicable";
  let margin = Number.NaN;
  for (const part of parts) {
    if (part.verdict === "not-applicable") continue;
    if (!(part.margin >= margin)) margin = part.margin;
    if (verdict === "not-met") continue;
    if (part.verdict === "not-met") verdict = "not-met";
    else if (part.verdict === "not-known" || verdict === "not-known") verdict = "not-known";
    else if (part.verdict === "too-near" || verdict === "too-near") verdict = "too-near";
    else verdict = "met";
  }
  return { verdict, margin };
}
function any(...parts: Flat[]): Flat {
  let best: Flat = { verdict: "not-applicable", margin: Number.NaN };
  for (const part of parts) {
    if (part.verdict === "met") return part;
    if (part.verdict === "too-near" && best.verdict !== "too-near") best = part;
    else if (part.verdict === "not-known" && best.verdict !== "too-near" && best.verdict !== "not-known") best = part;
    else if (part.verdict === "not-met" && best.verdict === "not-applicable") best = part;
  }
  return best;
}
/** A quantity held against a limit that may itself be known only as a range. */
const within = (a: Evidence<Unit> | Band, limit: Evidence<Unit>): Flat => {
  if (!has(limit)) return OPEN;
  const { v, l, h } = "kind" in a ? band(a) : a;
  return atMost(v, l, h, limit.value, limit.low, limit.high);
};
const OPEN: Flat = { verdict: "not-known", margin: Number.NaN };
const NONE: Flat = { verdict: "not-applicable", margin: Number.NaN };
const MET: Flat = { verdict: "met", margin: Number.NaN };
const NOT: Flat = { verdict: "not-met", margin: Number.NaN };

/** Nothing flows, however long: 0 × ∞ is 0. */
const times = (a: number, b: number) =>
  Number.isNaN(a) || Number.isNaN(b) ? Number.NaN : a === 0 || b === 0 ? 0 : a * b;

interface Band {
  v: number;
  l: number;
  h: number;
}
const band = (e: Evidence<Unit>): Band => ({ v: e.value, l: e.low, h: e.high });
/** Two accounts held against the errors between them: one pair in 2,000 lies as far apart by chance, one in 300. */
function agree(a: Loose | undefined, b: Loose | undefined, side = 0): Flat {
  if (a === undefined || b === undefined) return OPEN;
  const z = apart(a, b, side);
  if (Number.isNaN(z)) return OPEN;
  return { verdict: z > 3.4808 ? "not-met" : z > 2.9352 ? "too-near" : "met", margin: 1 - z / 3.4808 };
}

function testFactor(t: Evidence<"celsius">): Band {
  if (!has(t)) return { v: 1, l: 0.92, h: 1.04 };
  const f = (celsius: number) => 1 + 0.004 * (celsius - 20);
  const inside = (celsius: number) => celsius >= -20 && celsius <= 110;
  if (!inside(t.value)) return { v: Number.NaN, l: Number.NaN, h: Number.NaN };
  if (!inside(t.low) || !inside(t.high)) return { v: f(t.value), l: f(t.value), h: f(t.value) };
  return { v: f(t.value), l: f(t.low), h: f(t.high) };
}
function perMetre(area: Evidence<"square-millimetre">, material: string | undefined): number {
  if (!exact(area) || material === undefined) return Number.NaN;
  return conductorResistance(TERM.conductorPerMetre, area.value, material as "copper").value;
}

/** One RCD on the way to the origin, or a place nobody looked at. */
interface Before {
  rcd: ResidualDevice | undefined;
  works: Flat;
  undelayed: boolean | undefined;
}

/** Every RCD between a circuit and the origin; `present` undefined where somewhere nobody looked and none was found. */
function residual(circuit: Circuit): { present: boolean | undefined; chain: Before[] } {
  const chain: Before[] = [];
  let found = false;
  let unseen = false;
  for (let at: Circuit | undefined = circuit; at !== undefined; at = at.board.feeder) {
    if (at.residual.present.kind !== "fact") {
      unseen = true;
      chain.push({ rcd: undefined, works: OPEN, undelayed: undefined });
    }
    if (at.residual.unseen !== undefined) {
      found = true;
      chain.push({ rcd: undefined, works: OPEN, undelayed: undefined });
    }
    for (const rcd of at.residual.devices) {
      found = true;
      const mark = word(rcd.delay) ?? (rcd.timeAtRated.high <= 0.13 ? "general" : undefined);
      chain.push({ rcd, works: works(rcd), undelayed: mark === undefined ? undefined : mark === "general" });
    }
    if (at.board.atOrigin.kind === "fact") continue;
    unseen = true;
    chain.push({ rcd: undefined, works: OPEN, undelayed: undefined });
  }
  return found ? { present: true, chain } : { present: unseen ? undefined : false, chain: [] };
}

/** A display that ended at or beyond the limit fails, however the band falls. */
function opens(time: Evidence<Unit>, limit: number): Flat {
  if (!has(time) || Number.isNaN(limit)) return OPEN;
  if (time.high === Number.POSITIVE_INFINITY && time.value >= limit) return NOT;
  return atMost(time.value, time.low, time.high, limit);
}

/** A delayed one has to pass both of its tests where both were made. */
function works(rcd: ResidualDevice): Flat {
  const flat = worksByTime(rcd);
  const delayed = (word(rcd.delay) ?? "general") !== "general";
  return flat.verdict === "met" && delayed && word(rcd.button) === "does-not-trip" ? OPEN : flat;
}

function worksByTime(rcd: ResidualDevice): Flat {
  const t = rcd.timeAtRated;
  if (!has(t)) return OPEN;
  const standard = word(rcd.standard);
  const delay = word(rcd.delay);
  if (standard !== undefined && delay !== undefined) {
    const most = permittedRcdTime({ standard, delay, multiple: 1 }).max.value;
    if (!Number.isNaN(most)) return opens(t, most);
  }
  const surely = opens(t, 0.13);
  if (surely.verdict === "met") return surely;
  let longest = 1;
  if (delay === "general") longest = 0.3;
  else if (delay === undefined && standard !== undefined && !["BS 4293", "BS EN 60947-2"].includes(standard))
    longest = 0.5;
  const hopeless = opens(t, longest);
  return hopeless.verdict === "not-met" ? hopeless : OPEN;
}

function marked(circuit: { device: Circuit["device"] }) {
  const standard = word(circuit.device.standard);
  const type = word(circuit.device.type) ?? null;
  if (standard === undefined || !exact(circuit.device.rated)) return undefined;
  if (type === null && (standard === "BS EN 60898" || standard === "BS EN 61009" || standard === "BS 3871"))
    return undefined;
  return { standard, type, rated: circuit.device.rated.value };
}

/** How much of a resistance is added when a cable gets as warm as it may. */
function warming({ cable, readings }: Circuit | { cable: undefined; readings: undefined }): Band {
  const insulation = cable === undefined ? undefined : word(cable.insulation);
  const line = insulation === undefined ? Number.NaN : lineHotFactor(insulation).value;
  let f: Band;
  if (Number.isNaN(line)) f = { v: 1.2, l: 1.04, h: 1.28 };
  else if (cable !== undefined && word(cable.cpcArrangement) === "in-cable") f = { v: line, l: line, h: line };
  else f = { v: line, l: 1.04, h: line };
  const ft = readings === undefined ? { v: 1, l: 0.92, h: 1.04 } : testFactor(readings.temperature);
  return { v: f.v / ft.v - 1, l: f.l / ft.h - 1, h: f.h / ft.l - 1 };
}

const less = (a: Band, b: Band): Band => ({ v: a.v - b.v, l: a.l - b.h, h: a.h - b.l });

/** Zs with its own conductors, and those of every cable before it, as warm as they may get. */
function hotLoop(circuit: Circuit, { supply }: Installation): Band {
  const { zs } = circuit.readings;
  const hot = band(zs);
  let at: Circuit | undefined = circuit;
  let end: Band | undefined = has(zs) ? band(zs) : undefined;
  for (;;) {
    const nobody: boolean = at === undefined;
    const own: Evidence<"ohm"> | undefined = at?.readings.r1r2;
    let start: Evidence<"ohm"> | undefined = at?.board.zdb;
    if (at !== undefined && at !== circuit && start !== undefined && !has(start) && word(at.board.atOrigin) === true)
      start = supply.ze;
    const known = own !== undefined && has(own);
    const from = start !== undefined && has(start) ? band(start) : undefined;
    let part: Band = { v: Number.NaN, l: Number.NaN, h: Number.NaN };
    let last = false;
    if (known) part = band(own);
    else if (end !== undefined && from !== undefined) part = less(end, from);
    else if (end !== undefined) {
      part = { v: end.v, l: 0, h: end.h };
      last = true;
    }
    const add = warming(at ?? { cable: undefined, readings: undefined });
    const corners = [times(part.l, add.l), times(part.l, add.h), times(part.h, add.l), times(part.h, add.h)];
    hot.v += times(part.v, add.v);
    hot.l += Math.min(...corners);
    hot.h += Math.max(...corners);
    if (last || nobody || at === undefined) return hot;
    end = from ?? (end === undefined ? undefined : less(end, part));
    const feeder: Circuit | undefined = at.board.feeder;
    if (feeder === undefined && at.board.atOrigin.kind === "fact") return hot;
    at = feeder;
  }
}

/** Whether the shorter times of Table 41.1 are for the circuit. */
function underTable411(circuit: Circuit, edition: Installation["edition"]): boolean | undefined {
  const shape = word(circuit.shape);
  if (shape === "distribution") return false;
  if (edition === undefined || !exact(circuit.device.rated) || shape === undefined) return undefined;
  const ratedCurrent = circuit.device.rated.value;
  const withSockets = fallsUnderTable411(edition, { ratedCurrent, socketOutlets: true });
  const without = fallsUnderTable411(edition, { ratedCurrent, socketOutlets: false });
  const sockets = word(circuit.socketOutlets) ?? (word(circuit.load) === "socket-outlets" ? true : undefined);
  return withSockets === without ? withSockets : sockets === undefined ? undefined : sockets ? withSockets : without;
}

function maximumZs(circuit: Circuit, installation: Installation, rcd: ReturnType<typeof residual>): Flat {
  const { supply, edition } = installation;
  const { zs } = circuit.readings;
  const system = word(supply.earthing);
  const hot = hotLoop(circuit, installation);
  const device = marked(circuit);
  const against = (kind: "final-41.1" | "other"): Flat => {
    if (system === undefined || !exact(supply.nominalVoltage) || device === undefined || Number.isNaN(hot.v))
      return OPEN;
    const time = permittedDisconnectionTime(system, supply.nominalVoltage.value, kind);
    if (Number.isNaN(time.value)) return OPEN;
    const ia = operatingCurrent(device, time.value);
    if (Number.isNaN(ia.value)) return OPEN;
    const limit = (supply.nominalVoltage.value * 0.95) / ia.value;
    return atMost(hot.v, hot.l, hot.h, limit);
  };
  const scope = underTable411(circuit, edition);
  let over: Flat;
  if (scope !== undefined) over = against(scope ? "final-41.1" : "other");
  else {
    over = against("final-41.1");
    if (over.verdict !== "met") {
      const lenient = against("other");
      over = lenient.verdict === "not-met" ? lenient : OPEN;
    }
  }
  let byRcd: Flat = NONE;
  if (rcd.present === undefined) byRcd = OPEN;
  else if (rcd.present)
    byRcd = any(
      ...rcd.chain.map((one) => {
        const i = one.rcd?.residual;
        const touch =
          i === undefined || !has(i) || !has(zs)
            ? OPEN
            : atMost(zs.value * i.value, zs.low * i.low, times(zs.high, i.high), 50);
        return all(touch, one.works);
      }),
    );
  return any(over, byRcd);
}

const PIPED = new Set(["heating", "water-heater", "shower", "fixed-equipment"]);
const NEAR: Flat = { verdict: "too-near", margin: Number.NaN };

function zsAgreement(circuit: Circuit, { supply }: Installation): Flat {
  const { zs, r1r2, r1, r2 } = circuit.readings;
  const atBoard = has(circuit.board.zdb);
  const start = atBoard || word(circuit.board.atOrigin) !== true ? circuit.board.zdb : supply.ze;
  if (!has(zs) || !has(r1r2) || !has(start)) return OPEN;
  const [loop, before, own] = [loose(zs), loose(start), by(loose(r1r2), between(0.97, 1.03))];
  const fits = agree(loop, mix([1, before], [1, own]));
  if (fits.verdict === "met" || fits.verdict === "not-known" || zs.value > start.value + r1r2.value) return fits;
  if (has(r1) && has(r2)) {
    const [x, y] = [loose(r1), loose(r2)];
    const near = agree(loop, mix([1, before], [1, own], [-1, beside(x, y)]), 1);
    if (near.verdict === "met") return near;
  }
  const bonds = supply.bonding.map(({ connected }) => word(connected));
  const some = bonds.includes(true);
  const unbonded = !some && bonds.length > 0 && !bonds.includes(undefined);
  if (!atBoard && !unbonded && agree(loop, own, 1).verdict === "met") {
    if (some) return MET;
    if (zs.value > r1r2.value) return any(fits, NEAR);
  }
  if (!PIPED.has(word(circuit.load) ?? "")) return fits;
  const material = word(circuit.cable.material);
  const line = perMetre(circuit.cable.line, material);
  const share = line / (line + perMetre(circuit.cable.cpc, material));
  if (Number.isNaN(share)) return fits;
  // Pipes come back at the main earthing terminal: a feeder's protective conductor is passed by as well.
  let bars = circuit.board;
  while (bars.feeder !== undefined) bars = bars.feeder.board;
  const there = !has(bars.zdb) && word(bars.atOrigin) === true ? supply.ze : bars.zdb;
  const least = agree(loop, mix([1, has(there) ? loose(there) : before], [share, own]), 1);
  return least.verdict === "met" ? least : fits;
}

function r1r2Length(circuit: Circuit, installation: Installation): Flat {
  const { cable, readings } = circuit;
  if (word(circuit.shape) === "ring") return NONE;
  const arrangement = word(cable.cpcArrangement);
  if (arrangement !== undefined && arrangement !== "in-cable" && arrangement !== "separate") return NONE;
  const material = word(cable.material);
  const foretold = cableOf(circuit, material, foundAmong(circuit, installation));
  const { r1r2 } = readings;
  if (!has(r1r2) || foretold === undefined) return OPEN;
  const [line, cpc] = foretold as readonly [Loose, Loose];
  const both = mix([1, line], [1, cpc]);
  const fits = agree(loose(r1r2), both);
  const odd = fits.verdict === "not-met" || fits.verdict === "too-near";
  if (!odd || !PIPED.has(word(circuit.load) ?? "") || agree(loose(r1r2), both, -1).verdict !== "met") return fits;
  const least = agree(loose(r1r2), line, 1);
  return least.verdict === "met" ? least : fits;
}

/** What line and protective conductor of a cable read; undefined where something of it is not known. */
function cableOf(circuit: Circuit, material: string | undefined, found: string): readonly Loose[] | undefined {
  const { cable, readings } = circuit;
  const per = [perMetre(cable.line, material), perMetre(cable.cpc, material)];
  const warmth = testFactor(readings.temperature);
  if (!has(cable.length) || per.some(Number.isNaN) || Number.isNaN(warmth.v)) return undefined;
  return cores(per, run(cable.length, found), warmth);
}

function ring(circuit: Circuit, installation: Installation): Flat {
  const shape = word(circuit.shape);
  if (shape !== undefined && shape !== "ring") return NONE;
  const { cable, readings } = circuit;
  const material = word(cable.material);
  const read = remembered();
  const of = (e: Evidence<"ohm">) => (has(e) ? read(e) : undefined);
  const [r1, rn, r2] = [of(readings.r1), of(readings.rn), of(readings.r2)];
  const [line, cpc] = [perMetre(cable.line, material), perMetre(cable.cpc, material)];
  const likeness = between(1 - 0.035 * Math.SQRT2, 1 + 0.035 * Math.SQRT2);
  const ratio = cpc / line;
  const parts = [
    agree(r1, rn && by(rn, likeness)),
    agree(r2, r1 && !Number.isNaN(ratio) ? by(mix([ratio, r1]), likeness) : undefined),
  ];
  if (has(cable.length)) {
    const warmth = testFactor(readings.temperature);
    const end = (per: number) =>
      Number.isNaN(per) || Number.isNaN(warmth.v)
        ? undefined
        : cores([per], run(cable.length, foundAmong(circuit, installation)), warmth)[0];
    parts.push(agree(r1, end(line)), agree(r2, end(cpc)));
  }
  const quarter = r1 && rn && mix([0.25, r1], [0.25, rn]);
  const near = r1 && r2 && beside(r1, r2);
  for (const point of readings.crossLineNeutral) parts.push(agree(of(point.reading), quarter, 1));
  for (const point of readings.crossLineCpc) parts.push(agree(of(point.reading), near, 1));
  if (has(readings.r1r2)) parts.push(agree(of(readings.r1r2), near, 1));
  return all(...parts);
}

/** Two resistances side by side. */
function beside(a: Loose, b: Loose): Loose {
  const both = a.v + b.v;
  if (!(both > 0)) return sure(0);
  return { ...mix([(b.v / both) ** 2, a], [(a.v / both) ** 2, b]), v: (a.v * b.v) / both };
}

function insulation({ readings }: Circuit): Flat {
  const least = permittedInsulation("up to 500 V").value;
  const one = (e: Evidence<"ohm">) => (has(e) ? atLeast(e.value, e.low, e.high, least) : OPEN);
  return all(one(readings.insulationLiveEarth), one(readings.insulationLiveLive));
}

/** A conductor of 550 m of 1 mm² and its line have 20 Ω; no reading that is more, or past its display, is one. */
function earthConductor({ cable, readings }: Circuit): Flat {
  if (word(cable.cpcArrangement) === "none") return NOT;
  let out = NONE;
  for (const one of [readings.r1r2, readings.r2Only, readings.r2, ...readings.crossLineCpc.map((p) => p.reading)])
    if (has(one)) out = all(out, atMost(one.value, one.low, one.high, 20));
  return out === NONE ? OPEN : out;
}

const byWord = (fact: Fact<string | boolean>, good: string | boolean): Flat =>
  fact.kind !== "fact" ? OPEN : fact.word === good ? MET : NOT;

function additional(circuit: Circuit, use: string | undefined, rcd: ReturnType<typeof residual>): Flat {
  const load = word(circuit.load);
  const dwelling = use === "dwelling" || use === "house-in-multiple-occupation";
  const wanted =
    load === "socket-outlets" ||
    load === "mixed" ||
    load === "shower" ||
    load === "vehicle-charging" ||
    (load === "lighting" && (dwelling || use === undefined));
  if (load !== undefined && !wanted && word(circuit.socketOutlets) !== true) return NONE;
  if (load === undefined || rcd.present === undefined || (load === "lighting" && use === undefined)) return OPEN;
  const inCircuit = rcd.present
    ? any(
        ...rcd.chain.map((one) => {
          const i = one.rcd?.residual;
          const sensitive = i === undefined || !has(i) ? OPEN : atMost(i.value, i.low, i.high, 0.03);
          return all(sensitive, one.undelayed === undefined ? OPEN : one.undelayed ? MET : NOT, one.works);
        }),
      )
    : NOT;
  return load === "vehicle-charging" ? any(inCircuit, OPEN) : inCircuit;
}

function faultAt(circuit: Circuit, { supply }: Installation): Band & { phases: string | undefined } {
  const { board } = circuit;
  let found: Evidence<"ampere"> | undefined;
  let method: string | undefined;
  let here = true;
  let last = board;
  for (let at: typeof board | undefined = board; at !== undefined; at = at.feeder?.board) {
    last = at;
    if (!has(at.faultCurrent)) continue;
    found = at.faultCurrent;
    method = word(at.faultCurrentMethod);
    here = at === board;
    break;
  }
  if (found === undefined) {
    // From nobody knows where: no limit either.
    found = last.atOrigin.kind === "fact" && has(supply.faultCurrent) ? supply.faultCurrent : board.faultCurrent;
    method = word(supply.faultCurrentMethod);
    here = word(board.atOrigin) === true;
  }
  const phases = word(board.phases) ?? word(supply.phases);
  const low = here ? found.low : 0;
  const f =
    phases === "3"
      ? method === "line-neutral"
        ? [2, 2, 2]
        : method === "line-line"
          ? [2 / Math.sqrt(3), 2 / Math.sqrt(3), 2 / Math.sqrt(3)]
          : method === "three-phase"
            ? [1, 1, 1]
            : [2, 1, 2]
      : [1, 1, 1];
  return { v: found.value * (f[0] as number), l: low * (f[1] as number), h: found.high * (f[2] as number), phases };
}

function ownBreaking(device: Circuit["device"]): Band {
  const standard = word(device.standard);
  if (has(device.breakingCapacity) || standard === undefined) return band(device.breakingCapacity);
  const type = word(device.type);
  if (standard === "BS 1361") {
    if (type === "I") return { v: 16500, l: 16500, h: 16500 };
    if (type === "II") return { v: 33000, l: 33000, h: 33000 };
    return { v: 16500, l: 16500, h: 33000 };
  }
  return band(breakingCapacityOf(standard));
}

function breaking(circuit: Circuit, installation: Installation): Flat {
  const fault = faultAt(circuit, installation);
  if (fault.phases === undefined || Number.isNaN(fault.v)) return OPEN;
  const { device, board } = circuit;
  const own = ownBreaking(device);
  const byOwn = Number.isNaN(own.v) ? OPEN : atMost(fault.v, fault.l, fault.h, own.v, own.l, own.h);
  const rating = board.conditionalRating;
  if (rating === undefined || !has(rating.value)) return byOwn;
  const ahead = board.feeder?.device ?? installation.supply.device;
  const named = word(rating.upstreamStandard);
  const real = word(ahead.standard);
  const matches = named === undefined || real === undefined ? OPEN : named === real ? MET : NOT;
  if (board.atOrigin.kind !== "fact")
    return any(byOwn, all(within(fault, rating.value), OPEN, byWord(rating.devicesOfOneMake, true)));
  const rated = within(ahead.rated, rating.upstreamRated);
  return any(byOwn, all(within(fault, rating.value), matches, rated, byWord(rating.devicesOfOneMake, true)));
}

/** Energy let through: what is published of it, and what physics leaves of it where that is less. */
interface Energy {
  seen: Band;
  likely?: Band;
}
const UNSEEN: Band = { v: Number.NaN, l: Number.NaN, h: Number.NaN };
const upTo = (most: number): Band => ({ v: most, l: 0, h: most });

/** Seconds for which a steady fault would carry as much as a breaker lets through, once it is this far beyond its trip. */
function carries(device: NonNullable<ReturnType<typeof marked>>, amperes: number, trip: number): number {
  const beyond = amperes / trip;
  if (beyond < 1.5) return 0.1005;
  const old = device.standard === "BS 3871";
  const ends = beyond < (old ? 5 : 3) ? "two" : old ? "parted" : "one";
  for (const row of FIRST_LOOPS) if (amperes <= row.upTo) return row[ends];
  return Number.NaN;
}

function energy(device: ReturnType<typeof marked>, marks: Circuit["device"], one: Band, other: Band): Energy {
  if (has(marks.letThrough)) return { seen: band(marks.letThrough) };
  if (device === undefined) return { seen: UNSEEN };
  // Whichever end reads less is the least; an end nobody read leaves its place open.
  const both = !Number.isNaN(one.v) && !Number.isNaN(other.v);
  const far = both ? { v: Math.min(one.v, other.v), l: Math.min(one.l, other.l), h: Math.min(one.h, other.h) } : one;
  const near = both ? { v: Math.max(one.v, other.v), l: Math.max(one.l, other.l), h: Math.max(one.h, other.h) } : other;
  if (breakerType(device.standard, device.type) !== undefined) return breakerEnergy(device, marks, far, near);
  if (!FUSES.has(device.standard) || Number.isNaN(far.v)) return { seen: UNSEEN };
  const fast = operatingCurrent(device, 0.4).value;
  const slow = operatingCurrent(device, 5).value;
  const melts = leastMeltingEnergy(device)?.value ?? 0;
  const atFast = fast ** 2 * 0.4;
  if (far.l >= fast * (1 - EPS)) return { seen: upTo(atFast), likely: { v: atFast, l: melts, h: atFast } };
  if (!(far.l >= slow * (1 - EPS))) return { seen: UNSEEN };
  const atSlow = slow ** 2 * 5;
  const least = far.h <= fast ? atFast : 0;
  let most = atSlow;
  if (!Number.isNaN(fast)) {
    // Straight on logarithmic scales: t = 5·(slow/I)^n.
    const n = Math.log(12.5) / Math.log(fast / slow);
    const ends = [Math.max(slow, far.l), Math.min(fast, Math.max(slow, far.h))];
    most = Math.max(...ends.map((i) => i * i * 5 * (slow / i) ** n));
  }
  const far5 = (device.standard === "BS 3036" ? 3 : 2.2) * slow;
  if (Number.isNaN(fast) && far.l >= far5) most = far5 ** 2 * 0.4;
  const floor = least > 0 ? least : melts;
  return {
    seen: { v: atSlow, l: least, h: atSlow },
    likely: { v: Math.max(floor, most), l: floor, h: Math.max(floor, most) },
  };
}

function breakerEnergy(
  device: NonNullable<ReturnType<typeof marked>>,
  { breakingCapacity, energyClass }: Circuit["device"],
  far: Band,
  near: Band,
): Energy {
  const trip = operatingCurrent(device, 0.1).value;
  if (!(far.l >= trip)) return { seen: UNSEEN };
  const cls = word(energyClass);
  let ceiling = Number.NaN;
  if (cls !== undefined && exact(breakingCapacity) && near.h <= breakingCapacity.value)
    ceiling = energyLimitCeiling({
      type: device.type,
      rated: device.rated,
      markedBreakingCapacity: breakingCapacity.value,
      energyClass: Number(cls),
    }).value;
  const seen = Number.isNaN(ceiling) ? UNSEEN : upTo(ceiling);
  // By the loop as read: the reserve of a conductor below its full temperature covers the doubt of the reading. The pole of
  // the breaker, 0.8 W at its rated current or more, is in series.
  const amperes = near.v / (1 + (near.v * 0.8) / device.rated ** 2 / 253);
  const seconds = carries(device, amperes, trip);
  if (Number.isNaN(amperes) || Number.isNaN(seconds)) return { seen };
  let most = amperes ** 2 * seconds;
  const classAt = [3000, 6000, 10_000].find((up) => amperes <= up && up <= breakingCapacity.value);
  if (cls !== undefined && exact(breakingCapacity) && classAt !== undefined && amperes >= 3 * trip) {
    const e = energyLimitCeiling({
      type: device.type,
      rated: device.rated,
      markedBreakingCapacity: classAt,
      energyClass: Number(cls),
    }).value;
    if (device.standard !== "BS 3871" && !Number.isNaN(e)) most = Math.min(most, (e * amperes) / classAt);
  }
  for (const step of [1.5, device.standard === "BS 3871" ? 5 : 3]) {
    const edge = step * trip;
    if (far.l >= edge || amperes < edge) continue;
    most = Math.max(most, edge ** 2 * (step > 2 ? (FIRST_LOOPS.find((row) => edge <= row.upTo)?.two ?? 0) : 0.1005));
  }
  if (!Number.isNaN(ceiling)) most = Math.min(most, ceiling);
  return { seen, likely: upTo(most) };
}

/** A size against the energy: what is published decides, else what is likely where that decides or nothing is published. */
function enough(size: Evidence<Unit>, k: number, e: Energy, asks = (mm2: number) => mm2): Flat {
  const against = (x: Band): Flat =>
    Number.isNaN(x.v) || Number.isNaN(k) || !has(size)
      ? OPEN
      : atLeast(
          size.value,
          size.low,
          size.high,
          asks(Math.sqrt(x.v) / k),
          asks(Math.sqrt(x.l) / k),
          asks(Math.sqrt(x.h) / k),
        );
  const proven = against(e.seen);
  if (e.likely === undefined || proven.verdict === "met" || proven.verdict === "not-met") return proven;
  const likely = against(e.likely);
  return proven.verdict === "too-near" && likely.verdict === "too-near" ? proven : likely;
}

function cpc(circuit: Circuit, { supply }: Installation, rcd: ReturnType<typeof residual>): Flat {
  const { cable, readings, board } = circuit;
  const arrangement = word(cable.cpcArrangement);
  if (arrangement === "none") return NONE;
  const judged = arrangement === undefined || arrangement === "in-cable" || arrangement === "separate";
  const selection = !judged
    ? NONE
    : exact(cable.line) && has(cable.cpc)
      ? atLeast(cable.cpc.value, cable.cpc.low, cable.cpc.high, cpcBySelection(cable.line.value).value)
      : OPEN;
  if (selection.verdict === "met") return selection;
  const u = supply.nominalVoltage;
  const loop = !has(board.zdb) && word(board.atOrigin) === true && has(supply.ze) ? supply.ze : board.zdb;
  const near = { v: u.value / loop.value, l: u.low / loop.high, h: u.high / loop.low };
  const { zs, r1r2 } = readings;
  const parts = !has(zs) && has(loop) && has(r1r2);
  const end = parts ? { v: loop.value + r1r2.value, l: loop.low + r1r2.low, h: loop.high + r1r2.high } : band(zs);
  const far = { v: u.value / end.v, l: u.low / end.h, h: u.high / end.l };
  const e = energy(marked(circuit), circuit.device, far, near);
  const of =
    arrangement === "armour" || arrangement === "conduit"
      ? "steel"
      : arrangement === "in-cable" || arrangement === "separate"
        ? word(cable.material)
        : undefined;
  const ins = word(cable.insulation);
  const k =
    of !== undefined && ins !== undefined && arrangement !== undefined && exact(cable.cpc)
      ? protectiveConductorK(of, ins, arrangement, cable.cpc.value).value
      : Number.NaN;
  const size = (x: Band): Flat => {
    if (Number.isNaN(x.v) || Number.isNaN(k) || !has(cable.cpc)) return OPEN;
    return atLeast(
      cable.cpc.value,
      cable.cpc.low,
      cable.cpc.high,
      Math.sqrt(x.v) / k,
      Math.sqrt(x.l) / k,
      Math.sqrt(x.h) / k,
    );
  };
  let byRcd: Flat = NONE;
  if (rcd.present === undefined) byRcd = OPEN;
  else if (rcd.present)
    byRcd = any(
      ...rcd.chain.map((one) => {
        if (one.rcd === undefined) return OPEN;
        const { residual: i, timeAtFive } = one.rcd;
        const multiple = has(i) && near.l >= 5 * i.high ? 5 : 1;
        const standard = one.undelayed === true ? "BS EN 61008" : word(one.rcd.standard);
        if (!has(i) || one.undelayed === undefined || standard === undefined) return all(one.works, OPEN);
        const most = permittedRcdTime({ standard, delay: one.undelayed ? "general" : "S", multiple }).max.value;
        const slow = multiple === 5 && has(timeAtFive) ? timeAtFive : undefined;
        const time = slow === undefined ? most : Math.max(most, slow.value);
        const latest = slow === undefined ? most : Math.max(most, slow.high);
        const upTo = size({ v: near.v ** 2 * time, l: 0, h: times(near.h ** 2, latest) });
        const half = size({ v: near.v ** 2 * 0.01, l: near.l ** 2 * 0.01, h: near.h ** 2 * 0.01 });
        const short =
          word(circuit.device.standard) === "BS 3036" && upTo.verdict === "too-near" && half.verdict === "not-met";
        return all(one.works, short ? { verdict: "not-met", margin: upTo.margin } : upTo);
      }),
    );
  return any(selection, enough(cable.cpc, k, e), byRcd);
}

/** What the cable carries as installed: every method and temperature it may have. */
function carriesAsInstalled(circuit: Circuit, installation: Installation, asTabulated = false): Band {
  const { cable } = circuit;
  const phases = word(circuit.phases) ?? word(circuit.board.phases) ?? word(installation.supply.phases);
  const kind = word(cable.kind);
  const ins = word(cable.insulation);
  const material = word(cable.material);
  let iz: Band = { v: Number.POSITIVE_INFINITY, l: Number.POSITIVE_INFINITY, h: Number.NEGATIVE_INFINITY };
  // A cable for 90 °C ends in terminals of which nobody recorded whether they stand it.
  const temperatures =
    !asTabulated && (ins === "90C-thermosetting" || ins === "90C-thermoplastic")
      ? (["70C-thermoplastic", ins] as const)
      : [ins];
  for (const method of cable.methods)
    for (const insulated of temperatures) {
      const m = word(method);
      let it =
        kind !== undefined &&
        insulated !== undefined &&
        material !== undefined &&
        phases !== undefined &&
        m !== undefined &&
        exact(cable.line)
          ? tabulatedCapacity({
              kind,
              insulation: insulated,
              material,
              method: m,
              area: cable.line.value,
              loadedConductors: phases === "3" ? 3 : 2,
            }).value
          : Number.NaN;
      if (has(cable.ambient))
        it *=
          insulated === undefined
            ? Number.NaN
            : (m === "D" ? groundFactor : ambientFactor)(insulated, cable.ambient.high).value;
      const grouping = word(cable.grouping);
      if (has(cable.groupedCircuits)) {
        if (m === "D" && cable.groupedCircuits.high > 1) it = Number.NaN;
        else
          it *=
            grouping === undefined || !exact(cable.groupedCircuits)
              ? Number.NaN
              : groupingFactor(grouping, cable.groupedCircuits.value).value;
      }
      if (has(cable.surroundedByInsulation))
        it *= thermalInsulationFactor(cable.surroundedByInsulation.high * 1000).value;
      iz = { v: Math.min(iz.v, it), l: Math.min(iz.l, it), h: Math.max(iz.h, it) };
    }
  if (cable.methods.length === 0) iz = { v: Number.NaN, l: Number.NaN, h: Number.NaN };
  return iz;
}

function capacity(circuit: Circuit, installation: Installation): Flat {
  const { cable, device, designCurrent } = circuit;
  const kind = word(cable.kind);
  const iz = carriesAsInstalled(circuit, installation);
  const shape = word(circuit.shape);
  if (shape === undefined) return OPEN;
  const cf = word(device.standard) === "BS 3036" ? 0.725 : 1;
  let judged =
    has(device.rated) && !Number.isNaN(iz.v)
      ? atMost(device.rated.value, device.rated.low, device.rated.high, iz.v * cf, iz.l * cf, iz.h * cf)
      : OPEN;
  if (shape === "ring") {
    const least = kind === "mineral" ? 1.5 : 2.5;
    const asRing = all(
      has(cable.line) && kind !== undefined ? atLeast(cable.line.value, cable.line.low, cable.line.high, least) : OPEN,
      Number.isNaN(iz.v) ? OPEN : atLeast(iz.v, iz.l, iz.h, 20),
      has(device.rated) ? atMost(device.rated.value, device.rated.low, device.rated.high, 32) : OPEN,
    );
    return any(asRing, judged);
  }
  const load = word(circuit.load);
  const loadWithin =
    Number.isNaN(iz.v) || !has(designCurrent)
      ? OPEN
      : atMost(designCurrent.value, designCurrent.low, designCurrent.high, iz.v, iz.l, iz.h);
  if (load === "motor") judged = any(judged, all(loadWithin, OPEN));
  else if (
    has(designCurrent) &&
    (load === "shower" || load === "water-heater" || load === "storage-heating" || load === "heating")
  )
    judged = any(judged, loadWithin);
  if (!has(designCurrent)) return judged;
  return all(judged, within(designCurrent, device.rated));
}

function drop(circuit: Circuit, installation: Installation): Flat {
  const { supply } = installation;
  const { cable, designCurrent, readings } = circuit;
  const phases = word(circuit.phases) ?? word(circuit.board.phases) ?? word(supply.phases);
  const kind = word(cable.kind);
  const ins = word(cable.insulation);
  const shape = word(circuit.shape);
  const load = word(circuit.load);
  const isPublic = word(supply.public);
  const known = phases !== undefined && shape !== undefined && load !== undefined && isPublic !== undefined;
  if (!known || !has(designCurrent) || !has(supply.nominalVoltage)) return OPEN;
  const fraction = permittedDrop({
    supply: isPublic ? "public" : "private",
    use: load === "lighting" ? "lighting" : "other",
  }).value;
  const limit = supply.nominalVoltage.value * fraction * (phases === "3" ? Math.sqrt(3) : 1);
  const volts = tableDrop(circuit, installation, phases);
  const tabled = volts === undefined ? OPEN : atMost(volts.v, volts.l, volts.h, limit);
  if (tabled.verdict === "met" || tabled.verdict === "not-met") return tabled;
  if (ins === undefined || !exact(cable.line) || cable.line.value > 16) return tabled;
  const inGround = cable.methods.some((method) => word(method) === "D");
  const iz = inGround ? OUTSIDE : carriesAsInstalled(circuit, installation, true);
  const hot = heatOf(circuit, iz, ins, shape === "ring" ? 0.5 : 1);
  const most = operatingTemperature(ins).value;
  const ohms = readThrough(circuit, phases);
  // Beyond its capacity a cable is as warm as nobody says; where that is not known, no warmer than it may be.
  if (hot !== undefined && ohms !== undefined && ohms.h < Number.POSITIVE_INFINITY) {
    const at = Number.isNaN(hot.v) ? { v: most, l: 10, h: most } : hot;
    const test = testFactor(readings.temperature);
    const asRead = atMost(
      (ohms.v * designCurrent.value * (230 + at.v)) / 250 / test.v,
      (ohms.l * designCurrent.low * (230 + at.l)) / 250 / test.h,
      (ohms.h * designCurrent.high * (230 + at.h)) / 250 / test.l,
      limit,
    );
    if (asRead.verdict === "met" || asRead.verdict === "not-met") return asRead;
  }
  if (tabled.verdict !== "too-near" || volts === undefined || hot === undefined || kind === undefined) return tabled;
  const part = (celsius: number) => (230 + celsius) / (230 + most);
  const likely = atMost(volts.v * part(hot.v), volts.l * part(hot.l), volts.h * part(hot.h), limit);
  return likely.verdict === "met" ? likely : tabled;
}

const OUTSIDE: Band = { v: Number.NaN, l: Number.NaN, h: Number.NaN };

/** mV/A/m of the table times length and current, V; undefined where one of them is not known. */
function tableDrop(circuit: Circuit, installation: Installation, phases: "1" | "3"): Band | undefined {
  const { cable, designCurrent, shape } = circuit;
  const [kind, ins, material] = [word(cable.kind), word(cable.insulation), word(cable.material)];
  if (kind === undefined || ins === undefined || material === undefined) return undefined;
  if (!exact(cable.line) || !has(cable.length)) return undefined;
  const loadedConductors = phases === "3" ? 3 : 2;
  const z =
    tabulatedDrop({ kind, insulation: ins, material, area: cable.line.value, loadedConductors }).value *
    (word(shape) === "ring" ? 0.25 : 1);
  const length = span(cable.length, foundAmong(circuit, installation));
  return {
    v: z * length.v * designCurrent.value,
    l: z * length.l * designCurrent.low,
    h: times(z * length.h, designCurrent.high),
  };
}

/** Ω there and back as they were read, where nothing can have lain beside them. */
function readThrough({ cable, readings, shape, load }: Circuit, phases: "1" | "3"): Band | undefined {
  const { r1, rn, r1r2 } = readings;
  if (word(shape) === "ring") {
    if (phases === "3" || !has(r1) || !has(rn)) return undefined;
    return { v: (r1.value + rn.value) / 4, l: (r1.low + rn.low) / 4, h: (r1.high + rn.high) / 4 };
  }
  const arrangement = word(cable.cpcArrangement);
  const beside = word(shape) !== "radial" || PIPED.has(word(load) ?? "");
  if (beside || (arrangement !== "in-cable" && arrangement !== "separate") || !has(r1r2)) return undefined;
  const material = word(cable.material);
  const line = perMetre(cable.line, material);
  const share = (line / (line + perMetre(cable.cpc, material))) * (phases === "3" ? Math.sqrt(3) : 2);
  if (Number.isNaN(share)) return undefined;
  const unlike = 0.035 * Math.SQRT2;
  return { v: r1r2.value * share, l: r1r2.low * share * (1 - unlike), h: r1r2.high * share * (1 + unlike) };
}

/** °C of a conductor under its load; not a number where its capacity is not known, undefined where the load is beyond it. */
function heatOf({ cable, designCurrent: i }: Circuit, iz: Band, insulated: string, part: number): Band | undefined {
  const load = { v: (part * i.value) / iz.v, l: (part * i.low) / iz.h, h: (part * i.high) / iz.l };
  if (Number.isNaN(load.h)) return OUTSIDE;
  if (!(load.h ** 2 <= 1)) return undefined;
  const most = operatingTemperature(insulated as "70C-thermoplastic").value;
  const air = has(cable.ambient) ? band(cable.ambient) : { v: 30, l: 30, h: 30 };
  return {
    v: air.v + (most - air.v) * load.v ** 2,
    l: air.l + (most - air.h) * load.l ** 2,
    h: air.h + (most - air.l) * load.h ** 2,
  };
}

function rcdTime(rcd: ResidualDevice): Flat {
  const standard = word(rcd.standard);
  const delay = word(rcd.delay);
  const t = rcd.timeAtRated;
  const parts: Flat[] = [];
  if (standard === undefined || delay === undefined || !has(t)) parts.push(OPEN);
  else {
    const limits = permittedRcdTime({ standard, delay, multiple: 1 });
    parts.push(opens(t, limits.max.value));
    if (limits.min !== null) parts.push(atLeast(t.value, t.low, t.high, limits.min.value));
  }
  if (rcd.button.kind === "fact") parts.push(byWord(rcd.button, "trips"));
  return all(...parts);
}

/** Nothing to bond: no service, and nothing else said that speaks of one. */
const noService = ({ service, extraneous, connected }: BondingConductor) =>
  word(service) === "no-such-service" && extraneous.kind !== "fact" && !word(connected);

function bondSize(bond: BondingConductor, installation: Installation): Flat {
  const { supply } = installation;
  const extraneous = word(bond.extraneous);
  if (extraneous === false || noService(bond)) return NONE;
  const system = word(supply.earthing);
  let needed = Number.NaN;
  if (system === "TN-C-S")
    needed = exact(supply.neutral.size) ? mainBondingPme(supply.neutral.size.value).value : Number.NaN;
  else if (system !== undefined && exact(supply.tails.size))
    needed = mainBondingOther(cpcBySelection(supply.tails.size.value).value).value;
  let size =
    has(bond.size) && !Number.isNaN(needed) ? atLeast(bond.size.value, bond.size.low, bond.size.high, needed) : OPEN;
  if (system === "TN-S" || system === "IT") {
    const k = originK(bond.size, word(bond.material), "separate");
    size = any(
      size,
      enough(bond.size, k, atOrigin(installation), (mm2) => Math.max(6, Math.min(25, mm2 / 2))),
    );
  }
  const parts = [size];
  if (bond.connected.kind === "fact") parts.unshift(byWord(bond.connected, true));
  const material = word(bond.material);
  if (material !== undefined && material !== "copper") parts.push(OPEN);
  const judged = all(...parts);
  return extraneous === undefined && judged.verdict !== "met" ? OPEN : judged;
}

function bondContinuity(bond: BondingConductor): Flat {
  if (word(bond.extraneous) === false || noService(bond)) return NONE;
  const r = perMetre(bond.size, word(bond.material));
  if (Number.isNaN(r) || !has(bond.length) || !has(bond.resistance)) return OPEN;
  return agree(
    loose(bond.resistance),
    mix([r, run(bond.length, word(bond.lengthFound) ?? "estimated")], [1, sure(0.05)]),
    -1,
  );
}

/** What an earth fault at the origin lets through, and k of a conductor there. */
function atOrigin({ supply }: Installation): Energy {
  const u = supply.nominalVoltage;
  const i = { v: u.value / supply.ze.value, l: u.low / supply.ze.high, h: u.high / supply.ze.low };
  return energy(marked(supply), supply.device, i, i);
}
function originK(
  size: Evidence<"square-millimetre">,
  material: string | undefined,
  run: "separate" | "in-cable",
): number {
  if (material === undefined || !exact(size)) return Number.NaN;
  return protectiveConductorK(material as "copper", "70C-thermoplastic", run, size.value).value;
}

function earthing(installation: Installation): Flat {
  const { supply } = installation;
  const e = supply.earthingConductor;
  const material = word(e.material);
  const arrangement = word(e.arrangement);
  const system = word(supply.earthing);
  const selection =
    has(e.size) && exact(supply.tails.size) && (material === undefined || material === "copper")
      ? atLeast(e.size.value, e.size.low, e.size.high, cpcBySelection(supply.tails.size.value).value)
      : OPEN;
  const k =
    arrangement === undefined
      ? Number.NaN
      : originK(e.size, material, arrangement === "in-cable" ? "in-cable" : "separate");
  const parts = [any(selection, system === "TT" ? NONE : enough(e.size, k, atOrigin(installation)))];
  if (system === "TN-C-S")
    parts.push(
      has(e.size) && material === "copper" && exact(supply.neutral.size)
        ? atLeast(e.size.value, e.size.low, e.size.high, mainBondingPme(supply.neutral.size.value).value)
        : OPEN,
    );
  if (arrangement === "buried") {
    const sheathed = word(e.sheathed);
    const mech = word(e.mechanicallyProtected);
    const floor =
      sheathed !== undefined && (mech !== undefined || !sheathed)
        ? buriedEarthingConductor({ sheathed, mechanicallyProtected: mech === true }).value
        : Number.NaN;
    parts.push(has(e.size) && !Number.isNaN(floor) ? atLeast(e.size.value, e.size.low, e.size.high, floor) : OPEN);
  }
  return all(...parts);
}

function electrode(installation: Installation): Flat {
  const { supply, circuits } = installation;
  const system = word(supply.earthing);
  if (system !== undefined && system !== "TT") return NONE;
  const ra = has(supply.ra) ? supply.ra : supply.ze;
  let largest: Evidence<"ampere"> | undefined;
  let unknown = false;
  let allWork = MET;
  for (const circuit of circuits) {
    const { present, chain } = residual(circuit);
    if (present === false) continue;
    const serves =
      chain.find((one) => one.works.verdict === "met") ??
      chain.find((one) => one.works.verdict !== "not-met") ??
      chain[0];
    if (serves?.rcd === undefined || !has(serves.rcd.residual)) {
      unknown = true;
      allWork = serves?.works ?? OPEN;
      break;
    }
    allWork = all(allWork, serves.works);
    if (largest === undefined || serves.rcd.residual.value > largest.value) largest = serves.rcd.residual;
  }
  if (system === undefined) return OPEN;
  if (largest === undefined && !unknown) return OPEN;
  if (unknown || largest === undefined || !has(ra)) return all(OPEN, allWork);
  return all(atMost(ra.value * largest.value, ra.low * largest.low, times(ra.high, largest.high), 50), allWork);
}

/** The first board that may be fed from the supply; one of which nobody knows whence it is fed tells nothing of the switch. */
const firstBoard = (boards: Installation["boards"]) => {
  const first = boards.find(({ atOrigin }) => word(atOrigin) !== false);
  return first === undefined || first.atOrigin.kind === "fact" ? first : { mainSwitchRated: UNKNOWN_SWITCH };
};
const UNKNOWN_SWITCH = notKnown(TERM.ratedSwitch, []);

function demand(installation: Installation): Flat {
  const { supply, circuits, boards } = installation;
  const use = word(installation.use);
  const groups = new Map<string, Band[]>(DIVERSITY_LOADS.map((load) => [load, []]));
  for (const circuit of circuits) {
    if (word(circuit.shape) === "distribution") continue;
    const load = word(circuit.load) ?? "fixed-equipment";
    const { rated } = circuit.device;
    const one =
      load === "socket-outlets" || load === "mixed"
        ? band(rated)
        : has(circuit.designCurrent)
          ? band(circuit.designCurrent)
          : { v: rated.value, l: 0 * rated.value, h: rated.high };
    groups.get(diversityLoad(load))?.push(one);
  }
  const premises = diversityPremises(use ?? "other");
  const total = { v: 0, h: 0 };
  let counted = 0;
  let certainV = 0;
  let certainL = 0;
  let certainH = 0;
  for (const kind of DIVERSITY_LOADS) {
    const loads = groups.get(kind) ?? [];
    if (loads.length === 0) continue;
    counted += loads.length;
    const allowance = DIVERSITY[kind][premises] ?? { rule: "whole" as const, part: 1 };
    const sum = { v: 0, h: 0 };
    for (const one of loads) {
      sum.v += one.v;
      sum.h += one.h;
      if (kind === "standard-circuits" || kind === "other-sockets") continue;
      certainV = Math.max(certainV, one.v);
      certainL = Math.max(certainL, one.l);
      certainH = Math.max(certainH, one.h);
    }
    if (allowance.rule === "whole") {
      total.v += sum.v * allowance.part;
      total.h += sum.h * allowance.part;
    } else if (allowance.rule === "first-then") {
      total.v += Math.min(sum.v, allowance.first) + Math.max(0, sum.v - allowance.first) * allowance.rest;
      total.h += Math.min(sum.h, allowance.first) + Math.max(0, sum.h - allowance.first) * allowance.rest;
    } else {
      const sorted = [...loads].sort((a, b) => b.v - a.v);
      for (const [i, one] of sorted.entries()) {
        const share = i === 0 ? allowance.largest : i === 1 ? allowance.second : allowance.rest;
        total.v += one.v * share;
        total.h += one.h * share;
      }
    }
  }
  const phases = word(supply.phases);
  const main = has(supply.mainSwitchRated)
    ? supply.mainSwitchRated
    : (firstBoard(boards)?.mainSwitchRated ?? supply.mainSwitchRated);
  const judged = (x: Band): Flat => (Number.isNaN(x.v) ? OPEN : all(within(x, supply.device.rated), within(x, main)));
  if (has(supply.statedDemand)) return judged(band(supply.statedDemand));
  if (use === undefined || installation.boardsListed.kind !== "fact") return OPEN;
  if (boards.some(({ circuitsListed }) => circuitsListed.kind !== "fact")) return OPEN;
  if (phases === undefined || counted === 0 || Number.isNaN(certainV)) return OPEN;
  return judged(
    phases === "1"
      ? { v: Math.max(total.v, certainV), l: certainL, h: Math.max(total.h, certainH) }
      : { v: Math.max(total.v, certainV) / 3, l: certainL / 3, h: Math.max(total.h, certainH) },
  );
}

/** What the distributor answers for: a reading within, whatever the meter may be out by, is expected to be. */
function kept(e: Evidence<Unit>, against: (reading: Band) => Flat): Flat {
  const flat = against(band(e));
  if (flat.verdict !== "too-near" || e.kind !== "measured") return flat;
  const asRead = against({ v: e.value, l: e.value, h: e.value });
  return asRead.verdict === "met" ? asRead : flat;
}

/** The checks of the origin of the supply. */
function flatSupply(installation: Installation): Flat[] {
  const { supply } = installation;
  const system = word(supply.earthing);
  const ze = system === undefined ? Number.NaN : typicalZe(system).value;
  const three = word(supply.phases);
  const u = supply.voltage;
  const zeCheck =
    system === "TT"
      ? NONE
      : has(supply.ze) && !Number.isNaN(ze)
        ? kept(supply.ze, ({ v, l, h }) => atMost(v, l, h, ze))
        : OPEN;
  const polarity =
    three === "1"
      ? byWord(supply.polarity, "correct")
      : three === "3"
        ? all(byWord(supply.polarity, "correct"), byWord(supply.phaseSequence, "correct"))
        : all(byWord(supply.polarity, "correct"), OPEN);
  const voltage =
    word(supply.public) === false
      ? NONE
      : has(u)
        ? all(
            kept(u, ({ v, l, h }) => atLeast(v, l, h, 216.2)),
            kept(u, ({ v, l, h }) => atMost(v, l, h, 253)),
          )
        : OPEN;
  return [zeCheck, polarity, electrode(installation), voltage, supplyBreaking(installation)];
}

/** Breaking capacity of the distributor's device, with the current as the method of its reading makes it. */
function supplyBreaking({ supply }: Installation): Flat {
  const three = word(supply.phases);
  const method = word(supply.faultCurrentMethod);
  const i = supply.faultCurrent;
  const f =
    three === "3"
      ? method === "line-neutral"
        ? [2, 2, 2]
        : method === "line-line"
          ? [2 / Math.sqrt(3), 2 / Math.sqrt(3), 2 / Math.sqrt(3)]
          : method === "three-phase"
            ? [1, 1, 1]
            : [2, 1, 2]
      : [1, 1, 1];
  const own = ownBreaking(supply.device);
  return three === undefined || !has(i) || Number.isNaN(own.v)
    ? OPEN
    : atMost(i.value * (f[0] as number), i.low * (f[1] as number), i.high * (f[2] as number), own.v, own.l, own.h);
}

function flatCircuit(circuit: Circuit, installation: Installation): Flat[] {
  const rcd = residual(circuit);
  return [
    maximumZs(circuit, installation, rcd),
    zsAgreement(circuit, installation),
    r1r2Length(circuit, installation),
    earthConductor(circuit),
    ring(circuit, installation),
    insulation(circuit),
    byWord(circuit.readings.polarity, "correct"),
    additional(circuit, word(installation.use), rcd),
    breaking(circuit, installation),
    cpc(circuit, installation, rcd),
    capacity(circuit, installation),
    drop(circuit, installation),
  ];
}

/** The checks that stand here a second time, by their ids, in the order in which the functions above give them. */
export const FLAT_IDS = {
  supply: [
    "external-impedance",
    "supply-polarity",
    "electrode",
    "supply-voltage",
    "supply-breaking-capacity",
    "earthing-conductor-size",
    "maximum-demand",
  ],
  bond: ["bonding-size", "bonding-continuity"],
  circuit: [
    "maximum-zs",
    "zs-agreement",
    "r1r2-length",
    "cpc-continuity",
    "ring-continuity",
    "insulation-resistance",
    "polarity",
    "additional-protection",
    "breaking-capacity",
    "cpc-adiabatic",
    "cable-capacity",
    "voltage-drop",
  ],
  rcd: ["rcd-time"],
} as const;

/** A verdict of the flat loop under the id of its check. */
export interface FlatFinding {
  readonly check: string;
  readonly flat: Flat;
}

/** Every check of an installation in the order the weighing has them. */
export function flatWeigh(installation: Installation): FlatFinding[] {
  const { supply, boards, circuits } = installation;
  const out: FlatFinding[] = [];
  const add = (ids: readonly string[], ...flats: readonly Flat[]) => {
    if (ids.length !== flats.length) throw new Error(`${flats.length} verdicts under ${ids.length} ids: ${ids.join()}`);
    for (let i = 0; i < flats.length; i++) out.push({ check: ids[i] as string, flat: flats[i] as Flat });
  };
  add(FLAT_IDS.supply, ...flatSupply(installation), earthing(installation), demand(installation));
  for (const bond of supply.bonding) add(FLAT_IDS.bond, bondSize(bond, installation), bondContinuity(bond));
  for (const board of boards) for (const rcd of board.rcds) add(FLAT_IDS.rcd, rcdTime(rcd));
  for (const circuit of circuits) {
    add(FLAT_IDS.circuit, ...flatCircuit(circuit, installation));
    for (const own of circuit.residual.devices) if (!circuit.board.rcds.includes(own)) add(FLAT_IDS.rcd, rcdTime(own));
  }
  return out;
}
