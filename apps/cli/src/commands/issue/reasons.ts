import { isReasonOfItsOwn, standsInTheWay } from "@good-grounds/judgement";
import { openPointWords, printable, type ReportInput } from "@good-grounds/report";
import { EXIT, Stop } from "../../host.ts";

/** The reasons for issuing over points that stand open, in the order of the ledger. Stops where one has none. */
export function reasonsFor(
  { outcome, installation, checks }: ReportInput,
  given: readonly string[],
): readonly { readonly point: string; readonly words: string }[] {
  const reasons = new Map(given.map(split));
  const inTheWay = standsInTheWay(outcome);
  for (const name of reasons.keys())
    if (!inTheWay.some((one) => one.name === name))
      throw new Stop(
        EXIT.input,
        `--reason: no open point is called ${JSON.stringify(name)}. There are: ${inTheWay.map((one) => one.name).join(", ") || "none"}.`,
      );
  const open = inTheWay.filter(({ name }) => !isReasonOfItsOwn(reasons.get(name)));
  if (open.length > 0) {
    const lines = open.flatMap(({ name, point }) => {
      const words = openPointWords(point, { installation, checks }, true);
      return [`  ${printable(name)}`, `    ${printable(words)}`];
    });
    const many = open.length === 1 ? "1 point stands" : `${open.length} points stand`;
    throw new Stop(
      EXIT.open,
      `issue: ${many} open. Settle each in the inspection, or give a reason with --reason "POINT=WORDS"; --draft makes a draft.\n${lines.join("\n")}`,
    );
  }
  return inTheWay.map(({ name }) => ({ point: name, words: reasons.get(name) ?? "" }));
}

function split(given: string): readonly [string, string] {
  const at = given.indexOf("=");
  if (at < 1) throw new Stop(EXIT.input, `--reason: found ${JSON.stringify(given)}, expected "POINT=WORDS".`);
  return [given.slice(0, at).trim(), given.slice(at + 1).trim()];
}
