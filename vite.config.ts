// Why: how the app in the browser is built, and how it reaches a server while somebody works on it.
import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

export default defineConfig({
  root: fileURLToPath(new URL('src/doors/web', import.meta.url)),
  plugins: [react()],
  build: {
    outDir: '../../../dist/web',
    emptyOutDir: true,
    target: 'es2023',
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 900,
  },
  server: { proxy: { '/api': 'http://localhost:4173' } },
});
