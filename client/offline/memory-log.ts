import type { VisitEvent } from '../../core/visit/events.ts';
import { CLOSED, appendFailure, planAppend } from './append-plan.ts';
import type { AppendResult, DeviceLog, LogRead, VisitSummary } from './event-log.ts';
import { createListeners } from './listeners.ts';
import {
  type Row,
  bySeq,
  readRow,
  readRows,
  rowsOfVisit,
  textField,
  toExportLine,
  visitOf,
} from './log-rows.ts';

/** What outlives a log in memory: hand it to a second one to stand for a page killed and reopened. */
export interface MemoryDisk {
  readonly device: string;
  readonly records: Map<number, unknown>;
  confirmedSeq: number;
  readonly leftOut: Set<number>;
}

export function createMemoryDisk(device = '01KAXDEVCE0000000000000000'): MemoryDisk {
  return { device, records: new Map(), confirmedSeq: 0, leftOut: new Set() };
}

/** A log for tests and for a page whose storage does not open: nothing of it outlives the page here. */
export function createMemoryLog(disk: MemoryDisk = createMemoryDisk()): DeviceLog {
  let open = true;
  const { tell, onChange } = createListeners();
  const log: DeviceLog = {
    device: disk.device,
    get lastSeq() {
      return lastSeqOf(disk);
    },
    get canWrite() {
      return open;
    },
    append(events) {
      const result = open ? appendTo(disk, events) : CLOSED;
      if (result.kind === 'kept') tell(events);
      return Promise.resolve(result);
    },
    readVisit: (visit) => Promise.resolve(readVisit(disk, visit)),
    openVisit: () => Promise.resolve(openVisitOf(disk)),
    visits: () => Promise.resolve(summariesOf(disk)),
    unsynced: () => Promise.resolve(rowsAfter(disk, disk.confirmedSeq).length),
    confirmedSeq: () => Promise.resolve(disk.confirmedSeq),
    leftOut: () => Promise.resolve(disk.leftOut.size),
    confirm(seq, leftOut = []) {
      disk.confirmedSeq = seq;
      for (const place of leftOut) disk.leftOut.add(place);
      return Promise.resolve();
    },
    readAfter: (seq, limit) => Promise.resolve(readRows(rowsAfter(disk, seq).slice(0, limit))),
    exportLog: () => Promise.resolve(rowsAfter(disk, 0).map(toExportLine).join('')),
    onChange,
    close() {
      open = false;
    },
  };
  return log;
}

function lastSeqOf(disk: MemoryDisk): number {
  return Math.max(0, ...disk.records.keys());
}

function rowsAfter(disk: MemoryDisk, after: number): readonly Row[] {
  const rows = [...disk.records].map(([seq, value]) => ({ seq, value }));
  return rows.filter((row) => row.seq > after).toSorted(bySeq);
}

function appendTo(disk: MemoryDisk, events: readonly VisitEvent[]): AppendResult {
  const plan = planAppend(events, {
    device: disk.device,
    lastSeq: lastSeqOf(disk),
    taken: disk.records,
  });
  if (plan.kind === 'refused') return plan.failure;
  const ids = new Set(rowsAfter(disk, 0).map((row) => textField(row.value, 'id')));
  const repeated = plan.events.find((event) => ids.has(event.id));
  if (repeated !== undefined) return appendFailure('unknown', `Event ${repeated.id} has a place.`);
  for (const event of plan.events) disk.records.set(event.seq, structuredClone(event));
  return { kind: 'kept' };
}

function readVisit(disk: MemoryDisk, visit: string): LogRead {
  const whole = { from: 1, to: lastSeqOf(disk) };
  return readRows(rowsOfVisit(visit, rowsAfter(disk, 0), whole));
}

function openVisitOf(disk: MemoryDisk): string | null {
  const visits = rowsAfter(disk, 0).flatMap((row) => visitOf(row.value) ?? []);
  const visit = visits.at(-1) ?? null;
  return visit === null || isFinished(disk, visit) ? null : visit;
}

function summariesOf(disk: MemoryDisk): readonly VisitSummary[] {
  const visits = new Set(rowsAfter(disk, 0).flatMap((row) => visitOf(row.value) ?? []));
  return [...visits].reverse().map((visit) => summarise(disk, visit));
}

function summarise(disk: MemoryDisk, visit: string): VisitSummary {
  const rows = rowsAfter(disk, 0).filter((row) => visitOf(row.value) === visit);
  const readable = rows.map(readRow).find((read) => read.kind === 'event');
  return {
    visit,
    openedAt: readable?.kind === 'event' ? readable.event.at : 0,
    finished: isFinished(disk, visit),
    events: rows.length,
  };
}

function isFinished(disk: MemoryDisk, visit: string): boolean {
  return [...disk.records.values()].some(
    (value) => visitOf(value) === visit && textField(value, 'type') === 'visitFinished',
  );
}
