// Written by `npm run acceptor` from the schema of the inspection file; a test keeps it true. Not changed by hand.
import { isAccuracy, writtenFault } from "./rules.ts";

type Members = Readonly<Record<string, unknown>>;

const p0 = new Map([["format",0],["version",1],["id",2],["invented",3],["title",4],["edition",5],["inspectedOn",6],["brief",7],["visits",8],["people",9],["instruments",10],["decisionRule",11],["conditions",12],["precautions",13],["earthingOff",14],["extent",15],["limitations",16],["supply",17],["boards",18],["things",19],["inspected",20],["observations",21],["topics",22],["standingViews",23],["photographs",24],["ownFigures",25],["conclusion",26],["signatures",27]]);
function a1(v: unknown): number {
  return v === "good-grounds-inspection" ? 0 : -1;
}
function a2(v: unknown): number {
  return v === 3 ? 0 : -1;
}
const r3 = /^[A-Za-z0-9][A-Za-z0-9._-]{0,39}$/;
function a4(v: unknown): number {
  return typeof v === "string" && r3.test(v) ? 0 : -1;
}
function a5(v: unknown): number {
  return v === true ? 0 : -1;
}
const r6 = /^[^\p{Cc}\p{Cs}]*$/u;
function a7(v: unknown): number {
  return typeof v === "string" && v.length >= 1 && v.length <= 300 && r6.test(v) ? 0 : -1;
}
const w8 = new Set<unknown>(["2018+A2+A3","2018+A4"]);
function a9(v: unknown): number {
  return w8.has(v) ? 0 : -1;
}
const r10 = /^(?:(?:\d\d[2468][048]|\d\d[13579][26]|\d\d0[48]|[02468][048]00|[13579][26]00)-02-29|\d{4}-(?:(?:0[13578]|1[02])-(?:0[1-9]|[12]\d|3[01])|(?:0[469]|11)-(?:0[1-9]|[12]\d|30)|(?:02)-(?:0[1-9]|1\d|2[0-8])))$/;
function a11(v: unknown): number {
  return typeof v === "string" && r10.test(v) ? 0 : -1;
}
const p12 = new Map([["client",0],["premises",1],["use",2],["tenure",3],["nation",4],["purpose",5],["ageOfInstallation",6],["alterations",7],["records",8],["lastInspection",9]]);
const p13 = new Map([["name",0],["address",1]]);
function a14(v: unknown): number {
  if (!Array.isArray(v) || v.length > 6) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a7(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a15(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p13.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a7(o[name]); break;
      case 1: n = a14(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p16 = new Map([["address",0],["uprn",1],["description",2],["occupier",3]]);
function a17(v: unknown): number {
  if (!Array.isArray(v) || v.length < 1 || v.length > 6) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a7(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const r18 = /^\d{1,12}$/;
function a19(v: unknown): number {
  return typeof v === "string" && r18.test(v) ? 0 : -1;
}
function a20(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p16.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a17(o[name]); break;
      case 1: n = a19(o[name]); break;
      case 2: n = a7(o[name]); break;
      case 3: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const w21 = new Set<unknown>(["dwelling","house-in-multiple-occupation","shop","office","workshop","agricultural","industrial","hotel","public","other"]);
function a22(v: unknown): number {
  return w21.has(v) ? 0 : -1;
}
const p23 = new Map([["notKnown",0],["reason",1]]);
const w24 = new Set<unknown>(["limited","not-verified","not-applicable"]);
function a25(v: unknown): number {
  return w24.has(v) ? 0 : -1;
}
function a26(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p23.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a25(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a27(v: unknown): number {
  let n = -1;
  n = a22(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w28 = new Set<unknown>(["owner-occupied","private-rented","social-rented","commercial-lease","other"]);
function a29(v: unknown): number {
  return w28.has(v) ? 0 : -1;
}
function a30(v: unknown): number {
  let n = -1;
  n = a29(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w31 = new Set<unknown>(["england","wales","scotland","northern-ireland"]);
function a32(v: unknown): number {
  return w31.has(v) ? 0 : -1;
}
function a33(v: unknown): number {
  let n = -1;
  n = a32(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const r34 = /^(?:[^\p{Cc}\p{Cs}]|[\n\t])*$/u;
function a35(v: unknown): number {
  return typeof v === "string" && v.length >= 1 && v.length <= 4000 && r34.test(v) ? 0 : -1;
}
const p36 = new Map([["kind",0],["date",1],["reference",2]]);
function a37(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p36.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a7(o[name]); break;
      case 1: n = a11(o[name]); break;
      case 2: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a38(v: unknown): number {
  if (!Array.isArray(v) || v.length > 50) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a37(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a39(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 7, 0];
  for (const name in o) {
    const place = p12.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a15(o[name]); break;
      case 1: needed--; n = a20(o[name]); break;
      case 2: needed--; n = a27(o[name]); break;
      case 3: needed--; n = a30(o[name]); break;
      case 4: needed--; n = a33(o[name]); break;
      case 5: needed--; n = a7(o[name]); break;
      case 6: n = a7(o[name]); break;
      case 7: n = a35(o[name]); break;
      case 8: needed--; n = a38(o[name]); break;
      case 9: n = a11(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p40 = new Map([["date",0],["arrived",1],["left",2],["note",3]]);
const r41 = /^(?:(?:\d\d[2468][048]|\d\d[13579][26]|\d\d0[48]|[02468][048]00|[13579][26]00)-02-29|\d{4}-(?:(?:0[13578]|1[02])-(?:0[1-9]|[12]\d|3[01])|(?:0[469]|11)-(?:0[1-9]|[12]\d|30)|(?:02)-(?:0[1-9]|1\d|2[0-8])))T(?:(?:[01]\d|2[0-3]):[0-5]\d:[0-5]\d(?:\.\d+)?(?:Z|([+-](?:[01]\d|2[0-3]):[0-5]\d)))$/;
function a42(v: unknown): number {
  return typeof v === "string" && r41.test(v) ? 0 : -1;
}
function a43(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p40.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a11(o[name]); break;
      case 1: n = a42(o[name]); break;
      case 2: n = a42(o[name]); break;
      case 3: n = a35(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a44(v: unknown): number {
  if (!Array.isArray(v) || v.length < 1 || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a43(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p45 = new Map([["id",0],["name",1],["position",2],["firm",3],["address",4],["registration",5]]);
function a46(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p45.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
      case 2: n = a7(o[name]); break;
      case 3: n = a7(o[name]); break;
      case 4: n = a14(o[name]); break;
      case 5: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a47(v: unknown): number {
  if (!Array.isArray(v) || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a46(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p48 = new Map([["id",0],["kind",1],["serial",2],["checked",3],["checkReference",4],["accuracy",5],["leadsNulled",6]]);
const w49 = new Set<unknown>(["continuity","insulation","loop","fault-current","rcd-time","electrode","voltage","temperature"]);
function a50(v: unknown): number {
  return w49.has(v) ? 0 : -1;
}
function a51(v: unknown): number {
  return typeof v === "string" && isAccuracy(v) ? 0 : -1;
}
function a52(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  let all = 0;
  for (const name in v) {
    if (a50(name) < 0) return -1;
    const n = a51((v as Members)[name]);
    if (n < 0) return -1;
    all += n + 1;
  }
  return all;
}
const p53 = new Map([["at",0],["showed",1]]);
function a54(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "ohm", true) === undefined ? 0 : -1;
}
function a55(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p53.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a42(o[name]); break;
      case 1: n = a54(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a56(v: unknown): number {
  if (!Array.isArray(v) || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a55(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a57(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p48.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
      case 2: needed--; n = a7(o[name]); break;
      case 3: n = a11(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a52(o[name]); break;
      case 6: n = a56(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a58(v: unknown): number {
  if (!Array.isArray(v) || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a57(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const w59 = new Set<unknown>(["simple","guarded"]);
function a60(v: unknown): number {
  return w59.has(v) ? 0 : -1;
}
const p61 = new Map([["conductorTemperature",0],["note",1]]);
const p62 = new Map([["shown",0],["at",1],["by",2],["with",3],["method",4],["note",5]]);
function a63(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "celsius", false) === undefined ? 0 : -1;
}
function a64(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p62.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a63(o[name]); break;
      case 1: n = a42(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p65 = new Map([["notTaken",0],["reason",1]]);
function a66(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p65.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a25(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a67(v: unknown): number {
  let n = -1;
  n = a64(v);
  if (n >= 0) return n;
  n = a66(v);
  if (n >= 0) return n;
  return -1;
}
function a68(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p61.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a67(o[name]); break;
      case 1: n = a35(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p69 = new Map([["step",0],["outcome",1],["at",2],["by",3]]);
const w70 = new Set<unknown>(["start.competent","start.hazards","start.life-support","start.told","covers.isolated","covers.locked","covers.second-supplies","covers.tester-before","covers.dead","covers.tester-after","insulation.people-away","insulation.electronics","insulation.surge","live.justified","live.leads","live.footing","live.others-away","leave.earthing","leave.bonding","leave.links","leave.covers","leave.rcd-buttons","leave.alarms","leave.freezers","leave.boilers","leave.locks","leave.told"]);
function a71(v: unknown): number {
  return w70.has(v) ? 0 : -1;
}
const w72 = new Set<unknown>(["done","not-applicable"]);
function a73(v: unknown): number {
  return w72.has(v) ? 0 : -1;
}
function a74(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p69.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a71(o[name]); break;
      case 1: needed--; n = a73(o[name]); break;
      case 2: needed--; n = a42(o[name]); break;
      case 3: n = a4(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a75(v: unknown): number {
  if (!Array.isArray(v) || v.length > 200) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a74(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p76 = new Map([["off",0],["on",1]]);
const p77 = new Map([["at",0],["by",1]]);
function a78(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p77.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a42(o[name]); break;
      case 1: n = a4(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a79(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p76.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a78(o[name]); break;
      case 1: n = a78(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a80(v: unknown): number {
  if (!Array.isArray(v) || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a79(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p81 = new Map([["covered",0],["notCovered",1],["agreedWith",2],["agreedOn",3],["sampling",4]]);
const p82 = new Map([["what",0],["population",1],["inspected",2],["defective",3],["how",4]]);
function a83(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 0 && (v as number) <= 100000 ? 0 : -1;
}
function a84(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 4, 0];
  for (const name in o) {
    const place = p82.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a7(o[name]); break;
      case 1: needed--; n = a83(o[name]); break;
      case 2: needed--; n = a83(o[name]); break;
      case 3: needed--; n = a83(o[name]); break;
      case 4: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a85(v: unknown): number {
  if (!Array.isArray(v) || v.length > 100) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a84(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a86(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p81.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a35(o[name]); break;
      case 1: n = a35(o[name]); break;
      case 2: n = a7(o[name]); break;
      case 3: n = a11(o[name]); break;
      case 4: needed--; n = a85(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p87 = new Map([["id",0],["kind",1],["what",2],["why",3],["agreedWith",4]]);
const w88 = new Set<unknown>(["agreed","operational"]);
function a89(v: unknown): number {
  return w88.has(v) ? 0 : -1;
}
function a90(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 4, 0];
  for (const name in o) {
    const place = p87.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a89(o[name]); break;
      case 2: needed--; n = a7(o[name]); break;
      case 3: needed--; n = a35(o[name]); break;
      case 4: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a91(v: unknown): number {
  if (!Array.isArray(v) || v.length > 200) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a90(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p92 = new Map([["earthing",0],["phases",1],["nominalVoltage",2],["public",3],["device",4],["tails",5],["neutral",6],["earthingConductor",7],["bonding",8],["electrode",9],["mainSwitch",10],["otherSources",11],["maximumDemand",12],["readings",13],["sharedMisfits",14],["note",15]]);
const w93 = new Set<unknown>(["TN-S","TN-C-S","TT","IT"]);
function a94(v: unknown): number {
  return w93.has(v) ? 0 : -1;
}
function a95(v: unknown): number {
  let n = -1;
  n = a94(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a96(v: unknown): number {
  return v === 1 ? 0 : -1;
}
function a97(v: unknown): number {
  let n = -1;
  n = a96(v);
  if (n >= 0) return n;
  n = a2(v);
  if (n >= 0) return n;
  return -1;
}
function a98(v: unknown): number {
  let n = -1;
  n = a97(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a99(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "volt", false) === undefined ? 0 : -1;
}
const p100 = new Map([["from",0],["to",1]]);
function a101(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "volt", true) === undefined ? 0 : -1;
}
function a102(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p100.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a101(o[name]); break;
      case 1: needed--; n = a101(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a103(v: unknown): number {
  let n = -1;
  n = a99(v);
  if (n >= 0) return n;
  n = a102(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a104(v: unknown): number {
  return typeof v === "boolean" ? 0 : -1;
}
function a105(v: unknown): number {
  let n = -1;
  n = a104(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const p106 = new Map([["standard",0],["type",1],["rated",2],["breakingCapacity",3],["energyClass",4],["letThrough",5],["note",6]]);
const w107 = new Set<unknown>(["BS EN 60898","BS EN 61009","BS EN 60947-2","BS 3871","BS 3036","BS 1361","BS 1362","BS 88-2","BS 88-3","BS 88-2.2","BS 88-6"]);
function a108(v: unknown): number {
  return w107.has(v) ? 0 : -1;
}
function a109(v: unknown): number {
  let n = -1;
  n = a108(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w110 = new Set<unknown>(["1","2","3","4","B","C","D","gG","gM","I","II"]);
function a111(v: unknown): number {
  return w110.has(v) ? 0 : -1;
}
function a112(v: unknown): number {
  let n = -1;
  n = a111(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a113(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "ampere", false) === undefined ? 0 : -1;
}
function a114(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "ampere", true) === undefined ? 0 : -1;
}
function a115(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p100.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a114(o[name]); break;
      case 1: needed--; n = a114(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a116(v: unknown): number {
  let n = -1;
  n = a113(v);
  if (n >= 0) return n;
  n = a115(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a117(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 1 && (v as number) <= 3 ? 0 : -1;
}
const p118 = new Map([["value",0],["from",1]]);
function a119(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "ampere-squared-second", false) === undefined ? 0 : -1;
}
function a120(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "ampere-squared-second", true) === undefined ? 0 : -1;
}
function a121(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p100.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a120(o[name]); break;
      case 1: needed--; n = a120(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a122(v: unknown): number {
  let n = -1;
  n = a119(v);
  if (n >= 0) return n;
  n = a121(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a123(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p118.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a122(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a124(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p106.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a109(o[name]); break;
      case 1: n = a112(o[name]); break;
      case 2: n = a116(o[name]); break;
      case 3: n = a116(o[name]); break;
      case 4: n = a117(o[name]); break;
      case 5: n = a123(o[name]); break;
      case 6: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a125(v: unknown): number {
  let n = -1;
  n = a124(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const p126 = new Map([["size",0],["material",1],["length",2],["lengthFound",3]]);
function a127(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "square-millimetre", false) === undefined ? 0 : -1;
}
function a128(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "square-millimetre", true) === undefined ? 0 : -1;
}
function a129(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p100.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a128(o[name]); break;
      case 1: needed--; n = a128(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a130(v: unknown): number {
  let n = -1;
  n = a127(v);
  if (n >= 0) return n;
  n = a129(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w131 = new Set<unknown>(["copper","aluminium"]);
function a132(v: unknown): number {
  return w131.has(v) ? 0 : -1;
}
function a133(v: unknown): number {
  let n = -1;
  n = a132(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a134(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "metre", false) === undefined ? 0 : -1;
}
function a135(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "metre", true) === undefined ? 0 : -1;
}
function a136(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p100.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a135(o[name]); break;
      case 1: needed--; n = a135(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a137(v: unknown): number {
  let n = -1;
  n = a134(v);
  if (n >= 0) return n;
  n = a136(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w138 = new Set<unknown>(["taped","by-drawing","estimated","unknown"]);
function a139(v: unknown): number {
  return w138.has(v) ? 0 : -1;
}
function a140(v: unknown): number {
  let n = -1;
  n = a139(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a141(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p126.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a130(o[name]); break;
      case 1: n = a133(o[name]); break;
      case 2: n = a137(o[name]); break;
      case 3: n = a140(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p142 = new Map([["size",0],["material",1],["length",2],["lengthFound",3],["arrangement",4],["sheathed",5],["mechanicallyProtected",6]]);
const w143 = new Set<unknown>(["separate","in-cable","buried"]);
function a144(v: unknown): number {
  return w143.has(v) ? 0 : -1;
}
function a145(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p142.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a130(o[name]); break;
      case 1: n = a133(o[name]); break;
      case 2: n = a137(o[name]); break;
      case 3: n = a140(o[name]); break;
      case 4: n = a144(o[name]); break;
      case 5: n = a105(o[name]); break;
      case 6: n = a105(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p146 = new Map([["id",0],["to",1],["description",2],["service",3],["extraneous",4],["partResistance",5],["connected",6],["condition",7],["heatDamage",8],["size",9],["material",10],["length",11],["lengthFound",12],["resistance",13]]);
const w147 = new Set<unknown>(["water","gas","oil","structural-steel","lightning-protection","heating","other"]);
function a148(v: unknown): number {
  return w147.has(v) ? 0 : -1;
}
const w149 = new Set<unknown>(["present","no-such-service"]);
function a150(v: unknown): number {
  return w149.has(v) ? 0 : -1;
}
function a151(v: unknown): number {
  let n = -1;
  n = a150(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a152(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "ohm", false) === undefined ? 0 : -1;
}
function a153(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p62.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a152(o[name]); break;
      case 1: n = a42(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a154(v: unknown): number {
  let n = -1;
  n = a153(v);
  if (n >= 0) return n;
  n = a66(v);
  if (n >= 0) return n;
  return -1;
}
const w155 = new Set<unknown>(["sound","corroded","loose","browned","broken"]);
function a156(v: unknown): number {
  return w155.has(v) ? 0 : -1;
}
function a157(v: unknown): number {
  let n = -1;
  n = a156(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a158(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p146.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a148(o[name]); break;
      case 2: n = a7(o[name]); break;
      case 3: n = a151(o[name]); break;
      case 4: n = a105(o[name]); break;
      case 5: n = a154(o[name]); break;
      case 6: n = a105(o[name]); break;
      case 7: n = a157(o[name]); break;
      case 8: n = a105(o[name]); break;
      case 9: n = a130(o[name]); break;
      case 10: n = a133(o[name]); break;
      case 11: n = a137(o[name]); break;
      case 12: n = a140(o[name]); break;
      case 13: n = a154(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a159(v: unknown): number {
  if (!Array.isArray(v) || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a158(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p160 = new Map([["kind",0],["location",1]]);
function a161(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p160.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a7(o[name]); break;
      case 1: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p162 = new Map([["fitted",0],["standard",1],["poles",2],["rated",3],["voltage",4]]);
function a163(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 1 && (v as number) <= 4 ? 0 : -1;
}
function a164(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p162.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a105(o[name]); break;
      case 1: n = a7(o[name]); break;
      case 2: n = a163(o[name]); break;
      case 3: n = a116(o[name]); break;
      case 4: n = a103(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p165 = new Map([["id",0],["kind",1],["rated",2],["notice",3],["note",4]]);
const w166 = new Set<unknown>(["photovoltaic","battery","generator","wind","vehicle","ups","other"]);
function a167(v: unknown): number {
  return w166.has(v) ? 0 : -1;
}
function a168(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p165.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a167(o[name]); break;
      case 2: n = a116(o[name]); break;
      case 3: n = a105(o[name]); break;
      case 4: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a169(v: unknown): number {
  if (!Array.isArray(v) || v.length > 20) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a168(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p170 = new Map([["value",0],["method",1]]);
function a171(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p170.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a116(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p172 = new Map([["ze",0],["ra",1],["lineNeutralLoop",2],["faultCurrent",3],["faultCurrentMethod",4],["earthFaultCurrent",5],["voltage",6],["neutralEarth",7],["polarity",8],["phaseSequence",9]]);
function a173(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p62.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a113(o[name]); break;
      case 1: n = a42(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a174(v: unknown): number {
  let n = -1;
  n = a173(v);
  if (n >= 0) return n;
  n = a66(v);
  if (n >= 0) return n;
  return -1;
}
const w175 = new Set<unknown>(["line-neutral","line-line","three-phase"]);
function a176(v: unknown): number {
  return w175.has(v) ? 0 : -1;
}
function a177(v: unknown): number {
  let n = -1;
  n = a176(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a178(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p62.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a99(o[name]); break;
      case 1: n = a42(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a179(v: unknown): number {
  let n = -1;
  n = a178(v);
  if (n >= 0) return n;
  n = a66(v);
  if (n >= 0) return n;
  return -1;
}
const w180 = new Set<unknown>(["correct","incorrect"]);
function a181(v: unknown): number {
  return w180.has(v) ? 0 : -1;
}
function a182(v: unknown): number {
  let n = -1;
  n = a181(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a183(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p172.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a154(o[name]); break;
      case 1: n = a154(o[name]); break;
      case 2: n = a154(o[name]); break;
      case 3: n = a174(o[name]); break;
      case 4: n = a177(o[name]); break;
      case 5: n = a174(o[name]); break;
      case 6: n = a179(o[name]); break;
      case 7: n = a179(o[name]); break;
      case 8: n = a182(o[name]); break;
      case 9: n = a182(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p184 = new Map([["kind",0],["note",1]]);
const w185 = new Set<unknown>(["circuit-readings","board-loop","leads-not-nulled","supply-loop","fault-current","earthing-system","insulation","between-neutrals","residual-device","polarity","ring"]);
function a186(v: unknown): number {
  return w185.has(v) ? 0 : -1;
}
function a187(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p184.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a186(o[name]); break;
      case 1: n = a35(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a188(v: unknown): number {
  if (!Array.isArray(v) || v.length > 20) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a187(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a189(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p92.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a95(o[name]); break;
      case 1: n = a98(o[name]); break;
      case 2: n = a103(o[name]); break;
      case 3: n = a105(o[name]); break;
      case 4: n = a125(o[name]); break;
      case 5: n = a141(o[name]); break;
      case 6: n = a141(o[name]); break;
      case 7: n = a145(o[name]); break;
      case 8: needed--; n = a159(o[name]); break;
      case 9: n = a161(o[name]); break;
      case 10: n = a164(o[name]); break;
      case 11: n = a169(o[name]); break;
      case 12: n = a171(o[name]); break;
      case 13: n = a183(o[name]); break;
      case 14: n = a188(o[name]); break;
      case 15: n = a35(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p190 = new Map([["id",0],["name",1],["location",2],["fedFrom",3],["phases",4],["enclosure",5],["mainSwitch",6],["rcds",7],["conditionalRating",8],["readings",9],["circuits",10],["sharedMisfits",11],["note",12]]);
function a191(v: unknown): number {
  return v === "supply" ? 0 : -1;
}
const p192 = new Map([["board",0],["circuit",1]]);
function a193(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p192.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a4(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a194(v: unknown): number {
  let n = -1;
  n = a191(v);
  if (n >= 0) return n;
  n = a193(v);
  if (n >= 0) return n;
  return -1;
}
const w195 = new Set<unknown>(["metal","non-combustible","combustible","wood-backed"]);
function a196(v: unknown): number {
  return w195.has(v) ? 0 : -1;
}
function a197(v: unknown): number {
  let n = -1;
  n = a196(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const p198 = new Map([["id",0],["standard",1],["type",2],["delay",3],["rated",4],["residual",5],["readings",6],["direction",7],["backfed",8],["testability",9],["whyNotTested",10],["note",11],["serves",12]]);
const w199 = new Set<unknown>(["BS EN 61008","BS EN 61009","BS EN 62423","BS 4293","BS 7288","BS EN 60947-2"]);
function a200(v: unknown): number {
  return w199.has(v) ? 0 : -1;
}
function a201(v: unknown): number {
  let n = -1;
  n = a200(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w202 = new Set<unknown>(["AC","A","F","B"]);
function a203(v: unknown): number {
  return w202.has(v) ? 0 : -1;
}
function a204(v: unknown): number {
  let n = -1;
  n = a203(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w205 = new Set<unknown>(["general","S"]);
function a206(v: unknown): number {
  return w205.has(v) ? 0 : -1;
}
function a207(v: unknown): number {
  let n = -1;
  n = a206(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const p208 = new Map([["atRated",0],["atFive",1],["button",2]]);
function a209(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "second", false) === undefined ? 0 : -1;
}
function a210(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p62.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a209(o[name]); break;
      case 1: n = a42(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a211(v: unknown): number {
  let n = -1;
  n = a210(v);
  if (n >= 0) return n;
  n = a66(v);
  if (n >= 0) return n;
  return -1;
}
const w212 = new Set<unknown>(["trips","does-not-trip"]);
function a213(v: unknown): number {
  return w212.has(v) ? 0 : -1;
}
function a214(v: unknown): number {
  let n = -1;
  n = a213(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a215(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p208.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a211(o[name]); break;
      case 1: n = a211(o[name]); break;
      case 2: n = a214(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const w216 = new Set<unknown>(["either-way","one-way"]);
function a217(v: unknown): number {
  return w216.has(v) ? 0 : -1;
}
function a218(v: unknown): number {
  let n = -1;
  n = a217(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w219 = new Set<unknown>(["can-be-tested","cannot-be-tested"]);
function a220(v: unknown): number {
  return w219.has(v) ? 0 : -1;
}
function a221(v: unknown): number {
  let n = -1;
  n = a220(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w222 = new Set<unknown>(["whole-board","listed"]);
function a223(v: unknown): number {
  return w222.has(v) ? 0 : -1;
}
function a224(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p198.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a201(o[name]); break;
      case 2: n = a204(o[name]); break;
      case 3: n = a207(o[name]); break;
      case 4: n = a116(o[name]); break;
      case 5: n = a116(o[name]); break;
      case 6: n = a215(o[name]); break;
      case 7: n = a218(o[name]); break;
      case 8: n = a105(o[name]); break;
      case 9: n = a221(o[name]); break;
      case 10: n = a7(o[name]); break;
      case 11: n = a7(o[name]); break;
      case 12: needed--; n = a223(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a225(v: unknown): number {
  if (!Array.isArray(v) || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a224(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p226 = new Map([["value",0],["upstream",1],["devicesOfOneMake",2]]);
const p227 = new Map([["standard",0],["rated",1]]);
function a228(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p227.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a108(o[name]); break;
      case 1: needed--; n = a116(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a229(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p226.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a116(o[name]); break;
      case 1: needed--; n = a228(o[name]); break;
      case 2: n = a105(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p230 = new Map([["zdb",0],["faultCurrent",1],["faultCurrentMethod",2],["polarity",3],["phaseSequence",4],["insulationLiveLive",5],["insulationLiveEarth",6]]);
function a231(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p230.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a154(o[name]); break;
      case 1: n = a174(o[name]); break;
      case 2: n = a177(o[name]); break;
      case 3: n = a182(o[name]); break;
      case 4: n = a182(o[name]); break;
      case 5: n = a154(o[name]); break;
      case 6: n = a154(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p232 = new Map([["id",0],["designation",1],["description",2],["shape",3],["load",4],["phases",5],["points",6],["socketOutlets",7],["device",8],["rcd",9],["cable",10],["designCurrent",11],["readings",12],["sharedMisfits",13],["liveBeforeContinuity",14],["note",15]]);
const w233 = new Set<unknown>(["ring","radial","distribution"]);
function a234(v: unknown): number {
  return w233.has(v) ? 0 : -1;
}
function a235(v: unknown): number {
  let n = -1;
  n = a234(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w236 = new Set<unknown>(["lighting","socket-outlets","cooker","shower","water-heater","storage-heating","heating","motor","vehicle-charging","alarm","fixed-equipment","board","mixed"]);
function a237(v: unknown): number {
  return w236.has(v) ? 0 : -1;
}
function a238(v: unknown): number {
  let n = -1;
  n = a237(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a239(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 0 && (v as number) <= 1000 ? 0 : -1;
}
function a240(v: unknown): number {
  return v === "none" ? 0 : -1;
}
const p241 = new Map([["own",0]]);
const p242 = new Map([["id",0],["standard",1],["type",2],["delay",3],["rated",4],["residual",5],["readings",6],["direction",7],["backfed",8],["testability",9],["whyNotTested",10],["note",11]]);
function a243(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p242.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a4(o[name]); break;
      case 1: n = a201(o[name]); break;
      case 2: n = a204(o[name]); break;
      case 3: n = a207(o[name]); break;
      case 4: n = a116(o[name]); break;
      case 5: n = a116(o[name]); break;
      case 6: n = a215(o[name]); break;
      case 7: n = a218(o[name]); break;
      case 8: n = a105(o[name]); break;
      case 9: n = a221(o[name]); break;
      case 10: n = a7(o[name]); break;
      case 11: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a244(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p241.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a243(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p245 = new Map([["board",0]]);
function a246(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p245.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a247(v: unknown): number {
  let n = -1;
  n = a240(v);
  if (n >= 0) return n;
  n = a244(v);
  if (n >= 0) return n;
  n = a246(v);
  if (n >= 0) return n;
  return -1;
}
function a248(v: unknown): number {
  let n = -1;
  n = a247(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const p249 = new Map([["kind",0],["insulation",1],["material",2],["line",3],["neutral",4],["cpc",5],["cpcArrangement",6],["cores",7],["methods",8],["length",9],["lengthFound",10],["ambient",11],["grouped",12],["surroundedByInsulation",13]]);
const w250 = new Set<unknown>(["flat-twin-and-cpc","singles","multicore","armoured","mineral","rubber","lead-sheathed","flexible","busbar"]);
function a251(v: unknown): number {
  return w250.has(v) ? 0 : -1;
}
function a252(v: unknown): number {
  let n = -1;
  n = a251(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w253 = new Set<unknown>(["70C-thermoplastic","90C-thermoplastic","90C-thermosetting","60C-rubber","mineral-covered","mineral-bare"]);
function a254(v: unknown): number {
  return w253.has(v) ? 0 : -1;
}
function a255(v: unknown): number {
  let n = -1;
  n = a254(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w256 = new Set<unknown>(["in-cable","separate","armour","sheath","conduit","none"]);
function a257(v: unknown): number {
  return w256.has(v) ? 0 : -1;
}
function a258(v: unknown): number {
  let n = -1;
  n = a257(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a259(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 1 && (v as number) <= 61 ? 0 : -1;
}
const w260 = new Set<unknown>(["100","101","102","103","A","B","C","D","E","F"]);
function a261(v: unknown): number {
  return w260.has(v) ? 0 : -1;
}
function a262(v: unknown): number {
  if (!Array.isArray(v) || v.length < 1 || v.length > 10) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a261(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a263(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "celsius", true) === undefined ? 0 : -1;
}
function a264(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p100.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a263(o[name]); break;
      case 1: needed--; n = a263(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a265(v: unknown): number {
  let n = -1;
  n = a63(v);
  if (n >= 0) return n;
  n = a264(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const p266 = new Map([["arrangement",0],["circuits",1]]);
const w267 = new Set<unknown>(["bunched","single-layer-surface","single-layer-tray","single-layer-ladder"]);
function a268(v: unknown): number {
  return w267.has(v) ? 0 : -1;
}
function a269(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 1 && (v as number) <= 100 ? 0 : -1;
}
function a270(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p266.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a268(o[name]); break;
      case 1: needed--; n = a269(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a271(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p249.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a252(o[name]); break;
      case 1: n = a255(o[name]); break;
      case 2: n = a133(o[name]); break;
      case 3: n = a130(o[name]); break;
      case 4: n = a130(o[name]); break;
      case 5: n = a130(o[name]); break;
      case 6: n = a258(o[name]); break;
      case 7: n = a259(o[name]); break;
      case 8: n = a262(o[name]); break;
      case 9: n = a137(o[name]); break;
      case 10: n = a140(o[name]); break;
      case 11: n = a265(o[name]); break;
      case 12: n = a270(o[name]); break;
      case 13: n = a137(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p272 = new Map([["temperature",0],["r1",1],["rn",2],["r2",3],["crossLineNeutral",4],["crossLineCpc",5],["r1r2",6],["r2Only",7],["insulationVoltage",8],["insulationLiveLive",9],["insulationLiveEarth",10],["insulationBetweenNeutrals",11],["polarity",12],["zs",13],["faultCurrent",14],["leakage",15]]);
const p273 = new Map([["point",0],["reading",1]]);
function a274(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p273.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a7(o[name]); break;
      case 1: needed--; n = a154(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a275(v: unknown): number {
  if (!Array.isArray(v) || v.length > 200) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a274(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const w276 = new Set<unknown>(["250 V","500 V","1000 V"]);
function a277(v: unknown): number {
  return w276.has(v) ? 0 : -1;
}
function a278(v: unknown): number {
  let n = -1;
  n = a277(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a279(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p272.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a67(o[name]); break;
      case 1: n = a154(o[name]); break;
      case 2: n = a154(o[name]); break;
      case 3: n = a154(o[name]); break;
      case 4: n = a275(o[name]); break;
      case 5: n = a275(o[name]); break;
      case 6: n = a154(o[name]); break;
      case 7: n = a154(o[name]); break;
      case 8: n = a278(o[name]); break;
      case 9: n = a154(o[name]); break;
      case 10: n = a154(o[name]); break;
      case 11: n = a154(o[name]); break;
      case 12: n = a182(o[name]); break;
      case 13: n = a154(o[name]); break;
      case 14: n = a174(o[name]); break;
      case 15: n = a174(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p280 = new Map([["reason",0],["at",1],["by",2]]);
function a281(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p280.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a35(o[name]); break;
      case 1: needed--; n = a42(o[name]); break;
      case 2: n = a4(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a282(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p232.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
      case 2: needed--; n = a7(o[name]); break;
      case 3: n = a235(o[name]); break;
      case 4: n = a238(o[name]); break;
      case 5: n = a98(o[name]); break;
      case 6: n = a239(o[name]); break;
      case 7: n = a105(o[name]); break;
      case 8: n = a125(o[name]); break;
      case 9: n = a248(o[name]); break;
      case 10: n = a271(o[name]); break;
      case 11: n = a116(o[name]); break;
      case 12: n = a279(o[name]); break;
      case 13: n = a188(o[name]); break;
      case 14: n = a281(o[name]); break;
      case 15: n = a35(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a283(v: unknown): number {
  if (!Array.isArray(v) || v.length > 400) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a282(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a284(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 4, 0];
  for (const name in o) {
    const place = p190.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
      case 2: n = a7(o[name]); break;
      case 3: needed--; n = a194(o[name]); break;
      case 4: n = a98(o[name]); break;
      case 5: n = a197(o[name]); break;
      case 6: n = a164(o[name]); break;
      case 7: n = a225(o[name]); break;
      case 8: n = a229(o[name]); break;
      case 9: n = a231(o[name]); break;
      case 10: needed--; n = a283(o[name]); break;
      case 11: n = a188(o[name]); break;
      case 12: n = a35(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a285(v: unknown): number {
  if (!Array.isArray(v) || v.length < 1 || v.length > 200) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a284(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p286 = new Map([["places",0],["enclosures",1],["sections",2],["joints",3],["supplementaryBonds",4],["electrodes",5],["loads",6],["surgeDevices",7],["arcDevices",8]]);
const p287 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["kind",6],["comers",7],["wetness",8],["conducting",9],["special",10],["note",11]]);
function a288(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 1 && (v as number) <= 10000 ? 0 : -1;
}
const w289 = new Set<unknown>(["room","hall-or-stair","cupboard","plant-room","roof-space","under-floor","outbuilding","outdoors","public-area","other"]);
function a290(v: unknown): number {
  return w289.has(v) ? 0 : -1;
}
function a291(v: unknown): number {
  let n = -1;
  n = a290(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w292 = new Set<unknown>(["skilled","keeper","many-keys","anyone","children"]);
function a293(v: unknown): number {
  return w292.has(v) ? 0 : -1;
}
function a294(v: unknown): number {
  let n = -1;
  n = a293(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w295 = new Set<unknown>(["dry","damp","wet"]);
function a296(v: unknown): number {
  return w295.has(v) ? 0 : -1;
}
function a297(v: unknown): number {
  let n = -1;
  n = a296(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w298 = new Set<unknown>(["none","bath-or-shower","pool","sauna","building-site","farm","conducting-place","caravan-site","marina","medical","exhibition","mobile-unit","vehicle-charging","fairground","floor-or-ceiling-heating","other"]);
function a299(v: unknown): number {
  return w298.has(v) ? 0 : -1;
}
function a300(v: unknown): number {
  if (!Array.isArray(v) || v.length < 1 || v.length > 16) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a299(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a301(v: unknown): number {
  let n = -1;
  n = a300(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a302(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p287.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a288(o[name]); break;
      case 6: n = a291(o[name]); break;
      case 7: n = a294(o[name]); break;
      case 8: n = a297(o[name]); break;
      case 9: n = a105(o[name]); break;
      case 10: n = a301(o[name]); break;
      case 11: n = a35(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a303(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a302(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p304 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["kind",6],["covering",7],["fixing",8],["screws",9],["screwsMade",10],["firmness",11],["hinges",12],["openedBy",13],["lockWorks",14],["keyHolder",15],["comers",16],["wear",17],["entry",18],["obstacle",19],["height",20],["aside",21],["openings",22],["note",23]]);
const w305 = new Set<unknown>(["cupboard","board","box","trunking","accessory","barrier","obstacle"]);
function a306(v: unknown): number {
  return w305.has(v) ? 0 : -1;
}
function a307(v: unknown): number {
  let n = -1;
  n = a306(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w308 = new Set<unknown>(["double-or-reinforced","sheathed","basic-sound","basic-damaged","bare"]);
function a309(v: unknown): number {
  return w308.has(v) ? 0 : -1;
}
function a310(v: unknown): number {
  let n = -1;
  n = a309(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w311 = new Set<unknown>(["screws","hinge-and-catch","clips","laid-on","none"]);
function a312(v: unknown): number {
  return w311.has(v) ? 0 : -1;
}
function a313(v: unknown): number {
  let n = -1;
  n = a312(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a314(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 0 && (v as number) <= 100 ? 0 : -1;
}
function a315(v: unknown): number {
  let n = -1;
  n = a314(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w316 = new Set<unknown>(["whole","fixings-missing","loose-or-hanging","gone"]);
function a317(v: unknown): number {
  return w316.has(v) ? 0 : -1;
}
function a318(v: unknown): number {
  let n = -1;
  n = a317(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w319 = new Set<unknown>(["destruction","interlock","tool","key","hand","stands-open"]);
function a320(v: unknown): number {
  return w319.has(v) ? 0 : -1;
}
function a321(v: unknown): number {
  let n = -1;
  n = a320(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w322 = new Set<unknown>(["skilled","keeper","many","anyone"]);
function a323(v: unknown): number {
  return w322.has(v) ? 0 : -1;
}
function a324(v: unknown): number {
  let n = -1;
  n = a323(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w325 = new Set<unknown>(["nothing","knocks-or-rubbing","stored-or-moved-things","heat","weather","rodents"]);
function a326(v: unknown): number {
  return w325.has(v) ? 0 : -1;
}
function a327(v: unknown): number {
  if (!Array.isArray(v) || v.length < 1 || v.length > 6) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a326(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a328(v: unknown): number {
  let n = -1;
  n = a327(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w329 = new Set<unknown>(["nothing","wire-on-top","finger-short-of-live","finger-to-live","hand"]);
function a330(v: unknown): number {
  return w329.has(v) ? 0 : -1;
}
function a331(v: unknown): number {
  let n = -1;
  n = a330(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w332 = new Set<unknown>(["secured","not-secured","none"]);
function a333(v: unknown): number {
  return w332.has(v) ? 0 : -1;
}
function a334(v: unknown): number {
  let n = -1;
  n = a333(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const p335 = new Map([["shape",0],["face",1],["easyReach",2],["width",3],["height",4],["depth",5],["offset",6],["behind",7]]);
const w336 = new Set<unknown>(["rectangular","round","irregular"]);
function a337(v: unknown): number {
  return w336.has(v) ? 0 : -1;
}
function a338(v: unknown): number {
  let n = -1;
  n = a337(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w339 = new Set<unknown>(["front","side","top","bottom"]);
function a340(v: unknown): number {
  return w339.has(v) ? 0 : -1;
}
function a341(v: unknown): number {
  let n = -1;
  n = a340(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w342 = new Set<unknown>(["stops-wire","stops-finger","none"]);
function a343(v: unknown): number {
  return w342.has(v) ? 0 : -1;
}
function a344(v: unknown): number {
  let n = -1;
  n = a343(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a345(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p335.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a338(o[name]); break;
      case 1: n = a341(o[name]); break;
      case 2: n = a105(o[name]); break;
      case 3: n = a137(o[name]); break;
      case 4: n = a137(o[name]); break;
      case 5: n = a137(o[name]); break;
      case 6: n = a137(o[name]); break;
      case 7: n = a344(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a346(v: unknown): number {
  if (!Array.isArray(v) || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a345(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a347(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p304.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a288(o[name]); break;
      case 6: n = a307(o[name]); break;
      case 7: n = a310(o[name]); break;
      case 8: n = a313(o[name]); break;
      case 9: n = a315(o[name]); break;
      case 10: n = a315(o[name]); break;
      case 11: n = a318(o[name]); break;
      case 12: n = a105(o[name]); break;
      case 13: n = a321(o[name]); break;
      case 14: n = a105(o[name]); break;
      case 15: n = a324(o[name]); break;
      case 16: n = a294(o[name]); break;
      case 17: n = a328(o[name]); break;
      case 18: n = a331(o[name]); break;
      case 19: n = a334(o[name]); break;
      case 20: n = a137(o[name]); break;
      case 21: n = a137(o[name]); break;
      case 22: n = a346(o[name]); break;
      case 23: n = a35(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a348(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a347(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p349 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["from",6],["to",7],["cable",8],["insulation",9],["material",10],["line",11],["neutral",12],["cpc",13],["length",14],["lengthMethod",15],["layer",16],["methods",17],["surroundings",18],["depth",19],["mechanical",20],["note",21]]);
const w350 = new Set<unknown>(["taped","by-drawing","estimated"]);
function a351(v: unknown): number {
  return w350.has(v) ? 0 : -1;
}
function a352(v: unknown): number {
  let n = -1;
  n = a351(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a353(v: unknown): number {
  let n = -1;
  n = a262(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w354 = new Set<unknown>(["air","masonry","plaster","partition","thermal-insulation","metal-conduit","plastic-conduit","metal-trunking","plastic-trunking","tray-or-ladder","ground","water"]);
function a355(v: unknown): number {
  return w354.has(v) ? 0 : -1;
}
function a356(v: unknown): number {
  if (!Array.isArray(v) || v.length < 1 || v.length > 12) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a355(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a357(v: unknown): number {
  let n = -1;
  n = a356(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a358(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p349.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a288(o[name]); break;
      case 6: n = a7(o[name]); break;
      case 7: n = a7(o[name]); break;
      case 8: n = a252(o[name]); break;
      case 9: n = a255(o[name]); break;
      case 10: n = a133(o[name]); break;
      case 11: n = a130(o[name]); break;
      case 12: n = a130(o[name]); break;
      case 13: n = a130(o[name]); break;
      case 14: n = a137(o[name]); break;
      case 15: n = a352(o[name]); break;
      case 16: n = a310(o[name]); break;
      case 17: n = a353(o[name]); break;
      case 18: n = a357(o[name]); break;
      case 19: n = a137(o[name]); break;
      case 20: n = a105(o[name]); break;
      case 21: n = a35(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a359(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a358(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p360 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["between",6],["enclosure",7],["method",8],["enclosed",9],["accessible",10],["maintenanceFree",11],["state",12],["note",13]]);
function a361(v: unknown): number {
  if (!Array.isArray(v) || v.length > 20) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a4(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const w362 = new Set<unknown>(["screwed","sprung","crimped","soldered","plugged","twisted"]);
function a363(v: unknown): number {
  return w362.has(v) ? 0 : -1;
}
function a364(v: unknown): number {
  let n = -1;
  n = a363(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a365(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p360.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a288(o[name]); break;
      case 6: n = a361(o[name]); break;
      case 7: n = a4(o[name]); break;
      case 8: n = a364(o[name]); break;
      case 9: n = a105(o[name]); break;
      case 10: n = a105(o[name]); break;
      case 11: n = a105(o[name]); break;
      case 12: n = a157(o[name]); break;
      case 13: n = a35(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a366(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a365(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p367 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["from",6],["to",7],["connected",8],["size",9],["material",10],["condition",11],["resistance",12],["note",13]]);
function a368(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p367.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a288(o[name]); break;
      case 6: n = a7(o[name]); break;
      case 7: n = a7(o[name]); break;
      case 8: n = a105(o[name]); break;
      case 9: n = a130(o[name]); break;
      case 10: n = a133(o[name]); break;
      case 11: n = a157(o[name]); break;
      case 12: n = a154(o[name]); break;
      case 13: n = a35(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a369(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a368(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p370 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["kind",6],["resistance",7],["season",8],["accessible",9],["state",10],["note",11]]);
const w371 = new Set<unknown>(["rod","plate","tape-or-wire","foundation","buried-steel","other"]);
function a372(v: unknown): number {
  return w371.has(v) ? 0 : -1;
}
function a373(v: unknown): number {
  let n = -1;
  n = a372(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w374 = new Set<unknown>(["wet","dry","frozen"]);
function a375(v: unknown): number {
  return w374.has(v) ? 0 : -1;
}
function a376(v: unknown): number {
  let n = -1;
  n = a375(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a377(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p370.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a288(o[name]); break;
      case 6: n = a373(o[name]); break;
      case 7: n = a154(o[name]); break;
      case 8: n = a376(o[name]); break;
      case 9: n = a105(o[name]); break;
      case 10: n = a157(o[name]); break;
      case 11: n = a35(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a378(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a377(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p379 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["kind",6],["power",7],["fixed",8],["note",9]]);
function a380(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "watt", false) === undefined ? 0 : -1;
}
function a381(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "watt", true) === undefined ? 0 : -1;
}
function a382(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p100.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a381(o[name]); break;
      case 1: needed--; n = a381(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a383(v: unknown): number {
  let n = -1;
  n = a380(v);
  if (n >= 0) return n;
  n = a382(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a384(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p379.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a288(o[name]); break;
      case 6: n = a238(o[name]); break;
      case 7: n = a383(o[name]); break;
      case 8: n = a105(o[name]); break;
      case 9: n = a35(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a385(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a384(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p386 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["fitted",6],["type",7],["indicator",8],["connection",9],["leads",10],["backupStandard",11],["backupRated",12],["note",13]]);
const w387 = new Set<unknown>(["1","2","3","1+2","2+3","1+2+3"]);
function a388(v: unknown): number {
  return w387.has(v) ? 0 : -1;
}
function a389(v: unknown): number {
  let n = -1;
  n = a388(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w390 = new Set<unknown>(["in-order","failed","no-indicator"]);
function a391(v: unknown): number {
  return w390.has(v) ? 0 : -1;
}
function a392(v: unknown): number {
  let n = -1;
  n = a391(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w393 = new Set<unknown>(["before-main-switch","after-main-switch","behind-rcd"]);
function a394(v: unknown): number {
  return w393.has(v) ? 0 : -1;
}
function a395(v: unknown): number {
  let n = -1;
  n = a394(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a396(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p386.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a288(o[name]); break;
      case 6: n = a105(o[name]); break;
      case 7: n = a389(o[name]); break;
      case 8: n = a392(o[name]); break;
      case 9: n = a395(o[name]); break;
      case 10: n = a137(o[name]); break;
      case 11: n = a109(o[name]); break;
      case 12: n = a116(o[name]); break;
      case 13: n = a35(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a397(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a396(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p398 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["feeds",6],["fitted",7],["rated",8],["testability",9],["button",10],["indicator",11],["note",12]]);
function a399(v: unknown): number {
  if (!Array.isArray(v) || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a4(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a400(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p398.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a288(o[name]); break;
      case 6: n = a399(o[name]); break;
      case 7: n = a105(o[name]); break;
      case 8: n = a116(o[name]); break;
      case 9: n = a221(o[name]); break;
      case 10: n = a214(o[name]); break;
      case 11: n = a392(o[name]); break;
      case 12: n = a35(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a401(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a400(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a402(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p286.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a303(o[name]); break;
      case 1: n = a348(o[name]); break;
      case 2: n = a359(o[name]); break;
      case 3: n = a366(o[name]); break;
      case 4: n = a369(o[name]); break;
      case 5: n = a378(o[name]); break;
      case 6: n = a385(o[name]); break;
      case 7: n = a397(o[name]); break;
      case 8: n = a401(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p403 = new Map([["item",0],["outcome",1],["observations",2],["reason",3]]);
const w404 = new Set<unknown>(["intake.cut-out","intake.service-cable","intake.meter-tails","intake.meter","intake.isolator","intake.polarity","earthing.arrangement","earthing.conductor","earthing.electrode","earthing.main-terminal","earthing.main-bonding","earthing.bonding-connections","earthing.supplementary","boards.access","boards.fixing","boards.enclosure","boards.non-combustible","boards.main-switch","boards.devices","boards.single-pole","boards.connections","boards.overheating","boards.rcd","boards.surge","boards.arc-fault","boards.labels","circuits.identification","circuits.support","circuits.insulation","circuits.unsheathed","circuits.capacity","circuits.protection","circuits.cpc","circuits.concealed","circuits.additional-protection","circuits.barriers","circuits.segregation","circuits.neutrals","circuits.terminations","accessories.condition","accessories.connections","accessories.single-pole-switches","accessories.external-influences","accessories.isolation","accessories.emergency","accessories.luminaires","accessories.fixed-equipment","fire.hot-surfaces","fire.escape-routes","fire.contents","fire.construction","fire.alarms","bathrooms.rcd","bathrooms.bonding","bathrooms.ip","bathrooms.equipment","outdoors.rcd","outdoors.weather","outdoors.buried","outdoors.outbuildings","special.pools","special.farms","special.conducting-places","special.medical","special.caravans-boats","special.locations","sources.generators","sources.photovoltaic","sources.storage","sources.vehicle-charging","sources.direction","notices.diagram","notices.other-sources","notices.isolation","notices.voltage","notices.inspection","notices.rcd-test"]);
function a405(v: unknown): number {
  return w404.has(v) ? 0 : -1;
}
const w406 = new Set<unknown>(["in-order","observed","limited","not-verified","not-applicable"]);
function a407(v: unknown): number {
  return w406.has(v) ? 0 : -1;
}
function a408(v: unknown): number {
  if (!Array.isArray(v) || v.length > 40) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a4(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a409(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p403.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a405(o[name]); break;
      case 1: needed--; n = a407(o[name]); break;
      case 2: n = a408(o[name]); break;
      case 3: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a410(v: unknown): number {
  if (!Array.isArray(v) || v.length > 400) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a409(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p411 = new Map([["id",0],["board",1],["circuit",2],["place",3],["things",4],["brings",5],["what",6],["topic",7],["facts",8],["positions",9],["answers",10],["regulations",11],["photographs",12],["choice",13],["remedy",14],["madeSafe",15],["untold",16]]);
const p412 = new Map([["thing",0],["board",1],["quantity",2]]);
function a413(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p412.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a288(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a414(v: unknown): number {
  if (!Array.isArray(v) || v.length > 100) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a413(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a415(v: unknown): number {
  let n = -1;
  n = a104(v);
  if (n >= 0) return n;
  n = a7(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a416(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  let all = 0;
  for (const name in v) {
    if (a4(name) < 0) return -1;
    const n = a415((v as Members)[name]);
    if (n < 0) return -1;
    all += n + 1;
  }
  return all;
}
const p417 = new Map([["position",0],["reason",1]]);
function a418(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p417.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a35(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a419(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  let all = 0;
  for (const name in v) {
    if (a4(name) < 0) return -1;
    const n = a418((v as Members)[name]);
    if (n < 0) return -1;
    all += n + 1;
  }
  return all;
}
const p420 = new Map([["check",0],["board",1],["circuit",2],["part",3]]);
function a421(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p420.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a422(v: unknown): number {
  if (!Array.isArray(v) || v.length > 100) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a421(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a423(v: unknown): number {
  if (!Array.isArray(v) || v.length > 10) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a7(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const r424 = /^[0-9a-f]{64}$/;
function a425(v: unknown): number {
  return typeof v === "string" && r424.test(v) ? 0 : -1;
}
function a426(v: unknown): number {
  if (!Array.isArray(v) || v.length > 40) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a425(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p427 = new Map([["classification",0],["reason",1],["by",2],["at",3]]);
const w428 = new Set<unknown>(["C1","C2","C3","FI","none"]);
function a429(v: unknown): number {
  return w428.has(v) ? 0 : -1;
}
function a430(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p427.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a429(o[name]); break;
      case 1: needed--; n = a35(o[name]); break;
      case 2: needed--; n = a4(o[name]); break;
      case 3: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p431 = new Map([["done",0],["told",1],["at",2],["reply",3]]);
function a432(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p431.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a35(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
      case 2: needed--; n = a42(o[name]); break;
      case 3: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a433(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p411.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: needed--; n = a7(o[name]); break;
      case 4: n = a414(o[name]); break;
      case 5: n = a402(o[name]); break;
      case 6: needed--; n = a35(o[name]); break;
      case 7: n = a4(o[name]); break;
      case 8: n = a416(o[name]); break;
      case 9: n = a419(o[name]); break;
      case 10: n = a422(o[name]); break;
      case 11: n = a423(o[name]); break;
      case 12: n = a426(o[name]); break;
      case 13: n = a430(o[name]); break;
      case 14: n = a35(o[name]); break;
      case 15: n = a432(o[name]); break;
      case 16: n = a35(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a434(v: unknown): number {
  if (!Array.isArray(v) || v.length > 500) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a433(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p435 = new Map([["name",0],["answersFor",1],["hash",2]]);
function a436(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p435.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a7(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
      case 2: needed--; n = a425(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p437 = new Map([["topic",0],["point",1],["position",2],["reason",3]]);
function a438(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 4, 0];
  for (const name in o) {
    const place = p437.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a4(o[name]); break;
      case 2: needed--; n = a4(o[name]); break;
      case 3: needed--; n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a439(v: unknown): number {
  if (!Array.isArray(v) || v.length > 200) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a438(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p440 = new Map([["sha256",0],["name",1],["description",2],["place",3],["taken",4]]);
function a441(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p440.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a425(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
      case 2: needed--; n = a7(o[name]); break;
      case 3: n = a7(o[name]); break;
      case 4: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a442(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a441(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p443 = new Map([["check",0],["note",1]]);
function a444(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p443.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a35(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a445(v: unknown): number {
  if (!Array.isArray(v) || v.length > 200) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a444(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p446 = new Map([["outcome",0],["generalCondition",1],["nextInspection",2]]);
const w447 = new Set<unknown>(["satisfactory","unsatisfactory"]);
function a448(v: unknown): number {
  return w447.has(v) ? 0 : -1;
}
const p449 = new Map([["by",0],["reason",1]]);
function a450(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p449.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a11(o[name]); break;
      case 1: needed--; n = a35(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a451(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p446.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a448(o[name]); break;
      case 1: n = a35(o[name]); break;
      case 2: n = a450(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p452 = new Map([["person",0],["capacity",1],["at",2],["content",3],["drawn",4]]);
const w453 = new Set<unknown>(["inspected-and-tested","authorised-for-issue"]);
function a454(v: unknown): number {
  return w453.has(v) ? 0 : -1;
}
const r455 = /^[ML0-9. -]*$/;
function a456(v: unknown): number {
  return typeof v === "string" && v.length <= 4000 && r455.test(v) ? 0 : -1;
}
function a457(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p452.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a454(o[name]); break;
      case 2: needed--; n = a42(o[name]); break;
      case 3: n = a425(o[name]); break;
      case 4: n = a456(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a458(v: unknown): number {
  if (!Array.isArray(v) || v.length > 20) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a457(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a459(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 17, 0];
  for (const name in o) {
    const place = p0.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a1(o[name]); break;
      case 1: needed--; n = a2(o[name]); break;
      case 2: needed--; n = a4(o[name]); break;
      case 3: n = a5(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: needed--; n = a9(o[name]); break;
      case 6: needed--; n = a11(o[name]); break;
      case 7: needed--; n = a39(o[name]); break;
      case 8: needed--; n = a44(o[name]); break;
      case 9: needed--; n = a47(o[name]); break;
      case 10: needed--; n = a58(o[name]); break;
      case 11: n = a60(o[name]); break;
      case 12: n = a68(o[name]); break;
      case 13: n = a75(o[name]); break;
      case 14: n = a80(o[name]); break;
      case 15: needed--; n = a86(o[name]); break;
      case 16: needed--; n = a91(o[name]); break;
      case 17: needed--; n = a189(o[name]); break;
      case 18: needed--; n = a285(o[name]); break;
      case 19: n = a402(o[name]); break;
      case 20: needed--; n = a410(o[name]); break;
      case 21: needed--; n = a434(o[name]); break;
      case 22: n = a436(o[name]); break;
      case 23: n = a439(o[name]); break;
      case 24: needed--; n = a442(o[name]); break;
      case 25: n = a445(o[name]); break;
      case 26: n = a451(o[name]); break;
      case 27: needed--; n = a458(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}

/** How many members the objects of the data have together; -1 where it does not plainly fit, each member in its order. */
export function accepted(data: unknown): number {
  return a459(data);
}
