import type { RoomNoise } from '../../core/hearing/earshot.ts';
import type { Alternative } from '../../core/language/choose-understanding.ts';
import type { Expectation } from '../../core/language/context.ts';
import type { KnownNames } from '../../core/language/names/known-names.ts';
import type { Reply } from '../../core/replies/reply.ts';
import type { QuantityId } from '../../core/terms/quantities.ts';
import type { Turn, TurnInput } from '../../core/turn/turn.ts';
import type { EventBody, VisitEvent, VisitSettings } from '../../core/visit/events.ts';
import type { VisitState } from '../../core/visit/state.ts';
import type { Deafness } from '../ear/deafness.ts';
import type { EarNews, EngineChanged } from '../ear/ear.ts';
import type { SendTrouble } from '../offline/sync.ts';
import type { EngineAlone } from '../recogniser/team/engine-use.ts';
import type { EarconId } from '../voice/voice.ts';
import type { NotKeptReason, Notice, Unread } from './notice.ts';
import type { Tab } from './session.ts';

/** Everything that can happen to the session. */
export type Happening =
  | { readonly kind: 'pressed' }
  /** Somebody else on the page wants the microphone and the recogniser: it hears nothing until it is pressed. */
  | { readonly kind: 'earLent' }
  | { readonly kind: 'typed'; readonly words: string }
  /** Likeliest first. */
  | { readonly kind: 'heard'; readonly alternatives: readonly Alternative[] }
  /** Not taken in: it stays where it was typed. */
  | { readonly kind: 'typedTooLong'; readonly words: number; readonly most: number }
  /** The next timer of the visit is up, and nothing else is being said. */
  | { readonly kind: 'timeUp' }
  | { readonly kind: 'hearing' }
  /** What the sentence being said is taken for so far. */
  | { readonly kind: 'guessed'; readonly words: string }
  | { readonly kind: 'unclear' }
  | { readonly kind: 'noise'; readonly noise: RoomNoise | null }
  | { readonly kind: 'earOpened' }
  | { readonly kind: 'earDeaf'; readonly why: Deafness }
  | { readonly kind: 'soundBack' }
  | EngineChanged
  | { readonly kind: 'earNews'; readonly news: EarNews }
  | { readonly kind: 'loading'; readonly fraction: number }
  | { readonly kind: 'turnTaken'; readonly turn: Turn }
  /** The answer of the turn that is being kept, in the phraser's words. */
  | { readonly kind: 'phrased'; readonly reply: Reply }
  /** The note of the visit that is being finished, in the phraser's words. */
  | { readonly kind: 'noteWorded'; readonly event: VisitEvent }
  | { readonly kind: 'turnIgnored' }
  | { readonly kind: 'turnBroke' }
  /** A timer is up, and what it says could not be made out. */
  | { readonly kind: 'ringBroke' }
  | { readonly kind: 'kept' }
  | { readonly kind: 'notKept'; readonly why: NotKeptReason; readonly held: number }
  | { readonly kind: 'choiceNotKept'; readonly why: NotKeptReason; readonly held: number }
  | { readonly kind: 'heldKept' }
  /** One of this device's own, which no visit carries: the browser would not store it. */
  | { readonly kind: 'choiceForgotten' }
  | { readonly kind: 'committed'; readonly events: readonly VisitEvent[] }
  | { readonly kind: 'spoken'; readonly number: number }
  /** The question stays open in the note; the page goes on. */
  | { readonly kind: 'questionLeft' }
  /** An open question was pressed on the sheet. */
  | { readonly kind: 'questionTakenUp' }
  /** Another tab wrote until now: its events are in the log and not yet here. */
  | { readonly kind: 'becameWriter' }
  | { readonly kind: 'caughtUp'; readonly events: readonly VisitEvent[] }
  | Unsynced
  | { readonly kind: 'tabChosen'; readonly tab: Tab }
  | { readonly kind: 'readingWanted'; readonly quantity: QuantityId }
  | { readonly kind: 'settingsChosen'; readonly settings: VisitSettings }
  | { readonly kind: 'namesKnown'; readonly names: KnownNames }
  | { readonly kind: 'pastKnown'; readonly past: readonly VisitState[] }
  | { readonly kind: 'newVisitChosen' }
  /** Told; nothing else changes. */
  | { readonly kind: 'unread'; readonly what: Unread }
  | {
      readonly kind: 'visitRead';
      readonly visit: VisitState;
      readonly notice: Notice | null;
    };

/** How far the server has what was recorded. */
export interface Unsynced {
  readonly kind: 'unsynced';
  readonly events: number;
  readonly leftOut: number;
  readonly trouble: SendTrouble | null;
  /** The server's words, where it takes nothing more until it is asked again. */
  readonly refused: string | null;
}

/** What is to be done about it; the runner does it and reports back with a happening. */
export type Effect =
  | { readonly kind: 'openEar' }
  | { readonly kind: 'closeEar' }
  | { readonly kind: 'gate' }
  | {
      readonly kind: 'listen';
      readonly expectation: Expectation;
      readonly names: KnownNames;
    }
  | {
      readonly kind: 'takeTurn';
      readonly words: TurnInput['words'];
      readonly heed: 'everything' | 'resume';
    }
  | { readonly kind: 'ringTimers' }
  | { readonly kind: 'keep'; readonly events: readonly VisitEvent[] }
  | { readonly kind: 'commit'; readonly bodies: readonly EventBody[]; readonly leaving?: Leaving }
  | { readonly kind: 'catchUp' }
  | { readonly kind: 'say'; readonly number: number; readonly saying: Saying }
  | { readonly kind: 'hush' }
  /** What was cut off is over once its echo is. */
  | { readonly kind: 'awaitEcho'; readonly number: number }
  | { readonly kind: 'earcon'; readonly which: EarconId };

/** What is still to be written in the visit that another one takes the place of. */
export interface Leaving {
  readonly visit: VisitState;
  readonly bodies: readonly EventBody[];
}

export interface Saying {
  readonly reply: Reply;
  /** Said before the reply, when its events are not on the disk. */
  readonly notKept: NotKeptReason | null;
  /** The engine that hears since another one failed, where that is still to be told. */
  readonly engine: EngineAlone | null;
  /** Told before the reply, or alone between two sentences. */
  readonly news?: EarNews;
  /** The rising tone at the end tells that the ear is open again. */
  readonly reopens: boolean;
}

export interface Step<Of> {
  readonly session: Of;
  readonly effects: readonly Effect[];
}
