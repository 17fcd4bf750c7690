/** As much of a browser's own recogniser as is used; the newer half is missing in most of them. */
export interface NativeRecognition {
  lang: string;
  continuous: boolean;
  interimResults: boolean;
  maxAlternatives: number;
  processLocally?: boolean;
  start(): void;
  abort(): void;
  addEventListener(type: 'result', listener: (event: NativeResults) => void): void;
  addEventListener(type: 'error', listener: (event: { readonly error: string }) => void): void;
  addEventListener(type: 'start' | 'audiostart' | 'nomatch' | 'end', listener: () => void): void;
}

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
