import { describe, expect, it } from 'vitest';
import { fillPassage, type Passage } from '../../core/note/paragraphs/passage.ts';
import type { PassagePhraser } from '../../core/note/phrase-note.ts';
import { draftNote } from '../../core/note/draft-note.ts';
import { noteText } from '../../core/note/note-text.ts';
import { takeTurn } from '../../core/turn/take-turn.ts';
import { EMPTY_MEMORY } from '../../core/turn/turn.ts';
import { wordNote } from '../../core/turn/word-note.ts';
import { visitEventSchema } from '../../core/wire/event-schema.ts';
import { applyEvents } from '../../core/visit/apply.ts';
import { EMPTY_VISIT } from '../../core/visit/empty-visit.ts';
import type { VisitState } from '../../core/visit/state.ts';
import { createStamp } from '../support/stamp.ts';

const SAID = [
  'memo warm lettuce since this morning',
  'box forty nine, head two fifty',
  "condenser's plugged",
  "that's my before",
  'i brushed the condenser',
  'box thirty eight',
] as const;

const stamp = createStamp();
const visit = (...sentences: readonly string[]): VisitState =>
  sentences.reduce(({ state, memory }, words) => takeTurn({ state, memory, words, stamp }), {
    state: EMPTY_VISIT,
    memory: EMPTY_MEMORY,
  }).state;

const NEVER = new Promise<never>(() => undefined);
const FINISHED = visit(...SAID, 'finish anyway');
const past: readonly VisitState[] = [];

const wordedBy = (
  phrasePassage: PassagePhraser['phrasePassage'],
  budget: Promise<unknown> = NEVER,
) => wordNote({ state: FINISHED, past }, { phrasePassage }, budget);

const WORDS: Partial<Record<Passage['kind'], string>> = {
  reason: 'we came because of {complaint}. when we looked, {found}.',
  box: 'since then the temperature inside has come down from {before} to {after}.',
};
const some = (passage: Passage): Promise<string | null> => {
  const words = passage.reader === 'customer' ? WORDS[passage.kind] : undefined;
  return Promise.resolve(words === undefined ? null : fillPassage(words, passage));
};

const lines = (state: VisitState, id: 'customer' | 'office'): string =>
  draftNote(state, past)
    .sections.find((section) => section.id === id)
    ?.lines.join(' ') ?? '';

async function kept(phrasePassage: PassagePhraser['phrasePassage']): Promise<VisitState> {
  const body = await wordedBy(phrasePassage);
  return body ? applyEvents([stamp(body)], FINISHED) : FINISHED;
}

describe('the note in a model’s words', () => {
  it('is kept with the visit, what was not worded standing in the template’s', async () => {
    const state = await kept(some);
    expect(lines(state, 'customer')).toBe(
      'We came because of "warm lettuce since this morning". When we looked, the coil that gets rid of the heat was ' +
        'clogged. When that happens, the heat cannot get out, so the unit runs long, cools poorly and can shut itself ' +
        'off. We brushed that coil. Since then the temperature inside has come down from 49 °F to 38 °F.',
    );
    expect(lines(state, 'office')).toBe(lines(FINISHED, 'office'));
  });

  it('is an event that crosses to the server as it is', async () => {
    const body = await wordedBy(some);
    if (body === null) throw new Error('nothing was worded');
    const event = stamp(body);
    expect(visitEventSchema.parse(JSON.parse(JSON.stringify(event)))).toEqual(event);
  });

  it('is the same however often the log is read', async () => {
    const state = await kept(some);
    expect(noteText(draftNote(applyEvents(state.history)))).toBe(noteText(draftNote(state)));
  });

  it.each<[string, PassagePhraser['phrasePassage']]>([
    ['the model fails', () => Promise.reject(new Error('gone'))],
    ['it has no words', () => Promise.resolve(null)],
    ['it says something else', () => Promise.resolve('The unit is as good as new.')],
    [
      'it leaves out a slot',
      () => Promise.resolve('We came because of "warm lettuce since this morning".'),
    ],
  ])('is not there where %s', async (_, phrasePassage) => {
    expect(await wordedBy(phrasePassage)).toBeNull();
  });

  it('keeps what was worded in time', async () => {
    let asked = 0;
    let up: () => void = () => undefined;
    const budget = new Promise<void>((resolve) => (up = resolve));
    const body = await wordedBy((passage) => {
      asked += 1;
      if (asked > 1) up();
      return asked > 1 ? NEVER : some(passage);
    }, budget);
    expect(body).toMatchObject({ passages: [{ kind: 'reason' }] });
    expect(asked).toBe(2);
  });

  it('is never there before the visit is finished, nor without a model that can', async () => {
    const open = visit(...SAID);
    expect(await wordNote({ state: open, past }, { phrasePassage: some }, NEVER)).toBeNull();
    expect(await wordNote({ state: FINISHED, past }, null, NEVER)).toBeNull();
  });

  it('gives way to the template where a number was put right since', async () => {
    const state = await kept(some);
    const last = state.readings.at(-1);
    if (!last) throw new Error('nothing was read');
    const reading = { ...last.reading, value: 39 };
    const amended = applyEvents(
      [stamp({ type: 'readingAmended', v: 1, target: last.id, reading })],
      state,
    );
    expect(lines(amended, 'customer')).toContain('came down from 49 °F to 39 °F.');
    expect(lines(amended, 'customer')).toContain('We came because of');
  });

  it('gives way to the template where the log’s words say what the visit did not', () => {
    const passages = [
      { reader: 'customer', kind: 'box', text: 'The box went up from 49 °F to 38 °F.' },
      { reader: 'customer', kind: 'done', text: 'We brushed that coil for free.' },
    ] as const;
    const state = applyEvents([stamp({ type: 'noteWorded', v: 1, passages })], FINISHED);
    expect(lines(state, 'customer')).toBe(lines(FINISHED, 'customer'));
  });
});
