import { useState } from 'preact/hooks';
import type { Note, NoteSection, NoteTable } from '../../core/note/note.ts';
import { noteActions, type NoteAction } from './note-actions.ts';

interface NotePaperProps {
  readonly note: Note;
  readonly text: string;
}

/** The note as the paper it will be, and what to do with it. */
export function NotePaper({ note, text }: NotePaperProps) {
  return (
    <div class="note-tab">
      <div class="actions">
        {noteActions({ title: note.title, text }).map((action) => (
          <ActionButton key={action.id} action={action} />
        ))}
      </div>
      <article class="paper" data-testid="note">
        <h1>{note.title}</h1>
        {note.sections.map((section) => (
          <Section key={section.id} section={section} />
        ))}
      </article>
    </div>
  );
}

function ActionButton({ action }: { action: NoteAction }) {
  const [told, setTold] = useState('');
  const run = async (): Promise<void> => {
    try {
      await action.run();
      setTold(action.done);
    } catch {
      setTold(`cannot ${action.label}`);
    }
  };
  return (
    <button type="button" data-testid={`note-${action.id}`} onClick={() => void run()}>
      {told || action.label}
    </button>
  );
}

function Section({ section }: { section: NoteSection }) {
  return (
    <section>
      <h2>{section.heading}</h2>
      {section.lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
      {section.table && <Table table={section.table} />}
    </section>
  );
}

function Table({ table }: { table: NoteTable }) {
  return (
    <table>
      <thead>
        <tr>
          {table.columns.map((column) => (
            <th key={column} scope="col">
              {column}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {table.rows.map((row) => (
          <tr key={row.join('|')}>
            {row.map((cell, index) => (
              <td key={table.columns[index]}>{cell}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
