import type { OpenQuestion } from '../../core/visit/views.ts';
import type { Session } from '../state/session.ts';
import { LargeLine } from './large-line.tsx';
import { OffTarget } from './off-target.tsx';
import { ASKED_AGAIN, questionLarge } from './question-line.ts';
import { ReplyText } from './reply-text.tsx';
import { widthOf } from './width-of.ts';
import { DEAF_WORDS, noticeWords, type Told } from './words.ts';

interface FieldTextProps {
  readonly session: Session;
  readonly onPress: () => void;
}

/** What the field says: one large line, and a sentence of what it means. A long one scrolls, and can be pressed. */
export function FieldText({ session, onPress }: FieldTextProps) {
  const { notice, mode, memory } = session;
  return (
    <div class="field-text" onClick={onPress}>
      {notice && (
        <p class="notice" role="alert" data-testid="notice">
          {noticeWords(notice)}
        </p>
      )}
      {mode.kind === 'deaf' && memory.lastReply && (
        <p class="notice" role="alert">
          {DEAF_WORDS[mode.why].again}
        </p>
      )}
      <Saying session={session} />
    </div>
  );
}

function Saying({ session }: { session: Session }) {
  const { mode } = session;
  const told = toldInstead(session);
  if (told) return <Announced told={told} number={session.speeches} />;
  return (
    <>
      {mode.kind === 'asking' ? (
        <Asked session={session} question={mode.question} />
      ) : (
        <Answered session={session} />
      )}
      {mode.kind === 'asleep' && <p class="hint">Press here to talk.</p>}
      {mode.kind !== 'asking' && <Heard words={heardWords(session)} />}
    </>
  );
}

/** The sentence being said as it is taken so far, then as it was taken, then what of it was not understood. */
function heardWords({ mode, soFar, notUnderstood }: Session): string | null {
  if (mode.kind === 'thinking') return mode.words;
  return soFar === '' ? notUnderstood : soFar;
}

const MOST_SHOWN = 200;

function Heard({ words }: { words: string | null }) {
  if (words === null || words === '') return null;
  return (
    <p class="heard" data-testid="heard">
      “{words.length > MOST_SHOWN ? `${words.slice(0, MOST_SHOWN)}…` : words}”
    </p>
  );
}

function Answered({ session }: { session: Session }) {
  const { compared, speeches } = session;
  const reply = session.memory.lastReply;
  return (
    <>
      {reply?.large && <LargeLine large={reply.large} />}
      {compared && <OffTarget compared={compared} />}
      <ReplyText text={reply?.text ?? ''} number={speeches} isBeside={reply?.large != null} />
    </>
  );
}

function Asked({ session, question }: { session: Session; question: OpenQuestion }) {
  const isRaisedNow = session.raised?.of.id === question.of.id;
  const reply = isRaisedNow ? session.memory.lastReply : null;
  const text = reply?.text ?? ASKED_AGAIN[question.kind];
  return (
    <>
      <LargeLine large={questionLarge(question)} />
      <ReplyText text={text} number={session.speeches} isBeside />
    </>
  );
}

/** What stands in the field in place of the last reply. */
function toldInstead(session: Session): Told | null {
  const { mode, memory, visit, loaded, soFar } = session;
  const fresh = memory.lastReply === null;
  switch (mode.kind) {
    case 'asleep':
      return fresh
        ? welcome(visit.visit !== null && visit.finishedAt === null)
        : noteShown(session);
    case 'opening':
      return opening(loaded);
    case 'deaf':
      return fresh ? DEAF_WORDS[mode.why] : null;
    case 'paused':
      return mode.by === 'voice' ? HELD_BY_VOICE : HELD_BY_PRESS;
    case 'listening':
      return fresh && soFar === '' ? FIRST_WORDS : noteShown(session);
    case 'speaking':
      return noteShown(session);
    case 'thinking':
    case 'asking':
      return null;
  }
}

/** The note that is read out stands open beside the field: there is no need to show it twice. */
function noteShown({ lastEffect }: Session): Told | null {
  return lastEffect === 'readNote' ? NOTE_READ : null;
}

const NOTE_READ: Told = { title: 'the note', sentence: 'Print it, copy it or save it.' };
const HELD_BY_VOICE: Told = { title: 'on hold', sentence: 'Say “go on”, or press here.' };
const HELD_BY_PRESS: Told = { title: 'on hold', sentence: 'Press here to go on.' };
const FIRST_WORDS: Told = {
  title: 'say it',
  sentence:
    'The unit, its refrigerant, each reading as you take it. “Help” tells more, “hold on” pauses.',
};

function welcome(goesOn: boolean): Told {
  return goesOn
    ? { title: 'go on', sentence: 'Press anywhere here, then just talk.' }
    : {
        title: 'talk',
        sentence: 'Press anywhere here once, then just talk. Nothing you say leaves this device.',
      };
}

function opening(loaded: number): Told {
  return loaded > 0
    ? {
        title: `${Math.round(loaded * 100)} %`,
        sentence: 'Loading what listens. It stays on this device.',
      }
    : { title: 'one moment', sentence: 'If the browser asks for the microphone, allow it.' };
}

function Announced({ told, number }: { told: Told; number: number }) {
  return (
    <>
      <p
        class="announced"
        style={{ '--characters': Math.max(...told.title.split(' ').map(widthOf)) }}
      >
        {told.title}
      </p>
      <p class="reply" role="status" data-testid="reply" data-number={number} data-size="plain">
        {told.sentence}
      </p>
    </>
  );
}
