// Why: where the app starts in the browser.
import '@fontsource/atkinson-hyperlegible-next/latin-400.css';
import '@fontsource/atkinson-hyperlegible-next/latin-700.css';
import './css/type.css';
import './css/tokens.css';
import './css/page.css';
import './css/lines.css';
import './css/sheets.css';
import './css/review.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';
import { startMode } from './mode/mode.ts';

startMode();
const at = document.getElementById('app');
if (!at) throw new Error('the page has no place for the app');
createRoot(at).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
