import { issued, testKey } from "../../../outside/issue/small-document.ts";
import { PDF } from "@libpdf/core";
const key = await testKey();
const { file } = await issued(key);
const c = file.slice(); c[147] = (c[147] ?? 0) ^ 8;
console.log(Buffer.from(c.subarray(100,200)).toString("latin1"));
const t = performance.now();
try { const p = await PDF.load(c, {lenient:false}); console.log("loaded", performance.now()-t); console.log(p.getAttachment("issue.json")?.length);} catch (e) { console.log(e); }
console.log(performance.now()-t, process.memoryUsage().rss/1e6);
