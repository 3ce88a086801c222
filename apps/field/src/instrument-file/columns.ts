/** What a column may hold. */
export const COLUMNS = {
  circuit: { words: "circuit", unit: "" },
  time: { words: "time", unit: "" },
  temperature: { words: "conductor temperature", unit: "°C" },
  r1: { words: "r1", unit: "Ω" },
  rn: { words: "rn", unit: "Ω" },
  r2: { words: "r2", unit: "Ω" },
  r1r2: { words: "R1+R2", unit: "Ω" },
  r2Only: { words: "R2", unit: "Ω" },
  insulationLiveLive: { words: "insulation, live to live", unit: "MΩ" },
  insulationLiveEarth: { words: "insulation, live to earth", unit: "MΩ" },
  zs: { words: "Zs", unit: "Ω" },
  faultCurrent: { words: "prospective fault current", unit: "kA" },
  leakage: { words: "protective conductor current", unit: "mA" },
} as const;

export type Column = keyof typeof COLUMNS;

/** A column's use: what it holds and the unit of bare numbers in it. */
export interface Use {
  readonly column: Column;
  readonly unit: string;
}

/** Guesses by words of the header, first fit first; a guess is only a suggestion. */
const GUESSES: readonly (readonly [RegExp, Column])[] = [
  [/\br1\s*\+\s*r2\b|\br1r2\b/i, "r1r2"],
  [/\brn\b/i, "rn"],
  [/\br1\b/i, "r1"],
  [/\br2\b/i, "r2Only"],
  [
    /(l\s*[-–/]\s*n|l\s*[-–/]\s*l|live.*live).*(ins|ir|mΩ|mohm)|(ins|ir).*(l\s*[-–/]\s*n|l\s*[-–/]\s*l|live.*live)/i,
    "insulationLiveLive",
  ],
  [/\bins|insul|\bir\b/i, "insulationLiveEarth"],
  [/\bzs\b|loop/i, "zs"],
  [/\bpfc\b|\bpscc\b|\bpefc\b|\bipf\b|fault current/i, "faultCurrent"],
  [/leak/i, "leakage"],
  [/temp/i, "temperature"],
  [/\btime\b|\bdate\b/i, "time"],
  [/circuit|\bway\b|\bcct\b|designation|\bref\b|\bname\b/i, "circuit"],
];

const UNITS = ["MΩ", "kΩ", "mΩ", "Ω", "kA", "mA", "A", "°C"] as const;

/** What a header suggests its column holds; undefined where it suggests nothing. */
export function guess(header: string): Use | undefined {
  const column = GUESSES.find(([words]) => words.test(header))?.[1];
  if (column === undefined) return undefined;
  return { column, unit: unitIn(header) ?? COLUMNS[column].unit };
}

function unitIn(header: string): string | undefined {
  const plain = header.replaceAll(/ohms?/gi, "Ω");
  return UNITS.find((unit) => new RegExp(`[^\\p{L}]${unit}(?![\\p{L}])|^${unit}$`, "u").test(plain));
}
