import type { DraftUtterance } from './told.ts';

const STORY =
  /^(?:(?:so|and|ok|okay|well|yeah|yep|right|hey|uh|um|basically|alright|all right),? )*(what happened (?:here |there |with it |to it )?(?:was|is),? .+[^?])$/i;

/** "So what happened was the fan died and it tripped" tells what the cause was, and asks nothing: kept whole, in those words. */
export function tellWhatHappened(all: DraftUtterance): void {
  const story = STORY.exec(all.text.trim())?.[1];
  if (story === undefined) return;
  all.questions = all.questions.filter(({ ask }) => ask !== 'causes');
  all.remarks = [story];
}
