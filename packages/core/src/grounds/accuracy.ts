/** The accuracy of one range of an instrument as its maker states it: ±(part of reading + digits of the last place). */
export interface Accuracy {
  readonly text: string;
  /** Part of the reading, 0.05 for 5 %. */
  readonly ofReading: number;
  /** Counts of the last digit shown. */
  readonly digits: number;
}

const FORM = /^±?\(?(\d{1,2}(?:\.\d{1,3})?) ?% ?(?:\+ ?(\d{1,3}) digits?)?\)?$/;

/** Reads "±(5 % + 3 digits)" or "2 %". Undefined where the text has another form. */
export function parseAccuracy(text: string): Accuracy | undefined {
  const parts = text.length > 40 ? null : FORM.exec(text.trim());
  if (parts === null) return undefined;
  return Object.freeze({ text, ofReading: Number(`${parts[1]}e-2`), digits: Number(parts[2] ?? "0") });
}
