import { useEffect, useState } from 'preact/hooks';
import { VOICE_PROMPTS } from '../../core/language/heard/voice-prompts.ts';
import type { TeachingState } from '../teaching/teaching-state.ts';
import type { VoiceTeaching } from '../teaching/voice-teaching.ts';
import { TeachingSheet } from './teaching-sheet.tsx';
import { VOICE_WORDS } from './teaching-words.ts';

export interface TeachingFormProps {
  readonly teaching: VoiceTeaching;
  /** The page hears nothing itself from now on, so that the lessons can. */
  readonly onTeach: () => void;
}

/** What is known of the voice that speaks here, and the way to teach it. */
export function TeachingForm({ teaching, onTeach }: TeachingFormProps) {
  const { known, lessons, resumesAt } = useTeaching(teaching);
  const teach = (): void => {
    onTeach();
    void teaching.teach();
  };
  return (
    <section aria-label="Your voice">
      <h2>your voice</h2>
      <p data-testid="voice-known" data-known={known.kind}>
        {VOICE_WORDS[known.kind]}
      </p>
      <div class="choices" role="group" aria-label="Your voice">
        <button type="button" data-testid="teach-voice" onClick={teach}>
          {teachWords(resumesAt, known.kind === 'none')}
        </button>
        {known.kind !== 'none' && (
          <button type="button" data-testid="forget-voice" onClick={() => void teaching.forget()}>
            forget my voice
          </button>
        )}
      </div>
      {lessons.kind !== 'closed' && (
        <TeachingSheet
          lessons={lessons}
          onStop={teaching.stop}
          onClose={teaching.close}
          onAgain={teach}
        />
      )}
    </section>
  );
}

function teachWords(resumesAt: number, isNew: boolean): string {
  if (resumesAt > 0) return `go on at ${resumesAt + 1} of ${VOICE_PROMPTS.length}`;
  return isNew ? 'teach it my voice' : 'teach it again';
}

function useTeaching(teaching: VoiceTeaching): TeachingState {
  const [state, setState] = useState(teaching.state);
  useEffect(() => {
    void teaching.refresh();
    return teaching.subscribe(() => setState(teaching.state()));
  }, [teaching]);
  return state;
}
