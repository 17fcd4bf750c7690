import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer } from '../../core/advice/answer.ts';
import { FINDING_RULES } from '../../core/advice/causes/finding-rules.ts';
import { causesOf } from '../../core/advice/causes/causes-of.ts';
import type { CautionId } from '../../core/advice/verdict.ts';
import { sampleSentences } from '../support/samples.ts';
import { takeTurn } from '../../core/turn/take-turn.ts';
import { EMPTY_MEMORY, type Memory, type Turn } from '../../core/turn/turn.ts';
import { applyEvents } from '../../core/visit/apply.ts';
import { EMPTY_VISIT } from '../../core/visit/empty-visit.ts';
import type { VisitEvent } from '../../core/visit/events.ts';
import type { VisitState } from '../../core/visit/state.ts';
import { seeded } from '../language/random.ts';
import { createStamp } from '../support/stamp.ts';

/** What is said on most visits, so that random ones have something to answer about. */
const USUAL = [
  "it's a reach in on one thirty four a with a txv",
  "it's a walk in cooler on four oh four a with a txv",
  "it's a two door reach in on two ninety with a cap tube",
  'ambient eighty',
  'head one ninety',
  'suction fourteen',
  'box forty four',
  'suction line thirty',
  'liquid line ninety',
  'set point thirty six',
  'condenser is plugged',
  'condenser is good',
  'evaporator fan is not running',
  'found a leak at the access fitting',
  'i brushed the condenser',
  'i reset the high pressure switch',
  'line side one fifteen',
  'zero across the high pressure switch',
  'one fifteen across the contactor',
  'common to ground point oh two megohms',
  'one fifty of nitrogen at seventy degrees',
  "that's my before",
  'mark this as after',
  'take that back',
  'make it eighty nine',
  'yes',
  'no',
  "what's causing this",
  'what should i check next',
  'what should head be',
  'compare before and after',
  'forty two',
];

const SAMPLED = sampleSentences(3000, seeded(11)).map(({ text }) => text);
const sentence = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom(...USUAL) },
  { weight: 2, arbitrary: fc.constantFrom(...SAMPLED) },
);
const said = fc.array(sentence, { minLength: 1, maxLength: 12 });

/** Every turn of a visit; each begins where the one before it ended. */
function turnsOf(sentences: readonly string[]): readonly Turn[] {
  const stamp = createStamp();
  const turns: Turn[] = [];
  for (const words of sentences) {
    const { state, memory } = turns.at(-1) ?? { state: EMPTY_VISIT, memory: EMPTY_MEMORY };
    turns.push(takeTurn({ state, memory, words, stamp }));
  }
  return turns;
}

/** What a visit holds, without the log and what only steers the dialogue. */
const held = ({ unit, readings, findings, work, recommendations, memos }: VisitState) => ({
  unit,
  readings,
  findings,
  work,
  recommendations,
  memos,
});

describe('any visit, spoken', { timeout: 120_000 }, () => {
  it('is the same state when its events are replayed', () => {
    fc.assert(
      fc.property(said, (sentences) => {
        const turns = turnsOf(sentences);
        const events = turns.flatMap((turn) => turn.events);
        expect(applyEvents(events)).toEqual(turns.at(-1)?.state);
      }),
      { numRuns: 100 },
    );
  });

  it('answers the same when it is spoken again', () => {
    fc.assert(
      fc.property(said, (sentences) => {
        const heard = (turns: readonly Turn[]) => turns.map(({ reply }) => reply);
        expect(heard(turnsOf(sentences))).toEqual(heard(turnsOf(sentences)));
      }),
      { numRuns: 50 },
    );
  });

  it('is as it was before the last thing kept, once that is taken back', () => {
    fc.assert(
      fc.property(said, sentence, (sentences, last) => {
        const turns = turnsOf([...sentences, last, 'take that back']);
        const [was, kept, undone] = [-3, -2, -1].map((at) => turns.at(at)?.state ?? EMPTY_VISIT);
        if (!was || !kept || !undone) return;
        const isOne = kept.undoable.length === was.undoable.length + 1;
        const isPlain = was.doubts.length + was.leftOver.length + kept.doubts.length === 0;
        fc.pre(isOne && isPlain && kept.leftOver.length === 0);
        expect(held(undone)).toEqual(held(was));
      }),
      { numRuns: 40 },
    );
  });

  it('loses no number that was understood as one', () => {
    fc.assert(
      fc.property(said, (sentences) => {
        const before: VisitEvent[] = [];
        for (const { utterance, events } of turnsOf(sentences)) {
          const { readings, doubts, unclaimed } = utterance;
          before.push(...events);
          // A doubt that is settled by saying it again was kept when it was told.
          const isSettled = events.some(({ type }) => type === 'doubtSettled');
          const kept = JSON.stringify(isSettled ? before : events);
          for (const { value } of [...readings, ...doubts]) {
            if (value !== undefined) expect(kept).toContain(`"value":${value}`);
          }
          for (const digits of unclaimed) expect(kept).toContain(`"digits":"${digits}"`);
        }
      }),
      { numRuns: 120 },
    );
  });
});

/** Stated apart from the product's own rules: where this is so, that must have been heard. */
const MUST_HEAR: readonly (readonly [CautionId, (state: VisitState) => boolean])[] = [
  ['flammable', ({ unit }) => ['R-290', 'R-600a', 'R-1270'].includes(unit.refrigerant ?? '')],
  [
    'gasPoolsLow',
    ({ unit, findings }) =>
      unit.refrigerant === 'R-290' && findings.at(-1)?.finding.state === 'leaking',
  ],
  [
    'groundFault',
    ({ readings }) => {
      const last = readings.at(-1)?.reading;
      return last?.place === 'commonGround' && last.unit === 'Mohm' && (last.value ?? 9) < 0.5;
    },
  ],
  ['liveWork', ({ readings }) => readings.some(({ reading }) => reading.quantity === 'voltage')],
  [
    'pressureTest',
    ({ readings }) => readings.some(({ reading }) => reading.quantity === 'testPressure'),
  ],
];

const isDue = (memory: Memory, id: CautionId): boolean => !memory.cautionsSaid.includes(id);

describe('a caution', { timeout: 120_000 }, () => {
  it('has been said wherever its state holds', () => {
    fc.assert(
      fc.property(said, (sentences) => {
        for (const { state, memory } of turnsOf(sentences)) {
          const missing = MUST_HEAR.filter(([id, holds]) => holds(state) && isDue(memory, id));
          expect(missing.map(([id]) => id)).toEqual([]);
        }
      }),
      { numRuns: 150 },
    );
  });
});

const UNIT = "it's a walk in cooler on four oh four a with a txv";
const spelled = (low: number, high: number): fc.Arbitrary<string> =>
  fc.integer({ min: low, max: high }).map(String);
const readings = fc
  .tuple(
    spelled(60, 95).map((value) => `ambient ${value}`),
    spelled(120, 320).map((value) => `head ${value}`),
    spelled(20, 90).map((value) => `suction ${value}`),
    spelled(34, 55).map((value) => `box ${value}`),
    spelled(20, 60).map((value) => `suction line ${value}`),
    spelled(60, 110).map((value) => `liquid line ${value}`),
  )
  .chain((all) => fc.tuple(fc.constant(all), fc.shuffledSubarray(all, { minLength: all.length })));

const answersTo = (sentences: readonly string[]): readonly unknown[] => {
  const state = turnsOf([UNIT, ...sentences]).at(-1)?.state ?? EMPTY_VISIT;
  const causes = answer({ ask: 'causes' }, state, { lastAnswer: null });
  const told = causes.kind === 'known' && causes.answer === 'causes' ? causes.causes : causes.kind;
  const compared = (['headPressure', 'superheat', 'subcooling'] as const).map((about) => {
    const verdict = answer({ ask: 'compare', about }, state, { lastAnswer: null });
    return verdict.kind === 'known' && verdict.answer === 'compare' ? verdict.value : verdict.kind;
  });
  return [told, compared];
};

describe('independent readings', { timeout: 120_000 }, () => {
  it('give the same answers in whatever order they are read', () => {
    fc.assert(
      fc.property(readings, ([inOrder, shuffled]) => {
        // A head below a suction is asked about, and which of the two is doubted goes by the order.
        const isDoubted = turnsOf([UNIT, ...inOrder]).some(({ state }) => state.doubts.length > 0);
        const isOtherwise = turnsOf([UNIT, ...shuffled]).some(
          ({ state }) => state.doubts.length > 0,
        );
        fc.pre(!isDoubted && !isOtherwise);
        expect(answersTo(shuffled)).toEqual(answersTo(inOrder));
      }),
      { numRuns: 50 },
    );
  });
});

describe('evidence against a cause', { timeout: 120_000 }, () => {
  const against = FINDING_RULES.filter((rule) => Object.keys(rule.against).length > 0);

  it('never lifts it over one that it says nothing of', () => {
    fc.assert(
      fc.property(readings, fc.constantFrom(...against), ([sentences], rule) => {
        const state = turnsOf([UNIT, ...sentences]).at(-1)?.state ?? EMPTY_VISIT;
        const [part] = rule.parts;
        const [seen] = rule.states;
        if (part === undefined || seen === undefined) return;
        const finding = { part, state: seen, words: '' };
        const more: VisitState = {
          ...state,
          findings: [...state.findings, { id: 'Z', at: 0, finding }],
        };
        const order = (of: VisitState): readonly string[] => {
          const found = causesOf(of);
          return found.kind === 'known' ? found.value.causes.map(({ cause }) => cause) : [];
        };
        const [was, is] = [order(state), order(more)];
        fc.pre(was.length > 0);
        const spoken = new Set([...Object.keys(rule.against), ...Object.keys(rule.for)]);
        for (const cause of Object.keys(rule.against)) {
          const above = was.slice(0, was.indexOf(cause)).filter((other) => !spoken.has(other));
          const nowAbove = new Set(is.slice(0, is.indexOf(cause)));
          expect(above.filter((other) => !nowAbove.has(other))).toEqual([]);
        }
      }),
      { numRuns: 100 },
    );
  });
});

const DEVICES = ['high pressure switch', 'low pressure switch', 'thermostat', 'contactor'];
const across = fc
  .tuple(fc.constantFrom('zero', 'one fifteen'), fc.constantFrom(...DEVICES))
  .map(([volts, device]) => ({ device, words: `${volts} across the ${device}` }));

interface Suspected {
  readonly faults: readonly string[];
  readonly together: boolean;
}

function suspects(sentences: readonly string[]): Suspected | null {
  const state = turnsOf([UNIT, 'line side one fifteen', ...sentences]).at(-1)?.state ?? EMPTY_VISIT;
  const verdict = answer({ ask: 'nextCheck' }, state, { lastAnswer: null });
  if (verdict.kind !== 'known' || verdict.answer !== 'nextPlace') return null;
  if (verdict.found === 'contradiction' || verdict.found === 'sound') return null;
  const faults = verdict.suspects.map(({ of, mode }) => `${of} ${mode}`);
  return { faults, together: verdict.together };
}

describe('one more voltage', { timeout: 120_000 }, () => {
  it('never widens what is suspected in the circuit', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(across, { minLength: 1, maxLength: 4, selector: ({ device }) => device }),
        (measured) => {
          const words = measured.map((each) => each.words);
          const [fewer, all] = [suspects(words.slice(0, -1)), suspects(words)];
          // Where no single fault is left, two together are told, which is another kind of answer.
          if (fewer === null || all === null || fewer.together !== all.together) return;
          expect(all.faults.filter((fault) => !fewer.faults.includes(fault))).toEqual([]);
        },
      ),
      { numRuns: 60 },
    );
  });
});
