/** A drawing the layout refers to by name. */
export interface Drawing {
  readonly name: string;
  readonly svg: string;
}

/** Collects drawings and gives each a name; the same drawing is kept once. */
export class Drawings {
  readonly #names = new Map<string, string>();

  add(svg: string): string {
    const held = this.#names.get(svg);
    if (held !== undefined) return held;
    const name = `drawing-${this.#names.size}.svg`;
    this.#names.set(svg, name);
    return name;
  }

  /** The drawing that was given a name. */
  svg(name: string): string {
    for (const [svg, given] of this.#names) if (given === name) return svg;
    throw new Error(`no drawing ${name}`);
  }

  all(): readonly Drawing[] {
    return [...this.#names].map(([svg, name]) => ({ name, svg }));
  }
}
