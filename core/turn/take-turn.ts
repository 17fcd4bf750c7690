import { answer, unaskedVerdicts } from '../advice/answer.ts';
import { cautionsFor, COMES_BACK } from '../advice/cautions.ts';
import { meantQuestions } from '../advice/meant-questions.ts';
import type { Known, Needs, Verdict } from '../advice/verdict.ts';
import { isTalk } from '../language/settle/is-talk.ts';
import type { Command, Fact, Question, Utterance } from '../language/utterance.ts';
import { draftNote } from '../note/draft-note.ts';
import type { Note } from '../note/note.ts';
import { customerAloud, noteAloud } from '../note/note-aloud.ts';
import type { Reply } from '../replies/reply.ts';
import { cautionsSpoken, type Outcome, say } from '../replies/say.ts';
import type { PlaceId } from '../terms/names.ts';
import { QUANTITIES, type QuantityId } from '../terms/quantities.ts';
import type { Acknowledgement } from '../visit/acknowledgement.ts';
import { applyEvents } from '../visit/apply.ts';
import type { VisitEvent } from '../visit/events.ts';
import { type Addition, fromUtterance } from '../visit/from-utterance.ts';
import type { VisitState } from '../visit/state.ts';
import { contextOf, expectationAfter } from './context-of.ts';
import { heedRefusal, readBackIn, rejectedAfter } from './rejections.ts';
import { stepEvents } from './step-events.ts';
import { takeIn, type TakenIn } from './take-in.ts';
import type { Memory, Pending, SessionEffect, Stamp, Turn, TurnInput } from './turn.ts';

export function takeTurn(input: TurnInput): Turn {
  const { state, memory, words, stamp, names, past = [] } = input;
  const context = { ...contextOf(state, names), stepping: isStepping(input) };
  const taken = takeIn(words, context, memory.rejected);
  const { utterance, kept, carried } = keep(taken, input);
  const answers = answersTo(utterance, kept, { memory, past });
  const verdicts = [
    ...answers.map(({ verdict }) => verdict),
    ...unaskedOf(answers, kept, { state, past }),
  ];
  const wanted = wantedEvents(verdicts, kept.state, stamp);
  const isSmallTalk = keptNothing(kept, verdicts) && isTalk(utterance.text, contextOf(state));
  const outcome = outcomeOf(kept, verdicts, { memory, isSmallTalk });
  const reply = replyTo(utterance, outcome, { kept, memory, past });
  const asked = [...wanted, ...stepEvents(verdicts, kept.state).map(stamp)];
  const events = [...kept.events, ...asked];
  const after = applyEvents(asked, kept.state);
  return {
    utterance,
    choice: taken.choice,
    checked: taken.checked,
    events,
    state: after,
    verdicts,
    reply,
    effect: effectOf(utterance, kept),
    carried,
    expects: expectationAfter(events, after),
    memory: remember(memory, { utterance, answers, outcome, reply }),
  };
}

/** Steps are told, or it was asked just now what must be known before them. */
const isStepping = ({ state, memory }: TurnInput): boolean =>
  state.steps !== null || stepsAsked(memory) !== null;

const stepsAsked = ({ pending }: Memory): Pending | null =>
  pending?.askedNow === true && pending.question.ask === 'steps' ? pending : null;

interface Kept {
  readonly utterance: Utterance;
  readonly kept: Addition;
  readonly carried: readonly Fact[];
}

/** What of it goes into the visit; what was just said no to and is heard again does not. */
function keep({ utterance, rejectedAgain }: TakenIn, { state, memory, stamp }: TurnInput): Kept {
  const only = (said: Acknowledgement): Kept => ({
    utterance,
    kept: { events: [], state, acknowledgements: [said] },
    carried: [],
  });
  if (rejectedAgain !== null) return only({ kind: 'heardAgain', value: rejectedAgain.value });
  const refusal = heedRefusal(utterance, memory);
  if (refusal.kind === 'whichOne') return only({ kind: 'whichOne' });
  const carried = carriedFacts(refusal.utterance, state);
  const ours = carried.length === 0 ? refusal.utterance : { ...refusal.utterance, facts: [] };
  const kept = fromUtterance(ours, state, stamp);
  const told = carried
    .filter((fact) => !isNamedSo(fact, carried))
    .map((fact): Acknowledgement => ({ kind: 'fact', fact }));
  return {
    utterance: refusal.utterance,
    kept: { ...kept, acknowledgements: [...kept.acknowledgements.map(namedBy(carried)), ...told] },
    carried,
  };
}

/** "On to the prep table": its name tells what it is. */
const isNamedSo = (fact: Fact, all: readonly Fact[]): boolean =>
  fact.fact === 'equipment' &&
  all.some((each) => each.fact === 'unit' && each.words === fact.words);

const namedBy =
  (carried: readonly Fact[]) =>
  (said: Acknowledgement): Acknowledgement =>
    said.kind === 'opened' && carried.some(({ fact }) => fact === 'unit')
      ? { ...said, named: true }
      : said;

/** "Next unit, prep table two" is said of the visit to come, at the same site. */
function carriedFacts(utterance: Utterance, { unit }: VisitState): readonly Fact[] {
  const { facts } = utterance;
  if (facts.length === 0 || !asksTo(utterance, 'newVisit')) return [];
  const hasSite = facts.some(({ fact }) => fact === 'site');
  if (hasSite || unit.site === null) return facts;
  return [{ fact: 'site', value: unit.site, words: utterance.text }, ...facts];
}

/** What is known from before this sentence. */
interface KnownBefore {
  readonly memory: Memory;
  readonly past: readonly VisitState[];
}

interface Answer {
  readonly question: Question;
  readonly verdict: Verdict;
}

/** What was asked now; or the question that waited for what was said now. */
function answersTo(
  utterance: Utterance,
  kept: Addition,
  { memory, past }: KnownBefore,
): readonly Answer[] {
  const ask = (question: Question): Answer => ({
    question,
    verdict: answer(question, kept.state, { ...memory, past }),
  });
  const waiting = kept.state.steps === null ? stepsAsked(memory) : null;
  const isMove = ({ ask: what }: Question): boolean => what === 'step';
  if (waiting !== null && utterance.questions.some(isMove)) {
    return [again(ask(waiting.question))];
  }
  const asked = utterance.questions.flatMap((each) => meantQuestions(each, kept.state));
  if (asked.length > 0) return asked.map(ask);
  if (!memory.pending || utterance.readings.length + utterance.facts.length === 0) return [];
  const late = ask(memory.pending.question);
  const isFurther = supplies(utterance, memory.pending.need) && !stillNeeds(late, memory.pending);
  return late.verdict.kind === 'known' || isFurther ? [late] : [];
}

/** What steps wait for is asked again, with the way out. */
const again = ({ question, verdict }: Answer): Answer => ({
  question,
  verdict: verdict.kind === 'needs' ? { ...verdict, again: true } : verdict,
});

const VOLTS: ReadonlySet<Needs['need']> = new Set<Needs['need']>([
  'supplyVoltage',
  'powerFirst',
  'voltageAcross',
]);

/** Whether the sentence holds what the question waits for: after any other it goes on waiting, unsaid. */
function supplies({ readings, facts }: Utterance, need: Needs['need']): boolean {
  const isVolts = VOLTS.has(need);
  return (
    readings.some(({ quantity }) => quantity === (isVolts ? 'voltage' : need)) ||
    facts.some(({ fact }) => fact === need)
  );
}

/** Ohms from common to run and ohms from common to start are two needs. */
const stillNeeds = ({ verdict }: Answer, { need, place }: Pending): boolean =>
  verdict.kind === 'needs' && verdict.need === need && verdict.place === place;

/** Who asks how it goes is not told again in the same breath that it has settled. */
function unaskedOf(
  answers: readonly Answer[],
  { state }: Addition,
  before: { readonly state: VisitState; readonly past: readonly VisitState[] },
): readonly Verdict[] {
  const asksHow = answers.some(({ question }) => question.ask === 'trend');
  return unaskedVerdicts(before.state, state, before.past).filter(
    (verdict) => !(asksHow && verdict.kind === 'known' && verdict.answer === 'settled'),
  );
}

/** A missing reading that was asked for: the next bare number answers it. */
function wantedEvents(
  verdicts: readonly Verdict[],
  state: VisitState,
  stamp: Stamp,
): readonly VisitEvent[] {
  return verdicts
    .flatMap(wantedOf)
    .filter(
      ({ quantity, place = null }) => quantity !== state.wanted || place !== state.wantedPlace,
    )
    .slice(0, 1)
    .map((wanted) => stamp({ type: 'readingWanted', v: 1, ...wanted }));
}

interface Wanted {
  readonly quantity: QuantityId;
  readonly place?: PlaceId;
}

/** What a meter is sent for is wanted as much as what is asked for outright. */
function wantedOf(verdict: Verdict): readonly Wanted[] {
  if (verdict.kind === 'needs') {
    const { need, place } = verdict;
    if (VOLTS.has(need)) return place === undefined ? [] : [{ quantity: 'voltage', place }];
    return isQuantity(need) ? [{ quantity: need, ...(place ? { place } : {}) }] : [];
  }
  if (verdict.kind !== 'known') return [];
  const leads = verdict.answer === 'nextPlace' || verdict.answer === 'switch' ? verdict.next : null;
  if (leads !== null && leads.how !== 'runs') return [{ quantity: 'voltage', place: leads.place }];
  const isCoil =
    verdict.answer === 'nextCheck' && verdict.next === 'step' && verdict.step === 'readCoil';
  return isCoil ? [{ quantity: 'voltage', place: 'contactor' }] : [];
}

const isQuantity = (need: string): need is QuantityId => need in QUANTITIES;

const keptNothing = (kept: Addition, verdicts: readonly Verdict[]): boolean =>
  kept.acknowledgements.length === 0 && verdicts.length === 0;

function outcomeOf(
  kept: Addition,
  verdicts: readonly Verdict[],
  { memory, isSmallTalk }: { readonly memory: Memory; readonly isSmallTalk: boolean },
): Outcome {
  return {
    acknowledgements: kept.acknowledgements,
    verdicts,
    nothingHeard: keptNothing(kept, verdicts) && !isSmallTalk,
    cautions: cautionsFor(kept.state),
    cautionsSaid: memory.cautionsSaid,
  };
}

interface Before extends KnownBefore {
  readonly kept: Addition;
}

function replyTo(utterance: Utterance, outcome: Outcome, { kept, memory, past }: Before): Reply {
  if (asksTo(utterance, 'repeat') && memory.lastReply) return memory.lastReply;
  const reply = say(outcome, kept.state.settings);
  const read = outcome.verdicts.find(isNote);
  return read === undefined ? reply : readNote(reply, draftNote(kept.state, past), read.for);
}

type NoteRead = Extract<Known, { readonly answer: 'note' }>;

const isNote = (verdict: Verdict): verdict is NoteRead =>
  verdict.kind === 'known' && verdict.answer === 'note';

/** Asked for the note, it is read out whole; asked what to tell the customer, their part of it. */
const readNote = (reply: Reply, note: Note, reader: NoteRead['for']): Reply => ({
  ...reply,
  ...(reader === 'customer' ? customerAloud(note) : noteAloud(note)),
});

const EFFECTS: Partial<Record<Command['do'], SessionEffect>> = {
  pause: 'pause',
  resume: 'resume',
  newVisit: 'newVisit',
  finish: 'finish',
  finishAnyway: 'finish',
};

/** Asked to finish, and not done. */
const GOES_ON: ReadonlySet<Acknowledgement['kind']> = new Set<Acknowledgement['kind']>([
  'finishHeld',
  'nothingToFinish',
]);

function effectOf(utterance: Utterance, kept: Addition): SessionEffect | null {
  if (kept.acknowledgements.some(({ kind }) => GOES_ON.has(kind))) return null;
  const commanded = utterance.commands.map((command) => EFFECTS[command.do]).find(Boolean);
  const asksForNote = utterance.questions.some((question) => question.ask === 'note');
  return commanded ?? (asksForNote ? 'readNote' : null);
}

const asksTo = (utterance: Utterance, command: Command['do']): boolean =>
  utterance.commands.some((each) => each.do === command);

interface Replied {
  readonly utterance: Utterance;
  readonly answers: readonly Answer[];
  readonly outcome: Outcome;
  readonly reply: Reply;
}

function remember(memory: Memory, { utterance, answers, outcome, reply }: Replied): Memory {
  const known = outcome.verdicts.filter((verdict): verdict is Known => verdict.kind === 'known');
  const numbered = known.findLast((verdict) => verdict.answer !== 'working');
  return {
    lastAnswer: numbered ?? memory.lastAnswer,
    lastReply: reply,
    cautionsSaid: stillSaid(memory, outcome),
    pending: answers.length > 0 ? pendingOf(answers) : stillPending(utterance, memory),
    rejected: rejectedAfter(memory.rejected, outcome.acknowledgements),
    readBack: readBackIn(outcome.acknowledgements),
  };
}

/** Work goes on without the answer: an hour later nobody waits for it. Steps that were left wait for nothing. */
function stillPending(utterance: Utterance, { pending }: Memory): Pending | null {
  const isOver = utterance.work.length > 0 || asksTo(utterance, 'leaveSteps');
  return isOver || pending === null ? null : { ...pending, askedNow: false };
}

function pendingOf(answers: readonly Answer[]): Pending | null {
  const lacking = answers.flatMap(({ question, verdict }) =>
    verdict.kind === 'needs'
      ? [
          {
            question,
            need: verdict.need,
            ...(verdict.place ? { place: verdict.place } : {}),
            askedNow: true,
          },
        ]
      : [],
  );
  return lacking[0] ?? null;
}

/** A hazard that went away is told again when it comes back; one that is there is told once. */
function stillSaid(memory: Memory, outcome: Outcome): Memory['cautionsSaid'] {
  const standing = outcome.cautions ?? [];
  return [...new Set([...memory.cautionsSaid, ...cautionsSpoken(outcome)])].filter(
    (id) => standing.includes(id) || !COMES_BACK.has(id),
  );
}
