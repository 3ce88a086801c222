// node outside/diagnosis/ring-results.ts [rings of each kind]: measures the ring diagnosis on simulated rings and writes
// ring-results.md beside this file. The same seed gives the same rings.
import { writeFileSync } from "node:fs";
import { cpus, loadavg } from "node:os";
import { quantile, type Score, scoreOf } from "./measure-rings.ts";
import { PLANTED_KINDS } from "./planted-rings.ts";
import { WRITTEN_KINDS } from "./written-rings.ts";
import { type Rank, twoFaultsScore, writtenScore } from "./written-score.ts";

const SEED = 7671;
const RINGS = Number(process.argv[2] ?? 500);
/** Sound rings for each ring with a fault: false alarms are rare and have to be counted. */
const SOUND = 4;
const TIMED = 40;

const WRITTEN = Math.ceil(RINGS / 2);
const TWO = Math.max(50, RINGS);

const percent = (part: number, whole: number) => (whole === 0 ? "–" : `${((100 * part) / whole).toFixed(1)} %`);
const metres = (errors: readonly number[], part: number) =>
  errors.length === 0 ? "–" : `${quantile(errors, part).toFixed(1)} m`;

const scores = PLANTED_KINDS.map((kind) => ({
  kind,
  score: scoreOf(kind, kind.name === "sound" ? RINGS * SOUND : RINGS, SEED),
}));
const row = ({ kind, score }: (typeof scores)[number]) =>
  [
    kind.name,
    String(score.rings),
    score.threshold,
    percent(score.found, score.rings),
    percent(score.first, score.rings),
    percent(score.alone, score.rings),
    kind.placed ? metres(score.errors, 0.5) : "–",
    kind.placed ? metres(score.errors, 0.9) : "–",
    kind.placed ? percent(score.within, score.first) : "–",
  ].join(" | ");

const rankRow = (name: string, { rings, first, named, wrong }: Rank) =>
  [name, String(rings), percent(first, rings), percent(named, rings), percent(wrong, rings)].join(" | ");
const written = WRITTEN_KINDS.map((kind) => rankRow(kind.name, writtenScore(kind, WRITTEN, SEED)));
const two = rankRow("two faults of the ring at once, neither a spur", twoFaultsScore(TWO, SEED));

// Twelve points, after the program has warmed up: what a session sees from its second ring on. Processor time, since
// other work of the machine stretches the time on the clock.
const before = process.cpuUsage();
const timed = PLANTED_KINDS.flatMap((kind) => scoreOf(kind, TIMED, SEED + 1, 12).times).sort((a, b) => a - b);
const used = process.cpuUsage(before);
const each = (used.user + used.system) / 1000 / timed.length;
const sound = scores.find(({ kind }) => kind.name === "sound")?.score as Score;

const text = `# Ring diagnosis on simulated rings

Written by \`node outside/diagnosis/ring-results.ts ${RINGS}\`, seed ${SEED}. Rings of 30 to 100 m with 6 to 14 points at uneven distances, in
2.5/1.5, 2.5/2.5, 4/1.5 and 4/2.5 mm²; one planted fault in each. The order of the points is known, distances are not; the length
is paced to ±15 % in three of ten rings and unknown in the others. Conductors lie 3 % below the greatest resistance, ±1 % each.

Meter: ±(2 % + 2 digits), 0.01 Ω. Common to all readings of a ring: a scale within ±1 % and an offset within ±0.01 Ω, both uniform.
Each reading: an error uniform within ±(1 % + 1 digit), a contact of the probes (magnitude of a normal deviate of 4 mΩ), rounding.

False alarms on sound rings: ${percent(sound.rings - sound.first, sound.rings)} of ${sound.rings}.
Time for 12 points: ${each.toFixed(1)} ms of processor time on average, the making of the ring included; on the clock, with ${loadavg()[0]?.toFixed(1)} processes
waiting for ${cpus().length} processors, median ${quantile(timed, 0.5).toFixed(1)} ms (${cpus()[0]?.model ?? "unknown processor"}, Node ${process.versions.node}).

- *found*: among the explanations that cannot be told apart from the leading one (odds of 1 to 50 or better); *first*: the leading one;
  *alone*: leading with nothing beside it. A fault counts only with its conductor, pair and point right and with nothing else said.
- *place*: distance of the stated place from the true one, of rings with the fault first; for legs from the middle of the true leg, for
  interconnections the worse end. *in band*: the true leg or both true ends lie in what is stated (nine tenths are meant to).
- Smaller faults than the threshold are planted in no ring. They show in part.

kind | rings | threshold | found | first | alone | place, median | place, 90 % | in band
--- | --- | --- | --- | --- | --- | --- | --- | ---
${scores.map(row).join("\n")}

What is wrong with the schedule or the test of a sound ring of two sizes, its length known to 3 %; and two faults at once, drawn from open
conductors, joints and poor connections from 0.2 Ω, conductors swapped at a point, a bridge, leads, and ends joined wrongly, however little
one leaves of the other to be seen. *named*: first, or among what cannot be told apart from it. *wrong*: another explanation leads that accounts
for the readings, and the right one is not named.

kind | rings | first | named | wrong
--- | --- | --- | --- | ---
${[...written, two].join("\n")}

What these readings cannot tell, whatever is made of them:

- where an open neutral or a joint in the neutral lies: it is read against the line only, which is of the same size, so that every way
  round is as long as any other. The next reading the diagnosis names (ends joined on one side) tells it.
- an interconnection about one single point from a spur at that point: both raise one point's readings alone.
- where line and cpc are of one size, a poor line connection at a point from a spur at that point.
- a bridge or a joint beside an open conductor, where the ways that are left do not pass it.
- two rings crossed at the board from a ring cut through; conductors crossed in a leg from both broken there; conductors swapped at a
  point from one that is off its terminal. Both are named, with the reading that separates them.
`;
writeFileSync(new URL("ring-results.md", import.meta.url), text);
process.stdout.write(text);
