/** Measures on many simulated jobs and writes the table of results.md. The same jobs on every machine. */
import { writeFileSync } from "node:fs";
import { type Measured, measureClean, measureHarder, measurePlanted } from "./measure.ts";

const CLEAN = 2000;
const PLANTED = 1000;
const HARDER = 500;

const row = ({ kind, jobs, shown, first }: Measured) => {
  const top = [...first]
    .sort((a, b) => b[1] - a[1])
    .map(([check, times]) => `${check} ${times}`)
    .join(", ");
  return `| ${kind} | ${jobs} | ${shown} | ${((100 * shown) / jobs).toFixed(2)} % | ${top === "" ? "–" : top} |`;
};
const table = (third: string, rows: readonly Measured[]) =>
  [`| jobs | number | ${third} | part | what came first |`, "|---|---|---|---|---|", ...rows.map(row)].join("\n");

const text = `# Own figures: what is shown on simulated jobs

Written by \`npm run own-figures\`. Jobs come from the simulator of the examples (its noise is described in \`examples/simulate/README.md\`): the three scenarios with ever new seeds and random installations of one board, TN and TT, 6 to 18 circuits, in equal parts. They hold real faults (joints, parallel paths, spurs, low insulation, circuits that could not be tested); those are no doubt about the figures and must show nothing.

## Clean jobs

Shown: anything at all, at the default threshold. Asked: less than 1 %.

${table("shown", measureClean(CLEAN))}

## Jobs with one thing planted

Found: a check meant for it shows something, at the default threshold. Asked: more than 90 % each.

${table("found", measurePlanted(PLANTED))}

## Where the limits are

Nothing is asked of these.

${table("shown or found", measureHarder(HARDER))}

What is planted:

- *Zs added up*, *R1+R2 worked back*: every Zs, or every R1+R2, made of the other readings of its circuit; jobs with fewer than five such circuits are left out.
- *rows swapped*: the readings of two circuits of a board changed over, whole or R1+R2 and ring ends alone. The two are drawn among pairs that readings can tell apart: one a ring and the other not, or expected R1+R2 apart by 0.06 Ω and a factor of 1.5. *any two rows swapped* draws among all pairs: many of them read the same within the doubt of the instrument and of the cable.
- *decimal slipped*: one resistance of 0.1 Ω or more, drawn among all of the circuits' (R1+R2, Zs, r1, rn, r2, points of rings), ten times larger or smaller. Under TT, R1+R2 of a radial has only its cable to stand against it and Zs may be lowered by another earth: these are most of what is not found.
- *schedule shifted*: from a row of the largest board on, all readings, or R1+R2 and ring ends alone, one row up or down.
- *copied*: the readings of all, or the first half of, the circuits of every board are those of the earlier file to the digit.
`;
writeFileSync(new URL("results.md", import.meta.url), text);
