import type { Context } from 'hono';
import type { z } from 'zod';
import { core } from 'zod';
import type { ErrorResponse } from '../../core/wire/event-schema.ts';

type ErrorKind = ErrorResponse['error']['kind'];

/** The one shape of every refusal under /api. */
export function refuse(c: Context, status: 400 | 404 | 409 | 413 | 415 | 500, error: Refusal) {
  return c.json({ error } satisfies ErrorResponse, status);
}

interface Refusal {
  readonly kind: ErrorKind;
  readonly message: string;
  readonly path?: string;
}

/** The first fault of a parse, with where it stands: `events[3].reading.unit`. */
export function firstFault(error: z.ZodError): Refusal {
  const [issue] = error.issues;
  const path = issue === undefined ? '' : core.toDotPath(issue.path);
  return {
    kind: 'badRequest',
    message: `${path === '' ? 'the request' : path}: ${issue?.message ?? 'not as agreed'}; nothing was kept`,
    path,
  };
}
