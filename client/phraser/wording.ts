import type { DeviceChoice } from '../offline/device-choice.ts';
import type { PagePhraser } from './worker-phraser.ts';

/** How answers are worded on this device. */
export const WORDINGS = ['varied', 'plain'] as const;
export type WordingChoice = (typeof WORDINGS)[number];

/** The phraser and the choice to do without it. */
export interface Wording {
  /** Called once the page is drawn: it loads in the background, where it is wanted. */
  readonly start: () => void;
  readonly chosen: () => WordingChoice;
  readonly choose: (choice: WordingChoice) => void;
}

export function createWording(phraser: PagePhraser, choice: DeviceChoice<WordingChoice>): Wording {
  const obey = (): void => {
    if (choice.read() === 'varied') phraser.start();
    else phraser.stop();
  };
  return {
    start: obey,
    chosen: choice.read,
    choose(chosen) {
      choice.choose(chosen);
      obey();
    },
  };
}
