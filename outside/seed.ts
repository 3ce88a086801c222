/** The seed of random examples in `npm test`; any other would do as well. */
const FIXED = 7671;

/** The seed of this run: the fixed one, or the one that `npm run nightly` gives. */
export function seedOfRun(): number {
  return wholeNumber("GOOD_GROUNDS_SEED") ?? FIXED;
}

/** How many times as many random examples as each test asks for: 1, or what `npm run nightly` gives. */
export function timesAsMany(): number {
  return wholeNumber("GOOD_GROUNDS_TIMES") ?? 1;
}

/** How many cases a test that draws its own looks at in this run, of so many in `npm test`. */
export function casesOfRun(count: number): number {
  return count * timesAsMany();
}

function wholeNumber(name: string): number | undefined {
  const text = process.env[name];
  if (text === undefined || text === "") return undefined;
  const number = Number(text);
  if (!Number.isSafeInteger(number) || number < 1 || number > 2 ** 31 - 1)
    throw new Error(`${name} is "${text}"; a whole number from 1 to ${2 ** 31 - 1} is needed.`);
  return number;
}
