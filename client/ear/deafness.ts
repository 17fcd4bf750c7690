/** Why the page cannot hear. Typing works in every one of these. */
export type Deafness =
  | 'refused'
  | 'noMicrophone'
  | 'microphoneBusy'
  | 'takenAway'
  | 'plainAddress'
  | 'soundHeldBack'
  /** By a call or another program: it passes by itself. */
  | 'interrupted'
  | 'recogniserFailed';
