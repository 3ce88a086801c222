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
const p99 = new Map([["earthing",0],["phases",1],["liveConductors",2],["current",3],["frequency",4],["nominalVoltage",5],["lineVoltage",6],["public",7],["device",8],["tails",9],["neutral",10],["earthingConductor",11],["bonding",12],["electrode",13],["mainSwitch",14],["otherSources",15],["maximumDemand",16],["readings",17],["sharedMisfits",18],["note",19]]);
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
  return Number.isSafeInteger(v) && (v as number) >= 1 && (v as number) <= 4 ? 0 : -1;
}
function a107(v: unknown): number {
  let n = -1;
  n = a106(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w108 = new Set<unknown>(["ac","dc"]);
function a109(v: unknown): number {
  return w108.has(v) ? 0 : -1;
}
function a110(v: unknown): number {
  let n = -1;
  n = a109(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a111(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "hertz", false) === undefined ? 0 : -1;
}
const p112 = new Map([["from",0],["to",1]]);
function a113(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "hertz", true) === undefined ? 0 : -1;
}
function a114(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p112.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a113(o[name]); break;
      case 1: needed--; n = a113(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a115(v: unknown): number {
  let n = -1;
  n = a111(v);
  if (n >= 0) return n;
  n = a114(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a116(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "volt", false) === undefined ? 0 : -1;
}
function a117(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "volt", true) === undefined ? 0 : -1;
}
function a118(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p112.get(name);
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
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const p120 = new Map([["standard",0],["type",1],["rated",2],["breakingCapacity",3],["energyClass",4],["letThrough",5],["note",6]]);
const w121 = new Set<unknown>(["BS EN 60898","BS EN 61009","BS EN 60947-2","BS 3871","BS 3036","BS 1361","BS 1362","BS 88-2","BS 88-3","BS 88-2.2","BS 88-6"]);
function a122(v: unknown): number {
  return w121.has(v) ? 0 : -1;
}
function a123(v: unknown): number {
  let n = -1;
  n = a122(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w124 = new Set<unknown>(["1","2","3","4","B","C","D","gG","gM","I","II"]);
function a125(v: unknown): number {
  return w124.has(v) ? 0 : -1;
}
function a126(v: unknown): number {
  let n = -1;
  n = a125(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a127(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "ampere", false) === undefined ? 0 : -1;
}
function a128(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "ampere", true) === undefined ? 0 : -1;
}
function a129(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p112.get(name);
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
function a131(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 1 && (v as number) <= 3 ? 0 : -1;
}
const p132 = new Map([["value",0],["from",1]]);
function a133(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "ampere-squared-second", false) === undefined ? 0 : -1;
}
function a134(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "ampere-squared-second", true) === undefined ? 0 : -1;
}
function a135(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p112.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a134(o[name]); break;
      case 1: needed--; n = a134(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a136(v: unknown): number {
  let n = -1;
  n = a133(v);
  if (n >= 0) return n;
  n = a135(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a137(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p132.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a136(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a138(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p120.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a123(o[name]); break;
      case 1: n = a126(o[name]); break;
      case 2: n = a130(o[name]); break;
      case 3: n = a130(o[name]); break;
      case 4: n = a131(o[name]); break;
      case 5: n = a137(o[name]); break;
      case 6: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a139(v: unknown): number {
  let n = -1;
  n = a138(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const p140 = new Map([["size",0],["material",1],["length",2],["lengthFound",3]]);
function a141(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "square-millimetre", false) === undefined ? 0 : -1;
}
function a142(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "square-millimetre", true) === undefined ? 0 : -1;
}
function a143(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p112.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a142(o[name]); break;
      case 1: needed--; n = a142(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a144(v: unknown): number {
  let n = -1;
  n = a141(v);
  if (n >= 0) return n;
  n = a143(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w145 = new Set<unknown>(["copper","aluminium"]);
function a146(v: unknown): number {
  return w145.has(v) ? 0 : -1;
}
function a147(v: unknown): number {
  let n = -1;
  n = a146(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a148(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "metre", false) === undefined ? 0 : -1;
}
function a149(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "metre", true) === undefined ? 0 : -1;
}
function a150(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p112.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a149(o[name]); break;
      case 1: needed--; n = a149(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a151(v: unknown): number {
  let n = -1;
  n = a148(v);
  if (n >= 0) return n;
  n = a150(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w152 = new Set<unknown>(["taped","by-drawing","estimated","unknown"]);
function a153(v: unknown): number {
  return w152.has(v) ? 0 : -1;
}
function a154(v: unknown): number {
  let n = -1;
  n = a153(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a155(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p140.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a144(o[name]); break;
      case 1: n = a147(o[name]); break;
      case 2: n = a151(o[name]); break;
      case 3: n = a154(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p156 = new Map([["size",0],["material",1],["length",2],["lengthFound",3],["connected",4],["arrangement",5],["sheathed",6],["mechanicallyProtected",7]]);
const w157 = new Set<unknown>(["separate","in-cable","buried"]);
function a158(v: unknown): number {
  return w157.has(v) ? 0 : -1;
}
function a159(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p156.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a144(o[name]); break;
      case 1: n = a147(o[name]); break;
      case 2: n = a151(o[name]); break;
      case 3: n = a154(o[name]); break;
      case 4: n = a39(o[name]); break;
      case 5: n = a158(o[name]); break;
      case 6: n = a39(o[name]); break;
      case 7: n = a39(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p160 = new Map([["id",0],["to",1],["description",2],["service",3],["extraneous",4],["partResistance",5],["connected",6],["condition",7],["heatDamage",8],["size",9],["material",10],["length",11],["lengthFound",12],["resistance",13]]);
const w161 = new Set<unknown>(["water","gas","oil","structural-steel","lightning-protection","heating","other"]);
function a162(v: unknown): number {
  return w161.has(v) ? 0 : -1;
}
const w163 = new Set<unknown>(["present","no-such-service"]);
function a164(v: unknown): number {
  return w163.has(v) ? 0 : -1;
}
function a165(v: unknown): number {
  let n = -1;
  n = a164(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a166(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "ohm", false) === undefined ? 0 : -1;
}
function a167(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p69.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a166(o[name]); break;
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
function a168(v: unknown): number {
  let n = -1;
  n = a167(v);
  if (n >= 0) return n;
  n = a73(v);
  if (n >= 0) return n;
  return -1;
}
const w169 = new Set<unknown>(["sound","corroded","loose","browned","broken"]);
function a170(v: unknown): number {
  return w169.has(v) ? 0 : -1;
}
function a171(v: unknown): number {
  let n = -1;
  n = a170(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a172(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p160.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a162(o[name]); break;
      case 2: n = a7(o[name]); break;
      case 3: n = a165(o[name]); break;
      case 4: n = a39(o[name]); break;
      case 5: n = a168(o[name]); break;
      case 6: n = a39(o[name]); break;
      case 7: n = a171(o[name]); break;
      case 8: n = a39(o[name]); break;
      case 9: n = a144(o[name]); break;
      case 10: n = a147(o[name]); break;
      case 11: n = a151(o[name]); break;
      case 12: n = a154(o[name]); break;
      case 13: n = a168(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a173(v: unknown): number {
  if (!Array.isArray(v) || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a172(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p174 = new Map([["kind",0],["location",1]]);
function a175(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p174.get(name);
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
const p176 = new Map([["fitted",0],["standard",1],["poles",2],["rated",3],["voltage",4]]);
function a177(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p176.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a39(o[name]); break;
      case 1: n = a7(o[name]); break;
      case 2: n = a106(o[name]); break;
      case 3: n = a130(o[name]); break;
      case 4: n = a119(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p178 = new Map([["id",0],["kind",1],["rated",2],["notice",3],["note",4]]);
const w179 = new Set<unknown>(["photovoltaic","battery","generator","wind","vehicle","ups","other"]);
function a180(v: unknown): number {
  return w179.has(v) ? 0 : -1;
}
function a181(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p178.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a180(o[name]); break;
      case 2: n = a130(o[name]); break;
      case 3: n = a39(o[name]); break;
      case 4: n = a7(o[name]); break;
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
const p183 = new Map([["value",0],["method",1]]);
function a184(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p183.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a130(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p185 = new Map([["ze",0],["ra",1],["lineNeutralLoop",2],["faultCurrent",3],["faultCurrentMethod",4],["earthFaultCurrent",5],["voltage",6],["neutralEarth",7],["polarity",8],["phaseSequence",9]]);
function a186(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p69.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a127(o[name]); break;
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
function a187(v: unknown): number {
  let n = -1;
  n = a186(v);
  if (n >= 0) return n;
  n = a73(v);
  if (n >= 0) return n;
  return -1;
}
const w188 = new Set<unknown>(["line-neutral","line-line","three-phase"]);
function a189(v: unknown): number {
  return w188.has(v) ? 0 : -1;
}
function a190(v: unknown): number {
  let n = -1;
  n = a189(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a191(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p69.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a116(o[name]); break;
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
function a192(v: unknown): number {
  let n = -1;
  n = a191(v);
  if (n >= 0) return n;
  n = a73(v);
  if (n >= 0) return n;
  return -1;
}
const w193 = new Set<unknown>(["correct","incorrect"]);
function a194(v: unknown): number {
  return w193.has(v) ? 0 : -1;
}
function a195(v: unknown): number {
  let n = -1;
  n = a194(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a196(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p185.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a168(o[name]); break;
      case 1: n = a168(o[name]); break;
      case 2: n = a168(o[name]); break;
      case 3: n = a187(o[name]); break;
      case 4: n = a190(o[name]); break;
      case 5: n = a187(o[name]); break;
      case 6: n = a192(o[name]); break;
      case 7: n = a192(o[name]); break;
      case 8: n = a195(o[name]); break;
      case 9: n = a195(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p197 = new Map([["kind",0],["note",1]]);
const w198 = new Set<unknown>(["circuit-readings","board-loop","leads-not-nulled","supply-loop","fault-current","earthing-system","insulation","between-neutrals","residual-device","polarity","ring"]);
function a199(v: unknown): number {
  return w198.has(v) ? 0 : -1;
}
function a200(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p197.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a199(o[name]); break;
      case 1: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a201(v: unknown): number {
  if (!Array.isArray(v) || v.length > 20) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a200(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a202(v: unknown): number {
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
      case 2: n = a107(o[name]); break;
      case 3: n = a110(o[name]); break;
      case 4: n = a115(o[name]); break;
      case 5: n = a119(o[name]); break;
      case 6: n = a119(o[name]); break;
      case 7: n = a39(o[name]); break;
      case 8: n = a139(o[name]); break;
      case 9: n = a155(o[name]); break;
      case 10: n = a155(o[name]); break;
      case 11: n = a159(o[name]); break;
      case 12: needed--; n = a173(o[name]); break;
      case 13: n = a175(o[name]); break;
      case 14: n = a177(o[name]); break;
      case 15: n = a182(o[name]); break;
      case 16: n = a184(o[name]); break;
      case 17: n = a196(o[name]); break;
      case 18: n = a201(o[name]); break;
      case 19: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p203 = new Map([["id",0],["name",1],["location",2],["fedFrom",3],["phases",4],["enclosure",5],["mainSwitch",6],["rcds",7],["conditionalRating",8],["readings",9],["circuits",10],["sharedMisfits",11],["note",12]]);
function a204(v: unknown): number {
  return v === "supply" ? 0 : -1;
}
const p205 = new Map([["board",0],["circuit",1]]);
function a206(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p205.get(name);
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
function a207(v: unknown): number {
  let n = -1;
  n = a204(v);
  if (n >= 0) return n;
  n = a206(v);
  if (n >= 0) return n;
  return -1;
}
const w208 = new Set<unknown>(["metal","non-combustible","combustible","wood-backed"]);
function a209(v: unknown): number {
  return w208.has(v) ? 0 : -1;
}
function a210(v: unknown): number {
  let n = -1;
  n = a209(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const p211 = new Map([["id",0],["standard",1],["type",2],["delay",3],["rated",4],["residual",5],["readings",6],["direction",7],["backfed",8],["testability",9],["whyNotTested",10],["note",11],["serves",12]]);
const w212 = new Set<unknown>(["BS EN 61008","BS EN 61009","BS EN 62423","BS 4293","BS 7288","BS EN 60947-2"]);
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
const w215 = new Set<unknown>(["AC","A","F","B"]);
function a216(v: unknown): number {
  return w215.has(v) ? 0 : -1;
}
function a217(v: unknown): number {
  let n = -1;
  n = a216(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w218 = new Set<unknown>(["general","S"]);
function a219(v: unknown): number {
  return w218.has(v) ? 0 : -1;
}
function a220(v: unknown): number {
  let n = -1;
  n = a219(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const p221 = new Map([["atRated",0],["atFive",1],["button",2]]);
function a222(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "second", false) === undefined ? 0 : -1;
}
function a223(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p69.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a222(o[name]); break;
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
function a224(v: unknown): number {
  let n = -1;
  n = a223(v);
  if (n >= 0) return n;
  n = a73(v);
  if (n >= 0) return n;
  return -1;
}
const w225 = new Set<unknown>(["trips","does-not-trip"]);
function a226(v: unknown): number {
  return w225.has(v) ? 0 : -1;
}
function a227(v: unknown): number {
  let n = -1;
  n = a226(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a228(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p221.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a224(o[name]); break;
      case 1: n = a224(o[name]); break;
      case 2: n = a227(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const w229 = new Set<unknown>(["either-way","one-way"]);
function a230(v: unknown): number {
  return w229.has(v) ? 0 : -1;
}
function a231(v: unknown): number {
  let n = -1;
  n = a230(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w232 = new Set<unknown>(["can-be-tested","cannot-be-tested"]);
function a233(v: unknown): number {
  return w232.has(v) ? 0 : -1;
}
function a234(v: unknown): number {
  let n = -1;
  n = a233(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w235 = new Set<unknown>(["whole-board","listed"]);
function a236(v: unknown): number {
  return w235.has(v) ? 0 : -1;
}
function a237(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p211.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a214(o[name]); break;
      case 2: n = a217(o[name]); break;
      case 3: n = a220(o[name]); break;
      case 4: n = a130(o[name]); break;
      case 5: n = a130(o[name]); break;
      case 6: n = a228(o[name]); break;
      case 7: n = a231(o[name]); break;
      case 8: n = a39(o[name]); break;
      case 9: n = a234(o[name]); break;
      case 10: n = a7(o[name]); break;
      case 11: n = a7(o[name]); break;
      case 12: needed--; n = a236(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a238(v: unknown): number {
  if (!Array.isArray(v) || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a237(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p239 = new Map([["value",0],["upstream",1],["devicesOfOneMake",2]]);
const p240 = new Map([["standard",0],["rated",1]]);
function a241(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p240.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a122(o[name]); break;
      case 1: needed--; n = a130(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a242(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p239.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a130(o[name]); break;
      case 1: needed--; n = a241(o[name]); break;
      case 2: n = a39(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p243 = new Map([["zdb",0],["faultCurrent",1],["faultCurrentMethod",2],["polarity",3],["phaseSequence",4],["insulationLiveLive",5],["insulationLiveEarth",6]]);
function a244(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p243.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a168(o[name]); break;
      case 1: n = a187(o[name]); break;
      case 2: n = a190(o[name]); break;
      case 3: n = a195(o[name]); break;
      case 4: n = a195(o[name]); break;
      case 5: n = a168(o[name]); break;
      case 6: n = a168(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p245 = new Map([["id",0],["designation",1],["description",2],["shape",3],["load",4],["phases",5],["points",6],["socketOutlets",7],["device",8],["rcd",9],["cable",10],["designCurrent",11],["readings",12],["sharedMisfits",13],["liveBeforeContinuity",14],["note",15]]);
const w246 = new Set<unknown>(["ring","radial","distribution"]);
function a247(v: unknown): number {
  return w246.has(v) ? 0 : -1;
}
function a248(v: unknown): number {
  let n = -1;
  n = a247(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w249 = new Set<unknown>(["lighting","socket-outlets","cooker","shower","water-heater","storage-heating","heating","motor","vehicle-charging","alarm","fixed-equipment","board","mixed"]);
function a250(v: unknown): number {
  return w249.has(v) ? 0 : -1;
}
function a251(v: unknown): number {
  let n = -1;
  n = a250(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a252(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 0 && (v as number) <= 1000 ? 0 : -1;
}
function a253(v: unknown): number {
  return v === "none" ? 0 : -1;
}
const p254 = new Map([["own",0]]);
const p255 = new Map([["id",0],["standard",1],["type",2],["delay",3],["rated",4],["residual",5],["readings",6],["direction",7],["backfed",8],["testability",9],["whyNotTested",10],["note",11]]);
function a256(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p255.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a4(o[name]); break;
      case 1: n = a214(o[name]); break;
      case 2: n = a217(o[name]); break;
      case 3: n = a220(o[name]); break;
      case 4: n = a130(o[name]); break;
      case 5: n = a130(o[name]); break;
      case 6: n = a228(o[name]); break;
      case 7: n = a231(o[name]); break;
      case 8: n = a39(o[name]); break;
      case 9: n = a234(o[name]); break;
      case 10: n = a7(o[name]); break;
      case 11: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a257(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p254.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a256(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p258 = new Map([["board",0]]);
function a259(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p258.get(name);
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
function a260(v: unknown): number {
  let n = -1;
  n = a253(v);
  if (n >= 0) return n;
  n = a257(v);
  if (n >= 0) return n;
  n = a259(v);
  if (n >= 0) return n;
  return -1;
}
function a261(v: unknown): number {
  let n = -1;
  n = a260(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const p262 = new Map([["kind",0],["insulation",1],["material",2],["line",3],["neutral",4],["cpc",5],["cpcArrangement",6],["cores",7],["methods",8],["length",9],["lengthFound",10],["ambient",11],["grouped",12],["surroundedByInsulation",13]]);
const w263 = new Set<unknown>(["flat-twin-and-cpc","singles","multicore","armoured","mineral","rubber","lead-sheathed","flexible","busbar"]);
function a264(v: unknown): number {
  return w263.has(v) ? 0 : -1;
}
function a265(v: unknown): number {
  let n = -1;
  n = a264(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w266 = new Set<unknown>(["70C-thermoplastic","90C-thermoplastic","90C-thermosetting","60C-rubber","mineral-covered","mineral-bare"]);
function a267(v: unknown): number {
  return w266.has(v) ? 0 : -1;
}
function a268(v: unknown): number {
  let n = -1;
  n = a267(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w269 = new Set<unknown>(["in-cable","separate","armour","sheath","conduit","none"]);
function a270(v: unknown): number {
  return w269.has(v) ? 0 : -1;
}
function a271(v: unknown): number {
  let n = -1;
  n = a270(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a272(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 1 && (v as number) <= 61 ? 0 : -1;
}
const w273 = new Set<unknown>(["100","101","102","103","A","B","C","D","E","F"]);
function a274(v: unknown): number {
  return w273.has(v) ? 0 : -1;
}
function a275(v: unknown): number {
  if (!Array.isArray(v) || v.length < 1 || v.length > 10) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a274(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a276(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "celsius", true) === undefined ? 0 : -1;
}
function a277(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p112.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a276(o[name]); break;
      case 1: needed--; n = a276(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a278(v: unknown): number {
  let n = -1;
  n = a70(v);
  if (n >= 0) return n;
  n = a277(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const p279 = new Map([["arrangement",0],["circuits",1]]);
const w280 = new Set<unknown>(["bunched","single-layer-surface","single-layer-tray","single-layer-ladder"]);
function a281(v: unknown): number {
  return w280.has(v) ? 0 : -1;
}
function a282(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 1 && (v as number) <= 100 ? 0 : -1;
}
function a283(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p279.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a281(o[name]); break;
      case 1: needed--; n = a282(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a284(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p262.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a265(o[name]); break;
      case 1: n = a268(o[name]); break;
      case 2: n = a147(o[name]); break;
      case 3: n = a144(o[name]); break;
      case 4: n = a144(o[name]); break;
      case 5: n = a144(o[name]); break;
      case 6: n = a271(o[name]); break;
      case 7: n = a272(o[name]); break;
      case 8: n = a275(o[name]); break;
      case 9: n = a151(o[name]); break;
      case 10: n = a154(o[name]); break;
      case 11: n = a278(o[name]); break;
      case 12: n = a283(o[name]); break;
      case 13: n = a151(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p285 = new Map([["temperature",0],["r1",1],["rn",2],["r2",3],["crossLineNeutral",4],["crossLineCpc",5],["r1r2",6],["r2Only",7],["insulationVoltage",8],["insulationLiveLive",9],["insulationLiveEarth",10],["insulationBetweenNeutrals",11],["polarity",12],["zs",13],["faultCurrent",14],["leakage",15]]);
const p286 = new Map([["point",0],["reading",1]]);
function a287(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p286.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a7(o[name]); break;
      case 1: needed--; n = a168(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a288(v: unknown): number {
  if (!Array.isArray(v) || v.length > 200) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a287(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const w289 = new Set<unknown>(["250 V","500 V","1000 V"]);
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
function a292(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p285.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a74(o[name]); break;
      case 1: n = a168(o[name]); break;
      case 2: n = a168(o[name]); break;
      case 3: n = a168(o[name]); break;
      case 4: n = a288(o[name]); break;
      case 5: n = a288(o[name]); break;
      case 6: n = a168(o[name]); break;
      case 7: n = a168(o[name]); break;
      case 8: n = a291(o[name]); break;
      case 9: n = a168(o[name]); break;
      case 10: n = a168(o[name]); break;
      case 11: n = a168(o[name]); break;
      case 12: n = a195(o[name]); break;
      case 13: n = a168(o[name]); break;
      case 14: n = a187(o[name]); break;
      case 15: n = a187(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p293 = new Map([["reason",0],["at",1],["by",2]]);
function a294(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p293.get(name);
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
function a295(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p245.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
      case 2: needed--; n = a7(o[name]); break;
      case 3: n = a248(o[name]); break;
      case 4: n = a251(o[name]); break;
      case 5: n = a105(o[name]); break;
      case 6: n = a252(o[name]); break;
      case 7: n = a39(o[name]); break;
      case 8: n = a139(o[name]); break;
      case 9: n = a261(o[name]); break;
      case 10: n = a284(o[name]); break;
      case 11: n = a130(o[name]); break;
      case 12: n = a292(o[name]); break;
      case 13: n = a201(o[name]); break;
      case 14: n = a294(o[name]); break;
      case 15: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a296(v: unknown): number {
  if (!Array.isArray(v) || v.length > 400) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a295(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a297(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 4, 0];
  for (const name in o) {
    const place = p203.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
      case 2: n = a7(o[name]); break;
      case 3: needed--; n = a207(o[name]); break;
      case 4: n = a105(o[name]); break;
      case 5: n = a210(o[name]); break;
      case 6: n = a177(o[name]); break;
      case 7: n = a238(o[name]); break;
      case 8: n = a242(o[name]); break;
      case 9: n = a244(o[name]); break;
      case 10: needed--; n = a296(o[name]); break;
      case 11: n = a201(o[name]); break;
      case 12: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a298(v: unknown): number {
  if (!Array.isArray(v) || v.length < 1 || v.length > 200) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a297(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p299 = new Map([["places",0],["enclosures",1],["sections",2],["joints",3],["supplementaryBonds",4],["electrodes",5],["loads",6],["surgeDevices",7],["arcDevices",8]]);
const p300 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["kind",6],["comers",7],["wetness",8],["conducting",9],["special",10],["note",11]]);
function a301(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 1 && (v as number) <= 10000 ? 0 : -1;
}
const w302 = new Set<unknown>(["room","hall-or-stair","cupboard","plant-room","roof-space","under-floor","outbuilding","outdoors","public-area","other"]);
function a303(v: unknown): number {
  return w302.has(v) ? 0 : -1;
}
function a304(v: unknown): number {
  let n = -1;
  n = a303(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w305 = new Set<unknown>(["skilled","keeper","many-keys","anyone","children"]);
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
const w308 = new Set<unknown>(["dry","damp","wet"]);
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
const w311 = new Set<unknown>(["none","bath-or-shower","pool","sauna","building-site","farm","conducting-place","caravan-site","marina","medical","exhibition","mobile-unit","vehicle-charging","fairground","floor-or-ceiling-heating","other"]);
function a312(v: unknown): number {
  return w311.has(v) ? 0 : -1;
}
function a313(v: unknown): number {
  if (!Array.isArray(v) || v.length < 1 || v.length > 16) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a312(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a314(v: unknown): number {
  let n = -1;
  n = a313(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a315(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p300.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a301(o[name]); break;
      case 6: n = a304(o[name]); break;
      case 7: n = a307(o[name]); break;
      case 8: n = a310(o[name]); break;
      case 9: n = a39(o[name]); break;
      case 10: n = a314(o[name]); break;
      case 11: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a316(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a315(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p317 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["kind",6],["covering",7],["fixing",8],["screws",9],["screwsMade",10],["firmness",11],["hinges",12],["openedBy",13],["lockWorks",14],["keyHolder",15],["comers",16],["wear",17],["entry",18],["obstacle",19],["height",20],["aside",21],["openings",22],["note",23]]);
const w318 = new Set<unknown>(["cupboard","board","box","trunking","accessory","barrier","obstacle"]);
function a319(v: unknown): number {
  return w318.has(v) ? 0 : -1;
}
function a320(v: unknown): number {
  let n = -1;
  n = a319(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w321 = new Set<unknown>(["double-or-reinforced","sheathed","basic-sound","basic-damaged","bare"]);
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
const w324 = new Set<unknown>(["screws","hinge-and-catch","clips","laid-on","none"]);
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
function a327(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 0 && (v as number) <= 100 ? 0 : -1;
}
function a328(v: unknown): number {
  let n = -1;
  n = a327(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w329 = new Set<unknown>(["whole","fixings-missing","loose-or-hanging","gone"]);
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
const w332 = new Set<unknown>(["destruction","interlock","tool","key","hand","stands-open"]);
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
const w335 = new Set<unknown>(["skilled","keeper","many","anyone"]);
function a336(v: unknown): number {
  return w335.has(v) ? 0 : -1;
}
function a337(v: unknown): number {
  let n = -1;
  n = a336(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w338 = new Set<unknown>(["nothing","knocks-or-rubbing","stored-or-moved-things","heat","weather","rodents"]);
function a339(v: unknown): number {
  return w338.has(v) ? 0 : -1;
}
function a340(v: unknown): number {
  if (!Array.isArray(v) || v.length < 1 || v.length > 6) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a339(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a341(v: unknown): number {
  let n = -1;
  n = a340(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w342 = new Set<unknown>(["nothing","wire-on-top","finger-short-of-live","finger-to-live","hand"]);
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
const w345 = new Set<unknown>(["secured","not-secured","none"]);
function a346(v: unknown): number {
  return w345.has(v) ? 0 : -1;
}
function a347(v: unknown): number {
  let n = -1;
  n = a346(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const p348 = new Map([["shape",0],["face",1],["easyReach",2],["width",3],["height",4],["depth",5],["offset",6],["behind",7]]);
const w349 = new Set<unknown>(["rectangular","round","irregular"]);
function a350(v: unknown): number {
  return w349.has(v) ? 0 : -1;
}
function a351(v: unknown): number {
  let n = -1;
  n = a350(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w352 = new Set<unknown>(["front","side","top","bottom"]);
function a353(v: unknown): number {
  return w352.has(v) ? 0 : -1;
}
function a354(v: unknown): number {
  let n = -1;
  n = a353(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w355 = new Set<unknown>(["stops-wire","stops-finger","none"]);
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
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p348.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a351(o[name]); break;
      case 1: n = a354(o[name]); break;
      case 2: n = a39(o[name]); break;
      case 3: n = a151(o[name]); break;
      case 4: n = a151(o[name]); break;
      case 5: n = a151(o[name]); break;
      case 6: n = a151(o[name]); break;
      case 7: n = a357(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a359(v: unknown): number {
  if (!Array.isArray(v) || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a358(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a360(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p317.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a301(o[name]); break;
      case 6: n = a320(o[name]); break;
      case 7: n = a323(o[name]); break;
      case 8: n = a326(o[name]); break;
      case 9: n = a328(o[name]); break;
      case 10: n = a328(o[name]); break;
      case 11: n = a331(o[name]); break;
      case 12: n = a39(o[name]); break;
      case 13: n = a334(o[name]); break;
      case 14: n = a39(o[name]); break;
      case 15: n = a337(o[name]); break;
      case 16: n = a307(o[name]); break;
      case 17: n = a341(o[name]); break;
      case 18: n = a344(o[name]); break;
      case 19: n = a347(o[name]); break;
      case 20: n = a151(o[name]); break;
      case 21: n = a151(o[name]); break;
      case 22: n = a359(o[name]); break;
      case 23: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a361(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a360(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p362 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["from",6],["to",7],["cable",8],["insulation",9],["material",10],["line",11],["neutral",12],["cpc",13],["length",14],["lengthMethod",15],["layer",16],["methods",17],["surroundings",18],["depth",19],["mechanical",20],["note",21]]);
const w363 = new Set<unknown>(["taped","by-drawing","estimated"]);
function a364(v: unknown): number {
  return w363.has(v) ? 0 : -1;
}
function a365(v: unknown): number {
  let n = -1;
  n = a364(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a366(v: unknown): number {
  let n = -1;
  n = a275(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w367 = new Set<unknown>(["air","masonry","plaster","partition","thermal-insulation","metal-conduit","plastic-conduit","metal-trunking","plastic-trunking","tray-or-ladder","ground","water"]);
function a368(v: unknown): number {
  return w367.has(v) ? 0 : -1;
}
function a369(v: unknown): number {
  if (!Array.isArray(v) || v.length < 1 || v.length > 12) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a368(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a370(v: unknown): number {
  let n = -1;
  n = a369(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a371(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p362.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a301(o[name]); break;
      case 6: n = a7(o[name]); break;
      case 7: n = a7(o[name]); break;
      case 8: n = a265(o[name]); break;
      case 9: n = a268(o[name]); break;
      case 10: n = a147(o[name]); break;
      case 11: n = a144(o[name]); break;
      case 12: n = a144(o[name]); break;
      case 13: n = a144(o[name]); break;
      case 14: n = a151(o[name]); break;
      case 15: n = a365(o[name]); break;
      case 16: n = a323(o[name]); break;
      case 17: n = a366(o[name]); break;
      case 18: n = a370(o[name]); break;
      case 19: n = a151(o[name]); break;
      case 20: n = a39(o[name]); break;
      case 21: n = a42(o[name]); break;
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
const p373 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["between",6],["enclosure",7],["method",8],["enclosed",9],["accessible",10],["maintenanceFree",11],["state",12],["note",13]]);
function a374(v: unknown): number {
  if (!Array.isArray(v) || v.length > 20) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a4(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const w375 = new Set<unknown>(["screwed","sprung","crimped","soldered","plugged","twisted"]);
function a376(v: unknown): number {
  return w375.has(v) ? 0 : -1;
}
function a377(v: unknown): number {
  let n = -1;
  n = a376(v);
  if (n >= 0) return n;
  n = a26(v);
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
      case 5: n = a301(o[name]); break;
      case 6: n = a374(o[name]); break;
      case 7: n = a4(o[name]); break;
      case 8: n = a377(o[name]); break;
      case 9: n = a39(o[name]); break;
      case 10: n = a39(o[name]); break;
      case 11: n = a39(o[name]); break;
      case 12: n = a171(o[name]); break;
      case 13: n = a42(o[name]); break;
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
const p380 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["from",6],["to",7],["connected",8],["size",9],["material",10],["condition",11],["resistance",12],["note",13]]);
function a381(v: unknown): number {
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
      case 5: n = a301(o[name]); break;
      case 6: n = a7(o[name]); break;
      case 7: n = a7(o[name]); break;
      case 8: n = a39(o[name]); break;
      case 9: n = a144(o[name]); break;
      case 10: n = a147(o[name]); break;
      case 11: n = a171(o[name]); break;
      case 12: n = a168(o[name]); break;
      case 13: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a382(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a381(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p383 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["kind",6],["resistance",7],["season",8],["accessible",9],["state",10],["note",11]]);
const w384 = new Set<unknown>(["rod","plate","tape-or-wire","foundation","buried-steel","other"]);
function a385(v: unknown): number {
  return w384.has(v) ? 0 : -1;
}
function a386(v: unknown): number {
  let n = -1;
  n = a385(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w387 = new Set<unknown>(["wet","dry","frozen"]);
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
function a390(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p383.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a301(o[name]); break;
      case 6: n = a386(o[name]); break;
      case 7: n = a168(o[name]); break;
      case 8: n = a389(o[name]); break;
      case 9: n = a39(o[name]); break;
      case 10: n = a171(o[name]); break;
      case 11: n = a42(o[name]); break;
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
const p392 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["kind",6],["power",7],["fixed",8],["note",9]]);
function a393(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "watt", false) === undefined ? 0 : -1;
}
function a394(v: unknown): number {
  return typeof v === "string" && writtenFault(v, "watt", true) === undefined ? 0 : -1;
}
function a395(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p112.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a394(o[name]); break;
      case 1: needed--; n = a394(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a396(v: unknown): number {
  let n = -1;
  n = a393(v);
  if (n >= 0) return n;
  n = a395(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a397(v: unknown): number {
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
      case 5: n = a301(o[name]); break;
      case 6: n = a251(o[name]); break;
      case 7: n = a396(o[name]); break;
      case 8: n = a39(o[name]); break;
      case 9: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a398(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a397(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p399 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["fitted",6],["type",7],["indicator",8],["connection",9],["leads",10],["backupStandard",11],["backupRated",12],["note",13]]);
const w400 = new Set<unknown>(["1","2","3","1+2","2+3","1+2+3"]);
function a401(v: unknown): number {
  return w400.has(v) ? 0 : -1;
}
function a402(v: unknown): number {
  let n = -1;
  n = a401(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w403 = new Set<unknown>(["in-order","failed","no-indicator"]);
function a404(v: unknown): number {
  return w403.has(v) ? 0 : -1;
}
function a405(v: unknown): number {
  let n = -1;
  n = a404(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
const w406 = new Set<unknown>(["before-main-switch","after-main-switch","behind-rcd"]);
function a407(v: unknown): number {
  return w406.has(v) ? 0 : -1;
}
function a408(v: unknown): number {
  let n = -1;
  n = a407(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a409(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p399.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a301(o[name]); break;
      case 6: n = a39(o[name]); break;
      case 7: n = a402(o[name]); break;
      case 8: n = a405(o[name]); break;
      case 9: n = a408(o[name]); break;
      case 10: n = a151(o[name]); break;
      case 11: n = a123(o[name]); break;
      case 12: n = a130(o[name]); break;
      case 13: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a410(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a409(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p411 = new Map([["id",0],["board",1],["circuit",2],["place",3],["name",4],["quantity",5],["feeds",6],["fitted",7],["rated",8],["testability",9],["button",10],["indicator",11],["note",12]]);
function a412(v: unknown): number {
  if (!Array.isArray(v) || v.length > 60) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a4(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a413(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p411.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: n = a4(o[name]); break;
      case 4: n = a7(o[name]); break;
      case 5: n = a301(o[name]); break;
      case 6: n = a412(o[name]); break;
      case 7: n = a39(o[name]); break;
      case 8: n = a130(o[name]); break;
      case 9: n = a234(o[name]); break;
      case 10: n = a227(o[name]); break;
      case 11: n = a405(o[name]); break;
      case 12: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a414(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a413(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a415(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p299.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a316(o[name]); break;
      case 1: n = a361(o[name]); break;
      case 2: n = a372(o[name]); break;
      case 3: n = a379(o[name]); break;
      case 4: n = a382(o[name]); break;
      case 5: n = a391(o[name]); break;
      case 6: n = a398(o[name]); break;
      case 7: n = a410(o[name]); break;
      case 8: n = a414(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p416 = new Map([["item",0],["outcome",1],["observations",2],["reason",3]]);
const w417 = new Set<unknown>(["intake.cut-out","intake.service-cable","intake.meter-tails","intake.meter","intake.isolator","intake.polarity","earthing.arrangement","earthing.conductor","earthing.electrode","earthing.main-terminal","earthing.main-bonding","earthing.bonding-connections","earthing.supplementary","boards.access","boards.fixing","boards.enclosure","boards.non-combustible","boards.main-switch","boards.devices","boards.single-pole","boards.connections","boards.overheating","boards.rcd","boards.surge","boards.arc-fault","boards.labels","circuits.identification","circuits.support","circuits.insulation","circuits.unsheathed","circuits.capacity","circuits.protection","circuits.cpc","circuits.concealed","circuits.additional-protection","circuits.barriers","circuits.segregation","circuits.neutrals","circuits.terminations","accessories.condition","accessories.connections","accessories.single-pole-switches","accessories.external-influences","accessories.isolation","accessories.emergency","accessories.luminaires","accessories.fixed-equipment","fire.hot-surfaces","fire.escape-routes","fire.contents","fire.construction","fire.alarms","bathrooms.rcd","bathrooms.bonding","bathrooms.ip","bathrooms.equipment","outdoors.rcd","outdoors.weather","outdoors.buried","outdoors.outbuildings","special.pools","special.farms","special.conducting-places","special.medical","special.caravans-boats","special.locations","sources.generators","sources.photovoltaic","sources.storage","sources.vehicle-charging","sources.direction","notices.diagram","notices.other-sources","notices.isolation","notices.voltage","notices.inspection","notices.rcd-test"]);
function a418(v: unknown): number {
  return w417.has(v) ? 0 : -1;
}
const w419 = new Set<unknown>(["in-order","observed","limited","not-verified","not-applicable"]);
function a420(v: unknown): number {
  return w419.has(v) ? 0 : -1;
}
function a421(v: unknown): number {
  if (!Array.isArray(v) || v.length > 40) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a4(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a422(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p416.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a418(o[name]); break;
      case 1: needed--; n = a420(o[name]); break;
      case 2: n = a421(o[name]); break;
      case 3: n = a7(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a423(v: unknown): number {
  if (!Array.isArray(v) || v.length > 400) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a422(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p424 = new Map([["id",0],["board",1],["circuit",2],["place",3],["things",4],["brings",5],["what",6],["topic",7],["facts",8],["positions",9],["answers",10],["regulations",11],["photographs",12],["choice",13],["remedy",14],["madeSafe",15],["foundOn",16],["untold",17]]);
const p425 = new Map([["thing",0],["board",1],["quantity",2]]);
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
      case 2: n = a301(o[name]); break;
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
  let n = -1;
  n = a38(v);
  if (n >= 0) return n;
  n = a7(v);
  if (n >= 0) return n;
  n = a26(v);
  if (n >= 0) return n;
  return -1;
}
function a429(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  let all = 0;
  for (const name in v) {
    if (a4(name) < 0) return -1;
    const n = a428((v as Members)[name]);
    if (n < 0) return -1;
    all += n + 1;
  }
  return all;
}
const p430 = new Map([["position",0],["reason",1]]);
function a431(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p430.get(name);
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
function a432(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  let all = 0;
  for (const name in v) {
    if (a4(name) < 0) return -1;
    const n = a431((v as Members)[name]);
    if (n < 0) return -1;
    all += n + 1;
  }
  return all;
}
const p433 = new Map([["check",0],["board",1],["circuit",2],["part",3]]);
function a434(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p433.get(name);
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
function a435(v: unknown): number {
  if (!Array.isArray(v) || v.length > 100) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a434(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a436(v: unknown): number {
  if (!Array.isArray(v) || v.length > 10) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a7(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const r437 = /^[0-9a-f]{64}$/;
function a438(v: unknown): number {
  return typeof v === "string" && r437.test(v) ? 0 : -1;
}
function a439(v: unknown): number {
  if (!Array.isArray(v) || v.length > 40) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a438(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p440 = new Map([["classification",0],["reason",1],["by",2],["at",3]]);
const w441 = new Set<unknown>(["C1","C2","C3","FI","none"]);
function a442(v: unknown): number {
  return w441.has(v) ? 0 : -1;
}
function a443(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p440.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a442(o[name]); break;
      case 1: needed--; n = a42(o[name]); break;
      case 2: needed--; n = a4(o[name]); break;
      case 3: n = a49(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p444 = new Map([["done",0],["told",1],["at",2],["reply",3]]);
function a445(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p444.get(name);
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
function a446(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p424.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: n = a4(o[name]); break;
      case 2: n = a4(o[name]); break;
      case 3: needed--; n = a7(o[name]); break;
      case 4: n = a427(o[name]); break;
      case 5: n = a415(o[name]); break;
      case 6: needed--; n = a42(o[name]); break;
      case 7: n = a4(o[name]); break;
      case 8: n = a429(o[name]); break;
      case 9: n = a432(o[name]); break;
      case 10: n = a435(o[name]); break;
      case 11: n = a436(o[name]); break;
      case 12: n = a439(o[name]); break;
      case 13: n = a443(o[name]); break;
      case 14: n = a42(o[name]); break;
      case 15: n = a445(o[name]); break;
      case 16: n = a11(o[name]); break;
      case 17: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a447(v: unknown): number {
  if (!Array.isArray(v) || v.length > 500) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a446(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p448 = new Map([["name",0],["answersFor",1],["hash",2]]);
function a449(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p448.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a7(o[name]); break;
      case 1: needed--; n = a7(o[name]); break;
      case 2: needed--; n = a438(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p450 = new Map([["topic",0],["point",1],["position",2],["reason",3]]);
function a451(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 4, 0];
  for (const name in o) {
    const place = p450.get(name);
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
function a452(v: unknown): number {
  if (!Array.isArray(v) || v.length > 200) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a451(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p453 = new Map([["sha256",0],["name",1],["description",2],["place",3],["taken",4]]);
function a454(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p453.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a438(o[name]); break;
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
function a455(v: unknown): number {
  if (!Array.isArray(v) || v.length > 2000) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a454(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p456 = new Map([["check",0],["note",1]]);
function a457(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p456.get(name);
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
function a458(v: unknown): number {
  if (!Array.isArray(v) || v.length > 200) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a457(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
const p459 = new Map([["outcome",0],["generalCondition",1],["workWithin",2],["nextInspection",3]]);
const w460 = new Set<unknown>(["satisfactory","unsatisfactory"]);
function a461(v: unknown): number {
  return w460.has(v) ? 0 : -1;
}
const p462 = new Map([["days",0],["reason",1]]);
function a463(v: unknown): number {
  return Number.isSafeInteger(v) && (v as number) >= 1 && (v as number) <= 365 ? 0 : -1;
}
function a464(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 1, 0];
  for (const name in o) {
    const place = p462.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a463(o[name]); break;
      case 1: n = a42(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p465 = new Map([["by",0],["reason",1]]);
function a466(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 2, 0];
  for (const name in o) {
    const place = p465.get(name);
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
function a467(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 0, 0];
  for (const name in o) {
    const place = p459.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: n = a461(o[name]); break;
      case 1: n = a42(o[name]); break;
      case 2: n = a464(o[name]); break;
      case 3: n = a466(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
const p468 = new Map([["person",0],["capacity",1],["at",2],["content",3],["drawn",4]]);
const w469 = new Set<unknown>(["inspected-and-tested","authorised-for-issue"]);
function a470(v: unknown): number {
  return w469.has(v) ? 0 : -1;
}
const r471 = /^[ML0-9. -]*$/;
function a472(v: unknown): number {
  return typeof v === "string" && v.length <= 4000 && r471.test(v) ? 0 : -1;
}
function a473(v: unknown): number {
  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, 3, 0];
  for (const name in o) {
    const place = p468.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
      case 0: needed--; n = a4(o[name]); break;
      case 1: needed--; n = a470(o[name]); break;
      case 2: needed--; n = a49(o[name]); break;
      case 3: n = a438(o[name]); break;
      case 4: n = a472(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}
function a474(v: unknown): number {
  if (!Array.isArray(v) || v.length > 20) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = a473(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;
}
function a475(v: unknown): number {
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
      case 17: needed--; n = a202(o[name]); break;
      case 18: needed--; n = a298(o[name]); break;
      case 19: n = a415(o[name]); break;
      case 20: needed--; n = a423(o[name]); break;
      case 21: needed--; n = a447(o[name]); break;
      case 22: n = a449(o[name]); break;
      case 23: n = a452(o[name]); break;
      case 24: needed--; n = a455(o[name]); break;
      case 25: n = a458(o[name]); break;
      case 26: n = a467(o[name]); break;
      case 27: needed--; n = a474(o[name]); break;
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;
}

/** How many members the objects of the data have together; -1 where it does not plainly fit, each member in its order. */
export function accepted(data: unknown): number {
  return a475(data);
}
