import { draftNote } from '../../core/note/draft-note.ts';
import { noteText } from '../../core/note/note-text.ts';
import type { PhrasedTurn } from '../../core/turn/phrase-reply.ts';
import type { Turn } from '../../core/turn/turn.ts';
import type { VisitState } from '../../core/visit/state.ts';

/** How a replayed visit is put on paper. */
export interface ReplayPrinter {
  turn(said: PhrasedTurn, options: PrintOptions): string;
  /** What is said by itself, when a timer is up. */
  ring(turn: Turn): string;
  note(state: VisitState, past: readonly VisitState[]): string;
}

export interface PrintOptions {
  /** Whether a model words the answers, so that which sentence was spoken is worth a word. */
  readonly hasPhraser: boolean;
}

export const REPLAY_PRINTERS = {
  dialogue: {
    turn: ({ turn: { utterance, reply } }) =>
      [speech('you', utterance.text), speech('gloveside', reply.text), ''].join('\n'),
    ring: ({ reply }) => [speech('gloveside', reply.text), ''].join('\n'),
    note: (state, past) => noteText(draftNote(state, past)).trimEnd(),
  },
  json: {
    turn: ({ turn: { utterance, verdicts, reply }, phrased }, { hasPhraser }) =>
      JSON.stringify({
        said: utterance.text,
        understood: utterance,
        verdicts,
        reply: reply.text,
        ...(hasPhraser ? { phrased } : {}),
      }),
    ring: ({ utterance, verdicts, reply }) =>
      JSON.stringify({ said: '', understood: utterance, verdicts, reply: reply.text }),
    note: (state, past) => {
      const note = draftNote(state, past);
      return JSON.stringify({ note, noteText: noteText(note) });
    },
  },
} as const satisfies Record<string, ReplayPrinter>;

/** The longest speaker's name and two spaces: what is said starts in one column. */
const SPEECH_COLUMN = 'gloveside'.length + 2;

function speech(who: string, words: string): string {
  const [first = '', ...rest] = words.trimEnd().split('\n');
  const indent = ' '.repeat(SPEECH_COLUMN);
  const lines = [who.padEnd(SPEECH_COLUMN) + first, ...rest.map((line) => indent + line)];
  return lines.map((line) => line.trimEnd()).join('\n');
}
