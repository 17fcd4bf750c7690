import fc from 'fast-check';
import { expect, it } from 'vitest';

import type { EngineOutcome, Finished } from '../../client/recogniser/engine.ts';
import {
  EVENT_NAMES,
  SpeechRecognitionErrorEvent,
  SpeechRecognitionEvent,
} from '../../client/recogniser/events.ts';
import { SpeechGrammarList } from '../../client/recogniser/grammars.ts';
import type { Recognition } from '../../client/recogniser/recognition.ts';
import type { SpeechRecognitionResult } from '../../client/recogniser/results.ts';
import { createScriptedEngine, type ScriptedEngine } from '../support/scripted-engine.ts';
import { SilentTrack } from '../client/ear/silent-track.ts';
import { type Bench, createBench, grammarList, loud, quiet, zeros } from './harness.ts';

/** What may happen to two recognisers, their engine and their microphone, in any order. */
const CALLS = ['start', 'startOnTrack', 'stop', 'abort', 'toggle', 'loseGrammar'] as const;
const WORLD = [
  'guess',
  'guessNothing',
  'lose',
  'hide',
  'noSound',
  'noAnswer',
  'hold',
  'release',
] as const;
const SOUNDS = ['quiet', 'longQuiet', 'zeros', 'loud', 'sentence', 'guessed'] as const;

const tasks = fc.constantFrom(1, 2, 4, 12);
const action = fc.oneof(
  { weight: 1, arbitrary: fc.tuple(fc.constantFrom(...CALLS), fc.constantFrom(0, 1)) },
  { weight: 2, arbitrary: fc.constantFrom(...WORLD) },
  { weight: 6, arbitrary: fc.constantFrom(...SOUNDS) },
  { weight: 4, arbitrary: tasks },
);

/** Mostly a start that is given time to open the ear: without it little would happen at all. */
const round = fc
  .tuple(
    fc.tuple(fc.constantFrom('toggle' as const, 'start' as const), fc.constantFrom(0, 1)),
    fc.tuple(fc.constantFrom('start' as const, 'startOnTrack' as const), fc.constantFrom(0, 1)),
    tasks,
    fc.array(action, { minLength: 2, maxLength: 10, size: 'max' }),
    tasks,
  )
  .map(([first, second, before, middle, after]) => [first, second, before, ...middle, after]);

const TONES = {
  quiet: [quiet(300)],
  longQuiet: [quiet(8_200)],
  zeros: [zeros(400)],
  loud: [loud(500)],
  sentence: [loud(600), quiet(1_200)],
  guessed: [loud(500)],
};

type Answer = 'well' | 'failed' | 'rejected';
const answers = fc.array(
  fc.oneof(
    { weight: 10, arbitrary: fc.constant<Answer>('well') },
    { weight: 1, arbitrary: fc.constantFrom<Answer>('failed', 'rejected') },
  ),
  { minLength: 1, maxLength: 12 },
);

/** Answers each call by the next of the list, over and over. */
function unreliable(list: readonly Answer[]): ScriptedEngine {
  const engine = createScriptedEngine({
    hearings: Array.from({ length: 60 }, (_, index) =>
      index % 3 === 1
        ? { alternatives: [], rejected: index % 2 === 0 ? 'nothing' : 'notForUs' }
        : { alternatives: [{ words: `said ${index}`, confidence: 0.9, wordConfidences: [] }] },
    ),
  });
  let calls = 0;
  const answer = async <Outcome extends EngineOutcome | Finished>(
    call: () => Promise<Outcome>,
  ): Promise<Outcome | { kind: 'failed'; message: string }> => {
    const how = list[(calls += 1) % list.length];
    if (how === 'rejected') throw new Error('broken');
    return how === 'failed' ? { kind: 'failed', message: 'broken' } : call();
  };
  return {
    ...engine,
    load: (onProgress) => answer(() => engine.load(onProgress)),
    setGrammar: (jsgf) => answer(() => engine.setGrammar(jsgf)),
    finish: () => answer(() => engine.finish()),
  };
}

interface Seen {
  readonly event: Event;
  /** Whether it arrived while the page's own code ran. */
  readonly isSudden: boolean;
  /** Whether abort() had been called on its session. */
  readonly isUnwanted: boolean;
  readonly wanted: { readonly continuous: boolean; readonly interimResults: boolean };
}

interface Watched {
  readonly recognition: Recognition;
  readonly seen: Seen[];
  starts: number;
  aborted: boolean;
  wanted: Seen['wanted'];
}

function watch(recognition: Recognition, isInside: () => boolean): Watched {
  recognition.grammars = grammarList();
  const watched: Watched = {
    recognition,
    seen: [],
    starts: 0,
    aborted: false,
    wanted: { continuous: false, interimResults: false },
  };
  for (const type of EVENT_NAMES) {
    recognition.addEventListener(type, (event: Event) => {
      const { wanted, aborted } = watched;
      watched.seen.push({ event, isSudden: isInside(), isUnwanted: aborted, wanted });
      if (type === 'end') watched.aborted = false;
    });
  }
  return watched;
}

async function play(
  steps: readonly (readonly [(typeof CALLS)[number], number] | string | number)[],
  list: readonly Answer[],
): Promise<{ readonly bench: Bench; readonly both: readonly Watched[] }> {
  let opened = 0;
  const bench = createBench({
    engine: unreliable(list),
    onOpening: () => {
      opened += 1;
      if (list[opened % list.length] === 'rejected') throw new Error('broken');
    },
  });
  let inside = false;
  const both = [bench.recognition, new bench.SpeechRecognition()].map((each) =>
    watch(each, () => inside),
  );
  const releases: (() => void)[] = [];
  const within = (work: () => void): void => {
    inside = true;
    work();
    inside = false;
  };
  for (const step of steps) {
    if (typeof step === 'number') for (let turn = 0; turn < step; turn += 1) await bench.step();
    else if (typeof step === 'string') within(() => happen(bench, step, releases));
    else within(() => call(both[step[1]], step[0]));
    expect(bench.openCaptures()).toBeLessThanOrEqual(1);
  }
  for (const release of releases) release();
  await bench.settle();
  for (const { recognition } of both) recognition.abort();
  await bench.settle();
  return { bench, both };
}

function call(watched: Watched | undefined, how: (typeof CALLS)[number]): void {
  if (watched === undefined) return;
  const { recognition } = watched;
  if (how === 'stop' || how === 'abort') recognition[how]();
  if (how === 'abort') watched.aborted = watched.starts > endsIn(watched);
  if (how === 'loseGrammar') recognition.grammars = new SpeechGrammarList();
  if (how === 'toggle') {
    recognition.continuous = !recognition.continuous;
    recognition.interimResults = recognition.continuous || !recognition.interimResults;
  }
  if (how !== 'start' && how !== 'startOnTrack') return;
  const { continuous, interimResults } = recognition;
  try {
    if (how === 'start') recognition.start();
    else recognition.start(new SilentTrack());
    watched.starts += 1;
    watched.wanted = { continuous, interimResults };
  } catch (error) {
    expect(error).toMatchObject({ name: 'InvalidStateError' });
  }
}

const endsIn = ({ seen }: Watched): number =>
  seen.filter(({ event }) => event.type === 'end').length;

function happen(bench: Bench, step: string, releases: (() => void)[]): void {
  if (step in TONES)
    bench.arrive(...(Object.entries(TONES).find(([name]) => name === step)?.[1] ?? []));
  if (step === 'guess' || step === 'guessed') bench.engine.guess(`guess ${bench.log.length}`);
  if (step === 'guessNothing') bench.engine.guess('');
  if (step === 'lose') bench.lose();
  if (step === 'hide') bench.hide();
  if (step === 'noSound') bench.timeUp(5_000);
  if (step === 'noAnswer') bench.timeUp(20_000);
  if (step === 'hold') releases.push(bench.engine.holdFinish());
  if (step === 'release') for (const release of releases.splice(0)) release();
}

/** Cut after each end. */
function sessionsOf(seen: readonly Seen[]): readonly (readonly Seen[])[] {
  const ends = seen.flatMap(({ event }, index) => (event.type === 'end' ? [index + 1] : []));
  const cuts = [0, ...ends];
  const rest = seen.slice(cuts.at(-1));
  return [
    ...ends.map((end, index) => seen.slice(cuts[index], end)),
    ...(rest.length > 0 ? [rest] : []),
  ];
}

/** The standard's hard rules (audiostart first, pairs in order, end last), and that errors are told once. */
function checkOrder(session: readonly Seen[]): void {
  const types = session.map(({ event }) => event.type);
  const at = (type: string): number => types.indexOf(type);
  const count = (type: string): number => types.filter((each) => each === type).length;
  expect(types.at(-1)).toBe('end');
  for (const once of ['start', 'audiostart', 'soundstart', 'speechstart', 'error', 'end']) {
    expect([once, count(once) <= 1]).toEqual([once, true]);
  }
  for (const [begin, finish] of [
    ['audiostart', 'audioend'],
    ['soundstart', 'soundend'],
    ['speechstart', 'speechend'],
  ] as const) {
    expect([finish, count(finish)]).toEqual([finish, count(begin)]);
    if (count(begin) > 0) expect(at(begin)).toBeLessThan(at(finish));
  }
  const inOrder = [
    'start',
    'audiostart',
    'soundstart',
    'speechstart',
    'speechend',
    'soundend',
    'audioend',
  ];
  const places = inOrder.map(at).filter((place) => place >= 0);
  expect(places).toEqual(places.toSorted((one, other) => one - other));
  if (types.some((type) => type === 'result' || type === 'nomatch')) {
    expect(at('speechstart')).toBeLessThan(
      types.findIndex((type) => type === 'result' || type === 'nomatch'),
    );
    expect(at('speechstart')).toBeGreaterThan(at('audiostart'));
  }
  if (count('error') > 0) expect(types.slice(at('error'))).toEqual(['error', 'end']);
}

/** Finals stay the objects they were, and only what was asked for is shown. */
function checkResults(session: readonly Seen[]): void {
  let finals: readonly SpeechRecognitionResult[] = [];
  for (const { event, wanted, isUnwanted } of session) {
    if (!(event instanceof SpeechRecognitionEvent)) continue;
    expect(isUnwanted).toBe(false);
    const results = [...event.results];
    expect(event.resultIndex).toBeLessThanOrEqual(results.length);
    expect(event.resultIndex).toBe(finals.length);
    expect(results.slice(0, finals.length).every((each, index) => each === finals[index])).toBe(
      true,
    );
    if (event.type === 'nomatch') continue;
    if (!wanted.interimResults) expect(results.every(({ isFinal }) => isFinal)).toBe(true);
    const firstInterim = results.findIndex(({ isFinal }) => !isFinal);
    finals = firstInterim < 0 ? results : results.slice(0, firstInterim);
    if (!wanted.continuous) expect(finals.length).toBeLessThanOrEqual(1);
  }
}

/** How often each thing came about in all runs: rules that nothing puts to the test hold easily. */
const happened = new Map<string, number>();

function tally(sessions: readonly (readonly Seen[])[]): void {
  for (const { event } of sessions.flat()) {
    const isError = event instanceof SpeechRecognitionErrorEvent;
    const isShown = event instanceof SpeechRecognitionEvent && event.type === 'result';
    const kind = isShown
      ? event.results[event.resultIndex]?.isFinal === true
        ? ' final'
        : ' guess'
      : '';
    const name = isError ? event.error : `${event.type}${kind}`;
    happened.set(name, (happened.get(name) ?? 0) + 1);
  }
}

const EXPECTED = [
  'start',
  'audiostart',
  'speechstart',
  'speechend',
  'audioend',
  'result final',
  'result guess',
  'nomatch',
  'aborted',
  'no-speech',
  'audio-capture',
  'service-not-allowed',
  'end',
];

it('whatever engine, microphone and page do, events keep their order and end comes once, last', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(round, { minLength: 1, maxLength: 6 }),
      answers,
      async (rounds, list) => {
        const { bench, both } = await play(rounds.flat(), list);
        for (const { seen, starts } of both) {
          const sessions = sessionsOf(seen);
          tally(sessions);
          expect(sessions).toHaveLength(starts);
          expect(seen.every(({ isSudden }) => !isSudden)).toBe(true);
          for (const session of sessions) {
            checkOrder(session);
            checkResults(session);
          }
          const errors = seen.flatMap(({ event }) =>
            event instanceof SpeechRecognitionErrorEvent ? [event.error] : [],
          );
          expect(errors).not.toContain('network');
        }
        expect(bench.openCaptures()).toBe(0);
      },
    ),
    { numRuns: 300, seed: 6 },
  );
  for (const name of EXPECTED) {
    expect([name, (happened.get(name) ?? 0) >= 20]).toEqual([name, true]);
  }
}, 60_000);
