import type { GiveLesson, Lesson, LessonAnswer } from './lesson.ts';

export type LessonMessage = {
  readonly kind: 'lesson';
  readonly request: number;
  readonly lesson: Lesson;
};

/** Lessons on their way to a worker, and their answers on the way back. */
export interface LessonLine {
  readonly give: GiveLesson;
  readonly answered: (request: number, answer: LessonAnswer) => void;
  /** The worker is new: it hears by the voice that was given last. */
  readonly again: () => void;
  /** The worker is gone: nothing that was asked will be answered. */
  readonly cut: (message: string) => void;
}

/** `post` tells whether there is a worker to take the message. */
export function createLessonLine(post: (message: LessonMessage) => boolean): LessonLine {
  const waiting = new Map<number, (answer: LessonAnswer) => void>();
  let requests = 0;
  let suited: Lesson | null = null;
  const give: GiveLesson = (lesson) => {
    if (lesson.kind === 'suit') suited = lesson;
    requests += 1;
    const request = requests;
    return new Promise((resolve) => {
      waiting.set(request, resolve);
      if (post({ kind: 'lesson', request, lesson })) return;
      waiting.delete(request);
      resolve(NOBODY);
    });
  };
  return {
    give,
    answered: (request, answer) => {
      waiting.get(request)?.(answer);
      waiting.delete(request);
    },
    again: () => {
      if (suited !== null) void give(suited);
    },
    cut: (message) => {
      for (const resolve of waiting.values()) resolve({ kind: 'failed', message });
      waiting.clear();
    },
  };
}

const NOBODY: LessonAnswer = { kind: 'failed', message: 'No engine that learns is loaded.' };
