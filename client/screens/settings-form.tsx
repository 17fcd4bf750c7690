import type { VisitSettings } from '../../core/visit/events.ts';
import type { UnitSystem } from '../../core/units/units.ts';
import { LocalAirForm } from './local-air-form.tsx';

interface SettingsFormProps {
  readonly settings: VisitSettings;
  readonly onSettings: (settings: VisitSettings) => void;
}

const UNIT_WORDS: Record<UnitSystem, string> = { us: 'psi and °F', si: 'bar and °C' };
const SYSTEMS: readonly UnitSystem[] = ['us', 'si'];
export function SettingsForm({ settings, onSettings }: SettingsFormProps) {
  return (
    <section aria-label="Settings">
      <h2>a bare number is in</h2>
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
      <h2>the air pressure here</h2>
      <LocalAirForm settings={settings} onSettings={onSettings} />
    </section>
  );
}
