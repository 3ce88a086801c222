export const CONSIDERED: Readonly<Record<string, string>> = {};
