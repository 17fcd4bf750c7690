import type { VoiceProfile } from '../../../core/hearing/voice/voice-profile.ts';
import type { Conclusion, LessonHeard } from '../../../core/hearing/voice/voice-teacher.ts';

/**
 * What is asked of an engine that can learn a voice. suit: hear by this one from now on, or by none. begin: forget the
 * lessons so far. learn: the utterance that was finished last was to be these words. conclude: what came of it. end: no
 * more.
 */
export type Lesson =
  | { readonly kind: 'suit'; readonly voice: VoiceProfile | null }
  | { readonly kind: 'begin' }
  | { readonly kind: 'learn'; readonly words: string }
  | { readonly kind: 'conclude' }
  | { readonly kind: 'end' };

export type LessonAnswer =
  /** Whether the voice was taught to this very model; where not, it is heard without. */
  | { readonly kind: 'suited'; readonly fits: boolean }
  | { readonly kind: 'begun' }
  | { readonly kind: 'heard'; readonly heard: LessonHeard }
  | { readonly kind: 'concluded'; readonly conclusion: Conclusion }
  | { readonly kind: 'ended' }
  /** This engine learns nothing, or broke. */
  | { readonly kind: 'failed'; readonly message: string };

/** The page's side of an engine that learns a voice. */
export type GiveLesson = (lesson: Lesson) => Promise<LessonAnswer>;
