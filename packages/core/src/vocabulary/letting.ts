/** Who ordered the inspection. */
export const ORDERERS = [
  "owner",
  "landlord",
  "agent",
  "tenant",
  "buyer",
  "employer",
  "authority",
  "insurer",
  "other",
] as const;
export type Orderer = (typeof ORDERERS)[number];
