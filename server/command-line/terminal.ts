/** What a command may do to the outside: read sentences, print, complain. Tests give one of their own. */
export interface Terminal {
  /** Standard input as it arrives, decoded, cut anywhere. */
  readonly input: AsyncIterable<string>;
  /** Resolves when the line has been taken, so that a slow reader slows the writer instead of filling memory. */
  print(line: string): Promise<void>;
  complain(line: string): void;
  /** Resolves when the user or the system asks the program to stop. */
  stopAsked(): Promise<void>;
}

/** 0: all done. 1: something given could not be read or opened. 2: called wrongly. */
export type ExitStatus = 0 | 1 | 2;
