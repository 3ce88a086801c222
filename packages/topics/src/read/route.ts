import { HAZARDS, PROVISIONS } from "@good-grounds/core";
import type { Condition, Word } from "../document/condition.ts";
import type { Holding, LayerNode, Route } from "../document/document.ts";
import { type Line, spotIn } from "../text/lines.ts";
import { nearTo } from "../text/near.ts";
import { readCondition } from "./condition.ts";
import { type Desk, match } from "./desk.ts";
import { placed } from "./link.ts";
import { readBelow, withRegulations } from "./statements.ts";

/** `route NAME (hazard): how harm comes about`, below it `there when` and the layers in the way. */
export function readRoute(line: Line, desk: Desk): Route | undefined {
  const { name, hazard, clause } =
    match(line, /^route (?<name>[a-z0-9][a-z0-9-]*) \((?<hazard>[a-z -]+)\): (?<clause>.+)$/) ?? {};
  if (name === undefined || hazard === undefined || clause === undefined)
    return desk.misspelt(line, '"route", a name, the hazard in brackets, ":", and how harm comes about');
  return desk.within(`route ${name.text}`, () => {
    let when: Condition | undefined;
    const layers: LayerNode[] = [];
    readBelow(line, desk, [
      {
        begins: "there when",
        read: (one) => {
          when = readCondition(one, 10, desk);
        },
      },
      {
        begins: "layer",
        often: true,
        read: (one) => {
          const layer = readLayer(one, desk);
          if (layer !== undefined) layers.push(layer);
        },
      },
    ]);
    const kind = oneOf(hazard, HAZARDS, "hazard", desk);
    return {
      kind: "route",
      ...placed(line),
      name,
      hazard: kind ?? HAZARDS[0],
      clause: clause.text,
      ...(when === undefined ? {} : { when }),
      layers,
    };
  });
}

/** `layer NAME (provision): what it is here [regulations]`, below it how it holds. */
function readLayer(line: Line, desk: Desk): LayerNode | undefined {
  const { name, provision, words } =
    match(line, /^layer (?<name>[a-z0-9][a-z0-9-]*) \((?<provision>[a-z -]+)\): (?<words>.+)$/) ?? {};
  if (name === undefined || provision === undefined || words === undefined)
    return desk.misspelt(line, '"layer", a name, the provision in brackets, ":", and what it is here');
  return desk.within(`layer ${name.text}`, () => {
    const kind = oneOf(provision, PROVISIONS, "provision", desk);
    const holding = readHolding(line, desk);
    return { ...placed(line), name, provision: kind ?? PROVISIONS[0], ...withRegulations(words.text), holding };
  });
}

function readHolding(line: Line, desk: Desk): Holding {
  let gone: Condition | undefined;
  let sound: Condition | undefined;
  let state: Word | undefined;
  let oneEvent = false;
  readBelow(line, desk, [
    {
      begins: "gone when",
      read: (one) => {
        gone = readCondition(one, 9, desk);
      },
    },
    {
      begins: "sound when",
      read: (one) => {
        sound = readCondition(one, 10, desk);
      },
    },
    {
      begins: "holds until one event",
      read: () => {
        oneEvent = true;
      },
    },
    {
      begins: "as",
      read: (one) => {
        state = match(one, /^as (?<state>[a-z0-9][a-z0-9-]*)$/)?.state;
      },
    },
  ]);
  const ways = [state !== undefined, oneEvent, gone !== undefined || sound !== undefined].filter(Boolean).length;
  if (ways !== 1)
    desk.fault(
      spotIn(line),
      ways === 0 ? "nothing says how the layer holds" : "the layer holds in two ways",
      '"gone when", "sound when", both, or "holds until one event", or "as" and a state',
      "say below it when it is gone and when no single event takes it away",
    );
  if (state !== undefined) return { kind: "as", state };
  if (oneEvent) return { kind: "one-event" };
  return { kind: "when", ...(gone === undefined ? {} : { gone }), ...(sound === undefined ? {} : { sound }) };
}

function oneOf<T extends string>(word: Word, values: readonly T[], what: string, desk: Desk): T | undefined {
  const name = word.text.trim().replaceAll(" ", "-");
  const found = values.find((one) => one === name);
  if (found !== undefined) return found;
  const [near] = nearTo(name, values);
  return desk.fault(
    word.at,
    `no ${what} is called "${word.text}"`,
    values.map((one) => one.replaceAll("-", " ")).join(", "),
    near === undefined ? "write one of these" : `is it "${near.replaceAll("-", " ")}"?`,
  );
}
