import { type InspectionFile, type SignatureStanding, signatureStandings } from "@good-grounds/inspection";
import { SIGNATURE } from "../locales/outcome-en.ts";
import { REPORT } from "../locales/report-en.ts";

type Signature = InspectionFile["signatures"][number];

/** A signature with how it stands to the content of the file, and in words. */
export interface StandingSignature {
  readonly signature: Signature;
  readonly standing: SignatureStanding;
  /** Name of the person, or the identifier where the file has no such person. */
  readonly name: string;
  readonly words: string;
}

/** Every signature of a file. Only those that stand as `signed` count as signatures of what is printed. */
export function standingSignatures(file: InspectionFile): readonly StandingSignature[] {
  const standings = signatureStandings(file);
  return file.signatures.map((signature, i) => {
    const standing = standings[i] ?? "unbound";
    const name = file.people.find(({ id }) => id === signature.person)?.name ?? signature.person;
    const at = REPORT.moment(signature.at);
    const as = REPORT.capacity[signature.capacity];
    const words = standing === "signed" ? SIGNATURE.signed(as, name, at) : `${as}: ${SIGNATURE[standing](name, at)}.`;
    return { signature, standing, name, words };
  });
}

/** When a report was issued: the last signature that stands for the content, or the day of the inspection while there is none. */
export function issuedAt(file: InspectionFile): string {
  const signed = standingSignatures(file).flatMap(({ standing, signature }) =>
    standing === "signed" ? [signature.at] : [],
  );
  return signed.sort((a, b) => Date.parse(a) - Date.parse(b)).at(-1) ?? file.inspectedOn;
}
