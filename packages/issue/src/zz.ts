import { writeSync, openSync } from "node:fs"; const fd = openSync("/tmp/gg/last-flip.txt","w"); const lastWrite = (s: string) => writeSync(fd, (s + "\n").padEnd(300), 0);
import { issued, testKey } from "../../../outside/issue/small-document.ts";
import { readIssued } from "./pdf/issued.ts";
process.on("unhandledRejection", (e) => { console.log("UNHANDLED at", now, e); });
process.on("uncaughtException", (e) => { console.log("UNCAUGHT at", now, e); });
let now = "";
const key = await testKey();
const whole = await issued(key);
const { file } = whole;
console.log("size", file.length);
let t0 = performance.now();
for (let at = 0; at < file.length; at++) for (let b = 0; b < 8; b++) {
  const c = file.slice(); c[at] = (c[at] ?? 0) ^ (1 << b);
  now = `${at}:${b} ${JSON.stringify(Buffer.from(file.subarray(Math.max(0,at-20), at+10)).toString("latin1"))}`;
  lastWrite(now);
  const t = performance.now(); const m = process.memoryUsage().rss;
  if (process.env.TRACE && at % 100 === 0 && b===0) console.log(at);
  const r = await readIssued(c, "0.1.0").catch((e) => { console.log("THROW", now, e); return undefined; });
  if (r && r.faults.length === 0) console.log("missed", now);
  const d = performance.now() - t; const dm = (process.memoryUsage().rss - m) / 1e6;
  if (d > 1000 || dm > 200) console.log("SLOW", now, d, dm);
}
console.log("done", performance.now() - t0);
