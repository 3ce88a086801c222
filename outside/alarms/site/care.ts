/** How carefully a job was done and written down, 1 the best. Nothing is wrong with the installation at any of them. */
export interface Care {
  readonly level: 1 | 2 | 3 | 4;
  readonly says: string;
  readonly accuracyStated: boolean;
  /** Greatest error of a written length, as a part of it; beyond the metre it is rounded to. */
  readonly length: number;
  /** How often no length is written. */
  readonly lengthBlank: number;
  readonly temperatureWritten: number;
  readonly currentWritten: number;
  /** Ω of the leads that nulling left, at most, and of the probes at a contact, on average. */
  readonly leads: number;
  readonly contact: number;
  /** How much warmer a circuit may be in the live tests than where it runs, K. */
  readonly warmer: number;
  /** Parts of the tests that many leave out. */
  readonly boardLoop: number;
  readonly crossReadings: number;
  readonly neutralsTested: number;
  readonly boardInsulation: number;
  readonly blank: number;
  /** How often Zs is read one point short of where R1+R2 was. */
  readonly otherPoint: number;
}

export const CARE: readonly Care[] = [
  {
    level: 1,
    says: "accuracy stated, lengths to the metre",
    accuracyStated: true,
    length: 0,
    lengthBlank: 0,
    temperatureWritten: 1,
    currentWritten: 1,
    leads: 0.005,
    contact: 0.002,
    warmer: 2,
    boardLoop: 1,
    crossReadings: 1,
    neutralsTested: 0.3,
    boardInsulation: 0.4,
    blank: 0,
    otherPoint: 0,
  },
  {
    level: 2,
    says: "accuracy stated, lengths within 3 %",
    accuracyStated: true,
    length: 0.03,
    lengthBlank: 0,
    temperatureWritten: 0.8,
    currentWritten: 0.8,
    leads: 0.01,
    contact: 0.003,
    warmer: 3,
    boardLoop: 0.9,
    crossReadings: 0.9,
    neutralsTested: 0.2,
    boardInsulation: 0.3,
    blank: 0.01,
    otherPoint: 0,
  },
  {
    level: 3,
    says: "accuracy not stated, lengths within 10 %",
    accuracyStated: false,
    length: 0.1,
    lengthBlank: 0.05,
    temperatureWritten: 0.3,
    currentWritten: 0.4,
    leads: 0.02,
    contact: 0.005,
    warmer: 6,
    boardLoop: 0.7,
    crossReadings: 0.6,
    neutralsTested: 0.1,
    boardInsulation: 0.2,
    blank: 0.03,
    otherPoint: 0.04,
  },
  {
    level: 4,
    says: "accuracy not stated, lengths guessed or blank, loads warm, leads badly nulled",
    accuracyStated: false,
    length: 0.35,
    lengthBlank: 0.4,
    temperatureWritten: 0,
    currentWritten: 0.1,
    leads: 0.05,
    contact: 0.008,
    warmer: 15,
    boardLoop: 0.5,
    crossReadings: 0.4,
    neutralsTested: 0.05,
    boardInsulation: 0.15,
    blank: 0.06,
    otherPoint: 0.08,
  },
];
