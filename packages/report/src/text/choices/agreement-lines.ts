import { type AgreementFigures, CLASSIFICATIONS, type CohenKappa } from "@good-grounds/core";
import { CHOICES } from "../../locales/choices-en.ts";
import { padded, wrapped } from "../wrap.ts";

/** Pairs of judges shown; the rest is counted. */
const MOST_SHOWN = 20;

/** The figures of agreement with what they say and what they do not. `least` is what two need in common. */
export function agreementLines(figures: AgreementFigures, least: number, width: number): string[] {
  const { by, all, within, between, varied, tied } = figures;
  const rows = [
    [CHOICES.pairs, all],
    [CHOICES.within(by), within],
    [CHOICES.between(by), between],
  ] as const;
  const few = CHOICES.few(figures.several.kappa.items);
  return [
    ...rows.flatMap(([label, { agreed, pairs }]) =>
      wrapped(CHOICES.agreed(agreed, pairs), width, `${padded(label, 22)} `, " ".repeat(23)),
    ),
    "",
    ...severalLines(figures, width),
    ...twoLines(figures, least, width),
    "",
    ...[
      few,
      CHOICES.usual(varied, tied, by),
      CHOICES.says,
      CHOICES.saysNot,
      CHOICES.matched[by],
      CHOICES.decides,
    ].flatMap((words) => (words === "" ? [] : wrapped(words, width))),
  ];
}

function severalLines({ by, several: { judges, kappa } }: AgreementFigures, width: number): string[] {
  const heading = wrapped(CHOICES.several(judges, kappa.items, by), width);
  if (!kappa.defined) return [...heading, ...wrapped(CHOICES.notDefined[kappa.because], width, "  ")];
  const alone = CLASSIFICATIONS.flatMap((classification) => {
    const value = kappa.byClassification[classification];
    return value === null ? [] : [`${classification} ${figure(value)}`];
  });
  return [
    ...heading,
    ...wrapped(
      `${figure(kappa.value)}  ${CHOICES.shares(figure(kappa.observed), figure(kappa.expected))}`,
      width,
      "  ",
    ),
    ...wrapped(CHOICES.byClassification(alone), width, "  "),
  ];
}

function twoLines({ by, two, notPaired }: AgreementFigures, least: number, width: number): string[] {
  const heading = wrapped(CHOICES.two(by, least), width);
  if (two.length === 0) return [...heading, ...wrapped(CHOICES.noTwo, width, "  ")];
  return [
    ...heading,
    ...two
      .slice(0, MOST_SHOWN)
      .flatMap(({ judges, common, kappa, linear }) => [
        ...wrapped(`${judges.join(" – ")}: ${CHOICES.common(common)}`, width, "  "),
        ...wrapped(kappaWords(kappa), width, "    "),
        ...wrapped(linearWords(linear, common), width, "    "),
      ]),
    ...(two.length > MOST_SHOWN ? wrapped(CHOICES.moreTwo(two.length - MOST_SHOWN), width, "  ") : []),
    ...(notPaired > 0 ? wrapped(CHOICES.notPaired(notPaired, by), width, "  ") : []),
  ];
}

function kappaWords(kappa: CohenKappa): string {
  if (!kappa.defined) return CHOICES.notDefined[kappa.because];
  const interval =
    kappa.standardError === 0 ? CHOICES.noInterval : CHOICES.interval(figure(kappa.low), figure(kappa.high));
  return `${figure(kappa.value)}, ${interval}, ${CHOICES.shares(figure(kappa.observed), figure(kappa.expected))}`;
}

function linearWords(linear: CohenKappa, common: number): string {
  const left = common - linear.items;
  const value = linear.defined ? figure(linear.value) : CHOICES.notDefined[linear.because];
  return [CHOICES.linear(value), ...(left > 0 ? [CHOICES.linearWithout(left)] : [])].join("; ");
}

/** Two decimals, with a true minus sign and no minus nothing. */
function figure(value: number): string {
  const text = Math.abs(value).toFixed(2);
  return value < 0 && text !== "0.00" ? `−${text}` : text;
}
