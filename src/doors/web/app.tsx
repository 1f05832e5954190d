// Why: which address shows which page.
import { Route, Switch } from 'wouter';
import { AboutProvider } from './ask/about.tsx';
import { Mishap } from './ask/mishap.tsx';
import { WaitingBanner } from './kept/waiting-banner.tsx';
import { UnitPage } from './unit/unit-page.tsx';
import { Yard } from './yard/yard.tsx';

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
            {(params) => <UnitPage key={params.unit} unit={params.unit} sheet={params.sheet} />}
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
