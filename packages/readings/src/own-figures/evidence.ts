/**
 * The mean of likelihood ratios over all the ways in which something could have gone wrong. Where nothing did, its mean
 * is 1, so it exceeds k with a chance of 1/k at most (Markov): the inverse bounds the chance of a false alarm however many
 * ways there are.
 */
export class MeanRatio {
  #sum = 0;
  #ways = 0;

  /** Adds a way with its ln likelihood ratio and, where ways are not equally likely, its weight. */
  add(logRatio: number, weight = 1): void {
    this.#ways += weight;
    this.#sum += weight * Math.exp(Math.min(logRatio, 600));
  }

  /** Counts ways that explain nothing. */
  addNothing(weight: number): void {
    this.#ways += weight;
  }

  /** The chance that sound readings come to a mean as large: its inverse, 1 at most. */
  get chance(): number {
    return this.#ways === 0 || this.#sum <= this.#ways ? 1 : this.#ways / this.#sum;
  }
}
