import { openConnection } from './connection.ts';

/** What was learnt of a voice, as text, beside the device's log: it goes with no visit and to no server. */
export interface KeptVoice {
  /** Null where none is kept, or storage is off. */
  readonly read: () => Promise<string | null>;
  /** Null forgets it. False where storage is off. */
  readonly write: (text: string | null) => Promise<boolean>;
}

const KEY = 'voice';

export function createKeptVoice(name = 'gloveside'): KeptVoice {
  const connection = openConnection(name);
  return {
    async read() {
      try {
        const kept = await connection.use((database) => database.get('about', KEY));
        return kept === undefined ? null : String(kept);
      } catch (error) {
        console.error(error);
        return null;
      }
    },
    async write(text) {
      try {
        await connection.use(async (database) => {
          if (text === null) await database.delete('about', KEY);
          else await database.put('about', text, KEY);
        });
        return true;
      } catch (error) {
        console.error(error);
        return false;
      }
    },
  };
}
