/** Terms after which series and continued fraction have long settled for the sizes used here (a up to some tens). */
const MOST_TERMS = 500;
const SETTLED = 1e-16;

/**
 * The upper part of the gamma integral, Q(a, x) = Γ(a, x) / Γ(a), for a = 1/2, 1, 3/2, … and x ≥ 0. Chi-squared with n
 * degrees of freedom lies above c with the chance Q(n/2, c/2). Series below a + 1, Lentz's continued fraction above.
 */
export function gammaAbove(a: number, x: number): number {
  if (!(x > 0)) return 1;
  if (x === Number.POSITIVE_INFINITY) return 0;
  const front = Math.exp(a * Math.log(x) - x - logGamma(a));
  return x < a + 1 ? Math.max(0, 1 - front * series(a, x)) : front * fraction(a, x);
}

function series(a: number, x: number): number {
  let term = 1 / a;
  let sum = term;
  for (let n = 1; n < MOST_TERMS && term > sum * SETTLED; n++) {
    term *= x / (a + n);
    sum += term;
  }
  return sum;
}

function fraction(a: number, x: number): number {
  const tiny = 1e-300;
  let b = x + 1 - a;
  let c = 1 / tiny;
  let d = 1 / b;
  let h = d;
  for (let n = 1; n < MOST_TERMS; n++) {
    const an = -n * (n - a);
    b += 2;
    d = 1 / nonZero(an * d + b, tiny);
    c = nonZero(b + an / c, tiny);
    h *= d * c;
    if (Math.abs(d * c - 1) < SETTLED) break;
  }
  return h;
}

const nonZero = (value: number, tiny: number): number => (Math.abs(value) < tiny ? tiny : value);

/** ln Γ(a) for whole and half numbers: Γ(1/2) = √π, Γ(1) = 1, Γ(a + 1) = a Γ(a). */
function logGamma(a: number): number {
  let left = a;
  let sum = 0;
  while (left > 1) {
    left -= 1;
    sum += Math.log(left);
  }
  return left === 0.5 ? sum + Math.log(Math.PI) / 2 : sum;
}
