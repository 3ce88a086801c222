// node outside/diagnosis/figures-by-hand-results.ts [circuits of each kind]: what the checks of agreement say of figures
// typed by hand; writes figures-by-hand-results.md beside this file. The same seed gives the same circuits.
import { writeFileSync } from "node:fs";
import { BY_HAND, type ByHand, saidByHand, withDoubt } from "./figures-by-hand.ts";

const SEED = 61557;
const CIRCUITS = Number(process.argv[2] ?? 1000);

/** A reading taken as exact, as all were once. */
const exact = (figure: string | string[]): string | string[] => {
  if (Array.isArray(figure)) return figure.map((one) => exact(one) as string);
  return /^\d+\.\d+ Ω$/.test(figure) ? `${figure} ± 0 Ω` : figure;
};

function row(asked: ByHand): string {
  const percent = (count: number) => `${((100 * count) / CIRCUITS).toFixed(1)} %`;
  const asShown = saidByHand(asked, CIRCUITS, SEED, exact);
  const plain = saidByHand(asked, CIRCUITS, SEED);
  const doubted = saidByHand(asked, CIRCUITS, SEED, withDoubt);
  const shares = [asShown.notMet, plain.notMet, plain.tooNear, doubted.notMet].map(percent);
  return [asked.check, asked.fault, ...shares].join(" | ");
}

const text = `# Figures typed by hand

Written by \`node outside/diagnosis/figures-by-hand-results.ts ${CIRCUITS}\`, seed ${SEED}: ${CIRCUITS} circuits of each kind, read by the meters of
\`site-meter.ts\` (continuity) and \`figures-by-hand.ts\` (loop: a gain within ±4 %, a last digit that wanders by two), whose errors are not those
the checks allow for. Radials of 5 to 40 m with their length known to ±3 % and the metre, rings of 25 to 90 m, bonds of 2 to 25 m.

- *as exact figures*: not met, were every figure taken to be exact (± 0 Ω). So they were taken before.
- *as typed*: not met and too near to call, figures typed as the display showed them.
- *with ±*: not met, every reading typed with ±(5 % + 0.02 Ω), such as "0.71 ± 0.056 Ω".

check | circuit | not met, as exact figures | not met, as typed | too near, as typed | not met, with ±
--- | --- | --- | --- | --- | ---
${BY_HAND.map(row).join("\n")}

Radials state their length as found by drawing. Without a word on the instrument a usual one is taken. A size less in a radial adds a quarter to a
third to R1+R2, which a short length known to a metre explains: it is a ring, or a taped length, that convicts it.
`;
writeFileSync(new URL("figures-by-hand-results.md", import.meta.url), text);
process.stdout.write(text);
