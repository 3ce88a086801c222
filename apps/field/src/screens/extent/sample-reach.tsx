import { mostDefective } from "@good-grounds/computations";
import { useJob } from "../../shell/job.ts";
import { EXTENT } from "../../words/extent.ts";

/** What a sample leaves open: how many of all may have a defect although so few were found. */
export function SampleReach({ at }: { readonly at: string }) {
  const { record } = useJob();
  const [population, inspected, defective] = ["population", "inspected", "defective"].map((name) =>
    record.value(`${at}/${name}`),
  );
  if (typeof population !== "number" || typeof inspected !== "number" || typeof defective !== "number") return null;
  if (inspected > population) return <p class="fault">{EXTENT.tooMany}</p>;
  if (defective > inspected) return <p class="fault">{EXTENT.tooDefective}</p>;
  return (
    <p role="status">
      {inspected === population
        ? EXTENT.all(defective)
        : EXTENT.reach(mostDefective(population, inspected, defective, 0.95), population)}
    </p>
  );
}
