import type { VisitSettings } from '../../core/visit/events.ts';
import { convert } from '../../core/units/convert.ts';
import type { UnitId, UnitSystem } from '../../core/units/units.ts';

interface SettingsFormProps {
  readonly settings: VisitSettings;
  readonly onSettings: (settings: VisitSettings) => void;
}

const UNIT_WORDS: Record<UnitSystem, string> = { us: 'psi and °F', si: 'bar and °C' };
const SYSTEMS: readonly UnitSystem[] = ['us', 'si'];
const HEIGHT_UNIT = { us: 'ft', si: 'm' } as const satisfies Record<UnitSystem, UnitId>;
const HEIGHT_WORDS = { us: 'feet above the sea', si: 'metres above the sea' };
/** The highest towns with a road lie near 5,100 m (common knowledge, from memory); the sea is 0. */
const HIGHEST_M = 5_500;
const LOWEST_M = -450;

export function SettingsForm({ settings, onSettings }: SettingsFormProps) {
  return (
    <section aria-label="Settings">
      <div class="choices" role="group" aria-label="A bare number is in">
        {SYSTEMS.map((units) => (
          <button
            key={units}
            type="button"
            data-testid={`units-${units}`}
            aria-pressed={units === settings.units}
            onClick={() => onSettings({ ...settings, units })}
          >
            {UNIT_WORDS[units]}
          </button>
        ))}
      </div>
      <Altitude settings={settings} onSettings={onSettings} />
    </section>
  );
}

function Altitude({ settings, onSettings }: SettingsFormProps) {
  const unit = HEIGHT_UNIT[settings.units];
  const shown = convert({ value: settings.altitudeM, unit: 'm' }, unit);
  const change = (typed: string): void => {
    const metres = convert({ value: Number(typed), unit }, 'm')?.value;
    if (metres === undefined || !(metres >= LOWEST_M && metres <= HIGHEST_M)) return;
    onSettings({ ...settings, altitudeM: Math.round(metres) });
  };
  return (
    <label class="altitude">
      <input
        type="number"
        inputMode="numeric"
        data-testid="altitude"
        value={Math.round(shown?.value ?? 0)}
        onChange={(event) => change(event.currentTarget.value)}
      />
      {HEIGHT_WORDS[settings.units]}
    </label>
  );
}
