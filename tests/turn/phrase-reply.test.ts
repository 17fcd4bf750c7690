import { describe, expect, it } from 'vitest';
import type { Verdict } from '../../core/advice/verdict.ts';
import type { Phraser } from '../../core/replies/phrasing.ts';
import { phraseReply } from '../../core/turn/phrase-reply.ts';
import { takeTurn } from '../../core/turn/take-turn.ts';
import { EMPTY_MEMORY, type Turn } from '../../core/turn/turn.ts';
import { EMPTY_VISIT } from '../../core/visit/empty-visit.ts';
import { createStamp } from '../support/stamp.ts';

const NEVER = new Promise<never>(() => undefined);

const writing = (sentence: string | null): Phraser => ({ phrase: () => Promise.resolve(sentence) });

/** The last turn of a visit, the phraser having had its say on each. */
async function talk(phraser: Phraser | null, ...sentences: readonly string[]) {
  const stamp = createStamp();
  let state = EMPTY_VISIT;
  let memory = EMPTY_MEMORY;
  let phrased = false;
  let turn: Turn | null = null;
  for (const words of sentences) {
    const plain = takeTurn({ state, memory, words, stamp });
    ({ turn, phrased } = await phraseReply(plain, phraser, NEVER));
    ({ state, memory } = turn);
  }
  if (turn === null) throw new Error('say at least one sentence');
  return { turn, phrased };
}

const SET_UP = ["it's a reach in on one thirty four a with a txv", 'suction eighteen'] as const;
const ASKED = [...SET_UP, 'suction line twenty nine', "what's my superheat"] as const;

const asked = async () => (await talk(null, ...ASKED)).turn;
const RIGHT = 'Right now superheat reads 9.6 °F.';

describe('a reply that a phraser may word', () => {
  it('is spoken in its words when they say the same', async () => {
    const { turn, phrased } = await talk(writing(RIGHT), ...ASKED);
    expect((await asked()).reply.text).toContain('9.6 °F');
    expect(phrased).toBe(true);
    expect(turn.reply.text).toBe(RIGHT);
    expect(turn.reply.spoken).toBe('Right now superheat reads 9.6 degrees.');
    expect(turn.reply.large).toEqual((await asked()).reply.large);
  });

  it('is said again as it was said', async () => {
    const { turn } = await talk(writing(RIGHT), ...ASKED, 'say that again');
    expect(turn.reply.text).toBe(RIGHT);
  });

  it('keeps what stands before the answer, a caution among it, word for word', async () => {
    const both = ['suction eighteen', 'it runs on propane, what is suction'];
    const plain = (await talk(null, ...both)).turn.reply;
    const { reply } = (await talk(writing('Right now suction reads 18 psi.'), ...both)).turn;
    expect(plain.text).toMatch(/^R-290\. Careful: this refrigerant burns\..*Suction is 18 psi\.$/);
    expect(reply.text).toBe(
      plain.text.replace('Suction is 18 psi.', 'Right now suction reads 18 psi.'),
    );
    expect(reply.spoken).toBe(
      plain.spoken.replace('Suction is 18 P S I.', 'Right now suction reads 18 P S I.'),
    );
  });

  it.each([
    ['has no sentence', writing(null)],
    ['writes the template itself', writing('Superheat is 9.6 °F.')],
    ['writes another number', writing('Right now superheat reads 8 °F.')],
    ['writes another unit', writing('Right now superheat reads 9.6 psi.')],
    ['writes another name', writing('Right now subcooling reads 9.6 °F.')],
    ['denies it', writing('Superheat is not 9.6 °F.')],
    ['babbles', writing('psi the the °F')],
    ['writes nothing', writing('')],
    ['fails', { phrase: () => Promise.reject(new Error('out of memory')) }],
    [
      'throws at once',
      {
        phrase: () => {
          throw new Error('not loaded');
        },
      },
    ],
  ])('is the template where the phraser %s', async (_, phraser) => {
    const plain = await asked();
    expect(await phraseReply(plain, phraser, NEVER)).toEqual({ turn: plain, phrased: false });
  });

  it('is the template where the phraser turns the direction round, and not where it keeps it', async () => {
    const off = [SET_UP[0], 'ambient ninety, head two fifty', 'how far off am I'];
    const plain = (await talk(null, ...off)).turn;
    const [, digits = ''] = /Head is (\d+) psi over/.exec(plain.reply.text) ?? [];
    const kept = await phraseReply(plain, writing(`Head is ${digits} psi over.`), NEVER);
    const turned = await phraseReply(plain, writing(`Head is ${digits} psi under.`), NEVER);
    expect([kept.phrased, turned.phrased]).toEqual([true, false]);
    expect(turned.turn).toBe(plain);
  });

  it.each([
    ['has run out', () => Promise.resolve()],
    ['was broken off', () => Promise.reject(new Error('stopped'))],
  ])('is the template where the phraser is still at it when its time %s', async (_, budget) => {
    const plain = await asked();
    const slow: Phraser = { phrase: () => NEVER };
    expect(await phraseReply(plain, slow, budget())).toEqual({ turn: plain, phrased: false });
  });
});

describe('a reply that no phraser may word', () => {
  it.each([
    ['a reading said back', [], ['head two fifty']],
    ['what an answer still needs', ['needs'], [...SET_UP, "what's my superheat"]],
    ['a refusal', ['refused'], [...SET_UP, 'suction line ten', "what's my superheat"]],
    ['a question of safety', ['refused'], ['can I vent it']],
    ['a caution', [], ['it runs on propane']],
    ['how a number was worked out', ['known'], [...ASKED, 'how did you get that']],
    ['the note', ['known'], [...ASKED, 'read me the note']],
    [
      'two answers in one breath',
      ['known', 'known'],
      ['head two fifty', 'suction twenty', 'what is head and what is suction'],
    ],
    ['nothing caught', [], ['nice weather for it']],
  ])('%s', async (_, kinds, sentences) => {
    const plain = (await talk(null, ...sentences)).turn;
    expect(plain.verdicts.map(({ kind }) => kind)).toEqual(kinds);
    const wanted: Verdict[] = [];
    const eager: Phraser = {
      phrase: (verdict) => {
        wanted.push(verdict);
        return Promise.resolve(plain.reply.text);
      },
    };
    const { turn, phrased } = await phraseReply(plain, eager, NEVER);
    expect(turn).toBe(plain);
    expect([wanted, phrased]).toEqual([[], false]);
  });
});
