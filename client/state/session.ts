import type { Comparison } from '../../core/advice/verdict.ts';
import type { Expectation } from '../../core/language/context.ts';
import { type Earshot, UNMEASURED } from '../../core/hearing/earshot.ts';
import { type KnownNames, NO_NAMES } from '../../core/language/names/known-names.ts';
import { EMPTY_VISIT } from '../../core/visit/empty-visit.ts';
import type { VisitSettings } from '../../core/visit/events.ts';
import type { VisitState } from '../../core/visit/state.ts';
import type { OpenQuestion } from '../../core/visit/views.ts';
import { EMPTY_MEMORY, type Memory, type SessionEffect, type Turn } from '../../core/turn/turn.ts';
import type { Deafness } from '../ear/deafness.ts';
import type { StorageFault } from '../offline/storage-fault.ts';
import type { SendTrouble } from '../offline/sync.ts';
import type { EngineAlone } from '../recogniser/team/engine-use.ts';
import type { Notice } from './notice.ts';

/** What the microphone would be doing if nothing else were going on. */
export type EarState =
  | { readonly kind: 'asleep' }
  | { readonly kind: 'opening' }
  | { readonly kind: 'open' }
  /** Paused by voice it still hears, but heeds only the word to go on. */
  | { readonly kind: 'paused'; readonly by: 'voice' | 'press' }
  | Deaf;

interface Deaf {
  readonly kind: 'deaf';
  readonly why: Deafness;
  /** It was put on hold before, and is again once it hears. */
  readonly onHold?: true;
}

/** What the page is doing: exactly one of these. The busy ones carry the ear they return to. */
export type Mode =
  | Resting
  | { readonly kind: 'asking'; readonly question: OpenQuestion; readonly ear: EarState }
  | {
      readonly kind: 'thinking';
      readonly words: string;
      readonly ear: EarState;
      /** Understood, and waiting for its events to be on the disk. */
      readonly turn: Turn | null;
      /** Put aside while a timer rings; asked again after it. */
      readonly asked: OpenQuestion | null;
    }
  | {
      readonly kind: 'speaking';
      /** Which speech: the end of an earlier, cut-off one must not end this one. */
      readonly number: number;
      readonly ear: EarState;
      readonly then: SessionEffect | null;
      readonly asked: OpenQuestion | null;
    };

export type Resting =
  | { readonly kind: 'asleep' }
  | { readonly kind: 'opening' }
  | { readonly kind: 'listening' }
  | { readonly kind: 'paused'; readonly by: 'voice' | 'press' }
  | Deaf;

/** `keys`: the number pad, opened from where it is offered. */
export type Tab = 'sheet' | 'note' | 'visit' | 'keys';

export interface Session {
  readonly mode: Mode;
  /** Sound flows into the recogniser; opening it takes up to a third of a second after `listening` began. */
  readonly hearing: boolean;
  /** What the sentence being said is taken for so far. */
  readonly soFar: string;
  readonly visit: VisitState;
  /** Sites and units of earlier visits on this device. */
  readonly names: KnownNames;
  /** Earlier visits on this device: what was done and found on them. */
  readonly past: readonly VisitState[];
  readonly memory: Memory;
  /** The page's own sentence, shown before the last reply until something else is said. */
  readonly notice: Notice | null;
  /** The comparison that the last reply told, for its figure. */
  readonly compared: Comparison | null;
  /** Typed while an earlier sentence was still being kept. */
  readonly waiting: readonly string[];
  /** Sentences in a row that could not be understood: after two the page stops beeping about it. */
  readonly unclearInARow: number;
  /** What the last reply asked for, questions apart: the next sentence should be that. */
  readonly expects: Expectation;
  /** Events held in memory only, because the log would not take them. */
  readonly unkept: number;
  readonly unsynced: number;
  /** Damaged on this device: the server will never have them. */
  readonly leftOut: number;
  /** Why it is not on the server yet; it is tried again by itself. */
  readonly sendTrouble: SendTrouble | null;
  /** In the server's words, why it takes nothing of it; it is not sent again until that is asked for. */
  readonly refused: string | null;
  /** Why the whole visit is in memory only; null where it is stored. */
  readonly unstored: StorageFault | null;
  /** That choices are forgotten with the page was told. */
  readonly toldForgotten: boolean;
  readonly speeches: number;
  /** The engine that hears since another one failed: told before the next reply. */
  readonly untold: EngineAlone | null;
  /** Whether a voice can be heard right where it is. */
  readonly earshot: Earshot;
  /** It has become too loud to hear right, and that is still to be said. */
  readonly untoldNoise: boolean;
  /** 0 to 1 while the recogniser loads. */
  readonly loaded: number;
  readonly tab: Tab;
  /** The open tab has most of the page: pressed for, or read out from. */
  readonly tall: boolean;
  /** The last sentence where nothing in it was understood: shown, so that what was misheard is seen. */
  readonly notUnderstood: string | null;
  /** The question that the last sentence raised: its reply asks it. */
  readonly raised: OpenQuestion | null;
  /** What the last sentence asked of the session. */
  readonly lastEffect: SessionEffect | null;
}

/** A visit that nothing was said in yet, with the settings of the one before. */
export function freshVisit(settings: VisitSettings): VisitState {
  return { ...EMPTY_VISIT, settings };
}

export function sleepingSession(visit: VisitState): Session {
  return {
    mode: { kind: 'asleep' },
    hearing: false,
    soFar: '',
    visit,
    names: NO_NAMES,
    past: [],
    memory: EMPTY_MEMORY,
    notice: null,
    compared: null,
    waiting: [],
    unclearInARow: 0,
    expects: 'anything',
    unkept: 0,
    unsynced: 0,
    leftOut: 0,
    sendTrouble: null,
    refused: null,
    unstored: null,
    toldForgotten: false,
    speeches: 0,
    untold: null,
    earshot: UNMEASURED,
    untoldNoise: false,
    loaded: 0,
    tab: 'sheet',
    tall: false,
    notUnderstood: null,
    raised: null,
    lastEffect: null,
  };
}

export function earOf(mode: Mode): EarState {
  switch (mode.kind) {
    case 'listening':
      return { kind: 'open' };
    case 'asleep':
    case 'opening':
    case 'paused':
    case 'deaf':
      return mode;
    case 'asking':
    case 'thinking':
    case 'speaking':
      return mode.ear;
  }
}
