import { z } from 'zod';

/** Of a voice that was learnt the largest is below 1; one that is far beyond would drown what the network hears. */
const LARGEST_WEIGHT = 50;
const MOST_SOUNDS = 200;
const MOST_INNER = 4096;

export const voiceProfileSchema = z.strictObject({
  version: z.literal(1),
  edition: z.string().min(1).max(100),
  correction: z
    .array(z.array(z.number().min(-LARGEST_WEIGHT).max(LARGEST_WEIGHT)).min(1).max(MOST_INNER))
    .min(1)
    .max(MOST_SOUNDS),
});

export type VoiceOutcome =
  | { readonly kind: 'voice'; readonly voice: z.infer<typeof voiceProfileSchema> }
  | { readonly kind: 'damaged'; readonly path: string };

/** Reads a kept voice's JSON text; `path` names the first place that is wrong, '' the whole of it. */
export function readVoice(text: string): VoiceOutcome {
  const parsed = voiceProfileSchema.safeParse(parseJson(text));
  if (parsed.success) return { kind: 'voice', voice: parsed.data };
  return { kind: 'damaged', path: parsed.error.issues[0]?.path.join('.') ?? '' };
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
