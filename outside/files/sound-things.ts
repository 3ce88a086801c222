import type { InspectionFile } from "@good-grounds/inspection";

type Things = NonNullable<InspectionFile["things"]>;
type Lists = { readonly [kind: string]: readonly Thing[] | undefined };
interface Thing {
  readonly id: string;
  readonly board?: string;
  readonly circuit?: string;
  readonly place?: string;
  readonly between?: readonly string[];
  readonly enclosure?: string;
  readonly feeds?: readonly string[];
}

/** Things whose ids and references were drawn blindly, mended: an id once in the whole file, references that lead somewhere. */
export function soundThings(
  things: Things | undefined,
  boards: readonly InspectionFile["boards"][number][],
  prefix: string,
): Things | undefined {
  if (things === undefined) return undefined;
  const named = Object.entries(things as Lists).map(
    ([kind, list]) => [kind, (list ?? []).map((one, i) => ({ ...one, id: `${prefix}-${kind}-${i}` }))] as const,
  );
  const ids = new Map(named.map(([kind, list]) => [kind, list.map(({ id }) => id)]));
  const of = (kind: string, asked: readonly string[] | undefined) => (ids.get(kind) ?? []).slice(0, asked?.length ?? 0);
  return Object.fromEntries(named.map(([kind, list]) => [kind, list.map((one) => mended(one, boards, of))])) as Things;
}

function mended(
  { board, circuit, place, between, enclosure, feeds, ...rest }: Thing,
  boards: readonly InspectionFile["boards"][number][],
  of: (kind: string, asked: readonly string[] | undefined) => readonly string[],
): Thing {
  const at = board === undefined ? undefined : boards[board.length % boards.length];
  const own = circuit === undefined ? undefined : at?.circuits[0];
  const [somewhere] = of("places", place === undefined ? [] : [place]);
  const [within] = of("enclosures", enclosure === undefined ? [] : [enclosure]);
  return {
    ...rest,
    ...(at === undefined ? {} : { board: at.id }),
    ...(own === undefined ? {} : { circuit: own.id }),
    ...(somewhere === undefined ? {} : { place: somewhere }),
    ...(within === undefined ? {} : { enclosure: within }),
    ...(between === undefined ? {} : { between: of("sections", between) }),
    ...(feeds === undefined ? {} : { feeds: (at?.circuits ?? []).slice(0, feeds.length).map(({ id }) => id) }),
  };
}
