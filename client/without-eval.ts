import { config } from 'zod';

/**
 * The page's policy forbids code from text, which zod tries in order to know: caught, but Firefox writes an error at each
 * load. To be imported before any schema is made, as each looks then.
 */
config({ jitless: true });
