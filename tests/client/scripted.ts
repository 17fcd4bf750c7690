import type { Expectation } from '../../core/language/context.ts';
import { ringTimers } from '../../core/turn/ring-timers.ts';
import type { Turn, TurnInput } from '../../core/turn/turn.ts';
import { applyEvents } from '../../core/visit/apply.ts';
import type { EventBody, VisitEvent } from '../../core/visit/events.ts';
import type { VisitState } from '../../core/visit/state.ts';
import type { Ear, EarOpening, Heard } from '../../client/ear/ear.ts';
import { createMemoryDisk, createMemoryLog } from '../../client/offline/memory-log.ts';
import type { AppendResult, EventLog } from '../../client/offline/event-log.ts';
import type { Clock } from '../../client/state/clock.ts';
import type { Ports } from '../../client/state/ports.ts';
import { createRunner, type Runner } from '../../client/state/runner.ts';
import { freshVisit, type Session, sleepingSession } from '../../client/state/session.ts';
import { createStamps } from '../../client/state/stamps.ts';
import { DEFAULT_SETTINGS } from '../../core/visit/events.ts';
import type { Earcons, Voice } from '../../client/voice/voice.ts';

/** A clock that stands still until it is moved. */
export function handClock(): Clock & { advance(ms: number): void } {
  let now = 1_764_000_000_000;
  let due: readonly { at: number; run: () => void }[] = [];
  return {
    now: () => now,
    utcOffset: () => 0,
    after(ms, run) {
      const timer = { at: now + ms, run };
      due = [...due, timer];
      return () => {
        due = due.filter((other) => other !== timer);
      };
    },
    advance(ms) {
      now += ms;
      const ripe = due.filter(({ at }) => at <= now).toSorted((a, b) => a.at - b.at);
      due = due.filter(({ at }) => at > now);
      for (const { run } of ripe) run();
    },
  };
}

/** Lets everything that waits on settled promises run: no time passes. */
export function settled(): Promise<void> {
  return new Promise((resolve) => {
    setImmediate(resolve);
  });
}

export interface ScriptedEar extends Ear {
  readonly calls: string[];
  hear(heard: Heard): void;
  opening: EarOpening;
}

export function scriptedEar(): ScriptedEar {
  const calls: string[] = [];
  let report: (heard: Heard) => void = () => undefined;
  const ear: ScriptedEar = {
    calls,
    opening: { kind: 'open' },
    open: () => {
      calls.push('open');
      return Promise.resolve(ear.opening);
    },
    listen: (expectation: Expectation) => void calls.push(`listen ${expectation}`),
    gate: () => void calls.push('gate'),
    close: () => void calls.push('close'),
    onHeard: (listener) => {
      report = listener;
    },
    onLevel: () => undefined,
    onProgress: () => undefined,
    hear: (heard) => report(heard),
  };
  return ear;
}

/** A test decides when speech is over; `slow` leaves a hushed one unfinished for a while, as some engines do. */
export function scriptedVoice(audible = true) {
  const said: string[] = [];
  const over: (() => void)[] = [];
  const slow = { toHush: false };
  const voice: Voice = {
    canSpeak: () => audible,
    speak: (spoken) => {
      said.push(spoken);
      return new Promise((resolve) => {
        over.push(resolve);
      });
    },
    hush: () => {
      if (!slow.toHush) over.at(-1)?.();
    },
    unlock: () => undefined,
  };
  return { voice, said, slow, finish: () => over.at(-1)?.(), finishFirst: () => over[0]?.() };
}

/** One sentence as a recogniser offers it, likeliest first. */
export const offered = (...words: readonly string[]): Extract<Heard, { kind: 'words' }> => ({
  kind: 'words',
  alternatives: words.map((each) => ({ words: each, confidence: 0.98 })),
});

/**
 * Stands for the core in tests of the session: a number is a head pressure, "doubt" raises a doubt, a session
 * effect's name is obeyed, "break" is a bug, and anything else is a question.
 */
export function scriptedTurn({ state, memory, words: said, stamp }: TurnInput): Turn {
  const words = typeof said === 'string' ? said : (said[0]?.words ?? '');
  if (words === 'break') throw new Error('a bug');
  const events = bodiesOf(words, state.visit === null).map(stamp);
  const reply = {
    text: `text of ${words}`,
    spoken: `spoken ${words}`,
    large: null,
    earcon: /^\d/.test(words) ? ('kept' as const) : ('answer' as const),
  };
  return {
    utterance: {
      text: words,
      readings: [],
      facts: [],
      findings: [],
      work: [],
      recommendations: [],
      questions: [],
      commands: [],
      memos: [],
      remarks: [],
      unclaimed: [],
      doubts: [],
    },
    choice: null,
    checked: [],
    events,
    state: applyEvents(events, state),
    verdicts: [],
    reply,
    effect: EFFECTS.find((effect) => effect === words) ?? null,
    carried: [],
    expects: 'anything',
    memory: { ...memory, lastReply: reply },
  };
}

const EFFECTS = ['pause', 'resume', 'readNote', 'newVisit', 'finish'] as const;

function bodiesOf(words: string, first: boolean): readonly EventBody[] {
  const opening: EventBody = { type: 'visitOpened', v: 1, settings: DEFAULT_SETTINGS };
  const bodies = wordsToBodies(words);
  return first && bodies.length > 0 ? [opening, ...bodies] : bodies;
}

function wordsToBodies(words: string): readonly EventBody[] {
  const reading = {
    quantity: 'headPressure',
    value: Number(words),
    unit: 'psi',
    unitFrom: 'implied',
    place: null,
    words,
  } as const;
  if (/^\d/.test(words)) return [{ type: 'readingTaken', v: 1, reading }];
  if (words === 'doubt') {
    const doubt = { ...reading, value: 9, why: 'outOfRange' } as const;
    return [{ type: 'doubtRaised', v: 1, doubt }];
  }
  if (words === 'finish') return [{ type: 'visitFinished', v: 1 }];
  return words === 'question'
    ? [{ type: 'questionAsked', v: 1, question: { ask: 'readback' } }]
    : [];
}

/** What a test may put in place of its scripts. */
export interface Script {
  readonly ear?: Ear;
  readonly audible?: boolean;
  readonly takeTurn?: Ports['takeTurn'];
  readonly ringTimers?: Ports['ringTimers'];
  readonly phraser?: Ports['phraser'];
  readonly passages?: Ports['passages'];
  readonly writes?: Ports['writes'];
  /** A visit that was open when the page last lived. */
  readonly visit?: VisitState;
}

export interface Stage {
  readonly runner: Runner;
  readonly ear: ScriptedEar;
  readonly voice: ReturnType<typeof scriptedVoice>;
  readonly tones: string[];
  readonly clock: ReturnType<typeof handClock>;
  readonly log: EventLog;
  /** What the log answers; undefined lets it append. */
  readonly refuse: { why?: Extract<AppendResult, { kind: 'failed' }>['why'] };
  readonly appended: VisitEvent[][];
  /** A sentence understood on a session, and not sent to the runner. */
  readonly turnOf: (words: string, session: Session) => Turn;
}

/** A session on scripted ports, asleep on a fresh visit. */
export function stage(options: Script = {}): Stage {
  const clock = handClock();
  const ear = scriptedEar();
  const voice = scriptedVoice(options.audible ?? true);
  const tones: string[] = [];
  const refuse: Stage['refuse'] = {};
  const appended: VisitEvent[][] = [];
  const memory = createMemoryLog(createMemoryDisk());
  const log: EventLog = {
    device: memory.device,
    get lastSeq() {
      return memory.lastSeq;
    },
    append: (events) => {
      const { why } = refuse;
      if (why) return Promise.resolve({ kind: 'failed', why, message: '' });
      appended.push([...events]);
      return memory.append(events);
    },
    readVisit: (visit) => memory.readVisit(visit),
    openVisit: () => memory.openVisit(),
    visits: () => memory.visits(),
    unsynced: () => memory.unsynced(),
    close: () => memory.close(),
  };
  let made = 0;
  const earcons: Earcons = {
    play: (which) => {
      tones.push(which);
      return Promise.resolve();
    },
    unlock: () => undefined,
  };
  const ports: Ports = {
    log,
    ear: options.ear ?? ear,
    clock,
    writes: options.writes ?? (() => true),
    earcons,
    voice: voice.voice,
    ids: { next: () => `01KAXDEV00${String((made += 1)).padStart(16, '0')}` },
    takeTurn: options.takeTurn ?? scriptedTurn,
    ringTimers: options.ringTimers ?? ringTimers,
    phraser: options.phraser ?? (() => null),
    passages: options.passages ?? (() => null),
    sayNotKept: (why) => `not kept: ${why}.`,
    sayEngineChanged: (to) => `now by ${to}.`,
    sayEarNews: (news) => `the ear is ${news}.`,
  };
  const runner = createRunner(
    ports,
    sleepingSession(options.visit ?? freshVisit(DEFAULT_SETTINGS)),
  );
  const turnOf: Stage['turnOf'] = (words, { visit: state, memory: before }) =>
    scriptedTurn({ state, memory: before, words, stamp: createStamps(ports)(state) });
  return { runner, ear, voice, tones, clock, log, refuse, appended, turnOf };
}

/** Pressed awake and hearing. */
export async function listening(options: Script = {}): Promise<Stage> {
  const on = stage(options);
  on.runner.send({ kind: 'pressed' });
  await settled();
  on.ear.hear({ kind: 'hearing' });
  return on;
}
