const QUIET_DB = -60;
const LOUD_DB = -10;

/** Loudness as a length between 0 and 1: a whisper across the room to a shout at the microphone. */
export function levelFromDb(levelDb: number): number {
  return Math.min(1, Math.max(0, (levelDb - QUIET_DB) / (LOUD_DB - QUIET_DB)));
}
