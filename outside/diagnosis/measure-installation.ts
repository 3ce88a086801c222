// node outside/diagnosis/measure-installation.ts [seed] [each kind] [sound] > outside/diagnosis/installation-results.md
import { run } from "./run-installation.ts";

const [seed = 2026, each = 60, sound = 400] = process.argv.slice(2).map(Number);
const { kinds, circuits, soundCircuits, alarmsAtCircuits, alarmsElsewhere, rough, soundInstallations, slowest, mean } =
  run(seed, each, sound);

const part = (some: number, all: number) => (all === 0 ? "–" : `${some}/${all} (${Math.round((100 * some) / all)} %)`);
const sum = (of: (one: (typeof kinds)[number]) => number) => kinds.reduce((total, one) => total + of(one), 0);
const rate = (alarms: number, all: number) => `${alarms} in ${all} (${((100 * alarms) / all).toFixed(2)} %)`;

console.log(`# Readings that do not agree: what was measured

\`node outside/diagnosis/measure-installation.ts ${seed} ${each} ${sound}\`: ${circuits} simulated circuits, ${each} installations with each kind of fault and ${2 * soundInstallations} without any. \`outside/diagnosis/installation.test.ts\` holds a smaller run to the same.

Installations are drawn in \`random-installation.ts\` and read by the simulator of \`examples/simulate\`: 5 to 9 circuits on TN-C-S, TN-S or TT, every fourth with a second board, every fourth radial with a length known as a range only. Faults are planted in \`planted.ts\`. Errors of readings are uniform within half of the stated accuracy; in the second run on sound installations (“rough”) they are moved again by as much, so that they reach all of it, and lengths are written up to a twelfth short or long.

Counted is what is shown unasked (odds of 100 to 1 against everything being sound). *Found*: at the right place, about the right readings. *Above*: faults larger than the threshold. *First*: the right explanation leads. *First or tied*: it leads, or the leading one is less than three times as likely and the result says that the two cannot be told apart. Thresholds were set after runs with other seeds; what lies below them shows in part, as *found of all* says.

| fault planted | threshold | found of all | found above | first | first or tied | shown elsewhere |
|---|---|---|---|---|---|---|`);
for (const one of kinds) {
  const { name, threshold, planted, found, detectable, detectableFound, first, firstOrTied, elsewhere } = one;
  console.log(
    `| ${name} | ${threshold} | ${part(found, planted)} | ${part(detectableFound, detectable)} | ${part(first, detectableFound)} | ${part(firstOrTied, detectableFound)} | ${elsewhere} |`,
  );
}
console.log(
  `| **all** | | ${part(
    sum((one) => one.found),
    sum((one) => one.planted),
  )} | ${part(
    sum((one) => one.detectableFound),
    sum((one) => one.detectable),
  )} | ${part(
    sum((one) => one.first),
    sum((one) => one.detectableFound),
  )} | ${part(
    sum((one) => one.firstOrTied),
    sum((one) => one.detectableFound),
  )} | ${sum((one) => one.elsewhere)} |`,
);
console.log(`
| sound installations | shown at circuits | at boards, devices and the origin |
|---|---|---|
| as simulated | ${rate(alarmsAtCircuits, soundCircuits)} | ${rate(alarmsElsewhere, soundInstallations)} installations |
| rough | ${rate(rough.alarmsAtCircuits, rough.circuits)} | ${rate(rough.alarmsElsewhere, soundInstallations)} installations |

One diagnosis took ${mean.toFixed(1)} ms in the mean and ${slowest.toFixed(0)} ms at the most, on two shared cores with other work beside it.

What the readings cannot tell apart, whatever is done with them:

- A joint in the protective conductor, one in the line, a longer cable and a smaller protective conductor all raise R1+R2 and Zs alike. R2 by a long lead, or R1+Rn at the same point, separates them; that is what the result asks for next.
- A parallel path of more than about the protective conductor's own resistance, on a short circuit, is less than the loop reading's uncertainty.
- A length known as a range hides whatever the range allows.
- On TT a Zs near what line to neutral reads may be just that, or a good earth at the far end.
- Without a stated accuracy that of usual instruments is taken, and the result says so.

The shares before any reading was looked at (how often joints, wrong lengths, misread figures are met) are judgements of practice and stand in \`explanations/\`; they settle the order only where the readings do not.`);
