/** How often something happened, and in how many jobs. */
export class Tally {
  readonly #times = new Map<string, number>();
  readonly #jobs = new Map<string, number>();
  #job = new Set<string>();

  /** What is counted from here on belongs to another job. */
  next(): void {
    this.#job = new Set();
  }

  add(name: string): void {
    this.#times.set(name, this.times(name) + 1);
    if (this.#job.has(name)) return;
    this.#job.add(name);
    this.#jobs.set(name, this.jobs(name) + 1);
  }

  times(name: string): number {
    return this.#times.get(name) ?? 0;
  }

  jobs(name: string): number {
    return this.#jobs.get(name) ?? 0;
  }

  /** Names that begin so, the most frequent first. */
  names(beginning: string): readonly string[] {
    return [...this.#times.keys()]
      .filter((name) => name.startsWith(beginning))
      .sort((a, b) => this.jobs(b) - this.jobs(a));
  }
}
