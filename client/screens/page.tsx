import { cautionsToWrite } from '../../core/advice/cautions.ts';
import { namesIn } from '../../core/language/names/known-names.ts';
import type { Note } from '../../core/note/note.ts';
import type { VisitState } from '../../core/visit/state.ts';
import type { VisitSummary } from '../offline/event-log.ts';
import type { Happening } from '../state/happenings.ts';
import type { Session } from '../state/session.ts';
import { Bar } from './bar.tsx';
import type { ListenToLevel } from './edge.tsx';
import { Field } from './field.tsx';
import type { ListeningFormProps } from './listening-form.tsx';
import { NotePaper } from './note-paper.tsx';
import { Keypad } from './keypad.tsx';
import type { Judge } from './sheet-model.ts';
import type { PartsFormProps } from './parts-form.tsx';
import { SheetTab } from './sheet-tab.tsx';
import { Strip } from './strip.tsx';
import { visitDate, withDate } from './visit-date.ts';
import { VisitPanel } from './visit-panel.tsx';
import type { VoiceFormProps } from './voice-form.tsx';
import type { VoiceTeaching } from '../teaching/voice-teaching.ts';
import type { WordingFormProps } from './wording-form.tsx';

/** What the screens need besides the session: nothing of it changes while the page lives. */
export interface PageTools {
  readonly send: (happening: Happening) => void;
  readonly onLevel: ListenToLevel;
  readonly listening: ListeningFormProps;
  readonly teaching: VoiceTeaching;
  readonly wording: WordingFormProps;
  readonly spareVoice: VoiceFormProps;
  readonly partsCarried: PartsFormProps['carried'];
  /** Milliseconds since 1970. */
  readonly now: () => number;
  readonly listVisits: () => Promise<readonly VisitSummary[]>;
  readonly exportLog: () => Promise<string>;
  readonly offlineWords: Promise<string>;
  readonly openVisit: (visit: string) => void;
  /** To the server, after it refused. */
  readonly sendAgain: () => void;
  readonly judge: (visit: VisitState) => Judge;
  readonly draftNote: (visit: VisitState, past: readonly VisitState[]) => Note;
  readonly noteText: (note: Note) => string;
}

interface PageProps {
  readonly session: Session;
  readonly tools: PageTools;
}

export function Page({ session, tools }: PageProps) {
  const { send } = tools;
  const words = (said: string): void => send({ kind: 'typed', words: said });
  return (
    <main
      class="page"
      data-tall={session.tall ? '' : undefined}
      data-tab={session.tab}
      data-mode={session.mode.kind}
    >
      <Strip session={session} />
      <Field
        session={session}
        onPress={() => send({ kind: 'pressed' })}
        onAnswer={words}
        onLeave={() => send({ kind: 'questionLeft' })}
        onKeys={() => send({ kind: 'tabChosen', tab: 'keys' })}
        onLevel={tools.onLevel}
        now={tools.now}
      />
      {session.tab !== 'keys' && (
        <Bar
          tab={session.tab}
          onTab={(tab) => send({ kind: 'tabChosen', tab })}
          onWords={words}
          onTooLong={(count, most) => send({ kind: 'typedTooLong', words: count, most })}
        />
      )}
      <section class="panel" key={session.tab} aria-label={session.tab}>
        <OpenTab session={session} tools={tools} onWords={words} />
      </section>
    </main>
  );
}

function OpenTab({ session, tools, onWords }: PageProps & { onWords: (said: string) => void }) {
  const { visit } = session;
  const { send } = tools;
  switch (session.tab) {
    case 'sheet':
      return <SheetTab visit={visit} judge={tools.judge} send={send} onWords={onWords} />;
    case 'note':
      return <NoteTab session={session} tools={tools} />;
    case 'keys':
      return (
        <Keypad
          visit={visit}
          onWords={onWords}
          onDone={() => send({ kind: 'tabChosen', tab: 'sheet' })}
        />
      );
    case 'visit':
      return (
        <VisitPanel
          session={session}
          listVisits={tools.listVisits}
          exportLog={tools.exportLog}
          offlineWords={tools.offlineWords}
          listening={tools.listening}
          teaching={{ teaching: tools.teaching, onTeach: () => send({ kind: 'earLent' }) }}
          wording={tools.wording}
          spareVoice={tools.spareVoice}
          carried={tools.partsCarried}
          onCarried={(text) =>
            send({ kind: 'namesKnown', names: { ...session.names, parts: namesIn(text) } })
          }
          onOpen={tools.openVisit}
          onSendAgain={tools.sendAgain}
          onNewVisit={() => send({ kind: 'newVisitChosen' })}
          onSettings={(settings) => send({ kind: 'settingsChosen', settings })}
        />
      );
  }
}

function NoteTab({ session: { visit, past, memory }, tools }: PageProps) {
  const note = tools.draftNote(visit, past);
  const date = visitDate(visit);
  return (
    <NotePaper
      note={note}
      text={withDate(tools.noteText(note), date)}
      date={date}
      cautions={cautionsToWrite(visit)}
      lastAnswer={memory.lastAnswer}
    />
  );
}
