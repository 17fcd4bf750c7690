import { createMemoryDisk, createMemoryLog } from '../../client/offline/memory-log.ts';
import { eventLogContract } from '../contracts/event-log.ts';

eventLogContract('in memory', () => {
  const disk = createMemoryDisk();
  return {
    open: () => Promise.resolve(createMemoryLog(disk)),
    damage(seq, value) {
      if (value === undefined) disk.records.delete(seq);
      else disk.records.set(seq, value);
      return Promise.resolve();
    },
  };
});
