import { monotonicFactory } from 'ulid';
import type { Expectation } from '../../core/language/context.ts';
import { NO_NAMES } from '../../core/language/names/known-names.ts';
import { phraseReply } from '../../core/turn/phrase-reply.ts';
import type { PhrasedTurn } from '../../core/turn/phrase-reply.ts';
import { ringTimers } from '../../core/turn/ring-timers.ts';
import { takeTurn } from '../../core/turn/take-turn.ts';
import { wordNote } from '../../core/turn/word-note.ts';
import { EMPTY_MEMORY } from '../../core/turn/turn.ts';
import type { Stamp, Turn, TurnInput } from '../../core/turn/turn.ts';
import { type CivilDate, daysOf } from '../../core/units/civil-date.ts';
import { applyEvents } from '../../core/visit/apply.ts';
import { EMPTY_VISIT } from '../../core/visit/empty-visit.ts';
import type { VisitState } from '../../core/visit/state.ts';
import { dueTimers } from '../../core/visit/timers.ts';
import type { PassagePhraser } from '../../core/note/phrase-note.ts';
import type { Phraser } from '../../core/replies/phrasing.ts';

const MINUTE_MS = 60_000;
const DAY_MINUTES = 1440;
/** A replayed visit happens on this day whenever it is replayed, at these times of day in UTC. */
const FIRST_DAY: CivilDate = { year: 2026, month: 1, day: 5 };
const DAY_STARTS_AT = daysOf(FIRST_DAY) * DAY_MINUTES * MINUTE_MS;
const FIRST_MINUTE = 8 * 60;

/** A visit whose ids and clock come from its file alone: two replays of one file print the same. */
export interface ReplayedVisit {
  /** The next sentence is said at this time of day; an earlier one than now is tomorrow's. */
  setClock(minutes: number): void;
  /** The next sentence is said on this day, in the morning unless its time is set too. */
  setDay(day: CivilDate): void;
  /** A part that the van carries: it is known from here on. */
  carry(part: string): void;
  /** What the visit says by itself up to now, each timer at its own minute. */
  ring(): readonly Turn[];
  /** One sentence, a minute after the one before unless the clock was set. */
  say(words: TurnInput['words']): Promise<PhrasedTurn>;
  /** What the last reply asked for. */
  expects(): Expectation;
  state(): VisitState;
  /** The visits before it in the file. */
  past(): readonly VisitState[];
}

/** Nobody waits for a replay, and one that gave up on a slow model would not print the same twice. */
const NO_HURRY = new Promise<never>(() => undefined);

export function createReplayedVisit(
  phraser: Phraser | null,
  passages: PassagePhraser | null,
): ReplayedVisit {
  const clock = createClock();
  const stamping = createStamping(clock.at);
  let state = EMPTY_VISIT;
  let memory = EMPTY_MEMORY;
  let names = NO_NAMES;
  let past: readonly VisitState[] = [];
  let expects: Expectation = 'anything';
  return {
    setClock: clock.set,
    setDay: clock.setDay,
    carry: (part) => (names = { ...names, parts: known(part, names.parts) }),
    ring: () => {
      const rung: Turn[] = [];
      for (const { endsAt } of dueTimers(state, clock.at())) {
        const stamp: Stamp = (body) => ({ ...stamping.stamp(body), at: endsAt });
        const turn = ringTimers({ state, memory, stamp, now: endsAt });
        if (turn === null) continue;
        ({ state, memory, expects } = turn);
        rung.push(turn);
      }
      return rung;
    },
    say: async (words) => {
      const plain = takeTurn({ state, memory, words, names, past, stamp: stamping.stamp });
      const said = await phraseReply(plain, phraser, NO_HURRY);
      const { turn } = said;
      ({ state, memory, expects } = turn);
      if (turn.effect === 'finish') {
        const worded = await wordNote({ state, past }, passages, NO_HURRY);
        if (worded) state = applyEvents([stamping.stamp(worded)], state);
      }
      if (turn.effect === 'newVisit') {
        stamping.openAnother();
        past = [state, ...past];
        names = {
          ...names,
          sites: known(state.unit.site, names.sites),
          units: known(state.unit.name, names.units),
        };
        state = applyEvents(
          turn.carried.map((fact) => stamping.stamp({ type: 'factStated', v: 1, fact })),
          { ...EMPTY_VISIT, settings: state.settings },
        );
        memory = EMPTY_MEMORY;
      }
      clock.tick();
      return said;
    },
    expects: () => expects,
    state: () => state,
    past: () => past,
  };
}

const known = (name: string | null, names: readonly string[]): readonly string[] =>
  name === null || names.includes(name) ? names : [name, ...names];

function createClock() {
  let minute = FIRST_MINUTE;
  return {
    at: () => DAY_STARTS_AT + minute * MINUTE_MS,
    tick: () => (minute += 1),
    set: (minuteOfDay: number) => {
      const today = Math.floor(minute / DAY_MINUTES) * DAY_MINUTES + minuteOfDay;
      minute = today < minute ? today + DAY_MINUTES : today;
    },
    setDay: (day: CivilDate) => {
      minute = (daysOf(day) - daysOf(FIRST_DAY)) * DAY_MINUTES + FIRST_MINUTE;
    },
  };
}

function createStamping(at: () => number): { readonly stamp: Stamp; openAnother(): void } {
  const nextId = monotonicFactory(() => 0);
  const device = nextId(DAY_STARTS_AT);
  let visit = nextId(DAY_STARTS_AT);
  let seq = 0;
  return {
    stamp: (body) => {
      seq += 1;
      return { ...body, id: nextId(at()), device, seq, visit, at: at(), utcOffset: 0 };
    },
    openAnother: () => (visit = nextId(at())),
  };
}
