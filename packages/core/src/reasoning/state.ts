import { ALWAYS, all, any, type Expression, NEVER, not } from "./expression.ts";
import type { Subject } from "./subject.ts";

/** The rule of facts under which a state has one of some values; throws where the subject has no such state or value. */
export function ruleOfState({ state, values }: Extract<Expression, { op: "state" }>, subject: Subject): Expression {
  return any(...values.map((value) => ruleOfValue(state, value, subject)));
}

const MADE = new WeakMap<Subject, Map<string, Expression>>();

/** Its own rule holds and that of no worse value does; made once, so that equal rules are one. */
function ruleOfValue(name: string, value: string, subject: Subject): Expression {
  const known = MADE.get(subject) ?? new Map<string, Expression>();
  MADE.set(subject, known);
  const key = `${name} ${value}`;
  const made = known.get(key) ?? madeRule(name, value, subject);
  known.set(key, made);
  return made;
}

function madeRule(name: string, value: string, { id, states = {} }: Subject): Expression {
  const about = Object.hasOwn(states, name) ? states[name] : undefined;
  if (about === undefined)
    throw new Error(`${id}: a rule speaks of the state ${name}, which the subject does not have`);
  const ranked = Object.keys(about.values);
  const at = ranked.indexOf(value);
  if (at < 0) throw new Error(`${id}: "${value}" is none of ${ranked.join(", ")}`);
  const when = (one: string | undefined) => (one === undefined ? undefined : about.values[one]?.when);
  const worse = ranked.slice(at + 1).map((one) => when(one) ?? NEVER);
  return all(at === 0 ? ALWAYS : (when(value) ?? NEVER), not(any(...worse)));
}
