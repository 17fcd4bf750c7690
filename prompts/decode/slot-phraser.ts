import type { Verdict } from '../../core/advice/verdict.ts';
import { guard } from '../../core/replies/guard/guard.ts';
import type { Phraser } from '../../core/replies/phrasing.ts';
import type { Register } from '../record/phrase-record.ts';
import { recordOf } from '../record/record-of.ts';
import type { Lexicon } from './lexicon.ts';
import { type Phrased, phraseInTries, type Writer } from './phrase-in-tries.ts';

/** A phraser from a model that writes slots. One sentence at a time: one that waits would itself be late. */
export function createSlotPhraser(write: Writer, lexicon: Lexicon): Phraser {
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
        const passes = passing(verdict);
        const wanted = { record, register, passes, seed: told, last };
        const phrased = await phraseInTries(write, lexicon, wanted);
        last = phrased ?? last;
        return phrased?.said ?? null;
      } finally {
        isBusy = false;
      }
    },
  };
}

const passing = (verdict: Verdict) => (text: string) => guard(text, verdict).kind === 'passed';

/** A kind that has words in one register alone is worded in that one. */
function registerFor({ groups }: Lexicon, kind: string, wanted: Register): Register | null {
  const known = groups.filter((group) => group.kind === kind).map(({ register }) => register);
  return known.includes(wanted) ? wanted : (known[0] ?? null);
}
