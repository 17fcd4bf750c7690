import { useEffect, useRef } from 'preact/hooks';
import type { QuantityId } from '../../core/terms/quantities.ts';
import type { LedgerLine } from './sheet-model.ts';

interface SheetProps {
  readonly lines: readonly LedgerLine[];
  /** How many questions stand above it. */
  readonly questions: number;
  readonly onBlank: (quantity: QuantityId) => void;
}

/** A ledger: every reading in its place, blanks to be pressed and answered with a bare number. */
export function Sheet({ lines, questions, onBlank }: SheetProps) {
  const body = useRef<HTMLTableSectionElement>(null);
  const shown = lines.find((line) => line.newest) ?? lines.find((line) => line.wanted);
  const place = shown && `${shown.id} ${shown.before ?? ''} ${shown.after ?? ''}`;
  // WebKit does not hold the rows in their place when something comes to stand above them.
  useEffect(() => {
    const row = body.current?.querySelector<HTMLElement>('[data-newest]');
    const panel = row?.closest('.panel');
    if (row && panel) panel.scrollTop += offsetUnderHead(row, panel);
  }, [place, questions]);
  return (
    <table class="ledger">
      <thead>
        <tr>
          <th scope="col">reading</th>
          <th scope="col">before</th>
          <th scope="col">after</th>
          <th scope="col">target</th>
        </tr>
      </thead>
      <tbody ref={body}>
        {lines.map((line) => (
          <SheetLine key={line.id} line={line} onBlank={onBlank} />
        ))}
      </tbody>
    </table>
  );
}

interface SheetLineProps {
  readonly line: LedgerLine;
  readonly onBlank: SheetProps['onBlank'];
}

function SheetLine({ line, onBlank }: SheetLineProps) {
  return (
    <tr
      data-testid={`sheet-row-${line.id}`}
      data-newest={line.newest ? '' : undefined}
      data-wanted={line.wanted ? '' : undefined}
    >
      <th scope="row">
        {line.name} <span class="unit-symbol">{line.unit}</span>
      </th>
      {line.before === null && line.after === null ? (
        <Blank line={line} onBlank={onBlank} />
      ) : (
        <>
          <td data-testid="before">{line.before ?? '–'}</td>
          <td data-testid="after">{line.after ?? '–'}</td>
        </>
      )}
      <td>
        <span data-testid="target">{line.target ?? ''}</span>
        {line.off && <span class="off"> {line.off}</span>}
      </td>
    </tr>
  );
}

function Blank({ line, onBlank }: SheetLineProps) {
  const words = line.wanted ? 'say it' : 'take it';
  return (
    <td class="blank" colSpan={2}>
      <button
        type="button"
        aria-label={`${words}: ${line.name}`}
        onClick={() => onBlank(line.quantity)}
      >
        {words}
      </button>
    </td>
  );
}

/** How far to scroll so that the row stands whole under the sticky head. */
function offsetUnderHead(row: HTMLElement, panel: Element): number {
  const head = row.closest('table')?.tHead?.getBoundingClientRect().height ?? 0;
  return row.getBoundingClientRect().top - panel.getBoundingClientRect().top - head;
}
