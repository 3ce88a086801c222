import { run } from "./run-installation.ts";

const t = performance.now();
const r = run(Number(process.argv[2] ?? 1), Number(process.argv[3] ?? 20), Number(process.argv[4] ?? 100));
for (const k of r.kinds)
  console.log(
    k.name.slice(0, 60).padEnd(62),
    `planted ${k.planted} found ${k.found} | detectable ${k.detectable} found ${k.detectableFound} first ${k.first} tied ${k.firstOrTied} | elsewhere ${k.elsewhere}`,
  );
const { kinds, ...rest } = r;
console.log(rest, (performance.now() - t).toFixed(0));
