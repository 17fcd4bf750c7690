import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { readWav } from '../../../server/hearing/read-wav.ts';
import { speak } from '../signals.ts';

/** Voices made from recorded people, as Debian has them. */
export interface BenchVoice {
  readonly name: string;
  /** Held out: the neural engine's training never heard this voice, or not by this synthesiser. */
  readonly heldOut: boolean;
  readonly say: (sentence: string) => Float32Array;
}

const FESTIVAL_VOICE = '/usr/share/festival/voices/us/cmu_us_slt_arctic_hts';

const FLITE: readonly BenchVoice[] = [
  { name: 'flite rms', heldOut: false, say: (sentence) => speak(sentence, 'rms') },
  { name: 'flite slt', heldOut: false, say: (sentence) => speak(sentence, 'slt') },
  { name: 'flite awb', heldOut: false, say: (sentence) => speak(sentence, 'awb') },
  { name: 'flite kal16', heldOut: true, say: (sentence) => speak(sentence, 'kal16') },
];

/** The festival voice only where Debian's festvox-us-slt-hts is installed. */
export function benchVoices(): readonly BenchVoice[] {
  return existsSync(FESTIVAL_VOICE)
    ? [...FLITE, { name: 'festival slt', heldOut: true, say: sayByFestival }]
    : FLITE;
}

function sayByFestival(sentence: string): Float32Array {
  const folder = mkdtempSync(join(tmpdir(), 'gloveside-festival-'));
  const [text, sound] = [join(folder, 'said.txt'), join(folder, 'said.wav')];
  try {
    writeFileSync(text, sentence);
    const voice = '(voice_cmu_us_slt_arctic_hts)';
    execFileSync('text2wave', [text, '-F', '16000', '-eval', voice, '-o', sound]);
    const wav = readWav(readFileSync(sound));
    if (wav.kind === 'unreadable') throw new Error(`festival: ${wav.message}`);
    return wav.samples;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
