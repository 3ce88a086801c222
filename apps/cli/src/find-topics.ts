import { TOPICS, type Topic } from "@good-grounds/judgement";

/** Other words for what topics are about, as people on site say or abbreviate them. */
const OTHER_WORDS: Readonly<Record<string, readonly string[]>> = Object.freeze({
  afdd: ["arc"],
  alarm: ["smoke", "fire-alarm"],
  bess: ["battery"],
  bonding: ["bond"],
  breaker: ["device", "overload", "breaking"],
  car: ["ev"],
  cu: ["board"],
  consumer: ["board"],
  cutout: ["distributor", "supply"],
  diy: ["adaptors", "flexible"],
  electrode: ["electrode", "tt"],
  extraneous: ["bonding"],
  fan: ["fixed-equipment", "luminaire-unsupported"],
  fusebox: ["board", "fuse"],
  heater: ["immersion", "bath-heater", "hot-equipment"],
  ir: ["insulation-low", "insulation-falling"],
  junction: ["joint"],
  lamp: ["luminaire", "lampholder", "lighting"],
  light: ["luminaire", "lighting", "lampholder", "downlight"],
  mcb: ["device", "overload", "breaking"],
  met: ["main-earthing-terminal"],
  plug: ["socket", "adaptors"],
  pvc: ["pvc", "cable"],
  rccb: ["rcd"],
  rcbo: ["rcd"],
  solar: ["pv"],
  spd: ["surge"],
  switch: ["switch", "isolation", "accessory"],
  tails: ["meter-tails"],
  tncs: ["pme"],
  vir: ["rubber"],
});

/** Topics whose id or title has the words, or what people mean by them; the best first. */
export function findTopics(text: string): readonly Topic[] {
  const words = text
    .toLowerCase()
    .split(/[^a-z0-9]+/)
    .filter((word) => word.length > 1)
    .slice(0, 12);
  const scored = TOPICS.map((topic) => ({ topic, score: words.reduce((sum, word) => sum + scoreOf(topic, word), 0) }));
  return scored
    .filter(({ score }) => score > 0)
    .sort((a, b) => b.score - a.score)
    .map(({ topic }) => topic);
}

function scoreOf({ id, title }: Topic, word: string): number {
  const tokens = `${id} ${title.toLowerCase()}`.split(/[^a-z0-9]+/);
  if (tokens.includes(word)) return 3;
  if (word.length > 2 && tokens.some((token) => token.startsWith(word) || (token.length > 3 && word.startsWith(token))))
    return 2;
  const others = Object.hasOwn(OTHER_WORDS, word) ? (OTHER_WORDS[word] ?? []) : [];
  return others.some((other) => id === other || `-${id}-`.includes(`-${other}-`) || id.includes(other)) ? 2 : 0;
}
