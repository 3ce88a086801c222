import type { CheckedFiles, CheckedView } from "../../engine/issue-view.ts";
import { Notice } from "../../parts/notice.tsx";
import { CHECK } from "../../words/issue.ts";

/** What was found at each document, as five answers and never as one mark. */
export function Checked({ found: { documents, unread, notShown } }: { readonly found: CheckedFiles }) {
  return (
    <>
      {unread.length > 0 && (
        <Notice title={CHECK.unread}>
          <ul>
            {unread.map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ul>
        </Notice>
      )}
      {documents.length === 0 && <p>{CHECK.nothing}</p>}
      {documents.map((one) => (
        <Document key={one.name} {...one} />
      ))}
      {documents.length > 0 && (
        <section class="quiet small">
          <h2>{CHECK.notShown}</h2>
          <ul>
            {notShown.map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}

function Document({ name, says, answers, reasons }: CheckedView) {
  return (
    <section class="sheet">
      <h2 class="file-name">{name}</h2>
      {says !== undefined && <p>{says}</p>}
      <dl class="five">
        {answers.map(({ question, standing, words }) => (
          <div key={question} class={`one-of-five ${standing}`}>
            <dt>
              {question} <span class="standing">{CHECK.standing[standing]}</span>
            </dt>
            {words.map((one) => (
              <dd key={one}>{one}</dd>
            ))}
          </div>
        ))}
      </dl>
      {reasons.length > 0 && (
        <>
          <h3>{CHECK.reasons}</h3>
          <ul>
            {reasons.map(({ point, words }) => (
              <li key={point}>
                {point} {CHECK.reason(words)}
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
