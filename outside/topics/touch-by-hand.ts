import type { TouchState } from "./situations.ts";

/** Facts and positions of one case, all given. */
export type TouchCase = Readonly<Record<string, string>>;

/**
 * Basic protection worked out a second time, as an inspector counts: what is on the metal, what is around it, what gets
 * past. It is what the shared state is held against.
 */
export function touchByHand(now: TouchCase): TouchState {
  const around = aroundIt(now);
  switch (now["live-covering"]) {
    case "double-or-reinforced":
    case "sheathed":
      return "holds";
    case "basic-sound":
      if (around === 2) return "holds";
      if (now.wears === "moved" || now.wears === "heat-weather-rodents") return "one-event";
      if (around === 1) return "holds";
      return now.wears === "nothing" && now["open-cores"] === "improve" ? "holds" : "one-event";
    case "basic-damaged":
      if (around === 2) return coverMakesUp(now) ? "holds" : "one-event";
      return now["wet-or-conductive"] === "yes" && around === 0 ? "gone" : "one-event";
    default:
      if (around === 0) return "gone";
      return around === 2 && coverMakesUp(now) ? "holds" : "one-event";
  }
}

function coverMakesUp(now: TouchCase): boolean {
  return now["meant-insulated"] === "no" || now["damaged-behind-cover"] === "cover-holds";
}

/** The best of what is around: 2 a measure of the standard, 1 until one event, 0 nothing. */
function aroundIt(now: TouchCase): number {
  return Math.max(enclosure(now), distance(now), place(now));
}

function place(now: TouchCase): number {
  if (now["locked-board"] !== "counts") return 0;
  const who = now["who-comes"];
  if (who === "many-keys") return now["many-keys"] === "counts" ? 1 : 0;
  return who === "skilled-only" || who === "named-keeper" ? 1 : 0;
}

function distance(now: TouchCase): number {
  if (now["wet-or-conductive"] === "yes") return 0;
  const reach = now["arms-reach"];
  if (now["who-comes"] === "skilled-only") {
    if (reach === "beyond" || now.obstacle === "secured") return 2;
    return reach === "long-things" || now.obstacle === "not-secured" ? 1 : 0;
  }
  if (now.distance !== "counts") return 0;
  return reach !== "within" || now.obstacle === "secured" ? 1 : 0;
}

function enclosure(now: TouchCase): number {
  const free = now["allowed-opening"] === "yes";
  if (now["gets-in"] === "hand") return 0;
  if (now["gets-in"] === "finger" && !(free && now["lamp-contact"] === "allowed")) return 0;
  if (now["barrier-behind"] === "yes") return 2;
  if (now["hinges-carry"] === "no" || now["cover-fixing"] === "open" || now["cover-opens"] === "stands-open") return 0;
  let left = now["cover-fixing"] === "whole" || now["cover-fixing"] === "slight" ? 2 : 1;
  if (handOpens(now) && !free) {
    const children = now["who-comes"] === "children-or-less-able";
    left = Math.min(left, children || now["door-only-shuts"] === "does-not-count" ? 0 : 1);
  }
  return left;
}

function handOpens(now: TouchCase): boolean {
  if (now["cover-opens"] === "hand") return true;
  if (now["cover-opens"] !== "key" && now["cover-opens"] !== "interlock") return false;
  if (now["lock-works"] === "no") return true;
  if (now["cover-opens"] === "interlock") return false;
  switch (now["who-comes"]) {
    case "many-keys":
      return now["many-keys"] === "does-not-count";
    case "anyone":
    case "children-or-less-able":
      return true;
    default:
      return false;
  }
}
