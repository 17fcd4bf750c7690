import type { NeuralDecoder } from '../../../core/hearing/neural-decoder.ts';
import type { VoiceTeacher } from '../../../core/hearing/voice/voice-teacher.ts';
import type { Lesson, LessonAnswer } from '../worker/lesson.ts';
import { joined } from '../../../core/hearing/joined.ts';

/** Teaches the engine a voice. Between `begin` and `end` the last utterance is kept, and no other. */
export class LessonDesk {
  readonly #decoder: Pick<NeuralDecoder, 'suit' | 'teacher'>;
  #teacher: VoiceTeacher | null = null;
  #open: { readonly utterance: number; readonly parts: Float32Array[] } | null = null;

  constructor(decoder: Pick<NeuralDecoder, 'suit' | 'teacher'>) {
    this.#decoder = decoder;
  }

  /** Sound of an utterance, as it is heard. */
  overhear(utterance: number, samples: Float32Array): void {
    if (this.#teacher === null) return;
    if (this.#open?.utterance === utterance) this.#open.parts.push(samples);
    else this.#open = { utterance, parts: [samples] };
  }

  /** Never rejects: hearing goes on when a lesson breaks. */
  async answer(lesson: Lesson): Promise<LessonAnswer> {
    try {
      return await this.#answer(lesson);
    } catch (error) {
      return { kind: 'failed', message: error instanceof Error ? error.message : String(error) };
    }
  }

  async #answer(lesson: Lesson): Promise<LessonAnswer> {
    switch (lesson.kind) {
      case 'suit':
        return { kind: 'suited', fits: this.#decoder.suit(lesson.voice) };
      case 'begin': {
        this.#teacher = this.#decoder.teacher();
        this.#open = null;
        return { kind: 'begun' };
      }
      case 'learn':
        return this.#learn(lesson.words);
      case 'conclude':
        return this.#teacher === null
          ? NOT_BEGUN
          : { kind: 'concluded', conclusion: this.#teacher.conclude() };
      case 'end': {
        this.#teacher = null;
        this.#open = null;
        return { kind: 'ended' };
      }
    }
  }

  async #learn(words: string): Promise<LessonAnswer> {
    if (this.#teacher === null) return NOT_BEGUN;
    const sound = joined(this.#open?.parts ?? []);
    this.#open = null;
    return { kind: 'heard', heard: await this.#teacher.learn(words, sound) };
  }
}

const NOT_BEGUN: LessonAnswer = { kind: 'failed', message: 'No lessons were begun.' };
