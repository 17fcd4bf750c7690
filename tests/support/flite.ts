import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Voices of flite that were made from recorded people: the ones an engine trained on people can know. */
export type Voice = 'rms' | 'slt' | 'awb' | 'kal16';

/** One sentence as a WAV file, made now by Debian's flite, each sound `stretch` times as long as the voice has it. */
export function speakWav(sentence: string, voice: Voice = 'rms', stretch = 1): Buffer {
  const folder = mkdtempSync(join(tmpdir(), 'gloveside-speech-'));
  const file = join(folder, 'said.wav');
  try {
    const pace = ['--setf', `duration_stretch=${stretch}`];
    execFileSync('flite', ['-voice', voice, ...pace, '-t', sentence, '-o', file]);
    return readFileSync(file);
  } catch (cause) {
    throw new Error('flite did not speak: `npm test` installs it, or Debian’s package flite', {
      cause,
    });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
