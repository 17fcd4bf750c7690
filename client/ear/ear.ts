import type { RoomNoise } from '../../core/hearing/earshot.ts';
import type { Alternative } from '../../core/language/choose-understanding.ts';
import type { Expectation } from '../../core/language/context.ts';
import type { KnownNames } from '../../core/language/names/known-names.ts';
import type { EngineAlone } from '../recogniser/team/engine-use.ts';
import type { Deafness } from './deafness.ts';

/** The page's ear: one microphone for the visit, opened once and then gated sentence by sentence. */
export interface Ear {
  /** Asks for the microphone and loads the recogniser; quick and silent when both are there already. */
  open(): Promise<EarOpening>;
  /** Hears one sentence and reports it; goes on by itself after silence. */
  listen(expectation: Expectation, names: KnownNames): void;
  /** Hears nothing until the next `listen`; the microphone stays. */
  gate(): void;
  /** Lets the microphone go. */
  close(): void;
  onHeard(report: (heard: Heard) => void): void;
  /** 0 to 1, while listening only. */
  onLevel(report: (level: number) => void): void;
  /** 0 to 1, while the recogniser loads. */
  onProgress(report: (fraction: number) => void): void;
}

export type EarOpening =
  { readonly kind: 'open' } | { readonly kind: 'deaf'; readonly why: Deafness };

export type Heard =
  /** Sound is flowing into the recogniser: from now on nothing said is lost. */
  | { readonly kind: 'hearing' }
  /** What the sentence is taken for while it is said: to be shown, never acted on. */
  | { readonly kind: 'guess'; readonly words: string }
  /** At least one, likeliest first. */
  | { readonly kind: 'words'; readonly alternatives: readonly Alternative[] }
  /** Speech, but nothing of the trade in it. */
  | { readonly kind: 'unclear' }
  /**
   * How far a voice stands above the room: between sentences, and as one ends, before its words. Null of an ear that
   * does not measure it.
   */
  | { readonly kind: 'noise'; readonly noise: RoomNoise | null }
  | EngineChanged
  | { readonly kind: 'news'; readonly news: EarNews }
  | { readonly kind: 'deaf'; readonly why: Deafness }
  /** What held the sound back has passed by itself. */
  | { readonly kind: 'soundBack' };

/**
 * silent: the microphone has given nothing but zeros for a while, as a muted one does; it listens on. back: the page
 * was out of sight, heard nothing meanwhile, and listens again. rests: it heard silence and waits for a press. ownAgain:
 * the browser's recogniser is of no use here, and ours hears on. modelGone: the model that was chosen did not come, and
 * ours hear on. tooLoud: the voice stands too little above the noise to be heard right. soundBack: the sound was held back,
 * as by a call, and flows again.
 */
export type EarNews =
  'silent' | 'back' | 'soundBack' | 'rests' | 'ownAgain' | 'modelGone' | 'tooLoud';

/** An engine failed and another hears on. */
export interface EngineChanged {
  readonly kind: 'engineChanged';
  readonly to: EngineAlone;
  /** The sentence being said is heard by the other one, from its beginning: words may still come of it. */
  readonly midSentence: boolean;
}
