// Why: how the app in the browser is built, and how it reaches a server while somebody works on it.
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

export default defineConfig({
  root: 'src/doors/web',
  plugins: [react()],
  build: { outDir: '../../../dist/web', emptyOutDir: true, target: 'es2023', assetsInlineLimit: 0 },
  server: { proxy: { '/api': 'http://localhost:4173' } },
});
