import { describe, expect, it } from 'vitest';

import {
  createVoiceTeaching,
  type Read,
  type VoiceTeaching,
} from '../../../client/teaching/voice-teaching.ts';
import type { Lesson, LessonAnswer } from '../../../client/recogniser/worker/lesson.ts';
import type { VoiceProfile } from '../../../core/hearing/voice/voice-profile.ts';

const VOICE: VoiceProfile = { version: 1, edition: 'tiny', correction: [[0.5, -0.5]] };
const GAIN = { before: 1, after: 0.5 };
const BETTER: LessonAnswer = {
  kind: 'concluded',
  conclusion: { kind: 'better', profile: VOICE, gain: GAIN },
};

interface Script {
  /** How each reading goes, in order; the last again and again. */
  readonly reads?: readonly Read[];
  /** What is said of each that was spoken, in order; the last again and again. */
  readonly heard?: readonly ('learnt' | 'unlike')[];
  readonly concluded?: LessonAnswer;
  readonly begun?: LessonAnswer;
  readonly kept?: string | null;
  readonly keeps?: boolean;
  readonly microphone?: boolean;
  readonly fits?: boolean;
}

/** A page that is taught two sentences. */
function createScene(script: Script = {}) {
  const asked: string[] = [];
  const prompts: string[] = [];
  const store = { text: script.kept ?? null };
  const shown: string[] = [];
  let reads = 0;
  let heard = 0;
  let onRead: (() => void) | null = null;
  const next = <Value>(values: readonly Value[], at: number): Value | undefined =>
    values[Math.min(at, values.length - 1)];
  const answerTo = (lesson: Lesson): LessonAnswer => {
    switch (lesson.kind) {
      case 'suit':
        return { kind: 'suited', fits: script.fits ?? true };
      case 'begin':
        return script.begun ?? { kind: 'begun' };
      case 'learn':
        return { kind: 'heard', heard: next(script.heard ?? ['learnt'], heard++) ?? 'learnt' };
      case 'conclude':
        return script.concluded ?? BETTER;
      case 'end':
        return { kind: 'ended' };
    }
  };
  const teaching = createVoiceTeaching({
    prompts: ['box forty four', 'head one ninety two'],
    giveLesson: (lesson) => {
      asked.push(lesson.kind === 'suit' ? `suit ${lesson.voice?.edition ?? 'none'}` : lesson.kind);
      return Promise.resolve(answerTo(lesson));
    },
    load: () => Promise.resolve(true),
    openMicrophone: () => Promise.resolve(script.microphone ?? true),
    closeMicrophone: () => void asked.push('microphone closed'),
    read: (prompt, onHearing) => {
      prompts.push(prompt);
      onHearing();
      onRead?.();
      return Promise.resolve(next(script.reads ?? ['spoken'], reads++) ?? 'spoken');
    },
    stopReading: () => undefined,
    kept: {
      read: () => Promise.resolve(store.text),
      write: (text) => {
        store.text = text;
        return Promise.resolve(script.keeps ?? true);
      },
    },
  });
  teaching.subscribe(() => shown.push(shownIn(teaching)));
  const whenRead = (then: () => void): void => {
    onRead = then;
  };
  return { teaching, asked, prompts, store, shown, whenRead };
}

function shownIn(teaching: VoiceTeaching): string {
  const { lessons } = teaching.state();
  if (lessons.kind === 'reading') return `${lessons.at} ${lessons.last}`;
  return lessons.kind === 'concluded' ? lessons.conclusion : lessons.kind;
}

describe('teaching a voice', () => {
  it('goes from prompt to prompt by itself, hears by what was learnt, and keeps it', async () => {
    const { teaching, asked, prompts, store, shown } = createScene();
    await teaching.teach();
    expect(prompts).toEqual(['box forty four', 'head one ninety two']);
    expect(asked).toEqual([
      ...['begin', 'learn', 'learn', 'microphone closed'],
      ...['conclude', 'end', 'suit tiny'],
    ]);
    expect(JSON.parse(store.text ?? '')).toEqual(VOICE);
    expect(teaching.state()).toMatchObject({
      known: { kind: 'learnt' },
      lessons: { kind: 'concluded', conclusion: 'better' },
    });
    expect([...new Set(shown)]).toEqual(['opening', '0 none', '1 learnt', 'working', 'better']);
  });

  it('asks for what was not heard twice more, then leaves it out', async () => {
    const { teaching, prompts, shown } = createScene({
      heard: ['unlike', 'unlike', 'unlike', 'learnt'],
    });
    await teaching.teach();
    expect(prompts).toEqual([...Array<string>(3).fill('box forty four'), 'head one ninety two']);
    expect(shown).toContain('0 again');
    expect(shown).toContain('1 skipped');
  });

  it('stops by itself when nobody reads, and goes on there', async () => {
    const { teaching, prompts, asked } = createScene({
      reads: ['spoken', 'silence', 'silence', 'silence', 'spoken'],
    });
    await teaching.teach();
    expect(teaching.state()).toMatchObject({ lessons: { kind: 'closed' }, resumesAt: 1 });
    expect(asked).not.toContain('conclude');
    await teaching.teach();
    expect(prompts.at(-1)).toBe('head one ninety two');
    expect(asked.filter((kind) => kind === 'begin')).toHaveLength(1);
    expect(teaching.state()).toMatchObject({ known: { kind: 'learnt' }, resumesAt: 0 });
  });

  it('can be stopped in the middle of a sentence, of which nothing is learnt', async () => {
    const { teaching, asked, whenRead } = createScene();
    whenRead(() => teaching.stop());
    await teaching.teach();
    expect(asked).not.toContain('learn');
    expect(teaching.state()).toMatchObject({ lessons: { kind: 'closed' }, resumesAt: 0 });
  });

  it('changes nothing where the voice would be heard no better', async () => {
    const concluded = { kind: 'noBetter', gain: GAIN } as const;
    const { teaching, asked, store } = createScene({
      concluded: { kind: 'concluded', conclusion: concluded },
    });
    await teaching.teach();
    expect(asked).not.toContain('suit tiny');
    expect(store.text).toBeNull();
    expect(shownIn(teaching)).toBe('noBetter');
    expect(teaching.state().known.kind).toBe('none');
  });

  it('says when the browser keeps nothing, and hears by it all the same', async () => {
    const { teaching, asked } = createScene({ keeps: false });
    await teaching.teach();
    expect(asked).toContain('suit tiny');
    expect(shownIn(teaching)).toBe('notKept');
  });

  it.each([
    ['without a microphone', { microphone: false }, 'noMicrophone'],
    ['where nothing learns', { begun: { kind: 'failed', message: '' } }, 'learnsNothing'],
    ['when the engine breaks', { reads: ['failed'] }, 'broke'],
    [
      'when the lessons break',
      { concluded: { kind: 'failed', message: 'out of memory' } },
      'broke',
    ],
  ] as const)('says what is wrong %s', async (_when, script, trouble) => {
    const { teaching } = createScene(script);
    await teaching.teach();
    expect(teaching.state().lessons).toEqual({ kind: 'trouble', trouble });
  });
});

describe('a voice that is kept', () => {
  it('is heard by from the start', async () => {
    const { teaching, asked } = createScene({ kept: JSON.stringify(VOICE) });
    await teaching.start();
    expect(asked).toEqual(['suit tiny']);
    expect(teaching.state().known.kind).toBe('learnt');
  });

  it.each([
    'torn',
    '{}',
    JSON.stringify({ ...VOICE, correction: [[null]] }),
    JSON.stringify({ ...VOICE, correction: [[1e6]] }),
  ])('is left alone when it is damaged: %s', async (kept) => {
    const { teaching, asked, store } = createScene({ kept });
    await teaching.start();
    expect(asked).toEqual([]);
    expect(teaching.state().known.kind).toBe('damaged');
    expect(store.text).toBe(kept);
  });

  it('is told to be for another model', async () => {
    const { teaching } = createScene({ kept: JSON.stringify(VOICE), fits: false });
    await teaching.start();
    expect(teaching.state().known.kind).toBe('otherModel');
  });

  it('is forgotten at a press', async () => {
    const { teaching, asked, store } = createScene({ kept: JSON.stringify(VOICE) });
    await teaching.start();
    await teaching.forget();
    expect(store.text).toBeNull();
    expect(asked.at(-1)).toBe('suit none');
    expect(teaching.state().known.kind).toBe('none');
    await teaching.refresh();
    expect(asked.at(-1)).toBe('suit none');
  });
});
