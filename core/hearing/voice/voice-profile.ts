import type { AcousticDescription } from '../acoustic-model.ts';

/**
 * What twenty sentences taught of one voice: a correction of the acoustic model's last layer. No sound can be made of it.
 */
export interface VoiceProfile {
  readonly version: 1;
  /** Which acoustic model it corrects: on another it would be noise. */
  readonly edition: string;
  /** For each of the model's sounds, what is added for each inner value, and at last what is added always. */
  readonly correction: readonly (readonly number[])[];
}

/** What a profile of this model's must look like; null where the model lets nothing be corrected. */
export interface ProfileShape {
  readonly edition: string;
  readonly sounds: number;
  readonly inner: number;
}

export function profileShape(description: AcousticDescription): ProfileShape | null {
  const { edition, innerSize: inner, phones } = description;
  return inner > 0 ? { edition, inner, sounds: phones.length } : null;
}

/** Whether the profile was taught to this very model. */
export function fitsModel(
  { edition, correction }: VoiceProfile,
  description: AcousticDescription,
): boolean {
  const shape = profileShape(description);
  return (
    shape !== null &&
    edition === shape.edition &&
    correction.length === shape.sounds &&
    correction.every((row) => row.length === shape.inner + 1)
  );
}
