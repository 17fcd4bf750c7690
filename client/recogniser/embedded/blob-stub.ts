/** In place of blob-polyfill, whose file needs `window` and so breaks the worker. */
export const Blob = globalThis.Blob;
