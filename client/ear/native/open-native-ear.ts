import { phraseHints } from '../../../core/language/heard/phrase-hints.ts';
import { browserClock as clock } from '../../state/clock.ts';
import type { EarChoice } from './chosen-ear.ts';
import { createNativeEar, type NativeEar } from './native-ear.ts';
import { hearsOnDevice, nativeClassOf, nativePhrases } from './native-recognition.ts';

const NATIVE_LANG = 'en-US';

/** The browser's own recogniser, where there is one that keeps to what was chosen. */
export async function openNativeEar(
  choice: EarChoice,
  onUseless: () => void,
): Promise<NativeEar | null> {
  const native = nativeClassOf(window);
  if (native === null) return null;
  const onDevice = await hearsOnDevice(native, NATIVE_LANG);
  if (choice === 'browserOnDevice' && !onDevice) return null;
  const phrasesOf = nativePhrases(window);
  return createNativeEar({
    native,
    // Chrome takes phrases only where it hears on this device, and ends every other session with an error.
    phrasesFor:
      onDevice && phrasesOf !== null
        ? (expectation, names) => phrasesOf(phraseHints(expectation, names))
        : null,
    lang: NATIVE_LANG,
    onDevice,
    clock,
    permission: microphonePermission,
    onUseless,
    wakeLock: 'wakeLock' in navigator ? navigator.wakeLock : undefined,
    page: document,
    beeps: /\bAndroid\b/.test(navigator.userAgent),
  });
}

/** Browsers that do not tell are taken to ask. */
async function microphonePermission(): Promise<PermissionState> {
  try {
    return (await navigator.permissions.query({ name: 'microphone' })).state;
  } catch {
    return 'prompt';
  }
}
