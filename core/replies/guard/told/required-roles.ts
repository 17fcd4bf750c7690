import { patternOf, rolesAlways } from './pattern.ts';
import type { Told } from './told.ts';

/** The slots that no wording of what must be said leaves out. */
export function requiredRoles({ must }: Told): ReadonlySet<string> {
  return new Set(must.flatMap((written) => rolesAlways(patternOf(written))));
}
