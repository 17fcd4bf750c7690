import type { RecogniserEnvironment } from './environment.ts';
import { isLanguageTag, isSupportedLanguage } from './languages.ts';
import {
  requiredMember,
  toBoolean,
  toDictionary,
  toDomString,
  toEnum,
  toSequence,
} from './web-idl/conversions.ts';

export type AvailabilityStatus = 'unavailable' | 'downloadable' | 'downloading' | 'available';

const OF_ENGINE = {
  absent: 'downloadable',
  loading: 'downloading',
  ready: 'available',
} as const;

/**
 * Nothing is awaited before the checks are done: in a frame that is gone, no task and no promise of its own runs
 * any more, and the caller would wait for ever.
 */
export async function availability(
  environment: RecogniserEnvironment,
  given: unknown,
): Promise<AvailabilityStatus> {
  const { langs, processLocally } = toOptions(given);
  checkActive(environment);
  checkTags(langs);
  return queued(environment, statusOf(environment, langs, processLocally));
}

/**
 * Where the permissions policy forbids it, and for a download that nobody asked for by a press, the standard's text is
 * silent: the published tests and Chromium say NotAllowedError.
 */
export async function install(
  environment: RecogniserEnvironment,
  given: unknown,
): Promise<boolean> {
  const { langs } = toOptions(given);
  checkActive(environment);
  checkTags(langs);
  checkAllowed(environment);
  const status = statusOf(environment, langs, true);
  if (status === 'unavailable') return queued(environment, false);
  if (status === 'downloadable' && !environment.page.wasTouched()) {
    throw new DOMException('A download begins with a press.', 'NotAllowedError');
  }
  const outcome = await environment.engine.load(environment.onProgress);
  return queued(environment, outcome.kind === 'ready');
}

const QUALITIES = ['command', 'dictation', 'conversation'] as const;

interface Options {
  readonly langs: readonly string[];
  readonly processLocally: boolean;
}

function toOptions(given: unknown): Options {
  const read = toDictionary(given);
  const langs = toSequence(requiredMember(read, 'langs'), toDomString);
  const processLocally = toBoolean(read('processLocally'));
  const quality = read('quality');
  // One quality is all there is: it is checked and otherwise of no account.
  if (quality !== undefined) toEnum(quality, QUALITIES);
  return { langs, processLocally };
}

/** No language at all: 'unavailable' by the standard's text, though Chromium throws a TypeError. */
function statusOf(
  { engine, page }: RecogniserEnvironment,
  langs: readonly string[],
  processLocally: boolean,
): AvailabilityStatus {
  const possible =
    langs.length > 0 && langs.every((lang) => lang !== '' && isSupportedLanguage(lang));
  if (!possible || !page.allowsOnDevice()) return 'unavailable';
  // start() loads the engine by itself: only who must have it on the device already needs to know more.
  return processLocally ? OF_ENGINE[engine.state()] : 'available';
}

function checkActive({ page }: RecogniserEnvironment): void {
  if (!page.isActive()) throw new DOMException('The page is gone.', 'InvalidStateError');
}

function checkTags(langs: readonly string[]): void {
  const wrong = langs.find((lang) => !isLanguageTag(lang));
  if (wrong !== undefined) throw new DOMException(`${wrong} is no language tag.`, 'SyntaxError');
}

function checkAllowed({ page }: RecogniserEnvironment): void {
  if (page.allowsOnDevice()) return;
  const whose = page.isCrossOrigin() ? 'of this cross-origin iframe' : 'of this page';
  throw new DOMException(
    `The permissions policy ${whose} forbids on-device-speech-recognition.`,
    'NotAllowedError',
  );
}

/** Answers come as tasks, not as microtasks: so does the standard ask. */
const queued = <Value>({ queueTask }: RecogniserEnvironment, value: Value): Promise<Value> =>
  new Promise((resolve) => queueTask(() => resolve(value)));
