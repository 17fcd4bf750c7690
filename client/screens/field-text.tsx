import type { Reply } from '../../core/replies/reply.ts';
import type { Session } from '../state/session.ts';
import { LargeLine } from './large-line.tsx';
import { OffTarget } from './off-target.tsx';
import { DEAF_WORDS, noticeWords, type Told } from './words.ts';

/** What the field says: one large line, and a sentence of what it means. */
export function FieldText({ session }: { session: Session }) {
  const { notice, mode, memory } = session;
  return (
    <div class="field-text">
      {notice && (
        <p class="notice" role="alert" data-testid="notice">
          {noticeWords(notice)}
        </p>
      )}
      {mode.kind === 'deaf' && memory.lastReply && (
        <p class="notice" role="alert">
          {DEAF_WORDS[mode.why].sentence}
        </p>
      )}
      <Saying session={session} />
    </div>
  );
}

function Saying({ session }: { session: Session }) {
  const { mode, memory } = session;
  const told = toldInstead(session);
  if (told) return <Announced told={told} />;
  return (
    <>
      <Answered reply={memory.lastReply} session={session} />
      {mode.kind === 'asleep' && <p class="hint">Press here to talk.</p>}
      {mode.kind === 'thinking' && <p class="heard">“{mode.words.slice(0, 200)}”</p>}
    </>
  );
}

function Answered({ reply, session }: { reply: Reply | null; session: Session }) {
  return (
    <>
      {reply?.large && <LargeLine large={reply.large} />}
      {session.compared && <OffTarget compared={session.compared} />}
      <p
        class="reply"
        role="status"
        data-testid="reply"
        data-number={session.speeches}
        data-long={(reply?.text.length ?? 0) > 140 ? '' : undefined}
      >
        {reply?.text ?? ''}
      </p>
    </>
  );
}

/** What stands in the field in place of the last reply. */
function toldInstead({ mode, memory, visit, loaded }: Session): Told | null {
  const fresh = memory.lastReply === null;
  switch (mode.kind) {
    case 'asleep':
      return fresh ? welcome(visit.visit !== null && visit.finishedAt === null) : null;
    case 'opening':
      return opening(loaded);
    case 'deaf':
      return fresh ? DEAF_WORDS[mode.why] : null;
    case 'paused':
      return mode.by === 'voice' ? HELD_BY_VOICE : HELD_BY_PRESS;
    case 'listening':
      return fresh ? FIRST_WORDS : null;
    case 'thinking':
    case 'speaking':
    case 'asking':
      return null;
  }
}

const HELD_BY_VOICE: Told = { title: 'on hold', sentence: 'Say “resume”, or press here.' };
const HELD_BY_PRESS: Told = { title: 'on hold', sentence: 'Press here to go on.' };
const FIRST_WORDS: Told = {
  title: 'say it',
  sentence: 'The unit, its refrigerant, each reading as you take it. “Help” tells more.',
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

function Announced({ told }: { told: Told }) {
  return (
    <>
      <p class="announced" style={{ '--characters': longestWord(told.title) }}>
        {told.title}
      </p>
      <p class="reply" role="status" data-testid="reply">
        {told.sentence}
      </p>
    </>
  );
}

function longestWord(title: string): number {
  return Math.max(...title.split(' ').map((word) => word.length));
}
