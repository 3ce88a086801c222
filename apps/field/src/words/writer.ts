/** Words of fetching the report writer. */
export const WRITER = {
  notFetched: (name: string) =>
    `a part of the report writer (${name}) could not be fetched. Go where there is a signal and try again; nothing is lost`,
  notThePart: (name: string) =>
    `something else came in the place of a part of the report writer (${name}), such as the sign-in page of a network. It was not kept. Sign in to the network, or use another, and try again; nothing is lost`,
} as const;
