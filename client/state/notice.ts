import type { TimerName } from '../../core/visit/acknowledgement.ts';
import type { AppendResult } from '../offline/event-log.ts';
import type { StorageFault } from '../offline/storage-fault.ts';
import type { EarNews } from '../ear/ear.ts';
import type { EngineAlone } from '../recogniser/team/engine-use.ts';

export type NotKeptReason = Extract<AppendResult, { kind: 'failed' }>['why'];

/**
 * What could not be read of this device's log: all of it, as the page opened; what earlier visits tell of a unit; one of
 * them that was pressed; or what another tab wrote until this one became the one that writes.
 */
export type Unread = 'all' | 'past' | 'visit' | 'otherTab';

/** What the page itself has to say, as data; screens word it. */
export type Notice =
  | { readonly kind: 'unclear' }
  | { readonly kind: 'tooLong'; readonly words: number; readonly most: number }
  | { readonly kind: 'broke'; readonly words: string }
  /** A timer is up, and the page failed to tell which. */
  | { readonly kind: 'ringBroke' }
  | { readonly kind: 'notKept'; readonly why: NotKeptReason }
  | { readonly kind: 'keptAtLast' }
  /** A choice of this device's holds until the page is closed. */
  | { readonly kind: 'choiceForgotten' }
  /** By the server; why stands where it can be sent again. */
  | { readonly kind: 'refused' }
  /** An engine failed; this one hears on. */
  | { readonly kind: 'engineChanged'; readonly to: EngineAlone }
  | { readonly kind: 'earNews'; readonly news: EarNews }
  | { readonly kind: 'unstored'; readonly why: StorageFault }
  | { readonly kind: 'unread'; readonly what: Unread }
  | { readonly kind: 'damaged'; readonly entries: number }
  | { readonly kind: 'resumed'; readonly readings: number }
  /** With the visit that a new one took the place of. */
  | { readonly kind: 'timersStopped'; readonly timers: readonly TimerName[] }
  /** Until the visit they belong to is opened again. */
  | { readonly kind: 'timersWait'; readonly timers: readonly TimerName[] };
