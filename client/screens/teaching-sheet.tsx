import { useEffect, useRef } from 'preact/hooks';
import { VOICE_PROMPTS } from '../../core/language/heard/voice-prompts.ts';
import type { Lessons } from '../teaching/teaching-state.ts';
import {
  canBeTriedAgain,
  CONCLUSION_WORDS,
  edgeOf,
  LAST_WORDS,
  TROUBLE_WORDS,
  written,
} from './teaching-words.ts';

interface TeachingSheetProps {
  readonly lessons: Lessons;
  readonly onStop: () => void;
  readonly onClose: () => void;
  readonly onAgain: () => void;
}

/** Over the whole page while sentences are read aloud: one sentence at a time, as large as it goes. */
export function TeachingSheet({ lessons, onStop, onClose, onAgain }: TeachingSheetProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  const isOver = lessons.kind === 'concluded' || lessons.kind === 'trouble';
  const leave = isOver ? onClose : onStop;
  return (
    <dialog
      ref={dialog}
      class="teaching"
      aria-label="Teach it my voice"
      data-testid="teaching"
      data-kind={lessons.kind}
      data-edge={edgeOf(lessons)}
      onCancel={leave}
    >
      <Lesson lessons={lessons} />
      {lessons.kind !== 'working' && (
        <div class="teaching-ways">
          {canBeTriedAgain(lessons) && (
            <button type="button" data-testid="teaching-again" onClick={onAgain}>
              try again
            </button>
          )}
          <button type="button" data-testid="teaching-leave" onClick={leave}>
            {isOver ? 'done' : 'stop here'}
          </button>
        </div>
      )}
    </dialog>
  );
}

function Lesson({ lessons }: Pick<TeachingSheetProps, 'lessons'>) {
  switch (lessons.kind) {
    case 'closed':
      return null;
    case 'opening':
      return <Told words="Getting ready." />;
    case 'working':
      return <Told words="Working it out. This takes a few seconds." />;
    case 'concluded':
      return <Told words={CONCLUSION_WORDS[lessons.conclusion]} />;
    case 'trouble':
      return <Told words={TROUBLE_WORDS[lessons.trouble]} />;
    case 'reading':
      return <Reading lessons={lessons} />;
  }
}

function Reading({ lessons }: { readonly lessons: Extract<Lessons, { kind: 'reading' }> }) {
  const { at, hearing, last } = lessons;
  return (
    <div class="teaching-lesson">
      <p data-testid="teaching-count">
        {at + 1} of {VOICE_PROMPTS.length}
        {hearing ? ', listening' : ''}
      </p>
      <p class="teaching-last" aria-live="polite">
        {LAST_WORDS[last]}
      </p>
      <p class="teaching-prompt" data-testid="prompt" data-at={at} data-hearing={hearing}>
        {written(VOICE_PROMPTS[at] ?? '')}
      </p>
    </div>
  );
}

function Told({ words }: { readonly words: string }) {
  return (
    <div class="teaching-lesson">
      <p class="teaching-told" data-testid="teaching-told" aria-live="polite">
        {words}
      </p>
    </div>
  );
}
