import { execFileSync } from 'node:child_process';

import type { Pronunciations } from '../../../../core/hearing/dictionary.ts';
import { createResampler } from '../../../../core/hearing/resample.ts';
import { readWav } from '../../../../server/hearing/read-wav.ts';
import { RATE_HZ, speak } from '../../signals.ts';
import { ACCENTS, type Accent, CZECH } from './accents.ts';
import { sayByDiphones, sayByText } from './festival.ts';

/**
 * held out: the training heard nothing of this speaker. trained: it did. formant: made by rule from no person, and of
 * a kind that the training heard.
 */
export type Acquaintance = 'held out' | 'trained' | 'formant';

/** Somebody who reads the prompts, and then other sentences. */
export interface EnrolledVoice {
  readonly name: string;
  readonly acquaintance: Acquaintance;
  readonly sayAll: (sentences: readonly string[]) => readonly Float32Array[];
}

export function enrolledVoices(pronunciations: Pronunciations): readonly EnrolledVoice[] {
  const phonesOf = (sentence: string): readonly string[] =>
    sentence.split(' ').map((word) => pronunciations[word]?.[0] ?? '');
  const kalWith = (sounds: Accent): EnrolledVoice['sayAll'] =>
    byDiphones('voice_kal_diphone', 105, sounds);
  function byDiphones(command: string, pitchHz: number, sounds: Accent): EnrolledVoice['sayAll'] {
    const silence = command === 'voice_czech_ph' ? '#' : 'pau';
    const voice = { command, silence, pitchHz, sounds };
    return (sentences) => sayByDiphones(voice, sentences.map(phonesOf));
  }
  const kal16: EnrolledVoice['sayAll'] = (all) => all.map((sentence) => speak(sentence, 'kal16'));
  const slt: EnrolledVoice['sayAll'] = (all) => sayByText('voice_cmu_us_slt_arctic_hts', all);
  return [
    { name: 'kal16', acquaintance: 'held out', sayAll: kal16 },
    { name: 'kal, Spanish sounds', acquaintance: 'held out', sayAll: kalWith(ACCENTS.spanish) },
    {
      name: 'Czech diphones',
      acquaintance: 'held out',
      sayAll: byDiphones('voice_czech_ph', 130, CZECH),
    },
    { name: 'kal16, 18 % higher', acquaintance: 'held out', sayAll: higher(kal16, 1.18) },
    { name: 'kal16, 15 % lower', acquaintance: 'held out', sayAll: higher(kal16, 0.85) },
    { name: 'slt-hts', acquaintance: 'held out', sayAll: slt },
    { name: 'slt-hts, 18 % higher', acquaintance: 'held out', sayAll: higher(slt, 1.18) },
    { name: 'kal, German sounds', acquaintance: 'held out', sayAll: kalWith(ACCENTS.german) },
    { name: 'kal, Indian sounds', acquaintance: 'held out', sayAll: kalWith(ACCENTS.indian) },
    {
      name: 'flite awb',
      acquaintance: 'trained',
      sayAll: (all) => all.map((said) => speak(said, 'awb')),
    },
    {
      name: 'espeak-ng en-gb-scotland+f2',
      acquaintance: 'formant',
      sayAll: (all) => all.map(byFormants),
    },
  ];
}

/** Pitch, throat and pace together, as a tape that runs faster. */
const higher =
  (sayAll: EnrolledVoice['sayAll'], times: number): EnrolledVoice['sayAll'] =>
  (sentences) =>
    sayAll(sentences).map((sound) => createResampler(RATE_HZ * times)(sound));

function byFormants(sentence: string): Float32Array {
  const bytes = execFileSync('espeak-ng', ['-v', 'en-gb-scotland+f2', '--stdout', sentence]);
  const wav = readWav(bytes);
  if (wav.kind === 'unreadable') throw new Error(`espeak-ng: ${wav.message}`);
  return wav.samples;
}
