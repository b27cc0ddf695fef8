import '@fontsource/inter/latin-400.css';
import '@fontsource/inter/latin-600.css';
import '@fontsource/inter/latin-700.css';
import '@fontsource/inter/latin-800.css';
import './look/theme.css';
import './look/base.css';
import './look/layout.css';
import './look/ticket.css';
import './look/underSlip.css';
import './look/panels.css';
import './look/pourDay.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './App.tsx';
import { boot } from './boot.ts';
import { SessionContext } from './SessionContext.ts';
import { keptSpeech } from './speech.ts';
import { wordsFor } from './words/words.ts';

const place = document.getElementById('root');
if (!place) throw new Error('The page has no place for the app.');

const root = createRoot(place);
try {
  const { session, desk } = await boot();
  root.render(
    <StrictMode>
      <SessionContext value={session}>
        <App desk={desk} />
      </SessionContext>
    </StrictMode>,
  );
} catch (error) {
  const why = error instanceof Error ? error.message : String(error);
  const { screen, terms } = keptSpeech();
  root.render(<p className="opening">{wordsFor(screen, terms).app.cantStart(why)}</p>);
  throw error;
}
