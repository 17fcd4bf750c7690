import type { Verdict } from '../../core/advice/verdict.ts';
import { guardPassage } from '../../core/note/guard/guard-passage.ts';
import type { Passage } from '../../core/note/paragraphs/passage.ts';
import { passageKey, type PassagePhraser } from '../../core/note/phrase-note.ts';
import { guard } from '../../core/replies/guard/guard.ts';
import type { Phraser } from '../../core/replies/phrasing.ts';
import { noteRecord } from '../record/note-record.ts';
import type { Register } from '../record/phrase-record.ts';
import { recordOf } from '../record/record-of.ts';
import { seedOf } from './dice.ts';
import type { Lexicon } from './lexicon.ts';
import { type Phrased, phraseInTries, type Writer } from './phrase-in-tries.ts';

/** A phraser from a model that writes slots. */
export function createSlotPhraser(write: Writer, lexicon: Lexicon): Phraser & PassagePhraser {
  const lane = createLane();
  return { ...answers(write, lexicon, lane), ...passages(write, lexicon, lane) };
}

type Lane = <Result>(work: () => Promise<Result>) => Promise<Result>;

/** A model writes one thing at a time. */
function createLane(): Lane {
  let before: Promise<unknown> = Promise.resolve();
  return (work) => {
    const mine = before.then(work, work);
    before = mine;
    return mine;
  };
}

/** An answer that would wait behind another is late: it has none. It waits for one passage at the most. */
function answers(write: Writer, lexicon: Lexicon, lane: Lane): Phraser {
  let isBusy = false;
  let told = 0;
  let last: Phrased | null = null;
  return {
    phrase: async (verdict, manner) => {
      const record = recordOf(verdict);
      const register = record && registerFor(lexicon, record.kind, manner);
      if (isBusy || record === null || register === null) return null;
      isBusy = true;
      told += 1;
      try {
        const wanted = { record, register, passes: passing(verdict), seed: told, last };
        const phrased = await lane(() => phraseInTries(write, lexicon, wanted));
        last = phrased ?? last;
        return phrased?.said ?? null;
      } finally {
        isBusy = false;
      }
    },
  };
}

/** Drawn by what it says: a note is worded alike whenever it is looked at. */
function passages(write: Writer, lexicon: Lexicon, lane: Lane): PassagePhraser {
  return {
    phrasePassage: async (passage) => {
      const record = noteRecord(passage);
      const seed = seedOf(passageKey(passage)) % MOST_SEEDS;
      const passes = passingPassage(passage);
      const wanted = { record, register: passage.reader, passes, seed, last: null };
      const phrased = await lane(() => phraseInTries(write, lexicon, wanted));
      return phrased?.said.text ?? null;
    },
  };
}

/** A seed is multiplied by the number of tries, and must stay a whole number of 32 bits. */
const MOST_SEEDS = 2 ** 29;

const passing = (verdict: Verdict) => (text: string) => guard(text, verdict).kind === 'passed';
const passingPassage = (passage: Passage) => (text: string) =>
  guardPassage(text, passage).kind === 'passed';

/** A kind that has words in one register alone is worded in that one. */
function registerFor({ groups }: Lexicon, kind: string, wanted: Register): Register | null {
  const known = groups.filter((group) => group.kind === kind).map(({ register }) => register);
  return known.includes(wanted) ? wanted : (known[0] ?? null);
}
