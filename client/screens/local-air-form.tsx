import { useState } from 'preact/hooks';
import { ALTITUDE_RANGE_M, BAROMETER_RANGE_KPA } from '../../core/units/atmosphere.ts';
import { fromBase, toBase } from '../../core/units/convert.ts';
import { thermalSystem } from '../../core/units/shown-unit.ts';
import type { UnitId, UnitSystem } from '../../core/units/units.ts';
import type { VisitSettings } from '../../core/visit/events.ts';

interface LocalAirFormProps {
  readonly settings: VisitSettings;
  readonly onSettings: (settings: VisitSettings) => void;
}

/** What every gauge reads against: the height above the sea, or better a barometer beside the unit. */
export function LocalAirForm({ settings, onSettings }: LocalAirFormProps) {
  const { altitudeM, barometerKpa } = settings;
  const units = thermalSystem(settings.units);
  return (
    <>
      <Measure
        id="altitude"
        words={HEIGHT_WORDS[units]}
        unit={HEIGHT_UNIT[units]}
        digits={0}
        range={ALTITUDE_RANGE_M}
        base={altitudeM}
        onBase={(metres) => onSettings({ ...settings, altitudeM: Math.round(metres ?? 0) })}
      />
      <Measure
        id="barometer"
        words={BAROMETER_WORDS[units]}
        unit={BAROMETER_UNIT[units]}
        digits={2}
        range={BAROMETER_RANGE_KPA}
        base={barometerKpa}
        onBase={(kPa) => onSettings(withBarometer(settings, kPa))}
      />
    </>
  );
}

const HEIGHT_UNIT = { us: 'ft', si: 'm' } as const satisfies Record<UnitSystem, UnitId>;
const HEIGHT_WORDS = { us: 'feet above the sea', si: 'metres above the sea' };
/** A barometer's inches of mercury are absolute, a gauge's are not: only the factor is the same. */
const BAROMETER_UNIT = { us: 'inHg', si: 'kPa' } as const satisfies Record<UnitSystem, UnitId>;
const BAROMETER_WORDS = {
  us: 'inches on a barometer beside you, if there is one',
  si: 'kilopascals on a barometer beside you, if there is one',
};

function withBarometer(settings: VisitSettings, kPa: number | undefined): VisitSettings {
  const { barometerKpa, ...rest } = settings;
  return kPa === undefined ? rest : { ...rest, barometerKpa: kPa };
}

interface MeasureProps {
  readonly id: string;
  readonly words: string;
  readonly unit: UnitId;
  readonly digits: number;
  readonly range: { readonly low: number; readonly high: number };
  readonly base: number | undefined;
  /** Undefined when the field was emptied. */
  readonly onBase: (base: number | undefined) => void;
}

/**
 * A number that is only taken within its range; outside it what was typed stays, and the range is told. What is
 * being typed is kept here: the page is drawn anew at every change, and would wipe it.
 */
function Measure({ id, words, unit, digits, range, base, onBase }: MeasureProps) {
  const [typed, setTyped] = useState<string | null>(null);
  const [refused, setRefused] = useState(false);
  const shown = (value: number): string => fromBase(value, unit).value.toFixed(digits);
  const finish = (text: string): void => {
    const value = text.trim() === '' ? undefined : toBase({ value: Number(text), unit });
    const taken = value === undefined || (value >= range.low && value <= range.high);
    setRefused(!taken);
    setTyped(taken ? null : text);
    if (taken) onBase(value);
  };
  return (
    <label class="altitude">
      <input
        type="number"
        inputMode="decimal"
        step="any"
        data-testid={id}
        value={typed ?? (base === undefined ? '' : shown(base))}
        onInput={(event) => setTyped(event.currentTarget.value)}
        onChange={(event) => finish(event.currentTarget.value)}
      />
      <span>{words}</span>
      {refused && (
        <span role="alert" data-testid={`${id}-refused`}>
          Nothing was changed: it lies between {shown(range.low)} and {shown(range.high)}.
        </span>
      )}
    </label>
  );
}
