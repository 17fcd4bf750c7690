import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { readWav } from '../../../../server/hearing/read-wav.ts';
import { seeded } from '../../../language/random.ts';
import type { Accent } from './accents.ts';
import { plan, type Planned } from './prosody.ts';

/** A voice of diphones that Debian has for festival: it says any row of its own sounds. */
export interface Diphones {
  /** Festival's own name for it, and of its silence. */
  readonly command: string;
  readonly silence: string;
  readonly pitchHz: number;
  readonly sounds: Accent;
}

/** Sentences as words of phones, each to be said; in one run of festival, as its start takes longer than its work. */
export function sayByDiphones(
  voice: Diphones,
  sentences: readonly (readonly string[])[],
): readonly Float32Array[] {
  return runFestival(
    voice.command,
    (file, at) => {
      const random = seeded(1000 + at);
      const planned = plan(sentences[at] ?? [], { pitchHz: voice.pitchHz, random });
      return `(set! said (utt.synth (Utterance Segments (${segments(planned, voice)}))))${save(file)}`;
    },
    sentences.length,
  );
}

/** Sentences by a voice that reads text. */
export function sayByText(command: string, texts: readonly string[]): readonly Float32Array[] {
  return runFestival(
    command,
    (file, at) => `(set! said (utt.synth (Utterance Text "${texts[at] ?? ''}")))${save(file)}`,
    texts.length,
  );
}

const save = (file: string): string =>
  `(utt.wave.resample said 16000)(utt.save.wave said "${file}" 'riff)`;

function runFestival(
  voice: string,
  commandFor: (file: string, at: number) => string,
  count: number,
): readonly Float32Array[] {
  const folder = mkdtempSync(join(tmpdir(), 'gloveside-festival-'));
  try {
    const files = Array.from({ length: count }, (_, at) => join(folder, `${at}.wav`));
    const script = join(folder, 'said.scm');
    writeFileSync(script, [`(${voice})`, ...files.map(commandFor)].join('\n'));
    execFileSync('festival', ['-b', script], { stdio: ['ignore', 'ignore', 'pipe'] });
    return files.map((file) => {
      const wav = readWav(readFileSync(file));
      if (wav.kind === 'unreadable') throw new Error(`festival: ${wav.message}`);
      return wav.samples;
    });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Two sounds for one phone take longer than one, but not twice as long. */
const OF_TWO = 0.65;

function segments(planned: readonly Planned[], { sounds, silence }: Diphones): string {
  return planned
    .flatMap(({ phone, seconds, pitchHz }) => {
      const parts = phone === null ? [silence] : (sounds[phone] ?? []);
      const share = parts.length < 2 ? seconds : seconds * OF_TWO;
      return parts.map(
        (part) => `(${part} ${share.toFixed(3)} (${(share / 2).toFixed(3)} ${pitchHz.toFixed(0)}))`,
      );
    })
    .join(' ');
}
