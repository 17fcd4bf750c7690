import { answer } from '../advice/answer.ts';
import type { Known, Verdict } from '../advice/verdict.ts';
import { understand } from '../language/understand.ts';
import type { Command, Utterance } from '../language/utterance.ts';
import { draftNote } from '../note/draft-note.ts';
import { noteText } from '../note/note-text.ts';
import type { Reply } from '../replies/reply.ts';
import { say } from '../replies/say.ts';
import { QUANTITIES, type QuantityId } from '../terms/quantities.ts';
import { applyEvents } from '../visit/apply.ts';
import type { VisitEvent } from '../visit/events.ts';
import { type Addition, fromUtterance } from '../visit/from-utterance.ts';
import type { VisitState } from '../visit/state.ts';
import { contextOf } from './context-of.ts';
import type { Memory, SessionEffect, Stamp, Turn, TurnInput } from './turn.ts';

export function takeTurn({ state, memory, words, stamp }: TurnInput): Turn {
  const utterance = understand(words, contextOf(state));
  const kept = fromUtterance(utterance, state, stamp);
  const verdicts = utterance.questions.map((question) => answer(question, kept.state, memory));
  const wanted = wantedEvents(verdicts, kept.state, stamp);
  const reply = replyTo({ utterance, kept, verdicts, memory });
  return {
    utterance,
    events: [...kept.events, ...wanted],
    state: applyEvents(wanted, kept.state),
    verdicts,
    reply,
    effect: effectOf(utterance),
    memory: remember(memory, verdicts, reply),
  };
}

/** A missing reading that was asked for: the next bare number answers it. */
function wantedEvents(
  verdicts: readonly Verdict[],
  state: VisitState,
  stamp: Stamp,
): readonly VisitEvent[] {
  return verdicts
    .flatMap((verdict) =>
      verdict.kind === 'needs' && isQuantity(verdict.need) ? [verdict.need] : [],
    )
    .filter((quantity) => quantity !== state.wanted)
    .slice(0, 1)
    .map((quantity) => stamp({ type: 'readingWanted', v: 1, quantity }));
}

const isQuantity = (need: string): need is QuantityId => need in QUANTITIES;

interface Answered {
  readonly utterance: Utterance;
  readonly kept: Addition;
  readonly verdicts: readonly Verdict[];
  readonly memory: Memory;
}

function replyTo({ utterance, kept, verdicts, memory }: Answered): Reply {
  if (asksTo(utterance, 'repeat') && memory.lastReply) return memory.lastReply;
  const reply = say(
    {
      acknowledgements: kept.acknowledgements,
      verdicts,
      nothingHeard: kept.acknowledgements.length === 0 && verdicts.length === 0,
      cautionsSaid: memory.cautionsSaid,
    },
    kept.state.settings,
  );
  return verdicts.some(isNote) ? readNote(reply, kept.state) : reply;
}

const isNote = (verdict: Verdict): boolean => verdict.kind === 'known' && verdict.answer === 'note';

/** Asked for the note, it is read out whole. */
function readNote(reply: Reply, state: VisitState): Reply {
  const text = noteText(draftNote(state));
  return { ...reply, text, spoken: text };
}

const EFFECTS: Partial<Record<Command['do'], SessionEffect>> = {
  pause: 'pause',
  resume: 'resume',
  newVisit: 'newVisit',
  finish: 'finish',
};

function effectOf(utterance: Utterance): SessionEffect | null {
  const commanded = utterance.commands.map((command) => EFFECTS[command.do]).find(Boolean);
  const asksForNote = utterance.questions.some((question) => question.ask === 'note');
  return commanded ?? (asksForNote ? 'readNote' : null);
}

const asksTo = (utterance: Utterance, command: Command['do']): boolean =>
  utterance.commands.some((each) => each.do === command);

function remember(memory: Memory, verdicts: readonly Verdict[], reply: Reply): Memory {
  const known = verdicts.filter((verdict): verdict is Known => verdict.kind === 'known');
  const numbered = known.findLast((verdict) => verdict.answer !== 'working');
  const cautions = known.flatMap((verdict) => verdict.cautions);
  return {
    lastAnswer: numbered ?? memory.lastAnswer,
    lastReply: reply,
    cautionsSaid: [...new Set([...memory.cautionsSaid, ...cautions])],
  };
}
