import { useEffect, useRef } from 'preact/hooks';
import { CAUTIONS } from '../../core/advice/caution-data.ts';
import { STEPS } from '../../core/advice/steps/step-data.ts';
import { PROCEDURE_SENTENCES } from '../../core/replies/procedure-sentences.ts';
import { PROCEDURES, stepAt } from '../../core/terms/procedures.ts';
import type { VisitState } from '../../core/visit/state.ts';

interface StepsProps {
  readonly steps: NonNullable<VisitState['steps']>;
  readonly onWords: (words: string) => void;
}

/** The step that is being told: how it is done and where that comes from, and the same moves as by voice. */
export function Steps({ steps: { procedure, number }, onWords }: StepsProps) {
  const top = useRef<HTMLElement>(null);
  useEffect(() => top.current?.scrollIntoView({ block: 'start' }), [procedure, number]);
  const step = stepAt(procedure, number);
  if (step === null) return null;
  const { detail, source, caution } = STEPS[step];
  const { name, steps } = PROCEDURES[procedure];
  return (
    <section ref={top} class="steps" aria-label={name} data-testid="steps">
      <div class="moves">
        {['back', 'again', 'next'].map((words) => (
          <button key={words} type="button" data-testid={words} onClick={() => onWords(words)}>
            {words}
          </button>
        ))}
      </div>
      <h2>
        {name}, step {number} of {steps.length}
      </h2>
      <p class="step-words">{PROCEDURE_SENTENCES[step]}</p>
      {caution !== null && <p class="step-caution">{CAUTIONS[caution].detail}</p>}
      <p>{detail}</p>
      <p class="source">
        {source}
        {caution !== null && `; ${CAUTIONS[caution].source}`}
      </p>
    </section>
  );
}
