import type { VisitEvent } from '../../core/visit/events.ts';
import { visitEventSchema } from '../../core/wire/event-schema.ts';
import type { LogRead } from './event-log.ts';

/** A place in the log and whatever stands there: storage may hand back anything. */
export interface Row {
  readonly seq: number;
  readonly value: unknown;
}

type RowRead =
  | { readonly kind: 'event'; readonly event: VisitEvent }
  | { readonly kind: 'damaged'; readonly seq: number; readonly why: string };

export function readRow({ seq, value }: Row): RowRead {
  if (value === undefined) return { kind: 'damaged', seq, why: 'nothing stands at this place' };
  const parsed = visitEventSchema.safeParse(value);
  if (!parsed.success) {
    const issue = parsed.error.issues[0];
    return { kind: 'damaged', seq, why: `${issue?.path.join('.') ?? ''}: ${issue?.message ?? ''}` };
  }
  if (parsed.data.seq === seq) return { kind: 'event', event: parsed.data };
  return { kind: 'damaged', seq, why: `seq: says ${parsed.data.seq}, stands at ${seq}` };
}

/** Reads each row by itself, so that one damaged record costs only itself. */
export function readRows(rows: readonly Row[]): LogRead {
  const events: VisitEvent[] = [];
  const damaged: { seq: number; why: string }[] = [];
  for (const row of rows) {
    const read = readRow(row);
    if (read.kind === 'event') events.push(read.event);
    else damaged.push({ seq: read.seq, why: read.why });
  }
  return { events, damaged };
}

/** Only a string visit is found by the visit index; anything else is a stray. */
export function visitOf(value: unknown): string | null {
  return textField(value, 'visit');
}

export function textField(value: unknown, field: 'visit' | 'type' | 'id'): string | null {
  if (typeof value !== 'object' || value === null) return null;
  const found: unknown = Reflect.get(value, field);
  return typeof found === 'string' ? found : null;
}

/** A stretch of the log, both ends included. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/**
 * The visit's rows within a stretch of the log, in order. A place that no visit claims (the record is gone, or
 * its visit cannot be read) is counted to the visit of the place before it, the first ones to the first visit,
 * so that no damage goes unreported.
 */
export function rowsOfVisit(
  visit: string,
  rows: readonly Row[],
  { from, to }: Stretch,
): readonly Row[] {
  const values = new Map(rows.map((row) => [row.seq, row.value]));
  const own: Row[] = [];
  let current = rows.map((row) => visitOf(row.value)).find((found) => found !== null);
  for (let seq = from; seq <= to; seq += 1) {
    const value = values.get(seq);
    current = visitOf(value) ?? current;
    if (current === visit) own.push({ seq, value });
  }
  return own;
}

export function bySeq(a: Row, b: Row): number {
  return a.seq - b.seq;
}

/** One line of the exported log: the record as it stands, or with what is wrong with it beside it. */
export function toExportLine(row: Row): string {
  const read = readRow(row);
  if (read.kind === 'event') return `${JSON.stringify(read.event)}\n`;
  return `${toText({ seq: row.seq, damaged: read.why, record: row.value })}\n`;
}

/** Storage can hold what JSON cannot (a bigint, a ring): such a record still leaves a line. */
function toText(line: { seq: number; damaged: string; record: unknown }): string {
  try {
    return JSON.stringify(line);
  } catch {
    return JSON.stringify({ ...line, record: String(line.record) });
  }
}
