import './shell/no-eval.ts';
import '@fontsource-variable/source-sans-3';
import { RouterProvider } from '@tanstack/react-router';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import './shell/tokens.css';
import './shell/base.css';
import { router } from './shell/routes.tsx';

const root = document.getElementById('root');
if (root)
  createRoot(root).render(
    <StrictMode>
      <RouterProvider router={router} />
    </StrictMode>,
  );
