import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { CautionId, Known } from '../../core/advice/verdict.ts';
import type { Note, NoteSection, NoteTable } from '../../core/note/note.ts';
import { BehindAnswer, CautionSources } from './behind-answer.tsx';
import { Unbroken } from './unbroken.tsx';
import { noteActions, type NoteAction } from './note-actions.ts';

interface NotePaperProps {
  readonly note: Note;
  readonly text: string;
  readonly date: string;
  /** Those of the note's section, in its order. */
  readonly cautions: readonly CautionId[];
  readonly lastAnswer: Known | null;
}

/** The note as the paper it will be, and what to do with it. */
export function NotePaper({ note, text, date, cautions, lastAnswer }: NotePaperProps) {
  return (
    <div class="note-tab">
      <div class="actions">
        {noteActions({ title: note.title, text }).map((action) => (
          <ActionButton key={action.id} action={action} />
        ))}
      </div>
      <article class="paper" data-testid="note">
        <h1>{note.title}</h1>
        {date && (
          <p class="date" data-testid="note-date">
            {date}
          </p>
        )}
        {note.sections.map((section) => (
          <Section key={section.id} section={section}>
            {section.id === 'cautions' && <CautionSources cautions={cautions} />}
          </Section>
        ))}
      </article>
      {lastAnswer && <BehindAnswer answer={lastAnswer} />}
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

interface SectionProps {
  readonly section: NoteSection;
  readonly children: ComponentChildren;
}

function Section({ section, children }: SectionProps) {
  return (
    <section>
      <h2>{section.heading}</h2>
      {section.lines.map((line) => (
        <p key={line}>
          <Unbroken text={line} />
        </p>
      ))}
      {section.table && <Table table={section.table} />}
      {children}
    </section>
  );
}

function Table({ table }: { table: NoteTable }) {
  return (
    <table data-columns={table.columns.length}>
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
              <td key={table.columns[index]} data-column={table.columns[index]?.toLowerCase()}>
                {cell}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
