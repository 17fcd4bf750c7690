import { readFile } from 'node:fs/promises';
import { readVoice, type VoiceOutcome } from '../../core/wire/voice-schema.ts';

export type VoiceFileOutcome =
  Extract<VoiceOutcome, { kind: 'voice' }> | { readonly kind: 'unusable'; readonly why: string };

/** Reads what `gloveside enrol` wrote. */
export async function readVoiceFile(file: string): Promise<VoiceFileOutcome> {
  const text = await readFile(file, 'utf8').catch((fault: unknown) => fault);
  if (typeof text !== 'string') {
    const why = text instanceof Error ? text.message : String(text);
    return { kind: 'unusable', why: `cannot read the voice (${why})` };
  }
  const outcome = readVoice(text);
  if (outcome.kind === 'voice') return outcome;
  const where = outcome.path === '' ? '' : ` at ${outcome.path}`;
  return {
    kind: 'unusable',
    why: `${file} holds no voice${where}: make it again with gloveside enrol`,
  };
}
