import type { PassagePhraser } from '../../core/note/phrase-note.ts';
import type { Phraser } from '../../core/replies/phrasing.ts';
import type { RingInput } from '../../core/turn/ring-timers.ts';
import type { Turn, TurnInput } from '../../core/turn/turn.ts';
import type { Ear, EarNews } from '../ear/ear.ts';
import type { EngineAlone } from '../recogniser/team/engine-use.ts';
import type { EventLog } from '../offline/event-log.ts';
import type { Earcons, Voice } from '../voice/voice.ts';
import type { Clock } from './clock.ts';
import type { NotKeptReason } from './notice.ts';
import type { Ids } from './stamps.ts';

/** Everything outside the page's own state: scripted in tests, real in the browser. */
export interface Ports {
  readonly log: EventLog;
  readonly ear: Ear;
  readonly voice: Voice;
  readonly earcons: Earcons;
  readonly clock: Clock;
  /** False while another tab of this device writes: that one rings the timers. */
  readonly writes: () => boolean;
  readonly ids: Ids;
  readonly takeTurn: (input: TurnInput) => Turn;
  /** Null while no timer is up. */
  readonly ringTimers: (input: RingInput) => Turn | null;
  /** What words the answers, and the note, once it is loaded; none where it is switched off or failed. */
  readonly phraser: () => Phraser | null;
  readonly passages: () => PassagePhraser | null;
  /** The sentence for events that are held in memory only. */
  readonly sayNotKept: (why: NotKeptReason) => string;
  /** The sentence for an engine that hears in another's place. */
  readonly sayEngineChanged: (to: EngineAlone) => string;
  readonly sayEarNews: (news: EarNews) => string;
}
