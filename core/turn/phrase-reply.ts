import type { Known } from '../advice/verdict.ts';
import { isRephrasable, phraseOr } from '../replies/guard/phrase-or.ts';
import type { Manner, Phraser } from '../replies/phrasing.ts';
import type { Reply } from '../replies/reply.ts';
import type { Said } from '../replies/said.ts';
import { verdictSaid } from '../replies/verdict-said.ts';
import type { Turn } from './turn.ts';

export interface PhrasedTurn {
  readonly turn: Turn;
  /** Whether a sentence was worded by the phraser on this turn; false where it wrote the template's own. */
  readonly phrased: boolean;
}

/**
 * Lets the phraser word the answer of a turn that has exactly one. The rest of the reply stays as it is:
 * what was kept, cautions, what is asked. A phraser that is absent, fails, is still at it when `budget`
 * settles, or writes what the guard rejects leaves the turn untouched.
 */
export async function phraseReply(
  turn: Turn,
  phraser: Phraser | null,
  budget: Promise<unknown>,
): Promise<PhrasedTurn> {
  const verdict = onlyAnswer(turn);
  if (phraser === null || verdict === null) return { turn, phrased: false };
  const phrasing = await inTime(phrasingOf(phraser, verdict, mannerOf(turn)), budget);
  const template = verdictSaid(verdict);
  const said = phraseOr(template, phrasing, verdict);
  const reply = reworded(turn.reply, template, said);
  if (reply === null || said === template) return { turn, phrased: false };
  return { turn: { ...turn, reply, memory: { ...turn.memory, lastReply: reply } }, phrased: true };
}

function onlyAnswer({ verdicts }: Turn): Known | null {
  const [verdict, ...others] = verdicts;
  return verdict && others.length === 0 && isRephrasable(verdict) ? verdict : null;
}

type Phrasing = Awaited<ReturnType<Phraser['phrase']>>;

async function phrasingOf(phraser: Phraser, verdict: Known, manner: Manner): Promise<Phrasing> {
  try {
    return await phraser.phrase(verdict, manner);
  } catch {
    return null;
  }
}

/** Who asks why, or how come, waits for more than a number. */
const ASKS_WHY = /\b(why|how come|how so|reason|explain)\b/i;

const mannerOf = ({ utterance }: Turn): Manner =>
  ASKS_WHY.test(utterance.text) ? 'reason' : 'short';

function inTime(phrasing: Promise<Phrasing>, budget: Promise<unknown>) {
  const late = budget.then(
    () => null,
    () => null,
  );
  return Promise.race([phrasing, late]);
}

function reworded(reply: Reply, from: Said, to: Said): Reply | null {
  const text = exchanged(reply.text, from.text, to.text);
  const spoken = exchanged(reply.spoken, from.spoken, to.spoken);
  return text === null || spoken === null ? null : { ...reply, text, spoken };
}

/** The last one: what was kept is said back before the answer, perhaps in the same words. */
function exchanged(whole: string, from: string, to: string): string | null {
  const at = whole.lastIndexOf(from);
  return at < 0 ? null : whole.slice(0, at) + to + whole.slice(at + from.length);
}
