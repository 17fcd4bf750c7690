import {
  type PushRequest,
  type PushResponse,
  errorResponseSchema,
  pushResponseSchema,
} from '../../core/wire/event-schema.ts';

/** Nothing came back; nothing in time; the server is in trouble or busy; something else answered in its place. */
export type Unreached = 'noAnswer' | 'tooSlow' | 'serverTrouble' | 'otherAnswer';

export type PostResult =
  | { readonly kind: 'accepted'; readonly response: PushResponse }
  /** The server says no, and will say no again: shown, not repeated. */
  | { readonly kind: 'refused'; readonly message: string }
  /** No answer, or not from our server (a hotel's sign-in page answers 200 or 403): tried again later. */
  | {
      readonly kind: 'unreachable';
      readonly why: Unreached;
      /** It may be for its size: the time was up, or something on the way takes no such body. */
      readonly isTooMuch?: boolean;
    };

export type PostEvents = (request: PushRequest) => Promise<PostResult>;

const ANSWER_WITHIN_MS = 20_000;
/** Request timeout, too early, too many requests (RFC 9110, 8470, 6585): these pass by themselves. */
const PASSING_REFUSALS = new Set([408, 425, 429]);

const TOO_LARGE = 413;

export const EVENTS_PATH = '/api/events';

export function createPostEvents(fetcher: typeof fetch): PostEvents {
  return async (request) => {
    try {
      const response = await fetcher(EVENTS_PATH, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify(request),
        signal: AbortSignal.timeout(ANSWER_WITHIN_MS),
      });
      return readAnswer(response.status, await readJson(response), request.device);
    } catch (error) {
      const isTooMuch = error instanceof Error && error.name === 'TimeoutError';
      return { kind: 'unreachable', why: isTooMuch ? 'tooSlow' : 'noAnswer', isTooMuch };
    }
  };
}

function readAnswer(status: number, body: unknown, device: string): PostResult {
  const refusal = errorResponseSchema.safeParse(body);
  if (refusal.success && status >= 400 && status < 500 && !PASSING_REFUSALS.has(status))
    return { kind: 'refused', message: refusal.data.error.message };
  const parsed = pushResponseSchema.safeParse(body);
  if (status === 200 && parsed.success && parsed.data.device === device)
    return { kind: 'accepted', response: parsed.data };
  const isTroubled = status >= 500 || PASSING_REFUSALS.has(status);
  const why = isTroubled ? 'serverTrouble' : 'otherAnswer';
  return { kind: 'unreachable', why, isTooMuch: status === TOO_LARGE };
}

async function readJson(response: Response): Promise<unknown> {
  try {
    return await response.json();
  } catch {
    return null;
  }
}
