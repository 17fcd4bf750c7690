import { judge } from '../advice/judged/judge.ts';
import type { JudgedAnswer } from '../advice/judged/judged-verdict.ts';
import { judgedSaid } from '../replies/judged-sentences.ts';
import { JUDGED, type JudgedId } from '../terms/judged.ts';
import type { PartId } from '../terms/names.ts';
import { isSetting } from '../terms/quantities.ts';
import type { EventId } from '../visit/events.ts';
import type { VisitState } from '../visit/state.ts';
import { isNewer, type ReadingEntry } from '../visit/views.ts';
import { sentence } from './wording.ts';

/** What a meter was put on to find out, with the part that is replaced for it. */
const METERED: Partial<Record<JudgedId, PartId>> = {
  runCapacitor: 'runCapacitor',
  startCapacitor: 'startCapacitor',
  windings: 'compressor',
  insulation: 'compressor',
  defrostHeater: 'defrostHeater',
  doorHeater: 'doorHeater',
};

/** Its sentence begins with the number alone. */
const NAMED: ReadonlySet<JudgedId> = new Set<JudgedId>(['runCapacitor', 'startCapacitor']);

/** What each measurement came to, with the old part and with the new one. */
export function verdictLines(state: VisitState): readonly string[] {
  const lines = Object.entries(METERED).flatMap(([about, part]) => {
    if (!isJudged(about)) return [];
    const { found, since } = judgedOf(about, part, state);
    return [...found.map(lineOf), ...since.map((verdict) => `New part: ${lineOf(verdict)}`)];
  });
  return lines.map(sentence);
}

const isJudged = (id: string): id is JudgedId => id in JUDGED;

interface Judged {
  readonly found: readonly JudgedAnswer[];
  readonly since: readonly JudgedAnswer[];
}

/** What was read before a part was replaced is of the old one. */
function judgedOf(about: JudgedId, part: PartId, state: VisitState): Judged {
  const replaced = state.work.find(({ work }) => work.part === part && work.did === 'replace');
  if (replaced === undefined) return { found: judged(about, state), since: [] };
  const isSince = ({ id }: { readonly id: EventId }): boolean => isNewer(state, id, replaced.id);
  return {
    found: judged(
      about,
      withReadings(state, (entry) => !isSince(entry)),
    ),
    since: judged(about, withReadings(state, isSince)),
  };
}

/** Ratings hold for the old part and for the new one. */
const withReadings = (state: VisitState, of: (entry: ReadingEntry) => boolean): VisitState => ({
  ...state,
  readings: state.readings.filter((entry) => isSetting(entry.reading.quantity) || of(entry)),
});

function judged(about: JudgedId, state: VisitState): readonly JudgedAnswer[] {
  const found = judge(about, state);
  const isTold = found.kind === 'known' && found.value.finding !== 'expected';
  return isTold ? [found.value] : [];
}

/** What it is, without what is to be done about it: that was asked for, or it is done. */
function lineOf(verdict: JudgedAnswer): string {
  const [first = ''] = judgedSaid(verdict).text.split(/[.] (?=[A-Z])/);
  const told = first
    .replace(/[.]$/, '')
    .replace(TO_DO, '')
    .replace(/^It draws\b/, `The ${JUDGED[verdict.about]} drew`);
  return NAMED.has(verdict.about) ? `${JUDGED[verdict.about]} ${told}` : told;
}

const TO_DO = /: (?:prove|check|read|test|look) .*$/;

type Capacitor = 'runCapacitor' | 'startCapacitor';
const CAPACITORS: readonly Capacitor[] = ['runCapacitor', 'startCapacitor'];

/** A capacitor measured weak is a fault that was found, whether or not anybody said so. */
export function foundWeak(state: VisitState): readonly Capacitor[] {
  return CAPACITORS.filter((part) =>
    judgedOf(part, part, state).found.some(({ finding }) => finding === 'low'),
  );
}
