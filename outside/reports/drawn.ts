/** A rectangle in the units of a drawing. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** One thing a drawing shows. */
export interface Shape {
  readonly name: string;
  readonly words: string;
  readonly box: Box;
}

export interface Drawn {
  readonly frame: Box;
  readonly shapes: readonly Shape[];
}

interface Element {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  words: string;
}

const NAME = String.raw`[A-Za-z][\w:-]*`;
const TAG = new RegExp(`^<(/?)(${NAME})((?: ${NAME}="[^"<&]*(?:&(?:amp|lt|gt|quot);[^"<&]*)*")*)(/?)>`);
const ATTRIBUTE = new RegExp(`(${NAME})="([^"]*)"`, "g");
const TEXT = /^(?:[^<>&]|&(?:amp|lt|gt|quot);)+/;

/**
 * Reads a drawing as strictly as XML asks: every tag closed in its turn, every attribute once and in quotation marks, no
 * sign that has to be escaped standing bare. Throws with the place where it goes wrong.
 */
export function drawn(svg: string): Drawn {
  const open: Element[] = [];
  const all: Element[] = [];
  for (let at = 0; at < svg.length; ) {
    const rest = svg.slice(at);
    const text = TEXT.exec(rest)?.[0];
    const last = open.at(-1);
    if (text !== undefined) {
      if (last === undefined) throw new Error(`words outside the drawing: ${text.slice(0, 40)}`);
      last.words += text;
      at += text.length;
      continue;
    }
    const tag = TAG.exec(rest);
    if (tag === null) throw new Error(`no well-formed XML: ${rest.slice(0, 80)}`);
    const [whole, closing, name = "", written = "", alone] = tag;
    if (closing === "/") {
      if (open.pop()?.name !== name) throw new Error(`${name} closes what is not open`);
    } else {
      const element = { name, attributes: attributesOf(written), words: "" };
      all.push(element);
      if (alone !== "/") open.push(element);
    }
    at += whole.length;
  }
  if (open.length > 0) throw new Error(`${open.at(-1)?.name} is not closed`);
  return { frame: frameOf(all[0]), shapes: all.flatMap(shapeOf) };
}

function attributesOf(written: string): ReadonlyMap<string, string> {
  const attributes = new Map<string, string>();
  for (const [, name = "", value = ""] of written.matchAll(ATTRIBUTE)) {
    if (attributes.has(name)) throw new Error(`${name} stands twice`);
    attributes.set(name, value);
  }
  return attributes;
}

function frameOf(root: Element | undefined): Box {
  const [left, top, width, height] = (root?.attributes.get("viewBox") ?? "").split(" ").map(Number);
  if (
    left === undefined ||
    top === undefined ||
    !(width !== undefined && width > 0) ||
    !(height !== undefined && height > 0)
  )
    throw new Error("a drawing without a frame");
  return { left, top, right: left + width, bottom: top + height };
}

function shapeOf({ name, attributes, words }: Element): readonly Shape[] {
  const numberOf = (attribute: string, otherwise?: number) => {
    const written = attributes.get(attribute);
    const value = written === undefined ? otherwise : Number(written);
    if (value === undefined || !Number.isFinite(value)) throw new Error(`${name} has ${attribute}="${written}"`);
    return value;
  };
  const shape = (xs: readonly number[], ys: readonly number[], around = 0): readonly Shape[] => [
    {
      name,
      words,
      box: {
        left: Math.min(...xs) - around,
        right: Math.max(...xs) + around,
        top: Math.min(...ys) - around,
        bottom: Math.max(...ys) + around,
      },
    },
  ];
  const half = attributes.get("stroke") === undefined ? 0 : numberOf("stroke-width", 1) / 2;
  switch (name) {
    case "line":
      // The ends of a line are cut square: its width reaches out to its sides only.
      return shape([numberOf("x1"), numberOf("x2")], [numberOf("y1"), numberOf("y2")]);
    case "rect": {
      const [x, y, width, height] = [numberOf("x"), numberOf("y"), numberOf("width"), numberOf("height")];
      if (width < 0 || height < 0) throw new Error("a rectangle of less than nothing");
      return shape([x, x + width], [y, y + height], half);
    }
    case "circle": {
      const [x, y, r] = [numberOf("cx"), numberOf("cy"), numberOf("r")];
      return shape([x - r, x + r], [y - r, y + r], half);
    }
    case "path": {
      const numbers = (attributes.get("d") ?? "")
        .split(/[MLZ ]+/)
        .filter((part) => part !== "")
        .map(Number);
      if (numbers.some((value) => !Number.isFinite(value))) throw new Error(`a path through ${attributes.get("d")}`);
      return shape(
        numbers.filter((_, i) => i % 2 === 0),
        numbers.filter((_, i) => i % 2 === 1),
        half,
      );
    }
    case "text": {
      const size = numberOf("font-size");
      // The mean letter of the face is half its size wide; capitals reach 0.7 of it up, descenders 0.2 down.
      const width = [...words.replaceAll(/&\w+;/g, "&")].length * size * 0.52;
      const anchor = attributes.get("text-anchor") ?? "start";
      const left = numberOf("x") - (anchor === "end" ? width : anchor === "middle" ? width / 2 : 0);
      const y = numberOf("y");
      return shape([left, left + width], [y - 0.7 * size, y + 0.2 * size]);
    }
    default:
      return [];
  }
}

/** Whether two rectangles cover some of the same place, by more than the rounding of their numbers. */
export function overlap(a: Box, b: Box): boolean {
  const slack = 0.05;
  return a.left < b.right - slack && b.left < a.right - slack && a.top < b.bottom - slack && b.top < a.bottom - slack;
}

/** Shapes that reach out of the frame. */
export function outside({ frame, shapes }: Drawn): readonly Shape[] {
  return shapes.filter(
    ({ box }) =>
      box.left < frame.left - 0.01 ||
      box.top < frame.top - 0.01 ||
      box.right > frame.right + 0.01 ||
      box.bottom > frame.bottom + 0.01,
  );
}
