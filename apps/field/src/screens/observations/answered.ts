/** One check at one place that an observation speaks of, as the inspection file has it. */
export interface Answered {
  readonly check: string;
  readonly board?: string;
  readonly circuit?: string;
  readonly part?: string;
}

/**
 * How the place of a finding is named from an observation at a board and a circuit, either empty where it names none;
 * undefined where the place is not one an observation there speaks of.
 */
export function answeredBy(path: string, board: string, circuit: string): Omit<Answered, "check"> | undefined {
  const [head = "", name = "", list = "", member = "", further = ""] = path.split("/");
  if (head === "supply") {
    if (board !== "") return undefined;
    return name === "bonding" && list !== "" ? { part: list } : {};
  }
  if (head !== "boards" || name !== board) return undefined;
  if (list === "circuits") {
    if (circuit === "") return { circuit: member };
    return member === circuit && (further === "" || further === "rcd") ? {} : undefined;
  }
  if (circuit !== "") return undefined;
  return list === "rcds" ? { part: member } : {};
}

/** Whether two entries name the same, where what is left out stands for the observation's own place. */
export function isSame(a: Answered, b: Answered, own: { readonly board: string; readonly circuit: string }): boolean {
  const full = ({ check, board, circuit, part }: Answered) =>
    [check, board ?? own.board, circuit ?? (board === undefined ? own.circuit : ""), part ?? ""].join(" ");
  return full(a) === full(b);
}
