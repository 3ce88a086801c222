/** Steps of the continued fraction; far more than the few dozen it takes for the degrees of freedom met here. */
const MOST_STEPS = 500;
const TINY = 1e-300;

/** ln Γ(x) for x > 0 by Lanczos' approximation (g = 7, nine terms), relative error about 1e-15. */
function logGamma(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const base = x - 1 + 7.5;
  let sum = LANCZOS[0] as number;
  for (let k = 1; k < LANCZOS.length; k++) sum += (LANCZOS[k] as number) / (x - 1 + k);
  return 0.5 * Math.log(2 * Math.PI) + (x - 0.5) * Math.log(base) - base + Math.log(sum);
}

const LANCZOS = Object.freeze([
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
]);

/** Regularised incomplete beta function by its continued fraction (modified Lentz). */
function incompleteBeta(a: number, b: number, x: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  if (x > (a + 1) / (a + b + 2)) return 1 - incompleteBeta(b, a, 1 - x);
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x)) / a;
  let [f, c, d] = [1, 1, 0];
  for (let step = 0; step <= MOST_STEPS; step++) {
    const m = Math.floor(step / 2);
    const numerator =
      step === 0
        ? 1
        : step % 2 === 0
          ? (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m))
          : -((a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / nonZero(1 + numerator * d);
    c = nonZero(1 + numerator / c);
    f *= c * d;
    if (Math.abs(1 - c * d) < 1e-16) break;
  }
  return front * (f - 1);
}

function nonZero(value: number): number {
  return Math.abs(value) < TINY ? TINY : value;
}

/** Chance that a Student t value with so many degrees of freedom lies beyond ±t. */
function studentBeyond(t: number, freedom: number): number {
  return incompleteBeta(freedom / 2, 0.5, freedom / (freedom + t * t));
}

/** The t that a Student t value stays within, either way, with the given assurance (0 to 1, ends left out). */
export function studentWithin(assurance: number, freedom: number): number {
  if (!(assurance > 0 && assurance < 1) || !(freedom > 0)) throw new RangeError(`no t for ${assurance} and ${freedom}`);
  let [low, high] = [0, 1];
  while (studentBeyond(high, freedom) > 1 - assurance) high *= 2;
  for (let i = 0; i < 200 && high - low > 1e-15 * high; i++) {
    const middle = (low + high) / 2;
    if (studentBeyond(middle, freedom) > 1 - assurance) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
