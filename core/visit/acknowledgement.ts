import type { LeftOpen } from './left-open.ts';
import type { Doubt, Fact, Finding, Reading, Recommendation, Work } from '../language/utterance.ts';
import type { CivilDate } from '../units/civil-date.ts';
import type { PowerPart } from '../terms/names.ts';
import type { UnitId } from '../units/units.ts';
import type { TurnedTo } from './events.ts';
import type { Timer } from './state.ts';

/** What was kept from one sentence, to be said back: the value itself, never the raw words. */
export type Acknowledgement =
  | { readonly kind: 'reading'; readonly reading: Reading }
  | { readonly kind: 'amended'; readonly from: Reading; readonly to: Reading }
  | {
      readonly kind: 'fact';
      readonly fact: Fact;
      /** The minutes of labor or travel in all, where this is not all of it. */
      readonly inAll?: number;
    }
  | { readonly kind: 'finding'; readonly finding: Finding }
  | { readonly kind: 'work'; readonly work: Work; readonly beforeBaseline: boolean }
  | {
      readonly kind: 'recommendation';
      readonly recommendation: Recommendation;
      /** The day that its "by" comes to, and the day that it was said on. */
      readonly due: CivilDate | null;
      readonly today: CivilDate;
    }
  /** Bare numbers are taken in these from here on. */
  | { readonly kind: 'unitsTaken'; readonly units: readonly UnitId[] }
  | { readonly kind: 'memo'; readonly memo: string }
  /** Named, and nothing told of it; of a quantity with what it was read at before. */
  | { readonly kind: 'turnedTo'; readonly to: TurnedTo; readonly was: Reading | null }
  | { readonly kind: 'doubt'; readonly doubt: Doubt }
  | { readonly kind: 'leftOver'; readonly digits: string }
  /** Three numbers told together that may be volts between the legs: one question, not three. */
  | { readonly kind: 'legsLeftOver'; readonly digits: readonly string[] }
  | { readonly kind: 'takenBack'; readonly what: TakenBack }
  | { readonly kind: 'nothingToTakeBack' }
  | { readonly kind: 'nothingToAmend' }
  | { readonly kind: 'nothingToConfirm' }
  | { readonly kind: 'doubtDropped'; readonly doubt: Doubt }
  | { readonly kind: 'leftOverDropped'; readonly digits: string }
  /** What was taken back a moment ago was heard again, and nothing else: not kept unless it comes once more. */
  | { readonly kind: 'heardAgain'; readonly value: number }
  /** "No" after several readings in one breath: which one is not known. */
  | { readonly kind: 'whichOne' }
  | { readonly kind: 'marked'; readonly mark: 'before' | 'after'; readonly readings: number }
  /** `named`: its unit was said in the same breath. */
  | { readonly kind: 'opened'; readonly named?: true }
  | { readonly kind: 'finished'; readonly open: number }
  | { readonly kind: 'nothingToFinish' }
  | { readonly kind: 'alreadyFinished' }
  /** Not finished: this is still open. */
  | {
      readonly kind: 'finishHeld';
      readonly left: readonly LeftOpen[];
      /** Told off, and told running since. */
      readonly asked: readonly PowerPart[];
    }
  /** Told off, and told running since: is it back on? And the answer. */
  | { readonly kind: 'putBackAsked' | 'putBack' | 'leftSo'; readonly parts: readonly PowerPart[] }
  /** After that, something was put back: what is left now. */
  | { readonly kind: 'stillOpen'; readonly left: readonly LeftOpen[] }
  | { readonly kind: 'finishedAnyway'; readonly left: readonly LeftOpen[] }
  | { readonly kind: 'leftOut' }
  | { readonly kind: 'stepsLeft' }
  | { readonly kind: 'paused' }
  | { readonly kind: 'resumed' }
  | { readonly kind: 'help' }
  | { readonly kind: 'timerStarted'; readonly timer: TimerName; readonly minutes: number }
  | { readonly kind: 'timerExtended'; readonly timer: TimerName; readonly minutes: number }
  | { readonly kind: 'timerStopped'; readonly timers: readonly TimerName[] }
  | { readonly kind: 'noTimer' };

/** What a timer is known by. */
export type TimerName = Pick<Timer, 'about' | 'work'>;

export type TakenBack =
  | { readonly of: 'reading'; readonly reading: Reading }
  | { readonly of: 'finding'; readonly finding: Finding }
  | { readonly of: 'work'; readonly work: Work }
  | { readonly of: 'recommendation'; readonly recommendation: Recommendation }
  | { readonly of: 'memo' }
  | { readonly of: 'settings' }
  | { readonly of: 'fact'; readonly fact: Fact }
  | { readonly of: 'timer'; readonly timer: TimerName }
  | { readonly of: 'mark'; readonly mark: 'before' | 'after' };
