import type { Session } from '../state/session.ts';
import { LargeLine } from './large-line.tsx';
import { OffTarget } from './off-target.tsx';
import { ASKED_AGAIN, questionLarge } from './question-line.ts';
import { ReplyText, type ReplyTextProps } from './reply-text.tsx';
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

/** What is announced stays in its place whatever stands around it: put in anew, its words would be told by no screen reader. */
function Saying({ session }: { session: Session }) {
  const { mode, speeches } = session;
  const told = toldInstead(session);
  return (
    <>
      <Above session={session} told={told} />
      <ReplyText {...replyShown(session, told)} number={speeches} />
      {told === null && mode.kind === 'asleep' && <p class="hint">Press here to talk.</p>}
      {told === null && mode.kind !== 'asking' && <Heard words={heardWords(session)} />}
    </>
  );
}

function replyShown(session: Session, told: Told | null): Pick<ReplyTextProps, 'text' | 'beside'> {
  const { mode, memory, raised } = session;
  if (told) return { text: told.sentence, beside: 'title' };
  if (mode.kind !== 'asking') {
    const reply = memory.lastReply;
    return { text: reply?.text ?? '', beside: reply?.large == null ? null : 'figure' };
  }
  const { question } = mode;
  const reply = raised?.of.id === question.of.id ? memory.lastReply : null;
  return { text: reply?.text ?? ASKED_AGAIN[question.kind], beside: 'figure' };
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

/** What stands large above the reply. */
function Above({ session, told }: { session: Session; told: Told | null }) {
  const { mode, compared, memory } = session;
  if (told) return <Announced title={told.title} />;
  if (mode.kind === 'asking') return <LargeLine large={questionLarge(mode.question)} />;
  const large = memory.lastReply?.large;
  return (
    <>
      {large && <LargeLine large={large} />}
      {compared && <OffTarget compared={compared} />}
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

function Announced({ title }: { title: string }) {
  return (
    <p class="announced" style={{ '--characters': Math.max(...title.split(' ').map(widthOf)) }}>
      {title}
    </p>
  );
}
