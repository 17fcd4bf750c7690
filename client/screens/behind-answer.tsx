import { CAUTIONS } from '../../core/advice/caution-data.ts';
import type { CautionId, Known } from '../../core/advice/verdict.ts';

/** Where the note's cautions come from, on the paper beneath them. */
export function CautionSources({ cautions }: { cautions: readonly CautionId[] }) {
  const sources = new Set(cautions.map((id) => CAUTIONS[id].source));
  return <p class="source">Sources: {[...sources].join('. ')}.</p>;
}

/** What the last answer stands on: beside the paper, not of it. */
export function BehindAnswer({ answer }: { answer: Known }) {
  if (answer.source === null && answer.cautions.length === 0) return null;
  return (
    <section class="behind" data-testid="behind-answer">
      <h2>behind the last answer</h2>
      {answer.source && <p>{answer.source}</p>}
      {answer.cautions.map((id) => (
        <p key={id}>
          {CAUTIONS[id].detail} <span class="source">{CAUTIONS[id].source}</span>
        </p>
      ))}
    </section>
  );
}
