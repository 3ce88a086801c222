// node outside/diagnosis/ring-alarms-results.ts [rings of each kind]: counts which simulated rings are spoken of and which raise an
// alarm, and writes ring-alarms-results.md beside this file. The same seed gives the same rings.
import { writeFileSync } from "node:fs";
import { Chance } from "../../examples/simulate/chance.ts";
import { RING_LISTED } from "../../packages/readings/src/diagnosis/installation/thresholds.ts";
import { diagnoseRingReadings } from "../../packages/readings/src/diagnosis/ring/index.ts";
import { alarmOf } from "../../packages/readings/src/diagnosis/ring/look.ts";
import { isPlainlySound } from "../../packages/readings/src/diagnosis/ring/sound-ring.ts";
import { PLANTED_KINDS, type PlantedKind, plantedRing } from "./planted-rings.ts";
import { inputOf } from "./simulated-ring.ts";

const SEED = 1707;
const RINGS = Number(process.argv[2] ?? 100);
const SOUND = 10;

function rowOf(kind: PlantedKind): string {
  const chance = new Chance(SEED);
  const rings = kind.name === "sound" ? RINGS * SOUND : RINGS;
  let [passed, listed, clear, lost] = [0, 0, 0, 0];
  for (let i = 0; i < rings; i++) {
    const input = inputOf(plantedRing(kind, chance), chance);
    const diagnosis = diagnoseRingReadings(input);
    const alarm = alarmOf(diagnosis);
    const isListed = alarm.odds >= RING_LISTED && (diagnosis.explanations[0]?.faults.length ?? 0) > 0;
    const isPassed = isPlainlySound(input);
    if (isPassed) passed++;
    if (isListed) listed++;
    if (isListed && isPassed) lost++;
    if (alarm.clear) clear++;
  }
  const percent = (part: number) => `${((100 * part) / rings).toFixed(1)} %`;
  return [kind.name, String(rings), percent(clear), percent(listed), percent(passed), String(lost)].join(" | ");
}

const text = `# Which simulated rings raise an alarm

Written by \`node outside/diagnosis/ring-alarms-results.ts ${RINGS}\`, seed ${SEED}; rings, meter and thresholds of the planted faults are those of
[ring-results.md](ring-results.md).

- *alarm*: shown by \`weigh\` unasked: a fault leads, at 100 to 1 against a sound ring and 3 to 1 against one that is sound but for spurs.
- *listed*: shown with \`--all\`: 30 to 1 against a sound ring. Spurs are permitted, so that they are listed and raise no alarm.
- *passed over*: plainly sound by one fit, so that nothing else is tried; *lost*: passed over and yet listed by the full diagnosis.

kind | rings | alarm | listed | passed over | lost
--- | --- | --- | --- | --- | ---
${PLANTED_KINDS.map(rowOf).join("\n")}

An interconnection about one single point reads as a spur at that point and is listed as one.
`;
writeFileSync(new URL("ring-alarms-results.md", import.meta.url), text);
process.stdout.write(text);
