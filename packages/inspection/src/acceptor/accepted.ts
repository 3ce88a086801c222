// Written by `npm run acceptor` from the schema of the inspection file; a test keeps it true. Not changed by hand.
import { isAccuracy, writtenFault } from "./rules.ts";

type Members = Readonly<Record<string, unknown>>;

const p0 = new Map([["format",0],["version",1],["id",2],["invented",3],["title",4],["edition",5],["inspectedOn",6],["brief",7],["visits",8],["people",9],["instruments",10],["decisionRule",11],["conditions",12],["precautions",13],["earthingOff",14],["extent",15],["limitations",16],["supply",17],["boards",18],["things",19],["inspected",20],["observations",21],["standingViews",22],["photographs",23],["ownFigures",24],["conclusion",25],["signatures",26]]);
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
const w23 = new Set<unknown>(["owner-occupied","private-rented","social-rented","commercial-lease","other"]);
function a24(v: unknown): number {
  return w23.has(v) ? 0 : -1;
}
const w25 = new Set<unknown>(["england","wales","scotland","northern-ireland"]);
function a26(v: unknown): number {
  return w25.has(v) ? 0 : -1;
}
const r27 = /^(?:[^\p{Cc}\p{Cs}]|[\n\t])*$/u;
function a28(v: unknown): number {
  return typeof v === "string" && v.length >= 1 && v.length <= 4000 && r27.test(v) ? 0 : -1;
}
const p29 = new Map([["kind",0],["date",1],["reference",2]]);
function a30(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p29.get(name);
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
function a31(v: unknown): number {
  if (!Array.isArray(v) || v.length > 50) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a30(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a32(v: unknown): number {
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
      case 2: needed--; n = a22(o[name]); break;
      case 3: needed--; n = a24(o[name]); break;
      case 4: needed--; n = a26(o[name]); break;
      case 5: needed--; n = a7(o[name]); break;
      case 6: n = a7(o[name]); break;
      case 7: n = a28(o[name]); break;
      case 8: needed--; n = a31(o[name]); break;
      case 9: n = a11(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p33 = new Map([["date",0],["arrived",1],["left",2],["note",3]]);
const r34 = /^(?:(?:\d\d[2468][048]|\d\d[13579][26]|\d\d0[48]|[02468][048]00|[13579][26]00)-02-29|\d{4}-(?:(?:0[13578]|1[02])-(?:0[1-9]|[12]\d|3[01])|(?:0[469]|11)-(?:0[1-9]|[12]\d|30)|(?:02)-(?:0[1-9]|1\d|2[0-8])))T(?:(?:[01]\d|2[0-3]):[0-5]\d:[0-5]\d(?:\.\d+)?(?:Z|([+-](?:[01]\d|2[0-3]):[0-5]\d)))$/;
function a35(v: unknown): number {
  return typeof v === "string" && r34.test(v) ? 0 : -1;
}
function a36(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p33.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a11(o[name]); break;
      case 1: n = a35(o[name]); break;
      case 2: n = a35(o[name]); break;
      case 3: n = a28(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a37(v: unknown): number {
  if (!Array.isArray(v) || v.length < 1 || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a36(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p38 = new Map([["id",0],["name",1],["position",2],["firm",3],["address",4],["registration",5]]);
function a39(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p38.get(name);
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
function a40(v: unknown): number {
  if (!Array.isArray(v) || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a39(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p41 = new Map([["id",0],["kind",1],["serial",2],["checked",3],["checkReference",4],["accuracy",5],["leadsNulled",6]]);
const w42 = new Set<unknown>(["continuity","insulation","loop","fault-current","rcd-time","electrode","voltage","temperature"]);
function a43(v: unknown): number {
  return w42.has(v) ? 0 : -1;
}
function a44(v: unknown): number {
  return typeof v === "string" && isAccuracy(v) ? 0 : -1;
}
function a45(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  let all = 0;
  for (const name in v) {
    if (a43(name) < 0) return -1;
    const n = a44((v as Members)[name]);
    if (n < 0) return -1;
    all += n + 1;
  }
  return all;
}
const p46 = new Map([["at",0],["showed",1]]);
function a47(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "ohm", true) === undefined ? 0 : -1;
}
function a48(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p46.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a35(o[name]); break;
      case 1: n = a47(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a49(v: unknown): number {
  if (!Array.isArray(v) || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a48(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a50(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p41.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
      case 2: needed--; n = a7(o[name]); break;
      case 3: n = a11(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a45(o[name]); break;
      case 6: n = a49(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a51(v: unknown): number {
  if (!Array.isArray(v) || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a50(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const w52 = new Set<unknown>(["simple","guarded"]);
function a53(v: unknown): number {
  return w52.has(v) ? 0 : -1;
}
const p54 = new Map([["conductorTemperature",0],["note",1]]);
const p55 = new Map([["shown",0],["at",1],["by",2],["with",3],["method",4],["note",5]]);
function a56(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "celsius", false) === undefined ? 0 : -1;
}
function a57(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p55.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a56(o[name]); break;
      case 1: n = a35(o[name]); break;
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
const p58 = new Map([["notTaken",0],["reason",1]]);
const w59 = new Set<unknown>(["limited","not-verified","not-applicable"]);
function a60(v: unknown): number {
  return w59.has(v) ? 0 : -1;
}
function a61(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p58.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a60(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a62(v: unknown): number {
  let n = -1;
  n = a57(v);
  if (n >= 0) return n;
  n = a61(v);
  if (n >= 0) return n;
  return -1;
}
function a63(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p54.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a62(o[name]); break;
      case 1: n = a28(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p64 = new Map([["step",0],["outcome",1],["at",2],["by",3]]);
const w65 = new Set<unknown>(["start.competent","start.hazards","start.life-support","start.told","covers.isolated","covers.locked","covers.second-supplies","covers.tester-before","covers.dead","covers.tester-after","insulation.people-away","insulation.electronics","insulation.surge","live.justified","live.leads","live.footing","live.others-away","leave.earthing","leave.bonding","leave.links","leave.covers","leave.rcd-buttons","leave.alarms","leave.freezers","leave.boilers","leave.locks","leave.told"]);
function a66(v: unknown): number {
  return w65.has(v) ? 0 : -1;
}
const w67 = new Set<unknown>(["done","not-applicable"]);
function a68(v: unknown): number {
  return w67.has(v) ? 0 : -1;
}
function a69(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p64.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a66(o[name]); break;
      case 1: needed--; n = a68(o[name]); break;
      case 2: needed--; n = a35(o[name]); break;
      case 3: n = a4(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a70(v: unknown): number {
  if (!Array.isArray(v) || v.length > 200) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a69(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p71 = new Map([["off",0],["on",1]]);
const p72 = new Map([["at",0],["by",1]]);
function a73(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p72.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a35(o[name]); break;
      case 1: n = a4(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a74(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p71.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a73(o[name]); break;
      case 1: n = a73(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a75(v: unknown): number {
  if (!Array.isArray(v) || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a74(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p76 = new Map([["covered",0],["notCovered",1],["agreedWith",2],["agreedOn",3],["sampling",4]]);
const p77 = new Map([["what",0],["population",1],["inspected",2],["defective",3],["how",4]]);
function a78(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 0 && (v as number) <= 100000 ? 0 : -1;
}
function a79(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 4, 0];
  for (const name in o) {
    const place = p77.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a7(o[name]); break;
      case 1: needed--; n = a78(o[name]); break;
      case 2: needed--; n = a78(o[name]); break;
      case 3: needed--; n = a78(o[name]); break;
      case 4: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a80(v: unknown): number {
  if (!Array.isArray(v) || v.length > 100) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a79(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a81(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p76.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a28(o[name]); break;
      case 1: n = a28(o[name]); break;
      case 2: n = a7(o[name]); break;
      case 3: n = a11(o[name]); break;
      case 4: needed--; n = a80(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p82 = new Map([["id",0],["kind",1],["what",2],["why",3],["agreedWith",4]]);
const w83 = new Set<unknown>(["agreed","operational"]);
function a84(v: unknown): number {
  return w83.has(v) ? 0 : -1;
}
function a85(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 4, 0];
  for (const name in o) {
    const place = p82.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a84(o[name]); break;
      case 2: needed--; n = a7(o[name]); break;
      case 3: needed--; n = a28(o[name]); break;
      case 4: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a86(v: unknown): number {
  if (!Array.isArray(v) || v.length > 200) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a85(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p87 = new Map([["earthing",0],["phases",1],["nominalVoltage",2],["public",3],["device",4],["tails",5],["neutral",6],["earthingConductor",7],["bonding",8],["electrode",9],["mainSwitch",10],["otherSources",11],["maximumDemand",12],["readings",13],["sharedMisfits",14],["note",15]]);
const w88 = new Set<unknown>(["TN-S","TN-C-S","TT","IT"]);
function a89(v: unknown): number {
  return w88.has(v) ? 0 : -1;
}
const p90 = new Map([["notKnown",0],["reason",1]]);
function a91(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p90.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a60(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a92(v: unknown): number {
  let n = -1;
  n = a89(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
function a93(v: unknown): number {
  return v === 1 ? 0 : -1;
}
function a94(v: unknown): number {
  let n = -1;
  n = a93(v);
  if (n >= 0) return n;
  n = a2(v);
  if (n >= 0) return n;
  return -1;
}
function a95(v: unknown): number {
  let n = -1;
  n = a94(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
function a96(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "volt", false) === undefined ? 0 : -1;
}
const p97 = new Map([["from",0],["to",1]]);
function a98(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "volt", true) === undefined ? 0 : -1;
}
function a99(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p97.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a98(o[name]); break;
      case 1: needed--; n = a98(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a100(v: unknown): number {
  let n = -1;
  n = a96(v);
  if (n >= 0) return n;
  n = a99(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
function a101(v: unknown): number {
  return typeof v === "boolean" ? 0 : -1;
}
function a102(v: unknown): number {
  let n = -1;
  n = a101(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const p103 = new Map([["standard",0],["type",1],["rated",2],["breakingCapacity",3],["energyClass",4],["letThrough",5],["note",6]]);
const w104 = new Set<unknown>(["BS EN 60898","BS EN 61009","BS EN 60947-2","BS 3871","BS 3036","BS 1361","BS 1362","BS 88-2","BS 88-3","BS 88-2.2","BS 88-6"]);
function a105(v: unknown): number {
  return w104.has(v) ? 0 : -1;
}
function a106(v: unknown): number {
  let n = -1;
  n = a105(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const w107 = new Set<unknown>(["1","2","3","4","B","C","D","gG","gM","I","II"]);
function a108(v: unknown): number {
  return w107.has(v) ? 0 : -1;
}
function a109(v: unknown): number {
  let n = -1;
  n = a108(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
function a110(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "ampere", false) === undefined ? 0 : -1;
}
function a111(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "ampere", true) === undefined ? 0 : -1;
}
function a112(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p97.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a111(o[name]); break;
      case 1: needed--; n = a111(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a113(v: unknown): number {
  let n = -1;
  n = a110(v);
  if (n >= 0) return n;
  n = a112(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
function a114(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 1 && (v as number) <= 3 ? 0 : -1;
}
const p115 = new Map([["value",0],["from",1]]);
function a116(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "ampere-squared-second", false) === undefined ? 0 : -1;
}
function a117(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "ampere-squared-second", true) === undefined ? 0 : -1;
}
function a118(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p97.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a117(o[name]); break;
      case 1: needed--; n = a117(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a119(v: unknown): number {
  let n = -1;
  n = a116(v);
  if (n >= 0) return n;
  n = a118(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
function a120(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p115.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a119(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a121(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p103.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a106(o[name]); break;
      case 1: n = a109(o[name]); break;
      case 2: n = a113(o[name]); break;
      case 3: n = a113(o[name]); break;
      case 4: n = a114(o[name]); break;
      case 5: n = a120(o[name]); break;
      case 6: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a122(v: unknown): number {
  let n = -1;
  n = a121(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const p123 = new Map([["size",0],["material",1],["length",2]]);
function a124(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "square-millimetre", false) === undefined ? 0 : -1;
}
function a125(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "square-millimetre", true) === undefined ? 0 : -1;
}
function a126(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p97.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a125(o[name]); break;
      case 1: needed--; n = a125(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a127(v: unknown): number {
  let n = -1;
  n = a124(v);
  if (n >= 0) return n;
  n = a126(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const w128 = new Set<unknown>(["copper","aluminium"]);
function a129(v: unknown): number {
  return w128.has(v) ? 0 : -1;
}
function a130(v: unknown): number {
  let n = -1;
  n = a129(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
function a131(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "metre", false) === undefined ? 0 : -1;
}
function a132(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "metre", true) === undefined ? 0 : -1;
}
function a133(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p97.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a132(o[name]); break;
      case 1: needed--; n = a132(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a134(v: unknown): number {
  let n = -1;
  n = a131(v);
  if (n >= 0) return n;
  n = a133(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
function a135(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p123.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a127(o[name]); break;
      case 1: n = a130(o[name]); break;
      case 2: n = a134(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p136 = new Map([["size",0],["material",1],["length",2],["arrangement",3],["sheathed",4],["mechanicallyProtected",5]]);
const w137 = new Set<unknown>(["separate","in-cable","buried"]);
function a138(v: unknown): number {
  return w137.has(v) ? 0 : -1;
}
function a139(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p136.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a127(o[name]); break;
      case 1: n = a130(o[name]); break;
      case 2: n = a134(o[name]); break;
      case 3: n = a138(o[name]); break;
      case 4: n = a102(o[name]); break;
      case 5: n = a102(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p140 = new Map([["id",0],["to",1],["description",2],["service",3],["extraneous",4],["partResistance",5],["connected",6],["condition",7],["heatDamage",8],["size",9],["material",10],["length",11],["resistance",12]]);
const w141 = new Set<unknown>(["water","gas","oil","structural-steel","lightning-protection","heating","other"]);
function a142(v: unknown): number {
  return w141.has(v) ? 0 : -1;
}
const w143 = new Set<unknown>(["present","no-such-service"]);
function a144(v: unknown): number {
  return w143.has(v) ? 0 : -1;
}
function a145(v: unknown): number {
  let n = -1;
  n = a144(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
function a146(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "ohm", false) === undefined ? 0 : -1;
}
function a147(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p55.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a146(o[name]); break;
      case 1: n = a35(o[name]); break;
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
function a148(v: unknown): number {
  let n = -1;
  n = a147(v);
  if (n >= 0) return n;
  n = a61(v);
  if (n >= 0) return n;
  return -1;
}
const w149 = new Set<unknown>(["sound","corroded","loose","browned","broken"]);
function a150(v: unknown): number {
  return w149.has(v) ? 0 : -1;
}
function a151(v: unknown): number {
  let n = -1;
  n = a150(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
function a152(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p140.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a142(o[name]); break;
      case 2: n = a7(o[name]); break;
      case 3: n = a145(o[name]); break;
      case 4: n = a102(o[name]); break;
      case 5: n = a148(o[name]); break;
      case 6: n = a102(o[name]); break;
      case 7: n = a151(o[name]); break;
      case 8: n = a102(o[name]); break;
      case 9: n = a127(o[name]); break;
      case 10: n = a130(o[name]); break;
      case 11: n = a134(o[name]); break;
      case 12: n = a148(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a153(v: unknown): number {
  if (!Array.isArray(v) || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a152(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p154 = new Map([["kind",0],["location",1]]);
function a155(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p154.get(name);
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
const p156 = new Map([["standard",0],["poles",1],["rated",2],["voltage",3]]);
function a157(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 1 && (v as number) <= 4 ? 0 : -1;
}
function a158(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p156.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a7(o[name]); break;
      case 1: n = a157(o[name]); break;
      case 2: n = a113(o[name]); break;
      case 3: n = a100(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p159 = new Map([["id",0],["kind",1],["rated",2],["note",3]]);
const w160 = new Set<unknown>(["photovoltaic","battery","generator","wind","vehicle","ups","other"]);
function a161(v: unknown): number {
  return w160.has(v) ? 0 : -1;
}
function a162(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p159.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a161(o[name]); break;
      case 2: n = a113(o[name]); break;
      case 3: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a163(v: unknown): number {
  if (!Array.isArray(v) || v.length > 20) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a162(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p164 = new Map([["value",0],["method",1]]);
function a165(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p164.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a113(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p166 = new Map([["ze",0],["ra",1],["lineNeutralLoop",2],["faultCurrent",3],["faultCurrentMethod",4],["earthFaultCurrent",5],["voltage",6],["neutralEarth",7],["polarity",8],["phaseSequence",9]]);
function a167(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p55.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a110(o[name]); break;
      case 1: n = a35(o[name]); break;
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
function a168(v: unknown): number {
  let n = -1;
  n = a167(v);
  if (n >= 0) return n;
  n = a61(v);
  if (n >= 0) return n;
  return -1;
}
const w169 = new Set<unknown>(["line-neutral","line-line","three-phase"]);
function a170(v: unknown): number {
  return w169.has(v) ? 0 : -1;
}
function a171(v: unknown): number {
  let n = -1;
  n = a170(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
function a172(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p55.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a96(o[name]); break;
      case 1: n = a35(o[name]); break;
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
function a173(v: unknown): number {
  let n = -1;
  n = a172(v);
  if (n >= 0) return n;
  n = a61(v);
  if (n >= 0) return n;
  return -1;
}
const w174 = new Set<unknown>(["correct","incorrect"]);
function a175(v: unknown): number {
  return w174.has(v) ? 0 : -1;
}
function a176(v: unknown): number {
  let n = -1;
  n = a175(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
function a177(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p166.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a148(o[name]); break;
      case 1: n = a148(o[name]); break;
      case 2: n = a148(o[name]); break;
      case 3: n = a168(o[name]); break;
      case 4: n = a171(o[name]); break;
      case 5: n = a168(o[name]); break;
      case 6: n = a173(o[name]); break;
      case 7: n = a173(o[name]); break;
      case 8: n = a176(o[name]); break;
      case 9: n = a176(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p178 = new Map([["kind",0],["note",1]]);
const w179 = new Set<unknown>(["circuit-readings","board-loop","leads-not-nulled","supply-loop","fault-current","earthing-system","insulation","between-neutrals","residual-device","polarity","ring"]);
function a180(v: unknown): number {
  return w179.has(v) ? 0 : -1;
}
function a181(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p178.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a180(o[name]); break;
      case 1: n = a28(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a182(v: unknown): number {
  if (!Array.isArray(v) || v.length > 20) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a181(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a183(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p87.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a92(o[name]); break;
      case 1: n = a95(o[name]); break;
      case 2: n = a100(o[name]); break;
      case 3: n = a102(o[name]); break;
      case 4: n = a122(o[name]); break;
      case 5: n = a135(o[name]); break;
      case 6: n = a135(o[name]); break;
      case 7: n = a139(o[name]); break;
      case 8: needed--; n = a153(o[name]); break;
      case 9: n = a155(o[name]); break;
      case 10: n = a158(o[name]); break;
      case 11: n = a163(o[name]); break;
      case 12: n = a165(o[name]); break;
      case 13: n = a177(o[name]); break;
      case 14: n = a182(o[name]); break;
      case 15: n = a28(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p184 = new Map([["id",0],["name",1],["location",2],["fedFrom",3],["phases",4],["enclosure",5],["mainSwitch",6],["rcds",7],["conditionalRating",8],["readings",9],["circuits",10],["sharedMisfits",11],["note",12]]);
function a185(v: unknown): number {
  return v === "supply" ? 0 : -1;
}
const p186 = new Map([["board",0],["circuit",1]]);
function a187(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p186.get(name);
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
function a188(v: unknown): number {
  let n = -1;
  n = a185(v);
  if (n >= 0) return n;
  n = a187(v);
  if (n >= 0) return n;
  return -1;
}
const w189 = new Set<unknown>(["metal","non-combustible","combustible","wood-backed"]);
function a190(v: unknown): number {
  return w189.has(v) ? 0 : -1;
}
function a191(v: unknown): number {
  let n = -1;
  n = a190(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const p192 = new Map([["id",0],["standard",1],["type",2],["delay",3],["rated",4],["residual",5],["readings",6],["direction",7],["backfed",8],["testability",9],["whyNotTested",10],["note",11],["serves",12]]);
const w193 = new Set<unknown>(["BS EN 61008","BS EN 61009","BS EN 62423","BS 4293","BS 7288","BS EN 60947-2"]);
function a194(v: unknown): number {
  return w193.has(v) ? 0 : -1;
}
function a195(v: unknown): number {
  let n = -1;
  n = a194(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const w196 = new Set<unknown>(["AC","A","F","B"]);
function a197(v: unknown): number {
  return w196.has(v) ? 0 : -1;
}
function a198(v: unknown): number {
  let n = -1;
  n = a197(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const w199 = new Set<unknown>(["general","S"]);
function a200(v: unknown): number {
  return w199.has(v) ? 0 : -1;
}
function a201(v: unknown): number {
  let n = -1;
  n = a200(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const p202 = new Map([["atRated",0],["atFive",1],["button",2]]);
function a203(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "second", false) === undefined ? 0 : -1;
}
function a204(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p55.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a203(o[name]); break;
      case 1: n = a35(o[name]); break;
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
function a205(v: unknown): number {
  let n = -1;
  n = a204(v);
  if (n >= 0) return n;
  n = a61(v);
  if (n >= 0) return n;
  return -1;
}
const w206 = new Set<unknown>(["trips","does-not-trip"]);
function a207(v: unknown): number {
  return w206.has(v) ? 0 : -1;
}
function a208(v: unknown): number {
  let n = -1;
  n = a207(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
function a209(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p202.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a205(o[name]); break;
      case 1: n = a205(o[name]); break;
      case 2: n = a208(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const w210 = new Set<unknown>(["either-way","one-way"]);
function a211(v: unknown): number {
  return w210.has(v) ? 0 : -1;
}
function a212(v: unknown): number {
  let n = -1;
  n = a211(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const w213 = new Set<unknown>(["can-be-tested","cannot-be-tested"]);
function a214(v: unknown): number {
  return w213.has(v) ? 0 : -1;
}
function a215(v: unknown): number {
  let n = -1;
  n = a214(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const w216 = new Set<unknown>(["whole-board","listed"]);
function a217(v: unknown): number {
  return w216.has(v) ? 0 : -1;
}
function a218(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p192.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a195(o[name]); break;
      case 2: n = a198(o[name]); break;
      case 3: n = a201(o[name]); break;
      case 4: n = a113(o[name]); break;
      case 5: n = a113(o[name]); break;
      case 6: n = a209(o[name]); break;
      case 7: n = a212(o[name]); break;
      case 8: n = a102(o[name]); break;
      case 9: n = a215(o[name]); break;
      case 10: n = a7(o[name]); break;
      case 11: n = a7(o[name]); break;
      case 12: needed--; n = a217(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a219(v: unknown): number {
  if (!Array.isArray(v) || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a218(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p220 = new Map([["value",0],["upstream",1],["devicesOfOneMake",2]]);
const p221 = new Map([["standard",0],["rated",1]]);
function a222(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p221.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a105(o[name]); break;
      case 1: needed--; n = a113(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a223(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p220.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a113(o[name]); break;
      case 1: needed--; n = a222(o[name]); break;
      case 2: n = a102(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p224 = new Map([["zdb",0],["faultCurrent",1],["faultCurrentMethod",2],["polarity",3],["phaseSequence",4],["insulationLiveLive",5],["insulationLiveEarth",6]]);
function a225(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p224.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a148(o[name]); break;
      case 1: n = a168(o[name]); break;
      case 2: n = a171(o[name]); break;
      case 3: n = a176(o[name]); break;
      case 4: n = a176(o[name]); break;
      case 5: n = a148(o[name]); break;
      case 6: n = a148(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p226 = new Map([["id",0],["designation",1],["description",2],["shape",3],["load",4],["phases",5],["points",6],["socketOutlets",7],["device",8],["rcd",9],["cable",10],["designCurrent",11],["readings",12],["sharedMisfits",13],["liveBeforeContinuity",14],["note",15]]);
const w227 = new Set<unknown>(["ring","radial","distribution"]);
function a228(v: unknown): number {
  return w227.has(v) ? 0 : -1;
}
function a229(v: unknown): number {
  let n = -1;
  n = a228(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const w230 = new Set<unknown>(["lighting","socket-outlets","cooker","shower","water-heater","storage-heating","heating","motor","vehicle-charging","alarm","fixed-equipment","board","mixed"]);
function a231(v: unknown): number {
  return w230.has(v) ? 0 : -1;
}
function a232(v: unknown): number {
  let n = -1;
  n = a231(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
function a233(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 0 && (v as number) <= 1000 ? 0 : -1;
}
function a234(v: unknown): number {
  return v === "none" ? 0 : -1;
}
const p235 = new Map([["own",0]]);
const p236 = new Map([["id",0],["standard",1],["type",2],["delay",3],["rated",4],["residual",5],["readings",6],["direction",7],["backfed",8],["testability",9],["whyNotTested",10],["note",11]]);
function a237(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p236.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a4(o[name]); break;
      case 1: n = a195(o[name]); break;
      case 2: n = a198(o[name]); break;
      case 3: n = a201(o[name]); break;
      case 4: n = a113(o[name]); break;
      case 5: n = a113(o[name]); break;
      case 6: n = a209(o[name]); break;
      case 7: n = a212(o[name]); break;
      case 8: n = a102(o[name]); break;
      case 9: n = a215(o[name]); break;
      case 10: n = a7(o[name]); break;
      case 11: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a238(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p235.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a237(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p239 = new Map([["board",0]]);
function a240(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p239.get(name);
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
function a241(v: unknown): number {
  let n = -1;
  n = a234(v);
  if (n >= 0) return n;
  n = a238(v);
  if (n >= 0) return n;
  n = a240(v);
  if (n >= 0) return n;
  return -1;
}
function a242(v: unknown): number {
  let n = -1;
  n = a241(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const p243 = new Map([["kind",0],["insulation",1],["material",2],["line",3],["neutral",4],["cpc",5],["cpcArrangement",6],["cores",7],["methods",8],["length",9],["ambient",10],["grouped",11],["surroundedByInsulation",12]]);
const w244 = new Set<unknown>(["flat-twin-and-cpc","singles","multicore","armoured","mineral","rubber","lead-sheathed","flexible","busbar"]);
function a245(v: unknown): number {
  return w244.has(v) ? 0 : -1;
}
function a246(v: unknown): number {
  let n = -1;
  n = a245(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const w247 = new Set<unknown>(["70C-thermoplastic","90C-thermoplastic","90C-thermosetting","60C-rubber","mineral-covered","mineral-bare"]);
function a248(v: unknown): number {
  return w247.has(v) ? 0 : -1;
}
function a249(v: unknown): number {
  let n = -1;
  n = a248(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const w250 = new Set<unknown>(["in-cable","separate","armour","sheath","conduit","none"]);
function a251(v: unknown): number {
  return w250.has(v) ? 0 : -1;
}
function a252(v: unknown): number {
  let n = -1;
  n = a251(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
function a253(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 1 && (v as number) <= 61 ? 0 : -1;
}
const w254 = new Set<unknown>(["100","101","102","103","A","B","C","D","E","F"]);
function a255(v: unknown): number {
  return w254.has(v) ? 0 : -1;
}
function a256(v: unknown): number {
  if (!Array.isArray(v) || v.length < 1 || v.length > 10) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a255(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a257(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "celsius", true) === undefined ? 0 : -1;
}
function a258(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p97.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a257(o[name]); break;
      case 1: needed--; n = a257(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a259(v: unknown): number {
  let n = -1;
  n = a56(v);
  if (n >= 0) return n;
  n = a258(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const p260 = new Map([["arrangement",0],["circuits",1]]);
const w261 = new Set<unknown>(["bunched","single-layer-surface","single-layer-tray","single-layer-ladder"]);
function a262(v: unknown): number {
  return w261.has(v) ? 0 : -1;
}
function a263(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 1 && (v as number) <= 100 ? 0 : -1;
}
function a264(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p260.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a262(o[name]); break;
      case 1: needed--; n = a263(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a265(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p243.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a246(o[name]); break;
      case 1: n = a249(o[name]); break;
      case 2: n = a130(o[name]); break;
      case 3: n = a127(o[name]); break;
      case 4: n = a127(o[name]); break;
      case 5: n = a127(o[name]); break;
      case 6: n = a252(o[name]); break;
      case 7: n = a253(o[name]); break;
      case 8: n = a256(o[name]); break;
      case 9: n = a134(o[name]); break;
      case 10: n = a259(o[name]); break;
      case 11: n = a264(o[name]); break;
      case 12: n = a134(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p266 = new Map([["temperature",0],["r1",1],["rn",2],["r2",3],["crossLineNeutral",4],["crossLineCpc",5],["r1r2",6],["r2Only",7],["insulationVoltage",8],["insulationLiveLive",9],["insulationLiveEarth",10],["insulationBetweenNeutrals",11],["polarity",12],["zs",13],["faultCurrent",14],["leakage",15]]);
const p267 = new Map([["point",0],["reading",1]]);
function a268(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p267.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a7(o[name]); break;
      case 1: needed--; n = a148(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a269(v: unknown): number {
  if (!Array.isArray(v) || v.length > 200) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a268(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const w270 = new Set<unknown>(["250 V","500 V","1000 V"]);
function a271(v: unknown): number {
  return w270.has(v) ? 0 : -1;
}
function a272(v: unknown): number {
  let n = -1;
  n = a271(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
function a273(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p266.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a62(o[name]); break;
      case 1: n = a148(o[name]); break;
      case 2: n = a148(o[name]); break;
      case 3: n = a148(o[name]); break;
      case 4: n = a269(o[name]); break;
      case 5: n = a269(o[name]); break;
      case 6: n = a148(o[name]); break;
      case 7: n = a148(o[name]); break;
      case 8: n = a272(o[name]); break;
      case 9: n = a148(o[name]); break;
      case 10: n = a148(o[name]); break;
      case 11: n = a148(o[name]); break;
      case 12: n = a176(o[name]); break;
      case 13: n = a148(o[name]); break;
      case 14: n = a168(o[name]); break;
      case 15: n = a168(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p274 = new Map([["reason",0],["at",1],["by",2]]);
function a275(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p274.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a28(o[name]); break;
      case 1: needed--; n = a35(o[name]); break;
      case 2: n = a4(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a276(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p226.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
      case 2: needed--; n = a7(o[name]); break;
      case 3: n = a229(o[name]); break;
      case 4: n = a232(o[name]); break;
      case 5: n = a95(o[name]); break;
      case 6: n = a233(o[name]); break;
      case 7: n = a102(o[name]); break;
      case 8: n = a122(o[name]); break;
      case 9: n = a242(o[name]); break;
      case 10: n = a265(o[name]); break;
      case 11: n = a113(o[name]); break;
      case 12: n = a273(o[name]); break;
      case 13: n = a182(o[name]); break;
      case 14: n = a275(o[name]); break;
      case 15: n = a28(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a277(v: unknown): number {
  if (!Array.isArray(v) || v.length > 400) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a276(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a278(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 4, 0];
  for (const name in o) {
    const place = p184.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
      case 2: n = a7(o[name]); break;
      case 3: needed--; n = a188(o[name]); break;
      case 4: n = a95(o[name]); break;
      case 5: n = a191(o[name]); break;
      case 6: n = a158(o[name]); break;
      case 7: n = a219(o[name]); break;
      case 8: n = a223(o[name]); break;
      case 9: n = a225(o[name]); break;
      case 10: needed--; n = a277(o[name]); break;
      case 11: n = a182(o[name]); break;
      case 12: n = a28(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a279(v: unknown): number {
  if (!Array.isArray(v) || v.length < 1 || v.length > 200) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a278(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p280 = new Map([["places",0],["enclosures",1],["sections",2],["joints",3],["supplementaryBonds",4],["electrodes",5],["loads",6],["surgeDevices",7],["arcDevices",8]]);
const p281 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["kind",6],["comers",7],["wetness",8],["conducting",9],["special",10],["note",11]]);
function a282(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 1 && (v as number) <= 10000 ? 0 : -1;
}
const w283 = new Set<unknown>(["room","hall-or-stair","cupboard","plant-room","roof-space","under-floor","outbuilding","outdoors","public-area","other"]);
function a284(v: unknown): number {
  return w283.has(v) ? 0 : -1;
}
function a285(v: unknown): number {
  let n = -1;
  n = a284(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const w286 = new Set<unknown>(["skilled","keeper","many-keys","anyone","children"]);
function a287(v: unknown): number {
  return w286.has(v) ? 0 : -1;
}
function a288(v: unknown): number {
  let n = -1;
  n = a287(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const w289 = new Set<unknown>(["dry","damp","wet"]);
function a290(v: unknown): number {
  return w289.has(v) ? 0 : -1;
}
function a291(v: unknown): number {
  let n = -1;
  n = a290(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const w292 = new Set<unknown>(["none","bath-or-shower","pool","sauna","building-site","farm","conducting-place","caravan-site","marina","medical","exhibition","mobile-unit","vehicle-charging","fairground","floor-or-ceiling-heating","other"]);
function a293(v: unknown): number {
  return w292.has(v) ? 0 : -1;
}
function a294(v: unknown): number {
  if (!Array.isArray(v) || v.length < 1 || v.length > 16) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a293(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a295(v: unknown): number {
  let n = -1;
  n = a294(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
function a296(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p281.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a282(o[name]); break;
      case 6: n = a285(o[name]); break;
      case 7: n = a288(o[name]); break;
      case 8: n = a291(o[name]); break;
      case 9: n = a102(o[name]); break;
      case 10: n = a295(o[name]); break;
      case 11: n = a28(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a297(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a296(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p298 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["kind",6],["covering",7],["fixing",8],["screws",9],["screwsMade",10],["firmness",11],["hinges",12],["openedBy",13],["lockWorks",14],["keyHolder",15],["comers",16],["wear",17],["entry",18],["obstacle",19],["height",20],["aside",21],["openings",22],["note",23]]);
const w299 = new Set<unknown>(["cupboard","board","box","trunking","accessory","barrier","obstacle"]);
function a300(v: unknown): number {
  return w299.has(v) ? 0 : -1;
}
function a301(v: unknown): number {
  let n = -1;
  n = a300(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const w302 = new Set<unknown>(["double-or-reinforced","sheathed","basic-sound","basic-damaged","bare"]);
function a303(v: unknown): number {
  return w302.has(v) ? 0 : -1;
}
function a304(v: unknown): number {
  let n = -1;
  n = a303(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const w305 = new Set<unknown>(["screws","hinge-and-catch","clips","laid-on","none"]);
function a306(v: unknown): number {
  return w305.has(v) ? 0 : -1;
}
function a307(v: unknown): number {
  let n = -1;
  n = a306(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
function a308(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 0 && (v as number) <= 100 ? 0 : -1;
}
function a309(v: unknown): number {
  let n = -1;
  n = a308(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const w310 = new Set<unknown>(["whole","fixings-missing","loose-or-hanging","gone"]);
function a311(v: unknown): number {
  return w310.has(v) ? 0 : -1;
}
function a312(v: unknown): number {
  let n = -1;
  n = a311(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const w313 = new Set<unknown>(["destruction","interlock","tool","key","hand","stands-open"]);
function a314(v: unknown): number {
  return w313.has(v) ? 0 : -1;
}
function a315(v: unknown): number {
  let n = -1;
  n = a314(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const w316 = new Set<unknown>(["skilled","keeper","many","anyone"]);
function a317(v: unknown): number {
  return w316.has(v) ? 0 : -1;
}
function a318(v: unknown): number {
  let n = -1;
  n = a317(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const w319 = new Set<unknown>(["nothing","knocks-or-rubbing","stored-or-moved-things","heat","weather","rodents"]);
function a320(v: unknown): number {
  return w319.has(v) ? 0 : -1;
}
function a321(v: unknown): number {
  if (!Array.isArray(v) || v.length < 1 || v.length > 6) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a320(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a322(v: unknown): number {
  let n = -1;
  n = a321(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const w323 = new Set<unknown>(["nothing","wire-on-top","finger-short-of-live","finger-to-live","hand"]);
function a324(v: unknown): number {
  return w323.has(v) ? 0 : -1;
}
function a325(v: unknown): number {
  let n = -1;
  n = a324(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const w326 = new Set<unknown>(["secured","not-secured","none"]);
function a327(v: unknown): number {
  return w326.has(v) ? 0 : -1;
}
function a328(v: unknown): number {
  let n = -1;
  n = a327(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const p329 = new Map([["shape",0],["face",1],["easyReach",2],["width",3],["height",4],["depth",5],["offset",6],["behind",7]]);
const w330 = new Set<unknown>(["rectangular","round","irregular"]);
function a331(v: unknown): number {
  return w330.has(v) ? 0 : -1;
}
function a332(v: unknown): number {
  let n = -1;
  n = a331(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const w333 = new Set<unknown>(["front","side","top","bottom"]);
function a334(v: unknown): number {
  return w333.has(v) ? 0 : -1;
}
function a335(v: unknown): number {
  let n = -1;
  n = a334(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const w336 = new Set<unknown>(["stops-wire","stops-finger","none"]);
function a337(v: unknown): number {
  return w336.has(v) ? 0 : -1;
}
function a338(v: unknown): number {
  let n = -1;
  n = a337(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
function a339(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p329.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a332(o[name]); break;
      case 1: n = a335(o[name]); break;
      case 2: n = a102(o[name]); break;
      case 3: n = a134(o[name]); break;
      case 4: n = a134(o[name]); break;
      case 5: n = a134(o[name]); break;
      case 6: n = a134(o[name]); break;
      case 7: n = a338(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a340(v: unknown): number {
  if (!Array.isArray(v) || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a339(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a341(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p298.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a282(o[name]); break;
      case 6: n = a301(o[name]); break;
      case 7: n = a304(o[name]); break;
      case 8: n = a307(o[name]); break;
      case 9: n = a309(o[name]); break;
      case 10: n = a309(o[name]); break;
      case 11: n = a312(o[name]); break;
      case 12: n = a102(o[name]); break;
      case 13: n = a315(o[name]); break;
      case 14: n = a102(o[name]); break;
      case 15: n = a318(o[name]); break;
      case 16: n = a288(o[name]); break;
      case 17: n = a322(o[name]); break;
      case 18: n = a325(o[name]); break;
      case 19: n = a328(o[name]); break;
      case 20: n = a134(o[name]); break;
      case 21: n = a134(o[name]); break;
      case 22: n = a340(o[name]); break;
      case 23: n = a28(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a342(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a341(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p343 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["from",6],["to",7],["cable",8],["insulation",9],["material",10],["line",11],["neutral",12],["cpc",13],["length",14],["lengthMethod",15],["layer",16],["methods",17],["surroundings",18],["depth",19],["mechanical",20],["note",21]]);
const w344 = new Set<unknown>(["taped","by-drawing","estimated"]);
function a345(v: unknown): number {
  return w344.has(v) ? 0 : -1;
}
function a346(v: unknown): number {
  let n = -1;
  n = a345(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
function a347(v: unknown): number {
  let n = -1;
  n = a256(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const w348 = new Set<unknown>(["air","masonry","plaster","partition","thermal-insulation","metal-conduit","plastic-conduit","metal-trunking","plastic-trunking","tray-or-ladder","ground","water"]);
function a349(v: unknown): number {
  return w348.has(v) ? 0 : -1;
}
function a350(v: unknown): number {
  if (!Array.isArray(v) || v.length < 1 || v.length > 12) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a349(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a351(v: unknown): number {
  let n = -1;
  n = a350(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
function a352(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p343.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a282(o[name]); break;
      case 6: n = a7(o[name]); break;
      case 7: n = a7(o[name]); break;
      case 8: n = a246(o[name]); break;
      case 9: n = a249(o[name]); break;
      case 10: n = a130(o[name]); break;
      case 11: n = a127(o[name]); break;
      case 12: n = a127(o[name]); break;
      case 13: n = a127(o[name]); break;
      case 14: n = a134(o[name]); break;
      case 15: n = a346(o[name]); break;
      case 16: n = a304(o[name]); break;
      case 17: n = a347(o[name]); break;
      case 18: n = a351(o[name]); break;
      case 19: n = a134(o[name]); break;
      case 20: n = a102(o[name]); break;
      case 21: n = a28(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a353(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a352(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p354 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["between",6],["enclosure",7],["method",8],["enclosed",9],["accessible",10],["maintenanceFree",11],["state",12],["note",13]]);
function a355(v: unknown): number {
  if (!Array.isArray(v) || v.length > 20) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a4(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const w356 = new Set<unknown>(["screwed","sprung","crimped","soldered","plugged","twisted"]);
function a357(v: unknown): number {
  return w356.has(v) ? 0 : -1;
}
function a358(v: unknown): number {
  let n = -1;
  n = a357(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
function a359(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p354.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a282(o[name]); break;
      case 6: n = a355(o[name]); break;
      case 7: n = a4(o[name]); break;
      case 8: n = a358(o[name]); break;
      case 9: n = a102(o[name]); break;
      case 10: n = a102(o[name]); break;
      case 11: n = a102(o[name]); break;
      case 12: n = a151(o[name]); break;
      case 13: n = a28(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a360(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a359(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p361 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["from",6],["to",7],["connected",8],["size",9],["material",10],["condition",11],["resistance",12],["note",13]]);
function a362(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p361.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a282(o[name]); break;
      case 6: n = a7(o[name]); break;
      case 7: n = a7(o[name]); break;
      case 8: n = a102(o[name]); break;
      case 9: n = a127(o[name]); break;
      case 10: n = a130(o[name]); break;
      case 11: n = a151(o[name]); break;
      case 12: n = a148(o[name]); break;
      case 13: n = a28(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a363(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a362(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p364 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["kind",6],["resistance",7],["season",8],["accessible",9],["state",10],["note",11]]);
const w365 = new Set<unknown>(["rod","plate","tape-or-wire","foundation","buried-steel","other"]);
function a366(v: unknown): number {
  return w365.has(v) ? 0 : -1;
}
function a367(v: unknown): number {
  let n = -1;
  n = a366(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const w368 = new Set<unknown>(["wet","dry","frozen"]);
function a369(v: unknown): number {
  return w368.has(v) ? 0 : -1;
}
function a370(v: unknown): number {
  let n = -1;
  n = a369(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
function a371(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p364.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a282(o[name]); break;
      case 6: n = a367(o[name]); break;
      case 7: n = a148(o[name]); break;
      case 8: n = a370(o[name]); break;
      case 9: n = a102(o[name]); break;
      case 10: n = a151(o[name]); break;
      case 11: n = a28(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a372(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a371(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p373 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["kind",6],["power",7],["fixed",8],["note",9]]);
function a374(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "watt", false) === undefined ? 0 : -1;
}
function a375(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "watt", true) === undefined ? 0 : -1;
}
function a376(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p97.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a375(o[name]); break;
      case 1: needed--; n = a375(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a377(v: unknown): number {
  let n = -1;
  n = a374(v);
  if (n >= 0) return n;
  n = a376(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
function a378(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p373.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a282(o[name]); break;
      case 6: n = a232(o[name]); break;
      case 7: n = a377(o[name]); break;
      case 8: n = a102(o[name]); break;
      case 9: n = a28(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a379(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a378(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p380 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["fitted",6],["type",7],["indicator",8],["connection",9],["leads",10],["backupStandard",11],["backupRated",12],["note",13]]);
const w381 = new Set<unknown>(["1","2","3","1+2","2+3","1+2+3"]);
function a382(v: unknown): number {
  return w381.has(v) ? 0 : -1;
}
function a383(v: unknown): number {
  let n = -1;
  n = a382(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const w384 = new Set<unknown>(["in-order","failed","no-indicator"]);
function a385(v: unknown): number {
  return w384.has(v) ? 0 : -1;
}
function a386(v: unknown): number {
  let n = -1;
  n = a385(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
const w387 = new Set<unknown>(["before-main-switch","after-main-switch","behind-rcd"]);
function a388(v: unknown): number {
  return w387.has(v) ? 0 : -1;
}
function a389(v: unknown): number {
  let n = -1;
  n = a388(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
function a390(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p380.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a282(o[name]); break;
      case 6: n = a102(o[name]); break;
      case 7: n = a383(o[name]); break;
      case 8: n = a386(o[name]); break;
      case 9: n = a389(o[name]); break;
      case 10: n = a134(o[name]); break;
      case 11: n = a106(o[name]); break;
      case 12: n = a113(o[name]); break;
      case 13: n = a28(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a391(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a390(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p392 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["feeds",6],["fitted",7],["rated",8],["testability",9],["button",10],["indicator",11],["note",12]]);
function a393(v: unknown): number {
  if (!Array.isArray(v) || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a4(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a394(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p392.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a282(o[name]); break;
      case 6: n = a393(o[name]); break;
      case 7: n = a102(o[name]); break;
      case 8: n = a113(o[name]); break;
      case 9: n = a215(o[name]); break;
      case 10: n = a208(o[name]); break;
      case 11: n = a386(o[name]); break;
      case 12: n = a28(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a395(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a394(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a396(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p280.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a297(o[name]); break;
      case 1: n = a342(o[name]); break;
      case 2: n = a353(o[name]); break;
      case 3: n = a360(o[name]); break;
      case 4: n = a363(o[name]); break;
      case 5: n = a372(o[name]); break;
      case 6: n = a379(o[name]); break;
      case 7: n = a391(o[name]); break;
      case 8: n = a395(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p397 = new Map([["item",0],["outcome",1],["observations",2],["reason",3]]);
const w398 = new Set<unknown>(["intake.cut-out","intake.service-cable","intake.meter-tails","intake.meter","intake.isolator","intake.polarity","earthing.arrangement","earthing.conductor","earthing.electrode","earthing.main-terminal","earthing.main-bonding","earthing.bonding-connections","earthing.supplementary","boards.access","boards.fixing","boards.enclosure","boards.non-combustible","boards.main-switch","boards.devices","boards.single-pole","boards.connections","boards.overheating","boards.rcd","boards.surge","boards.arc-fault","boards.labels","circuits.identification","circuits.support","circuits.insulation","circuits.unsheathed","circuits.capacity","circuits.protection","circuits.cpc","circuits.concealed","circuits.additional-protection","circuits.barriers","circuits.segregation","circuits.neutrals","circuits.terminations","accessories.condition","accessories.connections","accessories.single-pole-switches","accessories.external-influences","accessories.isolation","accessories.emergency","accessories.luminaires","accessories.fixed-equipment","fire.hot-surfaces","fire.escape-routes","fire.contents","fire.construction","fire.alarms","bathrooms.rcd","bathrooms.bonding","bathrooms.ip","bathrooms.equipment","outdoors.rcd","outdoors.weather","outdoors.buried","outdoors.outbuildings","special.pools","special.farms","special.conducting-places","special.medical","special.caravans-boats","special.locations","sources.generators","sources.photovoltaic","sources.storage","sources.vehicle-charging","sources.direction","notices.diagram","notices.other-sources","notices.isolation","notices.voltage","notices.inspection","notices.rcd-test"]);
function a399(v: unknown): number {
  return w398.has(v) ? 0 : -1;
}
const w400 = new Set<unknown>(["in-order","observed","limited","not-verified","not-applicable"]);
function a401(v: unknown): number {
  return w400.has(v) ? 0 : -1;
}
function a402(v: unknown): number {
  if (!Array.isArray(v) || v.length > 40) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a4(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a403(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p397.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a399(o[name]); break;
      case 1: needed--; n = a401(o[name]); break;
      case 2: n = a402(o[name]); break;
      case 3: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a404(v: unknown): number {
  if (!Array.isArray(v) || v.length > 400) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a403(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p405 = new Map([["id",0],["board",1],["circuit",2],["place",3],["things",4],["brings",5],["what",6],["topic",7],["facts",8],["positions",9],["answers",10],["regulations",11],["photographs",12],["choice",13],["remedy",14],["madeSafe",15],["untold",16]]);
const p406 = new Map([["thing",0],["board",1],["quantity",2]]);
function a407(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p406.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a282(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a408(v: unknown): number {
  if (!Array.isArray(v) || v.length > 100) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a407(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a409(v: unknown): number {
  let n = -1;
  n = a101(v);
  if (n >= 0) return n;
  n = a7(v);
  if (n >= 0) return n;
  n = a91(v);
  if (n >= 0) return n;
  return -1;
}
function a410(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  let all = 0;
  for (const name in v) {
    if (a4(name) < 0) return -1;
    const n = a409((v as Members)[name]);
    if (n < 0) return -1;
    all += n + 1;
  }
  return all;
}
const p411 = new Map([["position",0],["reason",1]]);
function a412(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p411.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a28(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a413(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  let all = 0;
  for (const name in v) {
    if (a4(name) < 0) return -1;
    const n = a412((v as Members)[name]);
    if (n < 0) return -1;
    all += n + 1;
  }
  return all;
}
const p414 = new Map([["check",0],["board",1],["circuit",2],["part",3]]);
function a415(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p414.get(name);
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
function a416(v: unknown): number {
  if (!Array.isArray(v) || v.length > 100) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a415(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a417(v: unknown): number {
  if (!Array.isArray(v) || v.length > 10) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a7(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const r418 = /^[0-9a-f]{64}$/;
function a419(v: unknown): number {
  return typeof v === "string" && r418.test(v) ? 0 : -1;
}
function a420(v: unknown): number {
  if (!Array.isArray(v) || v.length > 40) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a419(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p421 = new Map([["classification",0],["reason",1],["by",2],["at",3]]);
const w422 = new Set<unknown>(["C1","C2","C3","FI","none"]);
function a423(v: unknown): number {
  return w422.has(v) ? 0 : -1;
}
function a424(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p421.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a423(o[name]); break;
      case 1: needed--; n = a28(o[name]); break;
      case 2: needed--; n = a4(o[name]); break;
      case 3: n = a35(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p425 = new Map([["done",0],["told",1],["at",2],["reply",3]]);
function a426(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p425.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a28(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
      case 2: needed--; n = a35(o[name]); break;
      case 3: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a427(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p405.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: needed--; n = a7(o[name]); break;
      case 4: n = a408(o[name]); break;
      case 5: n = a396(o[name]); break;
      case 6: needed--; n = a28(o[name]); break;
      case 7: n = a4(o[name]); break;
      case 8: n = a410(o[name]); break;
      case 9: n = a413(o[name]); break;
      case 10: n = a416(o[name]); break;
      case 11: n = a417(o[name]); break;
      case 12: n = a420(o[name]); break;
      case 13: n = a424(o[name]); break;
      case 14: n = a28(o[name]); break;
      case 15: n = a426(o[name]); break;
      case 16: n = a28(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a428(v: unknown): number {
  if (!Array.isArray(v) || v.length > 500) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a427(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p429 = new Map([["topic",0],["point",1],["position",2],["reason",3]]);
function a430(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 4, 0];
  for (const name in o) {
    const place = p429.get(name);
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
function a431(v: unknown): number {
  if (!Array.isArray(v) || v.length > 200) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a430(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p432 = new Map([["sha256",0],["name",1],["description",2],["place",3],["taken",4]]);
function a433(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p432.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a419(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
      case 2: needed--; n = a7(o[name]); break;
      case 3: n = a7(o[name]); break;
      case 4: n = a35(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a434(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a433(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p435 = new Map([["check",0],["note",1]]);
function a436(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p435.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a28(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a437(v: unknown): number {
  if (!Array.isArray(v) || v.length > 200) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a436(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p438 = new Map([["outcome",0],["generalCondition",1],["nextInspection",2]]);
const w439 = new Set<unknown>(["satisfactory","unsatisfactory"]);
function a440(v: unknown): number {
  return w439.has(v) ? 0 : -1;
}
const p441 = new Map([["by",0],["reason",1]]);
function a442(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p441.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a11(o[name]); break;
      case 1: needed--; n = a28(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a443(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p438.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a440(o[name]); break;
      case 1: n = a28(o[name]); break;
      case 2: n = a442(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p444 = new Map([["person",0],["capacity",1],["at",2],["content",3],["drawn",4]]);
const w445 = new Set<unknown>(["inspected-and-tested","authorised-for-issue"]);
function a446(v: unknown): number {
  return w445.has(v) ? 0 : -1;
}
const r447 = /^[ML0-9. -]*$/;
function a448(v: unknown): number {
  return typeof v === "string" && v.length <= 4000 && r447.test(v) ? 0 : -1;
}
function a449(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p444.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a446(o[name]); break;
      case 2: needed--; n = a35(o[name]); break;
      case 3: n = a419(o[name]); break;
      case 4: n = a448(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a450(v: unknown): number {
  if (!Array.isArray(v) || v.length > 20) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a449(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a451(v: unknown): number {
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
      case 7: needed--; n = a32(o[name]); break;
      case 8: needed--; n = a37(o[name]); break;
      case 9: needed--; n = a40(o[name]); break;
      case 10: needed--; n = a51(o[name]); break;
      case 11: n = a53(o[name]); break;
      case 12: n = a63(o[name]); break;
      case 13: n = a70(o[name]); break;
      case 14: n = a75(o[name]); break;
      case 15: needed--; n = a81(o[name]); break;
      case 16: needed--; n = a86(o[name]); break;
      case 17: needed--; n = a183(o[name]); break;
      case 18: needed--; n = a279(o[name]); break;
      case 19: n = a396(o[name]); break;
      case 20: needed--; n = a404(o[name]); break;
      case 21: needed--; n = a428(o[name]); break;
      case 22: n = a431(o[name]); break;
      case 23: needed--; n = a434(o[name]); break;
      case 24: n = a437(o[name]); break;
      case 25: n = a443(o[name]); break;
      case 26: needed--; n = a450(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}

/** How many members the objects of the data have together; -1 where it does not plainly fit, each member in its order. */
export function accepted(data: unknown): number {
  return a451(data);
}
