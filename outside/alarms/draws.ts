/**
 * Random figures by name. The same seed and name always give the same figure, whatever else is drawn: a house with a fault
 * and the same house without one are measured with the same meter by the same hand, so that what differs is the fault.
 */
export class Draws {
  readonly #seed: string;

  constructor(seed: string) {
    this.#seed = seed;
  }

  /** Draws for a part, independent of all others. */
  of(name: string): Draws {
    return new Draws(`${this.#seed}/${name}`);
  }

  /** From 0 up to, not including, 1. */
  part(name: string): number {
    return mixed(`${this.#seed}:${name}`) / 2 ** 32;
  }

  between(name: string, low: number, high: number): number {
    return low + (high - low) * this.part(name);
  }

  /** Between two positive figures, as likely in one decade as in another. */
  acrossDecades(name: string, low: number, high: number): number {
    return Math.exp(this.between(name, Math.log(low), Math.log(high)));
  }

  whole(name: string, least: number, most: number): number {
    return least + Math.floor(this.part(name) * (most - least + 1));
  }

  happens(name: string, probability: number): boolean {
    return this.part(name) < probability;
  }

  /** Bell-shaped about 0, cut off at `most` standard deviations. */
  bell(name: string, deviation: number, most = 3): number {
    const radius = Math.sqrt(-2 * Math.log(1 - this.part(`${name}.radius`)));
    const value = radius * Math.cos(2 * Math.PI * this.part(`${name}.angle`));
    return deviation * Math.min(most, Math.max(-most, value));
  }

  one<T>(name: string, list: readonly T[]): T {
    const found = list[Math.floor(this.part(name) * list.length)];
    if (found === undefined) throw new Error(`nothing to choose from for ${name}`);
    return found;
  }

  /** One of several, each as often as its weight says. */
  weighed<T>(name: string, list: readonly (readonly [weight: number, value: T])[]): T {
    let left = this.part(name) * list.reduce((sum, [weight]) => sum + weight, 0);
    for (const [weight, value] of list) {
      left -= weight;
      if (left < 0) return value;
    }
    return this.one(name, list)[1];
  }
}

/** A whole number below 2³² that depends on every letter: FNV-1a, and a finish that spreads the last letters. */
function mixed(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
  return (hash ^ (hash >>> 16)) >>> 0;
}
