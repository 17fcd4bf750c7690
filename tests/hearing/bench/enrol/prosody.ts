/** One sound of a sentence, or a pause. */
export interface Planned {
  readonly phone: string | null;
  readonly seconds: number;
  readonly pitchHz: number;
}

/** Seconds at an unhurried pace, from memory of the usual tables for American English. */
const SECONDS: Readonly<Record<string, number>> = {
  ...of(0.13, 'AW AY OY EY OW'),
  ...of(0.12, 'AA AO'),
  ...of(0.11, 'AE ER'),
  ...of(0.1, 'IY UW'),
  ...of(0.07, 'AH IH UH P T K Z V JH ZH M N NG'),
  EH: 0.09,
  ...of(0.085, 'S SH F TH CH'),
  ...of(0.055, 'B D G DH L R W Y HH'),
};

function of(seconds: number, phones: string): Readonly<Record<string, number>> {
  return Object.fromEntries(phones.split(' ').map((phone) => [phone, seconds]));
}

interface Manner {
  readonly pitchHz: number;
  readonly random: () => number;
}

/** How long each sound of a sentence lasts and how high it is, a little otherwise each time, as people are. */
export function plan(words: readonly string[], { pitchHz, random }: Manner): readonly Planned[] {
  const about = (value: number, spread: number): number =>
    value * (1 + spread * (2 * random() - 1));
  const rate = about(1, 0.2);
  const pause = (seconds: number): Planned => ({ phone: null, seconds, pitchHz });
  const said = words.flatMap((word, at) => {
    const level = pitchHz * (1 - (0.15 * at) / words.length) * about(1.08, 0.1);
    const isLast = at === words.length - 1;
    const sounds = word.split(' ').map((phone) => ({
      phone,
      seconds: (about(SECONDS[phone] ?? 0.08, 0.2) / rate) * (isLast ? 1.3 : 1),
      pitchHz: about(level, 0.03),
    }));
    return !isLast && random() < 0.12 ? [...sounds, pause(0.15)] : sounds;
  });
  return [pause(0.15), ...said, pause(0.15)];
}
