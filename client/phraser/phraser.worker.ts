import { parseLexicon } from '../../prompts/decode/lexicon.ts';
import { createSlotPhraser } from '../../prompts/decode/slot-phraser.ts';
import { createPhraserDesk } from './phraser-desk.ts';
import type { FromPhraser, ToPhraser } from './protocol.ts';
import { loadSlotWriter } from './slot-writer.ts';

/** The phrasing model's own thread: neither the page nor the recogniser waits for it. */
const desk = createPhraserDesk(load, (message: FromPhraser) => postMessage(message));

addEventListener('message', ({ data }: MessageEvent<ToPhraser>) => void desk(data));

async function load(modelUrl: string) {
  const address = `${modelUrl}/lexicon.json`;
  const [response, write] = await Promise.all([fetch(address), loadSlotWriter(modelUrl)]);
  const lexicon = response.ok ? parseLexicon(await response.text()) : null;
  if (lexicon === null) throw new Error(`${address} did not come whole (${response.status})`);
  return createSlotPhraser(write, lexicon);
}
