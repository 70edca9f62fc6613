import react from '@vitejs/plugin-react';
import { defaultClientConditions, defineConfig } from 'vite';

export default defineConfig({
  root: import.meta.dirname,
  plugins: [react()],
  // Vite turns top-level `const` into `var`; look-up tables are then no constants to the optimiser (2.4 times slower, measured).
  build: { rolldownOptions: { output: { topLevelVar: false } } },
  worker: { format: 'es', rolldownOptions: { output: { topLevelVar: false } } },
  resolve: { conditions: ['source', ...defaultClientConditions] },
  // The short form would rename the host; the server takes changes only from a page of the very host it is asked for.
  server: { proxy: { '/api': { target: 'http://127.0.0.1:4680', changeOrigin: false } } },
});
