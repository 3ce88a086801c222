import { useJob } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { SCREENS, type ScreenProps } from "../../shell/screens.ts";

/** The parts of the visit and how far each is. */
export default function Overview(_: ScreenProps) {
  const session = useJob();
  return (
    <ul>
      {SCREENS.map(({ id, title }) => (
        <li key={id}>
          <a href={linkTo("job", session.job, id)}>{title}</a>
        </li>
      ))}
    </ul>
  );
}
