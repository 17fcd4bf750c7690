import {
  clarityOf,
  type Clarity,
  type Earshot,
  voiceAboveNoise,
} from '../../core/hearing/earshot.ts';
import { timerTitles } from '../../core/replies/timer-sentences.ts';
import type { StorageFault } from '../offline/storage-fault.ts';
import type { Readiness } from '../offline/service-worker.ts';
import type { Deafness } from '../ear/deafness.ts';
import type { EarNews } from '../ear/ear.ts';
import type { EarChoice } from '../ear/native/chosen-ear.ts';
import type { SendTrouble } from '../offline/sync.ts';
import type { EngineAlone, EngineUse, EngineWish } from '../recogniser/team/engine-use.ts';
import type { Notice, NotKeptReason, Unread } from '../state/notice.ts';
import type { Mode, Session, Tab } from '../state/session.ts';

/** As the page opens: where that takes long, and where it breaks. */
export const OPENING: Told = {
  title: 'one moment',
  sentence: 'Opening what is kept on this device.',
};
export const NOT_OPENED: Told = {
  title: 'stopped',
  sentence:
    'Something broke as this page opened. What you recorded is still on this device. Press here to reload.',
};

/** The page's own words. What is said about readings and answers is worded in core/replies. */
export const STATE_WORDS: Record<Mode['kind'], string> = {
  asleep: 'not listening',
  opening: 'getting ready',
  listening: 'listening',
  thinking: 'thinking',
  speaking: 'talking',
  asking: 'your answer?',
  paused: 'on hold',
  deaf: 'cannot hear',
};

const CLARITY_WORDS: Record<Clarity, string> = {
  clear: 'clear',
  fair: 'come closer',
  tooLoud: 'too loud',
};

/** How far the voice stands above the noise, in one line; null while nothing is measured. */
export function earshotWords(earshot: Earshot): string | null {
  if (earshot.noiseDb === null) return null;
  if (earshot.standing === 'unmeasured') return 'noise: talk, and it is measured';
  const above = voiceAboveNoise(earshot);
  const place =
    above === null
      ? 'voice lost in the noise'
      : above < 0
        ? `voice ${-above} dB under noise`
        : `voice ${above} dB over noise`;
  return `${place}: ${CLARITY_WORDS[clarityOf(earshot)]}`;
}

/** What a press on the field does, for those who hear the page's controls named. */
export const PRESS_WORDS: Record<Mode['kind'], string> = {
  asleep: 'Talk',
  opening: 'Never mind',
  listening: 'Hold on',
  thinking: 'Thinking',
  speaking: 'Enough, listen to me',
  asking: 'Hold on',
  paused: 'Go on',
  deaf: 'Try again',
};

export const TAB_WORDS: Record<Tab, string> = {
  sheet: 'sheet',
  note: 'note',
  visit: 'visit',
  keys: 'keys',
};

export interface Told {
  readonly title: string;
  /** Ends with what to do. */
  readonly sentence: string;
}

export interface DeafWords extends Told {
  /** In short, beside what was typed meanwhile. */
  readonly again: string;
}

export const DEAF_WORDS: Record<Deafness, DeafWords> = {
  refused: {
    title: 'no microphone',
    sentence:
      'This page may not use the microphone. Allow it in the browser’s settings for this site, then press here. Or type below.',
    again: 'Microphone not allowed. Type, or allow it and press here.',
  },
  noMicrophone: {
    title: 'no microphone',
    sentence: 'This device shows no microphone. Plug one in and press here, or type below.',
    again: 'No microphone. Type, or plug one in and press here.',
  },
  microphoneBusy: {
    title: 'no microphone',
    sentence: 'Another program holds the microphone. Close it and press here, or type below.',
    again: 'Microphone in use elsewhere. Type, or press here to try again.',
  },
  takenAway: {
    title: 'no microphone',
    sentence:
      'The microphone went away, as when a headset is switched off. Press here to take it up again, or type below.',
    again: 'The microphone went away. Type, or press here to take it up again.',
  },
  plainAddress: {
    title: 'not secure',
    sentence:
      'A phone gives its microphone to secure addresses only. Start the server with “npm start -- --https” and open the https address it prints. Until then, type below.',
    again: 'No microphone on a plain http address. Type below.',
  },
  soundHeldBack: {
    title: 'blocked',
    sentence:
      'The browser lets this page play no sound, so it hears none. Allow autoplay for this site, then press here. Or type below.',
    again: 'The browser blocks this page’s sound. Type, or allow it and press here.',
  },
  interrupted: {
    title: 'interrupted',
    sentence:
      'A call or another program has the sound. I hear again once it is free; if not, press here. Or type below.',
    again: 'A call or another program has the sound. Type, or wait, or press here.',
  },
  recogniserFailed: {
    title: 'cannot hear',
    sentence: 'The recogniser did not start. Press here to try again, or type below.',
    again: 'The recogniser stopped. Type, or press here to try again.',
  },
};

const NOT_KEPT_WORDS: Record<NotKeptReason, string> = {
  storageFull: 'The storage of this device is full: free some.',
  closed: 'The storage of this device was closed: reload the page once this is kept.',
  otherTabWrites: 'Another tab holds this visit: close it, or go on there.',
  unknown: 'The storage of this device did not take it.',
};

const SAVE_FIRST =
  'Or go on: with a network, the server gets all of it. Save the note before you close this page.';

const UNSTORED_WORDS: Record<StorageFault, string> = {
  off: `This browser stores nothing here (a private window?): use an ordinary one. ${SAVE_FIRST}`,
  full: `This device has no room left, so nothing is stored. Free some, then reload. ${SAVE_FIRST}`,
  broken: `The browser’s storage does not open. Visits kept before are not touched: reload, or restart the browser. ${SAVE_FIRST}`,
};

/** In the strip, for as long as nothing is stored here; before anything is recorded, of what will be. */
export function unstoredStanding({ unsynced, visit }: Pick<Session, 'unsynced' | 'visit'>): string {
  return unsynced === 0 && visit.visit !== null ? 'on the server only' : 'not stored: do not close';
}

/** Said and shown when the log did not take what was understood. */
export function sayNotKept(why: NotKeptReason): string {
  return `Not kept yet. ${NOT_KEPT_WORDS[why]} I hold it in memory and try again. Keep this page open.`;
}

const ENGINE_WORDS: Record<EngineAlone, string> = {
  embedded:
    'My trained ear stopped. I listen with the spare one: beside a fan it mishears more. What you said is kept.',
  neural: 'My spare ear stopped. I listen with the trained one alone. What you said is kept.',
};

/** Said and shown when an engine failed and another hears on. */
export const sayEngineChanged = (to: EngineAlone): string => ENGINE_WORDS[to];

const NEWS_WORDS: Record<EarNews, string> = {
  silent: 'No sound comes from the microphone. Is it muted? I keep listening.',
  tooLoud: 'Too loud here to hear you right. Hold the microphone closer, or use the keys.',
  modelGone:
    'The speech model did not come. My own ears listen. Check its name and the connection, then press again.',
  rests:
    'I wait. Press and speak. The browser’s ear beeps each time it opens, so it opens once for each press.',
  ownAgain: 'The browser’s ear does not answer. My own listens now. What you said is kept.',
  soundBack: 'The sound was taken away for a while, and I heard nothing. I hear again.',
  back: 'The page was out of sight and heard nothing. I listen again.',
};

/** What the ear has to say of itself. */
export const sayEarNews = (news: EarNews): string => NEWS_WORDS[news];

export const EAR_CHOICE_WORDS: Record<EarChoice, string> = {
  own: 'my own ears',
  ownWithModel: 'a model of your choice',
  browserOnDevice: 'the browser’s, on this device',
  browserAnywhere: 'the browser’s, online',
};

/** What each means for whoever speaks. */
export const EAR_CHOICE_SENTENCES: Record<EarChoice, string> = {
  own: 'Your voice stays on this device.',
  ownWithModel:
    'Your voice stays on this device. The model is fetched from the hub once; it hears any word, and numbers beside a fan worse than my own ears.',
  browserOnDevice:
    'Your voice stays on this device. Where the browser cannot hear without its maker’s servers, my own ears listen.',
  browserAnywhere:
    'Your voice goes over the network to the browser’s maker. It needs a signal; without one my own ears listen.',
};

export const WISH_WORDS: Record<EngineWish, string> = {
  automatic: 'automatic',
  both: 'both ears',
  neural: 'trained ear',
  embedded: 'spare ear',
};

const USE_WORDS: Record<EngineUse, string> = {
  both: 'both ears listen',
  neural: 'the trained ear listens',
  embedded: 'the spare ear listens',
};

export const listeningWords = (use: EngineUse | null): string =>
  use === null ? 'nothing listens yet' : `now ${USE_WORDS[use]}`;

const UNREAD_WORDS: Record<Unread, string> = {
  all: 'What is kept on this device could not be read. It is not lost: reload this page to try again. Or go on with a new visit.',
  visit:
    'That visit could not be read. It is not lost: press it again, or reload this page. Nothing has changed here.',
  past: 'Earlier visits on this device could not be read: I answer without them. They are not lost: reload this page.',
  otherTab:
    'What you recorded in the other tab could not be read. It is not lost: reload this page to have it here.',
};

export function noticeWords(notice: Notice): string {
  switch (notice.kind) {
    case 'unclear':
      return 'I heard something but not what. Say it again.';
    case 'tooLong':
      return `That is ${notice.words} words in one sentence, and I take ${notice.most}. It is still where you typed it: send it in parts.`;
    case 'broke':
      return `I could not take that in: “${notice.words.slice(0, 120)}”. Say it another way.`;
    case 'ringBroke':
      return 'A timer is up, and I could not tell you which. Ask “how long left”. I try again in a minute.';
    case 'notKept':
      return sayNotKept(notice.why);
    case 'engineChanged':
      return sayEngineChanged(notice.to);
    case 'earNews':
      return sayEarNews(notice.news);
    case 'refused':
      return 'The server does not take what you recorded. It stays here. Under “visit” stands why, and a press sends it again.';
    case 'keptAtLast':
      return 'Everything is kept now.';
    case 'choiceForgotten':
      return 'This browser did not store what you chose: it holds until this page is closed. Free some room or allow it storage, and choose again.';
    case 'unstored':
      return UNSTORED_WORDS[notice.why];
    case 'unread':
      return UNREAD_WORDS[notice.what];
    case 'damaged':
      return `${counted(notice.entries, 'entry', 'entries')} of this visit could not be read and ${notice.entries === 1 ? 'is' : 'are'} set aside. Check the sheet.`;
    case 'resumed':
      return `Your visit is still here, with ${counted(notice.readings, 'reading', 'readings')}. Press and go on.`;
    case 'timersStopped':
      return `Stopped with the visit before: ${timerTitles(notice.timers)}.`;
    case 'timersWait':
      return `Still counting on the visit before: ${timerTitles(notice.timers)}. Open it again to be told.`;
  }
}

function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}

type Whereabouts = Pick<Session, 'unsynced' | 'unkept' | 'leftOut' | 'unstored' | 'visit'>;

export function unsyncedWords(session: Whereabouts): string {
  const { unsynced, unkept, leftOut, unstored, visit } = session;
  if (unstored !== null) return unstoredWords(unsynced, visit.visit === null);
  if (unkept > 0) return `${counted(unkept, 'entry', 'entries')} not kept yet: keep this page open`;
  if (unsynced === 0 && leftOut > 0)
    return 'everything that can be read of this device is on the server';
  if (unsynced === 0) return 'everything is on the server';
  return `${counted(unsynced, 'entry', 'entries')} on this device only`;
}

function unstoredWords(unsynced: number, isEmpty: boolean): string {
  if (unsynced > 0)
    return `${counted(unsynced, 'entry', 'entries')} in this page alone: keep it open until the server has them`;
  return isEmpty
    ? 'nothing is stored on this device'
    : 'everything is on the server, and nothing is stored on this device';
}

/** What the server will never have; null where that is nothing. */
export function leftOutWords(leftOut: number): string | null {
  if (leftOut === 0) return null;
  const entries = counted(leftOut, 'damaged entry', 'damaged entries');
  return `${entries} on this device ${leftOut === 1 ? 'is' : 'are'} not on the server. Save everything as a file, below.`;
}

const TROUBLE_WORDS: Record<SendTrouble, string> = {
  noAnswer: 'no answer from the server. Is there a signal?',
  tooSlow: 'the signal is too thin.',
  serverTrouble: 'the server has trouble of its own, or is busy.',
  otherAnswer: 'something else answers in place of the server. Does this network want a sign-in?',
  logUnread: 'the storage of this device did not answer.',
};

export const sendTroubleWords = (trouble: SendTrouble): string =>
  `Not sent yet: ${TROUBLE_WORDS[trouble]} I keep it here and try again.`;

/** For as long as the server refuses. */
export const REFUSED_STANDING = 'not on the server';

export const refusedWords = (message: string): string =>
  `The server does not take what you recorded: “${message.slice(0, 160)}”.`;

/** In place of a screen that broke in the middle of a visit: whether a press to reload costs anything. */
export function notDrawn({ unsynced, unkept, unstored }: Session): Told {
  const told = (where: string): Told => ({
    title: 'stopped',
    sentence: `Something broke on this screen. ${where}`,
  });
  if (unkept > 0)
    return told('Not all is kept yet: wait until this says that it is, then press here to reload.');
  if (unstored === null) return told('What you recorded is kept. Press here to reload and go on.');
  return unsynced > 0
    ? told('What you recorded is in this page alone: wait until this says that the server has it.')
    : told('The server has what you recorded. Press here to reload and begin anew.');
}

export const VISITS_UNREAD = 'they could not be read: reload this page. They are not lost.';

export const STORAGE_OFF_WORDS = 'this page is gone once it is closed';

export function offlineWords(readiness: Readiness): string {
  return readiness.kind === 'ready' ? 'opens without a network' : readiness.message;
}
