import type { Session } from '../state/session.ts';
import { Asking } from './asking.tsx';
import { EarLine } from './ear-line.tsx';
import { Edge, type ListenToLevel } from './edge.tsx';
import { FieldText } from './field-text.tsx';
import { shownMode } from './shown-mode.ts';
import { Watch } from './watch.tsx';
import { PRESS_WORDS } from './words.ts';

interface FieldProps {
  readonly session: Session;
  readonly onPress: () => void;
  readonly onAnswer: (words: string) => void;
  readonly onLeave: () => void;
  readonly onKeys: () => void;
  readonly onLevel: ListenToLevel;
  readonly now: () => number;
}

/** The talk control: all of it is one button, the words lie over it and let presses through. */
export function Field(props: FieldProps) {
  const { session, onPress, onAnswer, onLeave, onKeys, onLevel, now } = props;
  const { mode } = session;
  return (
    <section class="field" data-testid="field" data-mode={mode.kind}>
      <button type="button" class="talk" onClick={onPress} aria-label={PRESS_WORDS[mode.kind]} />
      <Edge mode={shownMode(session)} onLevel={onLevel} />
      {mode.kind !== 'asking' && <Watch visit={session.visit} now={now} />}
      <FieldText session={session} onPress={onPress} />
      {mode.kind !== 'asking' && <EarLine session={session} onKeys={onKeys} />}
      {mode.kind === 'asking' && (
        <Asking question={mode.question} onAnswer={onAnswer} onLeave={onLeave} />
      )}
    </section>
  );
}
