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
const p12 = new Map([["client",0],["premises",1],["use",2],["tenure",3],["nation",4],["purpose",5],["letting",6],["ageOfInstallation",7],["alterations",8],["records",9],["lastInspection",10]]);
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
const p34 = new Map([["orderedBy",0],["occupied",1],["equipment",2],["starts",3],["granted",4],["equipmentChecked",5]]);
const w35 = new Set<unknown>(["owner","landlord","agent","tenant","buyer","employer","authority","insurer","other"]);
function a36(v: unknown): number {
  return w35.has(v) ? 0 : -1;
}
function a37(v: unknown): number {
  let n = -1;
  n = a36(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a38(v: unknown): number {
  return typeof v === "boolean" ? 0 : -1;
}
function a39(v: unknown): number {
  let n = -1;
  n = a38(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a40(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p34.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a37(o[name]); break;
      case 1: n = a39(o[name]); break;
      case 2: n = a39(o[name]); break;
      case 3: n = a11(o[name]); break;
      case 4: n = a11(o[name]); break;
      case 5: n = a11(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const r41 = /^(?:[^\p{Cc}\p{Cs}]|[\n\t])*$/u;
function a42(v: unknown): number {
  return typeof v === "string" && v.length >= 1 && v.length <= 4000 && r41.test(v) ? 0 : -1;
}
const p43 = new Map([["kind",0],["date",1],["reference",2]]);
function a44(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p43.get(name);
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
function a45(v: unknown): number {
  if (!Array.isArray(v) || v.length > 50) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a44(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a46(v: unknown): number {
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
      case 6: n = a40(o[name]); break;
      case 7: n = a7(o[name]); break;
      case 8: n = a42(o[name]); break;
      case 9: needed--; n = a45(o[name]); break;
      case 10: n = a11(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p47 = new Map([["date",0],["arrived",1],["left",2],["note",3]]);
const r48 = /^(?:(?:\d\d[2468][048]|\d\d[13579][26]|\d\d0[48]|[02468][048]00|[13579][26]00)-02-29|\d{4}-(?:(?:0[13578]|1[02])-(?:0[1-9]|[12]\d|3[01])|(?:0[469]|11)-(?:0[1-9]|[12]\d|30)|(?:02)-(?:0[1-9]|1\d|2[0-8])))T(?:(?:[01]\d|2[0-3]):[0-5]\d:[0-5]\d(?:\.\d+)?(?:Z|([+-](?:[01]\d|2[0-3]):[0-5]\d)))$/;
function a49(v: unknown): number {
  return typeof v === "string" && r48.test(v) ? 0 : -1;
}
function a50(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p47.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a11(o[name]); break;
      case 1: n = a49(o[name]); break;
      case 2: n = a49(o[name]); break;
      case 3: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a51(v: unknown): number {
  if (!Array.isArray(v) || v.length < 1 || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a50(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p52 = new Map([["id",0],["name",1],["position",2],["firm",3],["address",4],["registration",5]]);
function a53(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p52.get(name);
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
function a54(v: unknown): number {
  if (!Array.isArray(v) || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a53(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p55 = new Map([["id",0],["kind",1],["serial",2],["checked",3],["checkReference",4],["accuracy",5],["leadsNulled",6]]);
const w56 = new Set<unknown>(["continuity","insulation","loop","fault-current","rcd-time","electrode","voltage","temperature"]);
function a57(v: unknown): number {
  return w56.has(v) ? 0 : -1;
}
function a58(v: unknown): number {
  return typeof v === "string" && isAccuracy(v) ? 0 : -1;
}
function a59(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  let all = 0;
  for (const name in v) {
    if (a57(name) < 0) return -1;
    const n = a58((v as Members)[name]);
    if (n < 0) return -1;
    all += n + 1;
  }
  return all;
}
const p60 = new Map([["at",0],["showed",1]]);
function a61(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "ohm", true) === undefined ? 0 : -1;
}
function a62(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p60.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a49(o[name]); break;
      case 1: n = a61(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a63(v: unknown): number {
  if (!Array.isArray(v) || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a62(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a64(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p55.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
      case 2: needed--; n = a7(o[name]); break;
      case 3: n = a11(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a59(o[name]); break;
      case 6: n = a63(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a65(v: unknown): number {
  if (!Array.isArray(v) || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a64(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const w66 = new Set<unknown>(["simple","guarded"]);
function a67(v: unknown): number {
  return w66.has(v) ? 0 : -1;
}
const p68 = new Map([["conductorTemperature",0],["note",1]]);
const p69 = new Map([["shown",0],["at",1],["by",2],["with",3],["method",4],["note",5]]);
function a70(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "celsius", false) === undefined ? 0 : -1;
}
function a71(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p69.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a70(o[name]); break;
      case 1: n = a49(o[name]); break;
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
const p72 = new Map([["notTaken",0],["reason",1]]);
function a73(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p72.get(name);
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
function a74(v: unknown): number {
  let n = -1;
  n = a71(v);
  if (n >= 0) return n;
  n = a73(v);
  if (n >= 0) return n;
  return -1;
}
function a75(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p68.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a74(o[name]); break;
      case 1: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p76 = new Map([["step",0],["outcome",1],["at",2],["by",3]]);
const w77 = new Set<unknown>(["start.competent","start.hazards","start.life-support","start.told","covers.isolated","covers.locked","covers.second-supplies","covers.tester-before","covers.dead","covers.tester-after","insulation.people-away","insulation.electronics","insulation.surge","live.justified","live.leads","live.footing","live.others-away","leave.earthing","leave.bonding","leave.links","leave.covers","leave.rcd-buttons","leave.alarms","leave.freezers","leave.boilers","leave.locks","leave.told"]);
function a78(v: unknown): number {
  return w77.has(v) ? 0 : -1;
}
const w79 = new Set<unknown>(["done","not-applicable"]);
function a80(v: unknown): number {
  return w79.has(v) ? 0 : -1;
}
function a81(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p76.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a78(o[name]); break;
      case 1: needed--; n = a80(o[name]); break;
      case 2: needed--; n = a49(o[name]); break;
      case 3: n = a4(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a82(v: unknown): number {
  if (!Array.isArray(v) || v.length > 200) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a81(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p83 = new Map([["off",0],["on",1]]);
const p84 = new Map([["at",0],["by",1]]);
function a85(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p84.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a49(o[name]); break;
      case 1: n = a4(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a86(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p83.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a85(o[name]); break;
      case 1: n = a85(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a87(v: unknown): number {
  if (!Array.isArray(v) || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a86(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p88 = new Map([["covered",0],["notCovered",1],["agreedWith",2],["agreedOn",3],["sampling",4]]);
const p89 = new Map([["what",0],["population",1],["inspected",2],["defective",3],["how",4]]);
function a90(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 0 && (v as number) <= 100000 ? 0 : -1;
}
function a91(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 4, 0];
  for (const name in o) {
    const place = p89.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a7(o[name]); break;
      case 1: needed--; n = a90(o[name]); break;
      case 2: needed--; n = a90(o[name]); break;
      case 3: needed--; n = a90(o[name]); break;
      case 4: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a92(v: unknown): number {
  if (!Array.isArray(v) || v.length > 100) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a91(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a93(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p88.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a42(o[name]); break;
      case 1: n = a42(o[name]); break;
      case 2: n = a7(o[name]); break;
      case 3: n = a11(o[name]); break;
      case 4: needed--; n = a92(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p94 = new Map([["id",0],["kind",1],["what",2],["why",3],["agreedWith",4]]);
const w95 = new Set<unknown>(["agreed","operational"]);
function a96(v: unknown): number {
  return w95.has(v) ? 0 : -1;
}
function a97(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 4, 0];
  for (const name in o) {
    const place = p94.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a96(o[name]); break;
      case 2: needed--; n = a7(o[name]); break;
      case 3: needed--; n = a42(o[name]); break;
      case 4: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a98(v: unknown): number {
  if (!Array.isArray(v) || v.length > 200) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a97(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p99 = new Map([["earthing",0],["phases",1],["nominalVoltage",2],["public",3],["device",4],["tails",5],["neutral",6],["earthingConductor",7],["bonding",8],["electrode",9],["mainSwitch",10],["otherSources",11],["maximumDemand",12],["readings",13],["sharedMisfits",14],["note",15]]);
const w100 = new Set<unknown>(["TN-S","TN-C-S","TT","IT"]);
function a101(v: unknown): number {
  return w100.has(v) ? 0 : -1;
}
function a102(v: unknown): number {
  let n = -1;
  n = a101(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a103(v: unknown): number {
  return v === 1 ? 0 : -1;
}
function a104(v: unknown): number {
  let n = -1;
  n = a103(v);
  if (n >= 0) return n;
  n = a2(v);
  if (n >= 0) return n;
  return -1;
}
function a105(v: unknown): number {
  let n = -1;
  n = a104(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a106(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "volt", false) === undefined ? 0 : -1;
}
const p107 = new Map([["from",0],["to",1]]);
function a108(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "volt", true) === undefined ? 0 : -1;
}
function a109(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p107.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a108(o[name]); break;
      case 1: needed--; n = a108(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a110(v: unknown): number {
  let n = -1;
  n = a106(v);
  if (n >= 0) return n;
  n = a109(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const p111 = new Map([["standard",0],["type",1],["rated",2],["breakingCapacity",3],["energyClass",4],["letThrough",5],["note",6]]);
const w112 = new Set<unknown>(["BS EN 60898","BS EN 61009","BS EN 60947-2","BS 3871","BS 3036","BS 1361","BS 1362","BS 88-2","BS 88-3","BS 88-2.2","BS 88-6"]);
function a113(v: unknown): number {
  return w112.has(v) ? 0 : -1;
}
function a114(v: unknown): number {
  let n = -1;
  n = a113(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w115 = new Set<unknown>(["1","2","3","4","B","C","D","gG","gM","I","II"]);
function a116(v: unknown): number {
  return w115.has(v) ? 0 : -1;
}
function a117(v: unknown): number {
  let n = -1;
  n = a116(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a118(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "ampere", false) === undefined ? 0 : -1;
}
function a119(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "ampere", true) === undefined ? 0 : -1;
}
function a120(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p107.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a119(o[name]); break;
      case 1: needed--; n = a119(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a121(v: unknown): number {
  let n = -1;
  n = a118(v);
  if (n >= 0) return n;
  n = a120(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a122(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 1 && (v as number) <= 3 ? 0 : -1;
}
const p123 = new Map([["value",0],["from",1]]);
function a124(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "ampere-squared-second", false) === undefined ? 0 : -1;
}
function a125(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "ampere-squared-second", true) === undefined ? 0 : -1;
}
function a126(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p107.get(name);
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
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a128(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p123.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a127(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a129(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p111.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a114(o[name]); break;
      case 1: n = a117(o[name]); break;
      case 2: n = a121(o[name]); break;
      case 3: n = a121(o[name]); break;
      case 4: n = a122(o[name]); break;
      case 5: n = a128(o[name]); break;
      case 6: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a130(v: unknown): number {
  let n = -1;
  n = a129(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const p131 = new Map([["size",0],["material",1],["length",2],["lengthFound",3]]);
function a132(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "square-millimetre", false) === undefined ? 0 : -1;
}
function a133(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "square-millimetre", true) === undefined ? 0 : -1;
}
function a134(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p107.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a133(o[name]); break;
      case 1: needed--; n = a133(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a135(v: unknown): number {
  let n = -1;
  n = a132(v);
  if (n >= 0) return n;
  n = a134(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w136 = new Set<unknown>(["copper","aluminium"]);
function a137(v: unknown): number {
  return w136.has(v) ? 0 : -1;
}
function a138(v: unknown): number {
  let n = -1;
  n = a137(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a139(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "metre", false) === undefined ? 0 : -1;
}
function a140(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "metre", true) === undefined ? 0 : -1;
}
function a141(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p107.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a140(o[name]); break;
      case 1: needed--; n = a140(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a142(v: unknown): number {
  let n = -1;
  n = a139(v);
  if (n >= 0) return n;
  n = a141(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w143 = new Set<unknown>(["taped","by-drawing","estimated","unknown"]);
function a144(v: unknown): number {
  return w143.has(v) ? 0 : -1;
}
function a145(v: unknown): number {
  let n = -1;
  n = a144(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a146(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p131.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a135(o[name]); break;
      case 1: n = a138(o[name]); break;
      case 2: n = a142(o[name]); break;
      case 3: n = a145(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p147 = new Map([["size",0],["material",1],["length",2],["lengthFound",3],["arrangement",4],["sheathed",5],["mechanicallyProtected",6]]);
const w148 = new Set<unknown>(["separate","in-cable","buried"]);
function a149(v: unknown): number {
  return w148.has(v) ? 0 : -1;
}
function a150(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p147.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a135(o[name]); break;
      case 1: n = a138(o[name]); break;
      case 2: n = a142(o[name]); break;
      case 3: n = a145(o[name]); break;
      case 4: n = a149(o[name]); break;
      case 5: n = a39(o[name]); break;
      case 6: n = a39(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p151 = new Map([["id",0],["to",1],["description",2],["service",3],["extraneous",4],["partResistance",5],["connected",6],["condition",7],["heatDamage",8],["size",9],["material",10],["length",11],["lengthFound",12],["resistance",13]]);
const w152 = new Set<unknown>(["water","gas","oil","structural-steel","lightning-protection","heating","other"]);
function a153(v: unknown): number {
  return w152.has(v) ? 0 : -1;
}
const w154 = new Set<unknown>(["present","no-such-service"]);
function a155(v: unknown): number {
  return w154.has(v) ? 0 : -1;
}
function a156(v: unknown): number {
  let n = -1;
  n = a155(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a157(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "ohm", false) === undefined ? 0 : -1;
}
function a158(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p69.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a157(o[name]); break;
      case 1: n = a49(o[name]); break;
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
function a159(v: unknown): number {
  let n = -1;
  n = a158(v);
  if (n >= 0) return n;
  n = a73(v);
  if (n >= 0) return n;
  return -1;
}
const w160 = new Set<unknown>(["sound","corroded","loose","browned","broken"]);
function a161(v: unknown): number {
  return w160.has(v) ? 0 : -1;
}
function a162(v: unknown): number {
  let n = -1;
  n = a161(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a163(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p151.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a153(o[name]); break;
      case 2: n = a7(o[name]); break;
      case 3: n = a156(o[name]); break;
      case 4: n = a39(o[name]); break;
      case 5: n = a159(o[name]); break;
      case 6: n = a39(o[name]); break;
      case 7: n = a162(o[name]); break;
      case 8: n = a39(o[name]); break;
      case 9: n = a135(o[name]); break;
      case 10: n = a138(o[name]); break;
      case 11: n = a142(o[name]); break;
      case 12: n = a145(o[name]); break;
      case 13: n = a159(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a164(v: unknown): number {
  if (!Array.isArray(v) || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a163(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p165 = new Map([["kind",0],["location",1]]);
function a166(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p165.get(name);
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
const p167 = new Map([["fitted",0],["standard",1],["poles",2],["rated",3],["voltage",4]]);
function a168(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 1 && (v as number) <= 4 ? 0 : -1;
}
function a169(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p167.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a39(o[name]); break;
      case 1: n = a7(o[name]); break;
      case 2: n = a168(o[name]); break;
      case 3: n = a121(o[name]); break;
      case 4: n = a110(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p170 = new Map([["id",0],["kind",1],["rated",2],["notice",3],["note",4]]);
const w171 = new Set<unknown>(["photovoltaic","battery","generator","wind","vehicle","ups","other"]);
function a172(v: unknown): number {
  return w171.has(v) ? 0 : -1;
}
function a173(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p170.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a172(o[name]); break;
      case 2: n = a121(o[name]); break;
      case 3: n = a39(o[name]); break;
      case 4: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a174(v: unknown): number {
  if (!Array.isArray(v) || v.length > 20) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a173(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p175 = new Map([["value",0],["method",1]]);
function a176(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p175.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a121(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p177 = new Map([["ze",0],["ra",1],["lineNeutralLoop",2],["faultCurrent",3],["faultCurrentMethod",4],["earthFaultCurrent",5],["voltage",6],["neutralEarth",7],["polarity",8],["phaseSequence",9]]);
function a178(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p69.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a118(o[name]); break;
      case 1: n = a49(o[name]); break;
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
  n = a73(v);
  if (n >= 0) return n;
  return -1;
}
const w180 = new Set<unknown>(["line-neutral","line-line","three-phase"]);
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
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p69.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a106(o[name]); break;
      case 1: n = a49(o[name]); break;
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
function a184(v: unknown): number {
  let n = -1;
  n = a183(v);
  if (n >= 0) return n;
  n = a73(v);
  if (n >= 0) return n;
  return -1;
}
const w185 = new Set<unknown>(["correct","incorrect"]);
function a186(v: unknown): number {
  return w185.has(v) ? 0 : -1;
}
function a187(v: unknown): number {
  let n = -1;
  n = a186(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a188(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p177.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a159(o[name]); break;
      case 1: n = a159(o[name]); break;
      case 2: n = a159(o[name]); break;
      case 3: n = a179(o[name]); break;
      case 4: n = a182(o[name]); break;
      case 5: n = a179(o[name]); break;
      case 6: n = a184(o[name]); break;
      case 7: n = a184(o[name]); break;
      case 8: n = a187(o[name]); break;
      case 9: n = a187(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p189 = new Map([["kind",0],["note",1]]);
const w190 = new Set<unknown>(["circuit-readings","board-loop","leads-not-nulled","supply-loop","fault-current","earthing-system","insulation","between-neutrals","residual-device","polarity","ring"]);
function a191(v: unknown): number {
  return w190.has(v) ? 0 : -1;
}
function a192(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p189.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a191(o[name]); break;
      case 1: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a193(v: unknown): number {
  if (!Array.isArray(v) || v.length > 20) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a192(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a194(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p99.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a102(o[name]); break;
      case 1: n = a105(o[name]); break;
      case 2: n = a110(o[name]); break;
      case 3: n = a39(o[name]); break;
      case 4: n = a130(o[name]); break;
      case 5: n = a146(o[name]); break;
      case 6: n = a146(o[name]); break;
      case 7: n = a150(o[name]); break;
      case 8: needed--; n = a164(o[name]); break;
      case 9: n = a166(o[name]); break;
      case 10: n = a169(o[name]); break;
      case 11: n = a174(o[name]); break;
      case 12: n = a176(o[name]); break;
      case 13: n = a188(o[name]); break;
      case 14: n = a193(o[name]); break;
      case 15: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p195 = new Map([["id",0],["name",1],["location",2],["fedFrom",3],["phases",4],["enclosure",5],["mainSwitch",6],["rcds",7],["conditionalRating",8],["readings",9],["circuits",10],["sharedMisfits",11],["note",12]]);
function a196(v: unknown): number {
  return v === "supply" ? 0 : -1;
}
const p197 = new Map([["board",0],["circuit",1]]);
function a198(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p197.get(name);
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
function a199(v: unknown): number {
  let n = -1;
  n = a196(v);
  if (n >= 0) return n;
  n = a198(v);
  if (n >= 0) return n;
  return -1;
}
const w200 = new Set<unknown>(["metal","non-combustible","combustible","wood-backed"]);
function a201(v: unknown): number {
  return w200.has(v) ? 0 : -1;
}
function a202(v: unknown): number {
  let n = -1;
  n = a201(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const p203 = new Map([["id",0],["standard",1],["type",2],["delay",3],["rated",4],["residual",5],["readings",6],["direction",7],["backfed",8],["testability",9],["whyNotTested",10],["note",11],["serves",12]]);
const w204 = new Set<unknown>(["BS EN 61008","BS EN 61009","BS EN 62423","BS 4293","BS 7288","BS EN 60947-2"]);
function a205(v: unknown): number {
  return w204.has(v) ? 0 : -1;
}
function a206(v: unknown): number {
  let n = -1;
  n = a205(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w207 = new Set<unknown>(["AC","A","F","B"]);
function a208(v: unknown): number {
  return w207.has(v) ? 0 : -1;
}
function a209(v: unknown): number {
  let n = -1;
  n = a208(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w210 = new Set<unknown>(["general","S"]);
function a211(v: unknown): number {
  return w210.has(v) ? 0 : -1;
}
function a212(v: unknown): number {
  let n = -1;
  n = a211(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const p213 = new Map([["atRated",0],["atFive",1],["button",2]]);
function a214(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "second", false) === undefined ? 0 : -1;
}
function a215(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p69.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a214(o[name]); break;
      case 1: n = a49(o[name]); break;
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
function a216(v: unknown): number {
  let n = -1;
  n = a215(v);
  if (n >= 0) return n;
  n = a73(v);
  if (n >= 0) return n;
  return -1;
}
const w217 = new Set<unknown>(["trips","does-not-trip"]);
function a218(v: unknown): number {
  return w217.has(v) ? 0 : -1;
}
function a219(v: unknown): number {
  let n = -1;
  n = a218(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a220(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p213.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a216(o[name]); break;
      case 1: n = a216(o[name]); break;
      case 2: n = a219(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const w221 = new Set<unknown>(["either-way","one-way"]);
function a222(v: unknown): number {
  return w221.has(v) ? 0 : -1;
}
function a223(v: unknown): number {
  let n = -1;
  n = a222(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w224 = new Set<unknown>(["can-be-tested","cannot-be-tested"]);
function a225(v: unknown): number {
  return w224.has(v) ? 0 : -1;
}
function a226(v: unknown): number {
  let n = -1;
  n = a225(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w227 = new Set<unknown>(["whole-board","listed"]);
function a228(v: unknown): number {
  return w227.has(v) ? 0 : -1;
}
function a229(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p203.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a206(o[name]); break;
      case 2: n = a209(o[name]); break;
      case 3: n = a212(o[name]); break;
      case 4: n = a121(o[name]); break;
      case 5: n = a121(o[name]); break;
      case 6: n = a220(o[name]); break;
      case 7: n = a223(o[name]); break;
      case 8: n = a39(o[name]); break;
      case 9: n = a226(o[name]); break;
      case 10: n = a7(o[name]); break;
      case 11: n = a7(o[name]); break;
      case 12: needed--; n = a228(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a230(v: unknown): number {
  if (!Array.isArray(v) || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a229(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p231 = new Map([["value",0],["upstream",1],["devicesOfOneMake",2]]);
const p232 = new Map([["standard",0],["rated",1]]);
function a233(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p232.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a113(o[name]); break;
      case 1: needed--; n = a121(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a234(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p231.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a121(o[name]); break;
      case 1: needed--; n = a233(o[name]); break;
      case 2: n = a39(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p235 = new Map([["zdb",0],["faultCurrent",1],["faultCurrentMethod",2],["polarity",3],["phaseSequence",4],["insulationLiveLive",5],["insulationLiveEarth",6]]);
function a236(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p235.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a159(o[name]); break;
      case 1: n = a179(o[name]); break;
      case 2: n = a182(o[name]); break;
      case 3: n = a187(o[name]); break;
      case 4: n = a187(o[name]); break;
      case 5: n = a159(o[name]); break;
      case 6: n = a159(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p237 = new Map([["id",0],["designation",1],["description",2],["shape",3],["load",4],["phases",5],["points",6],["socketOutlets",7],["device",8],["rcd",9],["cable",10],["designCurrent",11],["readings",12],["sharedMisfits",13],["liveBeforeContinuity",14],["note",15]]);
const w238 = new Set<unknown>(["ring","radial","distribution"]);
function a239(v: unknown): number {
  return w238.has(v) ? 0 : -1;
}
function a240(v: unknown): number {
  let n = -1;
  n = a239(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w241 = new Set<unknown>(["lighting","socket-outlets","cooker","shower","water-heater","storage-heating","heating","motor","vehicle-charging","alarm","fixed-equipment","board","mixed"]);
function a242(v: unknown): number {
  return w241.has(v) ? 0 : -1;
}
function a243(v: unknown): number {
  let n = -1;
  n = a242(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a244(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 0 && (v as number) <= 1000 ? 0 : -1;
}
function a245(v: unknown): number {
  return v === "none" ? 0 : -1;
}
const p246 = new Map([["own",0]]);
const p247 = new Map([["id",0],["standard",1],["type",2],["delay",3],["rated",4],["residual",5],["readings",6],["direction",7],["backfed",8],["testability",9],["whyNotTested",10],["note",11]]);
function a248(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p247.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a4(o[name]); break;
      case 1: n = a206(o[name]); break;
      case 2: n = a209(o[name]); break;
      case 3: n = a212(o[name]); break;
      case 4: n = a121(o[name]); break;
      case 5: n = a121(o[name]); break;
      case 6: n = a220(o[name]); break;
      case 7: n = a223(o[name]); break;
      case 8: n = a39(o[name]); break;
      case 9: n = a226(o[name]); break;
      case 10: n = a7(o[name]); break;
      case 11: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a249(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p246.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a248(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p250 = new Map([["board",0]]);
function a251(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p250.get(name);
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
function a252(v: unknown): number {
  let n = -1;
  n = a245(v);
  if (n >= 0) return n;
  n = a249(v);
  if (n >= 0) return n;
  n = a251(v);
  if (n >= 0) return n;
  return -1;
}
function a253(v: unknown): number {
  let n = -1;
  n = a252(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const p254 = new Map([["kind",0],["insulation",1],["material",2],["line",3],["neutral",4],["cpc",5],["cpcArrangement",6],["cores",7],["methods",8],["length",9],["lengthFound",10],["ambient",11],["grouped",12],["surroundedByInsulation",13]]);
const w255 = new Set<unknown>(["flat-twin-and-cpc","singles","multicore","armoured","mineral","rubber","lead-sheathed","flexible","busbar"]);
function a256(v: unknown): number {
  return w255.has(v) ? 0 : -1;
}
function a257(v: unknown): number {
  let n = -1;
  n = a256(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w258 = new Set<unknown>(["70C-thermoplastic","90C-thermoplastic","90C-thermosetting","60C-rubber","mineral-covered","mineral-bare"]);
function a259(v: unknown): number {
  return w258.has(v) ? 0 : -1;
}
function a260(v: unknown): number {
  let n = -1;
  n = a259(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w261 = new Set<unknown>(["in-cable","separate","armour","sheath","conduit","none"]);
function a262(v: unknown): number {
  return w261.has(v) ? 0 : -1;
}
function a263(v: unknown): number {
  let n = -1;
  n = a262(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a264(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 1 && (v as number) <= 61 ? 0 : -1;
}
const w265 = new Set<unknown>(["100","101","102","103","A","B","C","D","E","F"]);
function a266(v: unknown): number {
  return w265.has(v) ? 0 : -1;
}
function a267(v: unknown): number {
  if (!Array.isArray(v) || v.length < 1 || v.length > 10) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a266(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a268(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "celsius", true) === undefined ? 0 : -1;
}
function a269(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p107.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a268(o[name]); break;
      case 1: needed--; n = a268(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a270(v: unknown): number {
  let n = -1;
  n = a70(v);
  if (n >= 0) return n;
  n = a269(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const p271 = new Map([["arrangement",0],["circuits",1]]);
const w272 = new Set<unknown>(["bunched","single-layer-surface","single-layer-tray","single-layer-ladder"]);
function a273(v: unknown): number {
  return w272.has(v) ? 0 : -1;
}
function a274(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 1 && (v as number) <= 100 ? 0 : -1;
}
function a275(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p271.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a273(o[name]); break;
      case 1: needed--; n = a274(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a276(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p254.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a257(o[name]); break;
      case 1: n = a260(o[name]); break;
      case 2: n = a138(o[name]); break;
      case 3: n = a135(o[name]); break;
      case 4: n = a135(o[name]); break;
      case 5: n = a135(o[name]); break;
      case 6: n = a263(o[name]); break;
      case 7: n = a264(o[name]); break;
      case 8: n = a267(o[name]); break;
      case 9: n = a142(o[name]); break;
      case 10: n = a145(o[name]); break;
      case 11: n = a270(o[name]); break;
      case 12: n = a275(o[name]); break;
      case 13: n = a142(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p277 = new Map([["temperature",0],["r1",1],["rn",2],["r2",3],["crossLineNeutral",4],["crossLineCpc",5],["r1r2",6],["r2Only",7],["insulationVoltage",8],["insulationLiveLive",9],["insulationLiveEarth",10],["insulationBetweenNeutrals",11],["polarity",12],["zs",13],["faultCurrent",14],["leakage",15]]);
const p278 = new Map([["point",0],["reading",1]]);
function a279(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p278.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a7(o[name]); break;
      case 1: needed--; n = a159(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a280(v: unknown): number {
  if (!Array.isArray(v) || v.length > 200) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a279(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const w281 = new Set<unknown>(["250 V","500 V","1000 V"]);
function a282(v: unknown): number {
  return w281.has(v) ? 0 : -1;
}
function a283(v: unknown): number {
  let n = -1;
  n = a282(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a284(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p277.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a74(o[name]); break;
      case 1: n = a159(o[name]); break;
      case 2: n = a159(o[name]); break;
      case 3: n = a159(o[name]); break;
      case 4: n = a280(o[name]); break;
      case 5: n = a280(o[name]); break;
      case 6: n = a159(o[name]); break;
      case 7: n = a159(o[name]); break;
      case 8: n = a283(o[name]); break;
      case 9: n = a159(o[name]); break;
      case 10: n = a159(o[name]); break;
      case 11: n = a159(o[name]); break;
      case 12: n = a187(o[name]); break;
      case 13: n = a159(o[name]); break;
      case 14: n = a179(o[name]); break;
      case 15: n = a179(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p285 = new Map([["reason",0],["at",1],["by",2]]);
function a286(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p285.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a42(o[name]); break;
      case 1: needed--; n = a49(o[name]); break;
      case 2: n = a4(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a287(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p237.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
      case 2: needed--; n = a7(o[name]); break;
      case 3: n = a240(o[name]); break;
      case 4: n = a243(o[name]); break;
      case 5: n = a105(o[name]); break;
      case 6: n = a244(o[name]); break;
      case 7: n = a39(o[name]); break;
      case 8: n = a130(o[name]); break;
      case 9: n = a253(o[name]); break;
      case 10: n = a276(o[name]); break;
      case 11: n = a121(o[name]); break;
      case 12: n = a284(o[name]); break;
      case 13: n = a193(o[name]); break;
      case 14: n = a286(o[name]); break;
      case 15: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a288(v: unknown): number {
  if (!Array.isArray(v) || v.length > 400) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a287(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a289(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 4, 0];
  for (const name in o) {
    const place = p195.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
      case 2: n = a7(o[name]); break;
      case 3: needed--; n = a199(o[name]); break;
      case 4: n = a105(o[name]); break;
      case 5: n = a202(o[name]); break;
      case 6: n = a169(o[name]); break;
      case 7: n = a230(o[name]); break;
      case 8: n = a234(o[name]); break;
      case 9: n = a236(o[name]); break;
      case 10: needed--; n = a288(o[name]); break;
      case 11: n = a193(o[name]); break;
      case 12: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a290(v: unknown): number {
  if (!Array.isArray(v) || v.length < 1 || v.length > 200) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a289(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p291 = new Map([["places",0],["enclosures",1],["sections",2],["joints",3],["supplementaryBonds",4],["electrodes",5],["loads",6],["surgeDevices",7],["arcDevices",8]]);
const p292 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["kind",6],["comers",7],["wetness",8],["conducting",9],["special",10],["note",11]]);
function a293(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 1 && (v as number) <= 10000 ? 0 : -1;
}
const w294 = new Set<unknown>(["room","hall-or-stair","cupboard","plant-room","roof-space","under-floor","outbuilding","outdoors","public-area","other"]);
function a295(v: unknown): number {
  return w294.has(v) ? 0 : -1;
}
function a296(v: unknown): number {
  let n = -1;
  n = a295(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w297 = new Set<unknown>(["skilled","keeper","many-keys","anyone","children"]);
function a298(v: unknown): number {
  return w297.has(v) ? 0 : -1;
}
function a299(v: unknown): number {
  let n = -1;
  n = a298(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w300 = new Set<unknown>(["dry","damp","wet"]);
function a301(v: unknown): number {
  return w300.has(v) ? 0 : -1;
}
function a302(v: unknown): number {
  let n = -1;
  n = a301(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w303 = new Set<unknown>(["none","bath-or-shower","pool","sauna","building-site","farm","conducting-place","caravan-site","marina","medical","exhibition","mobile-unit","vehicle-charging","fairground","floor-or-ceiling-heating","other"]);
function a304(v: unknown): number {
  return w303.has(v) ? 0 : -1;
}
function a305(v: unknown): number {
  if (!Array.isArray(v) || v.length < 1 || v.length > 16) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a304(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a306(v: unknown): number {
  let n = -1;
  n = a305(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a307(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p292.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a293(o[name]); break;
      case 6: n = a296(o[name]); break;
      case 7: n = a299(o[name]); break;
      case 8: n = a302(o[name]); break;
      case 9: n = a39(o[name]); break;
      case 10: n = a306(o[name]); break;
      case 11: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a308(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a307(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p309 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["kind",6],["covering",7],["fixing",8],["screws",9],["screwsMade",10],["firmness",11],["hinges",12],["openedBy",13],["lockWorks",14],["keyHolder",15],["comers",16],["wear",17],["entry",18],["obstacle",19],["height",20],["aside",21],["openings",22],["note",23]]);
const w310 = new Set<unknown>(["cupboard","board","box","trunking","accessory","barrier","obstacle"]);
function a311(v: unknown): number {
  return w310.has(v) ? 0 : -1;
}
function a312(v: unknown): number {
  let n = -1;
  n = a311(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w313 = new Set<unknown>(["double-or-reinforced","sheathed","basic-sound","basic-damaged","bare"]);
function a314(v: unknown): number {
  return w313.has(v) ? 0 : -1;
}
function a315(v: unknown): number {
  let n = -1;
  n = a314(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w316 = new Set<unknown>(["screws","hinge-and-catch","clips","laid-on","none"]);
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
function a319(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 0 && (v as number) <= 100 ? 0 : -1;
}
function a320(v: unknown): number {
  let n = -1;
  n = a319(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w321 = new Set<unknown>(["whole","fixings-missing","loose-or-hanging","gone"]);
function a322(v: unknown): number {
  return w321.has(v) ? 0 : -1;
}
function a323(v: unknown): number {
  let n = -1;
  n = a322(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w324 = new Set<unknown>(["destruction","interlock","tool","key","hand","stands-open"]);
function a325(v: unknown): number {
  return w324.has(v) ? 0 : -1;
}
function a326(v: unknown): number {
  let n = -1;
  n = a325(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w327 = new Set<unknown>(["skilled","keeper","many","anyone"]);
function a328(v: unknown): number {
  return w327.has(v) ? 0 : -1;
}
function a329(v: unknown): number {
  let n = -1;
  n = a328(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w330 = new Set<unknown>(["nothing","knocks-or-rubbing","stored-or-moved-things","heat","weather","rodents"]);
function a331(v: unknown): number {
  return w330.has(v) ? 0 : -1;
}
function a332(v: unknown): number {
  if (!Array.isArray(v) || v.length < 1 || v.length > 6) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a331(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a333(v: unknown): number {
  let n = -1;
  n = a332(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w334 = new Set<unknown>(["nothing","wire-on-top","finger-short-of-live","finger-to-live","hand"]);
function a335(v: unknown): number {
  return w334.has(v) ? 0 : -1;
}
function a336(v: unknown): number {
  let n = -1;
  n = a335(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w337 = new Set<unknown>(["secured","not-secured","none"]);
function a338(v: unknown): number {
  return w337.has(v) ? 0 : -1;
}
function a339(v: unknown): number {
  let n = -1;
  n = a338(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const p340 = new Map([["shape",0],["face",1],["easyReach",2],["width",3],["height",4],["depth",5],["offset",6],["behind",7]]);
const w341 = new Set<unknown>(["rectangular","round","irregular"]);
function a342(v: unknown): number {
  return w341.has(v) ? 0 : -1;
}
function a343(v: unknown): number {
  let n = -1;
  n = a342(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w344 = new Set<unknown>(["front","side","top","bottom"]);
function a345(v: unknown): number {
  return w344.has(v) ? 0 : -1;
}
function a346(v: unknown): number {
  let n = -1;
  n = a345(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w347 = new Set<unknown>(["stops-wire","stops-finger","none"]);
function a348(v: unknown): number {
  return w347.has(v) ? 0 : -1;
}
function a349(v: unknown): number {
  let n = -1;
  n = a348(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a350(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p340.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a343(o[name]); break;
      case 1: n = a346(o[name]); break;
      case 2: n = a39(o[name]); break;
      case 3: n = a142(o[name]); break;
      case 4: n = a142(o[name]); break;
      case 5: n = a142(o[name]); break;
      case 6: n = a142(o[name]); break;
      case 7: n = a349(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a351(v: unknown): number {
  if (!Array.isArray(v) || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a350(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a352(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p309.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a293(o[name]); break;
      case 6: n = a312(o[name]); break;
      case 7: n = a315(o[name]); break;
      case 8: n = a318(o[name]); break;
      case 9: n = a320(o[name]); break;
      case 10: n = a320(o[name]); break;
      case 11: n = a323(o[name]); break;
      case 12: n = a39(o[name]); break;
      case 13: n = a326(o[name]); break;
      case 14: n = a39(o[name]); break;
      case 15: n = a329(o[name]); break;
      case 16: n = a299(o[name]); break;
      case 17: n = a333(o[name]); break;
      case 18: n = a336(o[name]); break;
      case 19: n = a339(o[name]); break;
      case 20: n = a142(o[name]); break;
      case 21: n = a142(o[name]); break;
      case 22: n = a351(o[name]); break;
      case 23: n = a42(o[name]); break;
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
const p354 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["from",6],["to",7],["cable",8],["insulation",9],["material",10],["line",11],["neutral",12],["cpc",13],["length",14],["lengthMethod",15],["layer",16],["methods",17],["surroundings",18],["depth",19],["mechanical",20],["note",21]]);
const w355 = new Set<unknown>(["taped","by-drawing","estimated"]);
function a356(v: unknown): number {
  return w355.has(v) ? 0 : -1;
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
  let n = -1;
  n = a267(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w359 = new Set<unknown>(["air","masonry","plaster","partition","thermal-insulation","metal-conduit","plastic-conduit","metal-trunking","plastic-trunking","tray-or-ladder","ground","water"]);
function a360(v: unknown): number {
  return w359.has(v) ? 0 : -1;
}
function a361(v: unknown): number {
  if (!Array.isArray(v) || v.length < 1 || v.length > 12) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a360(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a362(v: unknown): number {
  let n = -1;
  n = a361(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a363(v: unknown): number {
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
      case 5: n = a293(o[name]); break;
      case 6: n = a7(o[name]); break;
      case 7: n = a7(o[name]); break;
      case 8: n = a257(o[name]); break;
      case 9: n = a260(o[name]); break;
      case 10: n = a138(o[name]); break;
      case 11: n = a135(o[name]); break;
      case 12: n = a135(o[name]); break;
      case 13: n = a135(o[name]); break;
      case 14: n = a142(o[name]); break;
      case 15: n = a357(o[name]); break;
      case 16: n = a315(o[name]); break;
      case 17: n = a358(o[name]); break;
      case 18: n = a362(o[name]); break;
      case 19: n = a142(o[name]); break;
      case 20: n = a39(o[name]); break;
      case 21: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a364(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a363(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p365 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["between",6],["enclosure",7],["method",8],["enclosed",9],["accessible",10],["maintenanceFree",11],["state",12],["note",13]]);
function a366(v: unknown): number {
  if (!Array.isArray(v) || v.length > 20) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a4(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const w367 = new Set<unknown>(["screwed","sprung","crimped","soldered","plugged","twisted"]);
function a368(v: unknown): number {
  return w367.has(v) ? 0 : -1;
}
function a369(v: unknown): number {
  let n = -1;
  n = a368(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a370(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p365.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a293(o[name]); break;
      case 6: n = a366(o[name]); break;
      case 7: n = a4(o[name]); break;
      case 8: n = a369(o[name]); break;
      case 9: n = a39(o[name]); break;
      case 10: n = a39(o[name]); break;
      case 11: n = a39(o[name]); break;
      case 12: n = a162(o[name]); break;
      case 13: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a371(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a370(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p372 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["from",6],["to",7],["connected",8],["size",9],["material",10],["condition",11],["resistance",12],["note",13]]);
function a373(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p372.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a293(o[name]); break;
      case 6: n = a7(o[name]); break;
      case 7: n = a7(o[name]); break;
      case 8: n = a39(o[name]); break;
      case 9: n = a135(o[name]); break;
      case 10: n = a138(o[name]); break;
      case 11: n = a162(o[name]); break;
      case 12: n = a159(o[name]); break;
      case 13: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a374(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a373(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p375 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["kind",6],["resistance",7],["season",8],["accessible",9],["state",10],["note",11]]);
const w376 = new Set<unknown>(["rod","plate","tape-or-wire","foundation","buried-steel","other"]);
function a377(v: unknown): number {
  return w376.has(v) ? 0 : -1;
}
function a378(v: unknown): number {
  let n = -1;
  n = a377(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w379 = new Set<unknown>(["wet","dry","frozen"]);
function a380(v: unknown): number {
  return w379.has(v) ? 0 : -1;
}
function a381(v: unknown): number {
  let n = -1;
  n = a380(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a382(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p375.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a293(o[name]); break;
      case 6: n = a378(o[name]); break;
      case 7: n = a159(o[name]); break;
      case 8: n = a381(o[name]); break;
      case 9: n = a39(o[name]); break;
      case 10: n = a162(o[name]); break;
      case 11: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a383(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a382(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p384 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["kind",6],["power",7],["fixed",8],["note",9]]);
function a385(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "watt", false) === undefined ? 0 : -1;
}
function a386(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "watt", true) === undefined ? 0 : -1;
}
function a387(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p107.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a386(o[name]); break;
      case 1: needed--; n = a386(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a388(v: unknown): number {
  let n = -1;
  n = a385(v);
  if (n >= 0) return n;
  n = a387(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a389(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p384.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a293(o[name]); break;
      case 6: n = a243(o[name]); break;
      case 7: n = a388(o[name]); break;
      case 8: n = a39(o[name]); break;
      case 9: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a390(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a389(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p391 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["fitted",6],["type",7],["indicator",8],["connection",9],["leads",10],["backupStandard",11],["backupRated",12],["note",13]]);
const w392 = new Set<unknown>(["1","2","3","1+2","2+3","1+2+3"]);
function a393(v: unknown): number {
  return w392.has(v) ? 0 : -1;
}
function a394(v: unknown): number {
  let n = -1;
  n = a393(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w395 = new Set<unknown>(["in-order","failed","no-indicator"]);
function a396(v: unknown): number {
  return w395.has(v) ? 0 : -1;
}
function a397(v: unknown): number {
  let n = -1;
  n = a396(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w398 = new Set<unknown>(["before-main-switch","after-main-switch","behind-rcd"]);
function a399(v: unknown): number {
  return w398.has(v) ? 0 : -1;
}
function a400(v: unknown): number {
  let n = -1;
  n = a399(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a401(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p391.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a293(o[name]); break;
      case 6: n = a39(o[name]); break;
      case 7: n = a394(o[name]); break;
      case 8: n = a397(o[name]); break;
      case 9: n = a400(o[name]); break;
      case 10: n = a142(o[name]); break;
      case 11: n = a114(o[name]); break;
      case 12: n = a121(o[name]); break;
      case 13: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a402(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a401(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p403 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["feeds",6],["fitted",7],["rated",8],["testability",9],["button",10],["indicator",11],["note",12]]);
function a404(v: unknown): number {
  if (!Array.isArray(v) || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a4(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a405(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p403.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a293(o[name]); break;
      case 6: n = a404(o[name]); break;
      case 7: n = a39(o[name]); break;
      case 8: n = a121(o[name]); break;
      case 9: n = a226(o[name]); break;
      case 10: n = a219(o[name]); break;
      case 11: n = a397(o[name]); break;
      case 12: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a406(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a405(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a407(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p291.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a308(o[name]); break;
      case 1: n = a353(o[name]); break;
      case 2: n = a364(o[name]); break;
      case 3: n = a371(o[name]); break;
      case 4: n = a374(o[name]); break;
      case 5: n = a383(o[name]); break;
      case 6: n = a390(o[name]); break;
      case 7: n = a402(o[name]); break;
      case 8: n = a406(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p408 = new Map([["item",0],["outcome",1],["observations",2],["reason",3]]);
const w409 = new Set<unknown>(["intake.cut-out","intake.service-cable","intake.meter-tails","intake.meter","intake.isolator","intake.polarity","earthing.arrangement","earthing.conductor","earthing.electrode","earthing.main-terminal","earthing.main-bonding","earthing.bonding-connections","earthing.supplementary","boards.access","boards.fixing","boards.enclosure","boards.non-combustible","boards.main-switch","boards.devices","boards.single-pole","boards.connections","boards.overheating","boards.rcd","boards.surge","boards.arc-fault","boards.labels","circuits.identification","circuits.support","circuits.insulation","circuits.unsheathed","circuits.capacity","circuits.protection","circuits.cpc","circuits.concealed","circuits.additional-protection","circuits.barriers","circuits.segregation","circuits.neutrals","circuits.terminations","accessories.condition","accessories.connections","accessories.single-pole-switches","accessories.external-influences","accessories.isolation","accessories.emergency","accessories.luminaires","accessories.fixed-equipment","fire.hot-surfaces","fire.escape-routes","fire.contents","fire.construction","fire.alarms","bathrooms.rcd","bathrooms.bonding","bathrooms.ip","bathrooms.equipment","outdoors.rcd","outdoors.weather","outdoors.buried","outdoors.outbuildings","special.pools","special.farms","special.conducting-places","special.medical","special.caravans-boats","special.locations","sources.generators","sources.photovoltaic","sources.storage","sources.vehicle-charging","sources.direction","notices.diagram","notices.other-sources","notices.isolation","notices.voltage","notices.inspection","notices.rcd-test"]);
function a410(v: unknown): number {
  return w409.has(v) ? 0 : -1;
}
const w411 = new Set<unknown>(["in-order","observed","limited","not-verified","not-applicable"]);
function a412(v: unknown): number {
  return w411.has(v) ? 0 : -1;
}
function a413(v: unknown): number {
  if (!Array.isArray(v) || v.length > 40) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a4(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a414(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p408.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a410(o[name]); break;
      case 1: needed--; n = a412(o[name]); break;
      case 2: n = a413(o[name]); break;
      case 3: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a415(v: unknown): number {
  if (!Array.isArray(v) || v.length > 400) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a414(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p416 = new Map([["id",0],["board",1],["circuit",2],["place",3],["things",4],["brings",5],["what",6],["topic",7],["facts",8],["positions",9],["answers",10],["regulations",11],["photographs",12],["choice",13],["remedy",14],["madeSafe",15],["foundOn",16],["untold",17]]);
const p417 = new Map([["thing",0],["board",1],["quantity",2]]);
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
      case 1: n = a4(o[name]); break;
      case 2: n = a293(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a419(v: unknown): number {
  if (!Array.isArray(v) || v.length > 100) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a418(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a420(v: unknown): number {
  let n = -1;
  n = a38(v);
  if (n >= 0) return n;
  n = a7(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a421(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  let all = 0;
  for (const name in v) {
    if (a4(name) < 0) return -1;
    const n = a420((v as Members)[name]);
    if (n < 0) return -1;
    all += n + 1;
  }
  return all;
}
const p422 = new Map([["position",0],["reason",1]]);
function a423(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p422.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a424(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  let all = 0;
  for (const name in v) {
    if (a4(name) < 0) return -1;
    const n = a423((v as Members)[name]);
    if (n < 0) return -1;
    all += n + 1;
  }
  return all;
}
const p425 = new Map([["check",0],["board",1],["circuit",2],["part",3]]);
function a426(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p425.get(name);
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
function a427(v: unknown): number {
  if (!Array.isArray(v) || v.length > 100) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a426(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a428(v: unknown): number {
  if (!Array.isArray(v) || v.length > 10) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a7(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const r429 = /^[0-9a-f]{64}$/;
function a430(v: unknown): number {
  return typeof v === "string" && r429.test(v) ? 0 : -1;
}
function a431(v: unknown): number {
  if (!Array.isArray(v) || v.length > 40) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a430(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p432 = new Map([["classification",0],["reason",1],["by",2],["at",3]]);
const w433 = new Set<unknown>(["C1","C2","C3","FI","none"]);
function a434(v: unknown): number {
  return w433.has(v) ? 0 : -1;
}
function a435(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p432.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a434(o[name]); break;
      case 1: needed--; n = a42(o[name]); break;
      case 2: needed--; n = a4(o[name]); break;
      case 3: n = a49(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p436 = new Map([["done",0],["told",1],["at",2],["reply",3]]);
function a437(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p436.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a42(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
      case 2: needed--; n = a49(o[name]); break;
      case 3: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a438(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p416.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: needed--; n = a7(o[name]); break;
      case 4: n = a419(o[name]); break;
      case 5: n = a407(o[name]); break;
      case 6: needed--; n = a42(o[name]); break;
      case 7: n = a4(o[name]); break;
      case 8: n = a421(o[name]); break;
      case 9: n = a424(o[name]); break;
      case 10: n = a427(o[name]); break;
      case 11: n = a428(o[name]); break;
      case 12: n = a431(o[name]); break;
      case 13: n = a435(o[name]); break;
      case 14: n = a42(o[name]); break;
      case 15: n = a437(o[name]); break;
      case 16: n = a11(o[name]); break;
      case 17: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a439(v: unknown): number {
  if (!Array.isArray(v) || v.length > 500) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a438(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p440 = new Map([["name",0],["answersFor",1],["hash",2]]);
function a441(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p440.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a7(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
      case 2: needed--; n = a430(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p442 = new Map([["topic",0],["point",1],["position",2],["reason",3]]);
function a443(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 4, 0];
  for (const name in o) {
    const place = p442.get(name);
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
function a444(v: unknown): number {
  if (!Array.isArray(v) || v.length > 200) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a443(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p445 = new Map([["sha256",0],["name",1],["description",2],["place",3],["taken",4]]);
function a446(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p445.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a430(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
      case 2: needed--; n = a7(o[name]); break;
      case 3: n = a7(o[name]); break;
      case 4: n = a49(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a447(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a446(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p448 = new Map([["check",0],["note",1]]);
function a449(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p448.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a450(v: unknown): number {
  if (!Array.isArray(v) || v.length > 200) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a449(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p451 = new Map([["outcome",0],["generalCondition",1],["workWithin",2],["nextInspection",3]]);
const w452 = new Set<unknown>(["satisfactory","unsatisfactory"]);
function a453(v: unknown): number {
  return w452.has(v) ? 0 : -1;
}
const p454 = new Map([["days",0],["reason",1]]);
function a455(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 1 && (v as number) <= 365 ? 0 : -1;
}
function a456(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p454.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a455(o[name]); break;
      case 1: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p457 = new Map([["by",0],["reason",1]]);
function a458(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p457.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a11(o[name]); break;
      case 1: needed--; n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a459(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p451.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a453(o[name]); break;
      case 1: n = a42(o[name]); break;
      case 2: n = a456(o[name]); break;
      case 3: n = a458(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p460 = new Map([["person",0],["capacity",1],["at",2],["content",3],["drawn",4]]);
const w461 = new Set<unknown>(["inspected-and-tested","authorised-for-issue"]);
function a462(v: unknown): number {
  return w461.has(v) ? 0 : -1;
}
const r463 = /^[ML0-9. -]*$/;
function a464(v: unknown): number {
  return typeof v === "string" && v.length <= 4000 && r463.test(v) ? 0 : -1;
}
function a465(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p460.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a462(o[name]); break;
      case 2: needed--; n = a49(o[name]); break;
      case 3: n = a430(o[name]); break;
      case 4: n = a464(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a466(v: unknown): number {
  if (!Array.isArray(v) || v.length > 20) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a465(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a467(v: unknown): number {
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
      case 7: needed--; n = a46(o[name]); break;
      case 8: needed--; n = a51(o[name]); break;
      case 9: needed--; n = a54(o[name]); break;
      case 10: needed--; n = a65(o[name]); break;
      case 11: n = a67(o[name]); break;
      case 12: n = a75(o[name]); break;
      case 13: n = a82(o[name]); break;
      case 14: n = a87(o[name]); break;
      case 15: needed--; n = a93(o[name]); break;
      case 16: needed--; n = a98(o[name]); break;
      case 17: needed--; n = a194(o[name]); break;
      case 18: needed--; n = a290(o[name]); break;
      case 19: n = a407(o[name]); break;
      case 20: needed--; n = a415(o[name]); break;
      case 21: needed--; n = a439(o[name]); break;
      case 22: n = a441(o[name]); break;
      case 23: n = a444(o[name]); break;
      case 24: needed--; n = a447(o[name]); break;
      case 25: n = a450(o[name]); break;
      case 26: n = a459(o[name]); break;
      case 27: needed--; n = a466(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}

/** How many members the objects of the data have together; -1 where it does not plainly fit, each member in its order. */
export function accepted(data: unknown): number {
  return a467(data);
}
