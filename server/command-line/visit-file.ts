import { type CivilDate, daysOf, parseIsoDate } from '../../core/units/civil-date.ts';

/** One line of a visit file that does something, with its number for whoever must correct it. */
export type Step = { readonly line: number } & (
  | { readonly kind: 'say'; readonly words: string }
  | { readonly kind: 'play'; readonly file: string }
  /** A part that the van carries, by the name that its owner calls it. */
  | { readonly kind: 'part'; readonly name: string }
  /** Minutes since midnight. */
  | { readonly kind: 'clock'; readonly minutes: number }
  /** A later day than the one before. */
  | { readonly kind: 'day'; readonly day: CivilDate }
);

export type VisitFile =
  | { readonly kind: 'visit'; readonly steps: readonly Step[] }
  | { readonly kind: 'unreadable'; readonly line: number; readonly why: string };

type Fault = Extract<VisitFile, { kind: 'unreadable' }>;

/** A sentence a line; `# …` is a comment, `@ 14:05` sets the clock, `@ 2026-08-20` the day, `> file.wav` plays a recording, `* name` is a part that the van carries. */
export function parseVisitFile(text: string): VisitFile {
  const steps: Step[] = [];
  let latest = -Infinity;
  for (const [index, raw] of text.split('\n').entries()) {
    const content = raw.trim();
    if (content === '' || content.startsWith('#')) continue;
    const step = parseStep(content, index + 1);
    if (step.kind === 'unreadable') return step;
    if (step.kind === 'day') {
      const days = daysOf(step.day);
      if (days <= latest) return goingBack(step.line);
      latest = days;
    }
    steps.push(step);
  }
  return { kind: 'visit', steps };
}

function parseStep(content: string, line: number): Step | Fault {
  const rest = content.slice(1).trim();
  if (content.startsWith('@')) return parseMoment(rest, line);
  if (content.startsWith('*')) {
    return rest === ''
      ? { kind: 'unreadable', line, why: 'name the part, as in: * Copperline 012 contactor' }
      : { kind: 'part', line, name: rest };
  }
  if (!content.startsWith('>')) return { kind: 'say', line, words: content };
  return rest === ''
    ? { kind: 'unreadable', line, why: 'name the recording to play, as in: > front.wav' }
    : { kind: 'play', line, file: rest };
}

function goingBack(line: number): Fault {
  return { kind: 'unreadable', line, why: 'a visit file goes forward: name a later day' };
}

function parseMoment(text: string, line: number): Step | Fault {
  const day = parseIsoDate(text);
  return day === null ? parseClock(text, line) : { kind: 'day', line, day };
}

function parseClock(text: string, line: number): Step | Fault {
  const [, hours = '', minutes = ''] = /^(\d{1,2}):(\d{2})$/.exec(text) ?? [];
  if (hours === '' || Number(hours) > 23 || Number(minutes) > 59) {
    return {
      kind: 'unreadable',
      line,
      why: `write the time as in: @ 14:05, or the day as in: @ 2026-08-20, not "${text}"`,
    };
  }
  return { kind: 'clock', line, minutes: Number(hours) * 60 + Number(minutes) };
}
