import {
  NON_CONDENSABLE_CONFLICT,
  NON_CONDENSABLE_EXCESS,
} from '../../calculations/control-defaults.ts';
import { nonCondensables, nonCondensablesFormula } from '../../calculations/non-condensables.ts';
import { isPowerPart } from '../../terms/names.ts';
import { fromBase } from '../../units/convert.ts';
import { SHOWN_UNITS } from '../../units/shown-unit.ts';
import { leftOpen } from '../../visit/left-open.ts';
import type { VisitState } from '../../visit/state.ts';
import { isNewer, type ReadingEntry } from '../../visit/views.ts';
import {
  absoluteOf,
  currentReading,
  readAmount,
  refrigerantOf,
  temperatureOf,
} from '../current.ts';
import { andThen, both, calculated, worked, type Found } from '../found.ts';
import { type Saturated, saturated } from '../saturation-answer.ts';
import { standingFindings } from '../standing-findings.ts';
import type { Refused } from '../verdict.ts';
import type { JudgedOf } from './judged-verdict.ts';

const NOT_AT_REST: Refused = {
  kind: 'refused',
  about: null,
  reason: 'notAtRest',
  cautions: ['fanStaysLive'],
};

/**
 * Air in the condenser by its pressure at rest, against the air at its coil: read once the compressor was said to
 * stand, or as its standing pressure, since a running condenser shows nothing of it.
 */
export function airInside(state: VisitState): Found<JudgedOf<'nonCondensables'>> {
  const atRest = readAtRest(state);
  if (atRest === null) return NOT_AT_REST;
  return withoutLiveFan(judgedAtRest(atRest, state), state);
}

/** With the unit's supply off nothing of it is live. */
function withoutLiveFan<Value>(found: Found<Value>, state: VisitState): Found<Value> {
  const isOff = leftOpen(state).some(({ part, as }) => isPowerPart(part) && as !== 'bypassed');
  if (found.kind !== 'known' || !isOff) return found;
  return { ...found, cautions: found.cautions.filter((id) => id !== 'fanStaysLive') };
}

function judgedAtRest(atRest: VisitState, state: VisitState): Found<JudgedOf<'nonCondensables'>> {
  const given = both(
    refrigerantOf(state),
    both(absoluteOf(atRest, 'headPressure'), temperatureOf(state, 'ambientTemp')),
  );
  return andThen(given, ([refrigerant, [standing, coil]]) =>
    andThen(
      calculated(nonCondensables({ refrigerant, standing, coil }), nonCondensablesFormula, state),
      ({ excess, verdict }) => {
        const unit = SHOWN_UNITS[state.settings.units].temperatureDifference;
        const { suspected, present } = NON_CONDENSABLE_EXCESS.value;
        return worked(
          {
            answer: 'judged',
            about: 'nonCondensables',
            finding: verdict,
            value: fromBase(Math.abs(excess), unit).value,
            unit,
            limit: fromBase(verdict === 'present' ? present : suspected, unit),
          },
          { sources: [NON_CONDENSABLE_EXCESS.source, NON_CONDENSABLE_CONFLICT] },
        );
      },
    ),
  );
}

/** What a condenser at rest stands at by itself: saturation at the air that its fan draws through it. */
export function standingWanted(state: VisitState): Found<Saturated> {
  return andThen(readAmount(state, 'ambientTemp'), (coil) => saturated(coil, null, state));
}

/** A standing pressure that has come since the visit was as it was before. */
export function standsAnew(before: VisitState, after: VisitState): boolean {
  const last = lastStanding(after);
  return last !== undefined && last.id !== lastStanding(before)?.id;
}

const lastStanding = ({ readings }: VisitState): ReadingEntry | undefined =>
  readings.findLast(
    ({ reading }) => reading.quantity === 'headPressure' && reading.event === 'standing',
  );

/** The visit with the head that was read at rest as its head; null where the last one was read running. */
function readAtRest(state: VisitState): VisitState | null {
  const head = currentReading(state, 'headPressure');
  const standing = lastStanding(state);
  if (standing === undefined || (head !== null && isNewer(state, head.id, standing.id))) {
    return isAtRest(state) ? state : null;
  }
  const { event, ...reading } = standing.reading;
  return { ...state, readings: [...state.readings, { ...standing, reading }] };
}

const STOPS_IT: readonly string[] = ['compressor', 'disconnect', 'breaker', 'plug'];

/** Head read after the compressor was said to stand, or was taken off. */
function isAtRest(state: VisitState): boolean {
  const stands = standingFindings(state).findLast(
    ({ finding }) => finding.part === 'compressor' && finding.state === 'notRunning',
  );
  const off = leftOpen(state).filter(
    ({ part, as }) => STOPS_IT.includes(part) && as !== 'bypassed',
  );
  const head = currentReading(state, 'headPressure');
  if (head === null) return false;
  return [...(stands === undefined ? [] : [stands]), ...off].some(({ id }) =>
    isNewer(state, head.id, id),
  );
}
