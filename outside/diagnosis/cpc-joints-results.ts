// node outside/diagnosis/cpc-joints-results.ts [rings of each kind]: what is said of loose joints in the protective
// conductor of rings, by a meter of other errors than those the diagnosis allows for; writes cpc-joints-results.md beside
// this file. The same seed gives the same rings.
import { writeFileSync } from "node:fs";
import { type Asked, saidOf } from "./cpc-joints.ts";

const SEED = 3036;
const RINGS = Number(process.argv[2] ?? 50);
const ACCURACY = "±(2 % + 2 digits)";
const SIZES = { line: 2.5, cpc: 1.5 };
const SMALLER = { line: 2.5, cpc: 1 };

const joints = [
  [0.05, 0.1],
  [0.1, 0.15],
  [0.15, 0.2],
  [0.2, 0.3],
  [0.3, 0.36],
  [0.36, 0.5],
  [0.5, 0.7],
  [0.7, 1],
] as const;

interface Row {
  readonly name: string;
  readonly asked: Asked;
  readonly times?: number;
}

const rows: readonly Row[] = [
  ...joints.map(
    (joint): Row => ({
      name: `joint of ${joint[0].toFixed(2)} to ${joint[1].toFixed(2)} Ω, ring of 20 to 100 m`,
      asked: { metres: [20, 100], sizes: SIZES, joint, accuracy: ACCURACY },
    }),
  ),
  {
    name: "joint of 0.30 to 0.36 Ω, ring of 60 m",
    asked: { metres: [60, 60], sizes: SIZES, joint: [0.3, 0.36], accuracy: ACCURACY },
    times: 2,
  },
  {
    name: "the same, accuracy of the meter not stated",
    asked: { metres: [60, 60], sizes: SIZES, joint: [0.3, 0.36], accuracy: undefined },
  },
  {
    name: "1 mm² written down as 1.5 mm², ring of 20 to 100 m",
    asked: { metres: [20, 100], sizes: SMALLER, written: SIZES, joint: undefined, accuracy: ACCURACY },
  },
  {
    name: "sound, ring of 20 to 100 m",
    asked: { metres: [20, 100], sizes: SIZES, joint: undefined, accuracy: ACCURACY },
    times: 4,
  },
];

function line({ name, asked, times = 1 }: Row): string {
  const rings = RINGS * times;
  const { sound, silent, joint, named, size, alarm } = saidOf(asked, rings, SEED);
  const percent = (part: number) => `${((100 * part) / rings).toFixed(1)} %`;
  return [name, rings, ...[sound, silent, joint, named, size, alarm].map(percent)].join(" | ");
}

const text = `# Loose joints in the protective conductor of a ring

Written by \`node outside/diagnosis/cpc-joints-results.ts ${RINGS}\`, seed ${SEED}. Rings of 2.5/1.5 mm² with 4 to 12 points at uneven distances, the
joint in any leg. The errors are not those of the diagnosis (\`site-meter.ts\`): conductors anywhere within 6 % below the greatest
resistance, 6 to 24 °C and no temperature written down, a gain for each meter within ±1.5 %, leads nulled to −5 to +10 mΩ, two contacts of 3 mΩ
on average, a last digit that wanders by one either way, a length paced to ±8 % in half of the rings. Stated is ±(2 % + 2 digits).

- *sound*: a sound ring leads; *silent*: a weighing says nothing of the ring.
- *joint first*: a joint in the protective conductor leads; *named*: it leads or cannot be told apart from what does.
- *other size*: a protective conductor of another size than written down leads, or cannot be told apart.
- *alarm*: shown by \`weigh\` unasked.

ring | rings | sound | silent | joint first | named | other size | alarm
--- | --- | --- | --- | --- | --- | --- | ---
${rows.map(line).join("\n")}

A joint of 0.36 Ω in 60 m makes r2 what 1 mm² would make it. With the distances of the points unknown, their readings tell the two apart in part
only: then both are named, with the reading that does (ends joined on one side).

Before the size written down was kept in the fit, of the rings of 60 m with 0.30 to 0.36 Ω more than half were called sound.
`;
writeFileSync(new URL("cpc-joints-results.md", import.meta.url), text);
process.stdout.write(text);
