/** One sentence of a visit: when it is said, and what has to be heard back. */
export interface Exchange {
  readonly line: number;
  /** Minutes since midnight, where the file sets the clock; else a minute after the one before. */
  readonly clock: number | null;
  readonly said: string;
  /** What has to be heard; null while it is not written. */
  readonly heard: string | null;
}

export interface JourneyFile {
  /** The comment at the top, as it stands. */
  readonly head: string;
  readonly exchanges: readonly Exchange[];
  readonly note: string;
}

const TECHNICIAN = 'technician: ';
const GLOVESIDE = 'gloveside: ';
const NOTE = 'note:';
/** How silence is written, so that nobody takes it for a gap. */
export const SILENCE = '(nothing)';

/** Throws with the line to correct: a journey that cannot be read is a broken test. */
export function parseJourney(text: string): JourneyFile {
  const lines = text.split('\n');
  const noteAt = lines.indexOf(NOTE);
  const dialogue = noteAt < 0 ? lines : lines.slice(0, noteAt);
  const headEnd = dialogue.findIndex((line) => !line.startsWith('#'));
  const exchanges: Exchange[] = [];
  let clock: number | null = null;
  for (const [index, raw] of dialogue.entries()) {
    const content = raw.trim();
    if (content === '' || content.startsWith('#')) continue;
    if (content.startsWith('@')) clock = parseClock(content, index + 1);
    else if (content.startsWith(TECHNICIAN)) {
      exchanges.push({
        line: index + 1,
        clock,
        said: content.slice(TECHNICIAN.length),
        heard: null,
      });
      clock = null;
    } else exchanges.push(answered(exchanges.pop(), content, index + 1));
  }
  return {
    head: dialogue.slice(0, headEnd).join('\n'),
    exchanges,
    note: noteAt < 0 ? '' : lines.slice(noteAt + 1).join('\n'),
  };
}

function answered(asked: Exchange | undefined, content: string, line: number): Exchange {
  if (!asked || asked.heard !== null || !content.startsWith(GLOVESIDE)) {
    throw new Error(`line ${line}: expected "technician: …" and below it "gloveside: …"`);
  }
  return { ...asked, heard: content.slice(GLOVESIDE.length) };
}

function parseClock(content: string, line: number): number {
  const [, hours = '', minutes = ''] = /^@ (\d{1,2}):(\d{2})$/.exec(content) ?? [];
  if (hours === '') throw new Error(`line ${line}: write the time as in "@ 14:05"`);
  return Number(hours) * 60 + Number(minutes);
}
