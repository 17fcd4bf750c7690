import {
  NON_CONDENSABLE_CONFLICT,
  NON_CONDENSABLE_EXCESS,
} from '../../calculations/control-defaults.ts';
import { nonCondensables, nonCondensablesFormula } from '../../calculations/non-condensables.ts';
import { fromBase } from '../../units/convert.ts';
import { SHOWN_UNITS } from '../../units/shown-unit.ts';
import type { VisitState } from '../../visit/state.ts';
import { isNewer } from '../../visit/views.ts';
import { absoluteOf, currentReading, refrigerantOf, temperatureOf } from '../current.ts';
import { andThen, both, calculated, worked, type Found } from '../found.ts';
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
 * stand, since a running condenser shows nothing of it.
 */
export function airInside(state: VisitState): Found<JudgedOf<'nonCondensables'>> {
  if (!isAtRest(state)) return NOT_AT_REST;
  const given = both(
    refrigerantOf(state),
    both(absoluteOf(state, 'headPressure'), temperatureOf(state, 'ambientTemp')),
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

/** Head read after the compressor was said to stand. */
function isAtRest(state: VisitState): boolean {
  const stands = standingFindings(state).findLast(
    ({ finding }) => finding.part === 'compressor' && finding.state === 'notRunning',
  );
  const head = currentReading(state, 'headPressure');
  return stands !== undefined && head !== null && isNewer(state, head.id, stands.id);
}
