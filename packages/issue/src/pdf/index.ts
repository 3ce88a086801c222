export { newKey, newRoot } from "../keys/new-key.ts";
export { type Issued, readIssued } from "./issued.ts";
export {
  certificateHash,
  RECORD_NAME,
  type Signer,
  sealPdf,
  signerOf,
  signerOfP12,
  timeAuthorityAt,
} from "./seal.ts";
