import type { RefrigerantId } from '../../terms/refrigerants.ts';
import { convert } from '../../units/convert.ts';
import { leftOpen } from '../../visit/left-open.ts';
import type { VisitState } from '../../visit/state.ts';
import { currentReading } from '../current.ts';

const SMALL_CHARGED: ReadonlySet<RefrigerantId> = new Set<RefrigerantId>([
  'R-290',
  'R-600a',
  'R-1270',
]);

/** A hose full of liquid propane holds 24 g (60 in. of 1/4, worked): of 150 g that is a sixth. */
const SMALL_CHARGE_G = 150;

/** A capillary tube with a charge that a hose would take a share of: it is weighed in, to 1 or 2 % (common practice). */
export function isCriticallyCharged({ unit }: VisitState): boolean {
  const { metering, refrigerant, nameplate } = unit;
  if (metering !== 'capTube') return false;
  if (refrigerant !== null && SMALL_CHARGED.has(refrigerant)) return true;
  const charge = nameplate.charge && convert(nameplate.charge, 'g');
  return charge !== undefined && charge !== null && charge.value <= SMALL_CHARGE_G;
}

export const SEALED_SOURCE =
  'a critically charged unit stays sealed while anything else can be looked at: common practice';

/** No gauge is on it, and none is asked for while anything else can be looked at (common practice). */
export function isLeftSealed(state: VisitState): boolean {
  const isGauged =
    currentReading(state, 'headPressure') !== null ||
    currentReading(state, 'suctionPressure') !== null ||
    leftOpen(state).some(({ part }) => part === 'gauges');
  return isCriticallyCharged(state) && !isGauged;
}
