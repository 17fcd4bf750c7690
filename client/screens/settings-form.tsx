import type { VisitSettings } from '../../core/visit/events.ts';
import { habitWords, type UnitHabit } from '../../core/units/shown-unit.ts';
import { LocalAirForm } from './local-air-form.tsx';

interface SettingsFormProps {
  readonly settings: VisitSettings;
  readonly onSettings: (settings: VisitSettings) => void;
}

const USUAL: readonly UnitHabit[] = ['us', 'si'];

/** The usual ones, and any other that was told by voice. */
const offered = (units: UnitHabit): readonly UnitHabit[] => [...new Set([...USUAL, units])];

export function SettingsForm({ settings, onSettings }: SettingsFormProps) {
  return (
    <section aria-label="Settings">
      <h2>a bare number is in</h2>
      <div class="choices" role="group" aria-label="A bare number is in">
        {offered(settings.units).map((units) => (
          <button
            key={units}
            type="button"
            data-testid={`units-${units}`}
            aria-pressed={units === settings.units}
            onClick={() => onSettings({ ...settings, units })}
          >
            {habitWords(units)}
          </button>
        ))}
      </div>
      <h2>the air pressure here</h2>
      <LocalAirForm settings={settings} onSettings={onSettings} />
    </section>
  );
}
