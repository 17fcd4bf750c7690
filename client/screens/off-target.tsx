import type { Comparison } from '../../core/advice/verdict.ts';
import { formatAmount } from '../../core/units/format-amount.ts';
import type { Amount } from '../../core/units/amount.ts';
import { UNITS } from '../../core/units/units.ts';
import type { Dimension } from '../../core/units/dimensions.ts';
import { toBase } from '../../core/units/convert.ts';

/**
 * How far the rule reaches to either side, in the dimension's base unit: about 50 psi and 20 °F, beyond which
 * "far off" is all that a glance needs.
 */
const REACH: Partial<Record<Dimension, number>> = {
  gaugePressure: 345,
  absolutePressure: 345,
  temperatureDifference: 11,
};
const REACH_OF_TARGET = 0.5;

/** A rule with a tick where it should be and a mark where it is; how far apart stands large above it. */
export function OffTarget({ compared }: { compared: Comparison }) {
  const { measured, target, measuredUnit } = compared;
  const place = 50 + MARGIN * offset(compared);
  return (
    <figure class="off-target" data-testid="off-target">
      <div class="rule" aria-hidden="true">
        <i class="should" />
        <i class="is" style={{ left: `${place}%` }} />
      </div>
      <figcaption>
        <span>
          should be <b>{figure({ value: target, unit: measuredUnit })}</b>
        </span>
        <span>
          is <b>{figure({ value: measured, unit: measuredUnit })}</b>
        </span>
      </figcaption>
    </figure>
  );
}

/** Half the rule's width, in percent, less half a mark: the furthest mark still lies on it. */
const MARGIN = 47;

function figure(amount: Amount): string {
  const { digits, symbol } = formatAmount(amount);
  return `${digits} ${symbol}`;
}

/** -1 to 1; what is further off stands at the rule's end. */
function offset({ value, unit, target, direction }: Comparison): number {
  const difference = toBase({ value, unit }) - toBase({ value: 0, unit });
  const reach = REACH[UNITS[unit].dimension] ?? Math.max(Math.abs(target) * REACH_OF_TARGET, 1);
  const size = Math.min(Math.abs(difference) / reach, 1);
  return { over: size, under: -size, on: 0 }[direction];
}
