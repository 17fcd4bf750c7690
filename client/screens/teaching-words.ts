import type {
  Conclusion,
  LastReading,
  Lessons,
  Trouble,
  VoiceKnown,
} from '../teaching/teaching-state.ts';

export const VOICE_WORDS: Record<VoiceKnown['kind'], string> = {
  none: 'Read twenty sentences aloud in a quiet place, about two minutes, and you are heard better. What is learnt stays on this device; no sound is kept.',
  learnt: 'You are heard by what was learnt of your voice. It is on this device alone.',
  damaged:
    'What was learnt of your voice is damaged and not used. Everyone is heard alike; teach it again or forget it.',
  otherModel:
    'What was learnt of your voice was for an earlier ear and is not used. Teach it again.',
};

export const LAST_WORDS: Record<LastReading, string> = {
  none: 'Read it aloud, as you would on a job.',
  learnt: 'Got it. Next one:',
  again: 'Not quite heard. Once more:',
  skipped: 'Left that one out. Next one:',
  silence: 'Nothing heard. Read it aloud:',
};

export const CONCLUSION_WORDS: Record<Conclusion, string> = {
  better: 'Learnt. You are heard better from now on.',
  noBetter: 'You were heard as well as can be already. Nothing was changed.',
  tooFew: 'Too little was heard to learn from. Try again where it is quieter.',
  notKept: 'Learnt, until this page is closed: this browser keeps nothing. Allow it storage.',
};

export const TROUBLE_WORDS: Record<Trouble, string> = {
  noMicrophone: 'No microphone. Allow it or plug one in, then try again.',
  learnsNothing:
    'What listens now learns no voice. Choose “automatic” or “trained ear” under “what listens”, then teach it again.',
  broke: 'The ear stopped. Nothing was changed. Try again.',
};

/** Whether the same press may come to a better end: another ear must be chosen first elsewhere. */
export const canBeTriedAgain = (lessons: Lessons): boolean =>
  (lessons.kind === 'trouble' && lessons.trouble !== 'learnsNothing') ||
  (lessons.kind === 'concluded' && lessons.conclusion === 'tooFew');

/** A sentence of the grammar as one writes it. */
export function written(prompt: string): string {
  const words = prompt.replace(/\bi\b/g, 'I');
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}

/** The field's edge while a prompt is read: heard, or not yet. */
export const edgeOf = (lessons: Lessons): 'listening' | 'none' =>
  lessons.kind === 'reading' && lessons.hearing ? 'listening' : 'none';
