// Enough of SPDX licence expressions to decide whether a package may be shipped: OR, AND, brackets.

/**
 * Whether an expression such as "(MIT OR GPL-3.0) AND ISC" can be met with licences for which `accept` holds.
 * Anything that is not understood ("SEE LICENSE IN x", "Apache-2.0 WITH y") cannot.
 */
export function satisfies(expression, accept) {
  const tokens = expression.match(/[()]|[^\s()]+/g) ?? [];
  let at = 0;
  const next = () => tokens[at];

  function one() {
    if (next() === "(") {
      at++;
      const inside = either();
      if (next() !== ")") throw new SyntaxError(expression);
      at++;
      return inside;
    }
    const name = tokens[at++];
    if (name === undefined || /^(?:OR|AND|\))$/.test(name)) throw new SyntaxError(expression);
    return accept(name);
  }
  function both() {
    let all = one();
    while (next() === "AND") {
      at++;
      all = one() && all;
    }
    return all;
  }
  function either() {
    let any = both();
    while (next() === "OR") {
      at++;
      any = both() || any;
    }
    return any;
  }

  try {
    const met = either();
    return met && at === tokens.length;
  } catch (error) {
    if (error instanceof SyntaxError) return false;
    throw error;
  }
}
