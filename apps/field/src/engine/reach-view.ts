/** Where a bare part lies beside a floor, all in metres. */
export interface ReachAsked {
  /** Height above the floor; below it where negative. */
  readonly height: number;
  /** Distance beside the edge of the floor; over the floor where negative. */
  readonly beside: number;
  /** Length of the longest thing handled there; 0 where there is none. */
  readonly objects: number;
}

/** What arm's reach makes of it: the answer to what the topic asks, and the elevation as SVG. */
export interface ReachView {
  readonly answer: "beyond" | "long-objects" | "in-reach";
  readonly svg: string;
}
