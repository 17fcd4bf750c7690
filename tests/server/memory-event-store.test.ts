import { eventStoreContract } from '../contracts/event-store.ts';
import { createMemoryEventStore } from '../support/memory-event-store.ts';

eventStoreContract('in memory', () => {
  // Its disk is the store itself: closing forgets nothing until the harness is thrown away.
  const store = createMemoryEventStore();
  return Promise.resolve({ open: () => store, discard: () => Promise.resolve() });
});
