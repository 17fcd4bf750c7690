import { useState } from 'preact/hooks';
import type { Note } from '../../core/note/note.ts';
import type { VisitState } from '../../core/visit/state.ts';
import type { VisitSummary } from '../offline/event-log.ts';
import type { Happening } from '../state/happenings.ts';
import type { Session, Tab } from '../state/session.ts';
import { Bar } from './bar.tsx';
import type { ListenToLevel } from './edge.tsx';
import { Field } from './field.tsx';
import { NotePaper } from './note-paper.tsx';
import { ledgerLines, type Judge } from './sheet-model.ts';
import { Sheet } from './sheet.tsx';
import { Strip } from './strip.tsx';
import { VisitPanel } from './visit-panel.tsx';

/** What the screens need besides the session: nothing of it changes while the page lives. */
export interface PageTools {
  readonly send: (happening: Happening) => void;
  readonly onLevel: ListenToLevel;
  readonly listVisits: () => Promise<readonly VisitSummary[]>;
  readonly exportLog: () => Promise<string>;
  readonly offlineWords: Promise<string>;
  readonly openVisit: (visit: string) => void;
  readonly judge: (visit: VisitState) => Judge;
  readonly draftNote: (visit: VisitState) => Note;
  readonly noteText: (note: Note) => string;
}

interface PageProps {
  readonly session: Session;
  readonly tools: PageTools;
}

export function Page({ session, tools }: PageProps) {
  const [tall, setTall] = useState(false);
  const { send } = tools;
  const words = (said: string): void => send({ kind: 'words', words: said, by: 'typing' });
  const choose = (tab: Tab): void => {
    setTall(tab !== session.tab || !tall);
    send({ kind: 'tabChosen', tab });
  };
  return (
    <main class="page" data-tall={tall ? '' : undefined} data-mode={session.mode.kind}>
      <Strip session={session} />
      <Field
        session={session}
        onPress={() => send({ kind: 'pressed' })}
        onAnswer={words}
        onLeave={() => send({ kind: 'questionLeft' })}
        onLevel={tools.onLevel}
      />
      <Bar tab={session.tab} onTab={choose} onWords={words} />
      <section class="panel" key={session.tab} aria-label={session.tab}>
        <OpenTab session={session} tools={tools} />
      </section>
    </main>
  );
}

function OpenTab({ session, tools }: PageProps) {
  const { visit } = session;
  const { send } = tools;
  switch (session.tab) {
    case 'sheet':
      return (
        <Sheet
          lines={ledgerLines(visit, tools.judge(visit))}
          onBlank={(quantity) => send({ kind: 'readingWanted', quantity })}
        />
      );
    case 'note':
      return <NoteTab visit={visit} tools={tools} />;
    case 'visit':
      return (
        <VisitPanel
          session={session}
          listVisits={tools.listVisits}
          exportLog={tools.exportLog}
          offlineWords={tools.offlineWords}
          onOpen={tools.openVisit}
          onNewVisit={() => send({ kind: 'newVisitChosen' })}
          onSettings={(settings) => send({ kind: 'settingsChosen', settings })}
        />
      );
  }
}

function NoteTab({ visit, tools }: { visit: VisitState; tools: PageTools }) {
  const note = tools.draftNote(visit);
  return <NotePaper note={note} text={tools.noteText(note)} />;
}
