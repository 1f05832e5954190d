// Why: which address shows which page.
import { lazy, Suspense } from 'react';
import { Route, Switch } from 'wouter';
import { AboutProvider } from './ask/about.tsx';
import { Mishap } from './ask/mishap.tsx';
import { WaitingBanner } from './kept/waiting-banner.tsx';
import { Yard } from './yard/yard.tsx';

// The yard is seen at once; what works a unit out comes after it.
const UnitPage = lazy(() => import('./unit/unit-page.tsx').then((m) => ({ default: m.UnitPage })));

export function App() {
  return (
    <Mishap>
      <a className="skip" href="#sheet">
        Skip to the sheet
      </a>
      <WaitingBanner />
      <AboutProvider>
        <Switch>
          <Route path="/">
            <Yard />
          </Route>
          <Route path="/unit/:unit/:sheet?">
            {(params) => (
              <Suspense fallback={<p className="lead soft">Opening the unit</p>}>
                <UnitPage key={params.unit} unit={params.unit} sheet={params.sheet} />
              </Suspense>
            )}
          </Route>
          <Route>
            <main className="lead" id="sheet">
              <h1>There is nothing at this address.</h1>
              <p>
                <a href="/">Go to the yard</a>, where every unit stands.
              </p>
            </main>
          </Route>
        </Switch>
      </AboutProvider>
    </Mishap>
  );
}
