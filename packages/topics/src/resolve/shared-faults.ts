import type { Document } from "../document/document.ts";
import type { TextFault } from "../text/fault.ts";
import { expressionOf } from "./expression.ts";
import { factOf } from "./fact.ts";
import { nameFault } from "./name.ts";
import { Scope } from "./scope.ts";
import { isNamed, type Shared } from "./shared.ts";
import { checkCircles, checkFactsOnly } from "./state-faults.ts";

/** What is wrong with a shared text by itself, whether or not a topic uses it. */
export function sharedFaults(document: Document, shared: Shared): readonly TextFault[] {
  const scope = new Scope(document, shared);
  for (const one of document.statements) {
    if (isNamed(one)) {
      const wrong = nameFault(one.name.text);
      if (wrong !== undefined) scope.fault(one.name, wrong.found, wrong.expected, wrong.advice);
    }
    if (one.kind === "fact" || one.kind === "amount") factOf(one, scope, undefined);
    if (one.kind === "state")
      for (const { when } of one.values) if (when !== undefined) expressionOf(when, scope, [`state ${one.name.text}`]);
    if (one.kind === "danger") expressionOf(one.when, scope, [`danger ${one.name.text}`]);
    if (one.kind === "contradiction") {
      expressionOf(one.when, scope, ["contradiction"]);
      checkFactsOnly(one.when, scope, ["contradiction"]);
    }
  }
  checkCircles(
    document.statements.filter((one) => one.kind === "state"),
    scope,
  );
  return scope.faults;
}
