import preact from '@preact/preset-vite';
import { defineConfig } from 'vite';

export default defineConfig({
  root: 'client',
  plugins: [preact()],
  worker: { format: 'es' },
  build: { outDir: '../build/client', emptyOutDir: true, target: 'es2022' },
});
