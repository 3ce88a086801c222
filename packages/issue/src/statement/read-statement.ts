import { type Line, StatementFault } from "./lines.ts";
import { LAYOUTS, type Statement, statementLines } from "./statement.ts";

/** A statement from its lines. Throws {@link StatementFault} where they are not the lines of a statement, in their order. */
export function readStatement(lines: readonly Line[]): Statement {
  const all = (name: string) => lines.filter(([one]) => one === name);
  const one = (name: string): Line => {
    const [line, more] = all(name);
    if (line === undefined || more !== undefined)
      throw new StatementFault(`the statement has ${all(name).length} lines "${name}", where one was expected`);
    return line;
  };
  const text = (name: string) => one(name)[2];
  const bytes = ([, kind, value]: Line) => (kind === "bytes" ? value : undefined);
  const strokes = all("strokes");
  const reasons = all("reason");
  const statement: Statement = {
    report: text("report"),
    number: Number(text("number")),
    replaces: bytes(one("replaces")),
    previous: bytes(one("previous")),
    evidence: text("evidence"),
    pages: text("pages"),
    pagesLength: Number(text("pages-length")),
    photographs: all("photograph").map(([, , value]) => value),
    earlier: all("earlier").map(([, , value]) => value),
    topics: bytes(one("topics")),
    release: text("release"),
    layout: LAYOUTS.find((layout) => layout === text("layout")) ?? "command",
    outcome: text("outcome"),
    signatures: all("signature").map(([, , words], i) => {
      const drawn = strokes[i];
      return { words, drawn: drawn === undefined ? undefined : bytes(drawn) };
    }),
    reasons: all("open-point").map(([, , point], i) => ({ point, words: reasons[i]?.[2] ?? "" })),
    at: text("at"),
    clock: text("clock"),
    timeAuthority: text("time-authority") === "asked",
    key: text("key"),
    certificate: text("certificate"),
  };
  // What a line more, a line less or another order would say is nothing this program knows.
  if (JSON.stringify(statementLines(statement)) !== JSON.stringify(lines))
    throw new StatementFault("the lines of the statement are not those of a statement of issue, in their order");
  return statement;
}
