import { useState } from 'preact/hooks';
import type { DeviceChoice } from '../offline/device-choice.ts';
import { SPARE_VOICE_CHOICES, type SpareVoiceChoice } from '../voice/voice.ts';

export type VoiceFormProps = DeviceChoice<SpareVoiceChoice>;

const VOICE_WORDS: Record<SpareVoiceChoice, string> = {
  fetched: 'my spare voice',
  onScreen: 'replies on screen only',
};

/** For browsers without a voice on the device; 14 MB may be too much where the signal is poor or paid for. */
export function VoiceForm({ read, choose }: VoiceFormProps) {
  const [chosen, setChosen] = useState(read);
  const press = (next: SpareVoiceChoice): void => {
    choose(next);
    setChosen(next);
  };
  return (
    <section aria-label="What speaks where the browser has no voice">
      <h2>where the browser has no voice</h2>
      <div class="choices" role="group" aria-label="Where the browser has no voice">
        {SPARE_VOICE_CHOICES.map((each) => (
          <button
            key={each}
            type="button"
            data-testid={`voice-${each}`}
            aria-pressed={each === chosen}
            onClick={() => press(each)}
          >
            {VOICE_WORDS[each]}
          </button>
        ))}
      </div>
      <p>
        The spare voice is 14 MB, fetched once at the first press and kept. It speaks on this
        device.
      </p>
    </section>
  );
}
