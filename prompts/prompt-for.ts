import type { Verdict } from '../core/advice/verdict.ts';
import { verdictSaid } from '../core/replies/verdict-said.ts';
import { EXAMPLES, type Example } from './examples.ts';

/** One line of the conversation that an instruct model is given. */
export interface Message {
  readonly role: 'system' | 'user' | 'assistant';
  readonly content: string;
}

const TASK =
  'You word answers for a refrigeration technician who hears them once, beside a running fan. ' +
  'Say the given sentence in other words, in one or two short spoken sentences. ' +
  'Keep every number, unit, name and direction exactly as given. ' +
  'Add nothing, leave nothing out, ask nothing. Write the sentence alone.';

/** The task, worked examples, and the sentence to be worded; a model answers with the next line. */
export function promptFor(verdict: Verdict, sentence: string): readonly Message[] {
  return [
    { role: 'system', content: TASK },
    ...likestLast(verdict).flatMap(worked),
    { role: 'user', content: sentence },
  ];
}

/** The same for a model that was never taught to converse: a text that it goes on with. */
export function promptText(messages: readonly Message[]): string {
  const lines = messages.map(({ role, content }) => LABELS[role] + content);
  return [...lines, LABELS.assistant.trimEnd()].join('\n');
}

const LABELS = {
  system: '',
  user: 'Given: ',
  assistant: 'Said: ',
} as const satisfies Record<Message['role'], string>;

/** A small model follows the example nearest its own turn most closely. */
function likestLast(verdict: Verdict): readonly Example[] {
  const isAlike = ({ verdict: { answer } }: Example) =>
    verdict.kind === 'known' && answer === verdict.answer;
  return [...EXAMPLES.filter((each) => !isAlike(each)), ...EXAMPLES.filter(isAlike)];
}

function worked({ verdict, phrasing }: Example): readonly Message[] {
  return [
    { role: 'user', content: verdictSaid(verdict).text },
    { role: 'assistant', content: phrasing },
  ];
}
