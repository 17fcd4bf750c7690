import type { Hearing } from '../../../core/hearing/hearing.ts';
import type { Opinion } from '../../../core/hearing/second-opinion.ts';
import type { LessonAnswer } from './lesson.ts';
import type { LessonMessage } from './lesson-line.ts';
import type { Standing } from '../../../core/hearing/standing.ts';

/** What the page says to an engine's worker. `utterance` counts up; a reset leaves gaps. */
export type ToEngine<Files> = { readonly kind: 'load'; readonly files: Files } | Watch | AfterLoad;

/** Sound in which a voice is looked for, whether or not an utterance is open. Not every engine's worker can. */
export interface Watch {
  readonly kind: 'watch';
  readonly watch: number;
  /** Counted within its watch. */
  readonly fromSample: number;
  readonly samples: Float32Array;
}

export type AfterLoad =
  | LessonMessage
  | { readonly kind: 'setGrammar'; readonly request: number; readonly jsgf: string }
  /** Compile it while there is time; nothing is answered. */
  | { readonly kind: 'warm'; readonly jsgf: string }
  | { readonly kind: 'accept'; readonly utterance: number; readonly samples: Float32Array }
  /** `awaitsOpinion`: the wordings are told, and what another engine makes of them is waited for. */
  | { readonly kind: 'finish'; readonly utterance: number; readonly awaitsOpinion: boolean }
  | {
      readonly kind: 'opinion';
      readonly utterance: number;
      /** Null where it knew none of the wordings; absent where it did not answer in time. */
      readonly opinion?: Opinion | null;
    }
  /** Which of these wordings the sound is likeliest to be; whatever is open stays so. */
  | {
      readonly kind: 'choose';
      readonly request: number;
      readonly samples: Float32Array;
      readonly wordings: readonly string[];
    }
  /** Nothing of the utterances before this one is wanted any more. */
  | { readonly kind: 'reset'; readonly utterance: number };

/** What the worker answers. */
export type FromEngine =
  | { readonly kind: 'lessonAnswered'; readonly request: number; readonly answer: LessonAnswer }
  | { readonly kind: 'progress'; readonly loadedBytes: number; readonly totalBytes: number }
  /** `pace`: time to hear by time heard; null where it was not measured. */
  | { readonly kind: 'loaded'; readonly pace: number | null }
  | { readonly kind: 'loadFailed'; readonly message: string }
  | { readonly kind: 'grammarSet'; readonly request: number }
  | { readonly kind: 'grammarFailed'; readonly request: number; readonly message: string }
  | {
      readonly kind: 'partial';
      readonly utterance: number;
      readonly words: string;
      readonly standing: Standing | null;
    }
  | {
      readonly kind: 'voice';
      readonly watch: number;
      readonly chances: readonly number[];
      readonly untilSample: number;
    }
  | {
      readonly kind: 'heard';
      readonly utterance: number;
      readonly hearing: Hearing;
      readonly pace: number | null;
    }
  | { readonly kind: 'wordings'; readonly utterance: number; readonly wordings: readonly string[] }
  | { readonly kind: 'chosen'; readonly request: number; readonly opinion: Opinion | null }
  | { readonly kind: 'decodeFailed'; readonly utterance: number; readonly message: string };
