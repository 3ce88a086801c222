interface PictureProps {
  /** A drawing of our own as SVG text; it brings its own title and description. */
  readonly svg: string;
  readonly caption?: string;
}

/** A drawing. In the dim theme it is turned light on dark. */
export function Picture({ svg, caption }: PictureProps) {
  return (
    <figure class="picture">
      {/* The text comes from the drawings of this project, which escape what they are given. */}
      <div dangerouslySetInnerHTML={{ __html: svg }} />
      {caption !== undefined && <figcaption class="quiet small">{caption}</figcaption>}
    </figure>
  );
}
