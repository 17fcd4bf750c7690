import type { MiddlewareHandler } from 'hono';
import { secureHeaders } from 'hono/secure-headers';

/**
 * What the page may do: run its own scripts, workers and WebAssembly, talk to this server, use the
 * microphone; nothing from elsewhere, and inside nobody's frame. It is isolated (COOP, COEP), which costs
 * nothing as every file is its own, and lets WebAssembly share memory between workers.
 */
export function safetyHeaders(): MiddlewareHandler {
  return secureHeaders({
    contentSecurityPolicy: {
      defaultSrc: ["'self'"],
      scriptSrc: ["'self'", "'wasm-unsafe-eval'"],
      workerSrc: ["'self'"],
      // The embedded engine hands its own worker the model as blob: addresses; nothing leaves by them.
      // A speech model that is chosen by name comes from the hub, and from where the hub keeps large files.
      connectSrc: ["'self'", 'blob:', 'https://huggingface.co', 'https://*.hf.co'],
      styleSrc: ["'self'"],
      imgSrc: ["'self'", 'data:'],
      mediaSrc: ["'self'", 'blob:'],
      objectSrc: ["'none'"],
      baseUri: ["'none'"],
      formAction: ["'none'"],
      frameAncestors: ["'none'"],
    },
    permissionsPolicy: {
      microphone: ['self'],
      screenWakeLock: ['self'],
      camera: [],
      geolocation: [],
    },
    crossOriginEmbedderPolicy: true,
    xFrameOptions: 'DENY',
    // Off on purpose: a browser that has once seen it refuses plain http://localhost for half a year, and
    // will not let anyone past a certificate that this server made anew.
    strictTransportSecurity: false,
  });
}
