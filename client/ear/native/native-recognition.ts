/** As much of a browser's own recogniser as is used; the newer half is missing in most of them. */
export interface NativeRecognition {
  lang: string;
  continuous: boolean;
  interimResults: boolean;
  maxAlternatives: number;
  processLocally?: boolean;
  phrases?: readonly NativePhrase[];
  start(): void;
  abort(): void;
  addEventListener(type: 'result', listener: (event: NativeResults) => void): void;
  addEventListener(type: 'error', listener: (event: { readonly error: string }) => void): void;
  addEventListener(type: 'start' | 'audiostart' | 'nomatch' | 'end', listener: () => void): void;
}

/** What a browser is told to expect, by its own class. */
export interface NativePhrase {
  readonly phrase: string;
  readonly boost: number;
}

type NativePhraseClass = new (phrase: string, boost: number) => NativePhrase;

export interface NativeResults {
  readonly results: ArrayLike<NativeResult>;
}

export interface NativeResult extends ArrayLike<NativeAlternative> {
  readonly isFinal: boolean;
}

export interface NativeAlternative {
  readonly transcript: string;
  readonly confidence: number;
}

export interface NativeClass {
  new (): NativeRecognition;
  available?(options: { langs: string[]; processLocally: boolean }): Promise<string>;
}

/** The browser's own class, under the name that it has there. */
export function nativeClassOf(window: object): NativeClass | null {
  const found: unknown =
    Reflect.get(window, 'SpeechRecognition') ?? Reflect.get(window, 'webkitSpeechRecognition');
  return isNativeClass(found) ? found : null;
}

const isNativeClass = (value: unknown): value is NativeClass => typeof value === 'function';

/** Whether it hears on this device: only where the browser says so and can be made to. */
export async function hearsOnDevice(native: NativeClass, lang: string): Promise<boolean> {
  if (native.available === undefined) return false;
  try {
    return (await native.available({ langs: [lang], processLocally: true })) === 'available';
  } catch {
    return false;
  }
}

/** Makes the phrases that the browser's recogniser may be given; null where it takes none. */
export function nativePhrases(
  window: object,
): ((hints: readonly NativePhrase[]) => readonly NativePhrase[]) | null {
  const found: unknown = Reflect.get(window, 'SpeechRecognitionPhrase');
  if (!isPhraseClass(found)) return null;
  return (hints) => hints.map(({ phrase, boost }) => new found(phrase, boost));
}

const isPhraseClass = (value: unknown): value is NativePhraseClass => typeof value === 'function';
