// Why: the pages of docs/generated say what the code holds, so they are made from it and never by hand.
import { parts, stations } from '../../src/catalogue/index.ts';
import { figureCards } from '../../src/figured/index.ts';
import { cautions } from '../../src/judged/caution.ts';
import { rules } from '../../src/judged/rules/index.ts';
import { limits, sources } from '../../src/standards/index.ts';
import { figuresPage } from './figures-page.ts';
import { hearingPages } from './hearing-page.ts';
import { limitsPage, sourcesPage } from './limits-page.ts';
import { partsPage } from './parts-page.ts';
import { rulesPage } from './rules-page.ts';

/** File name in docs/generated -> its text. */
export function generateDocs(): Record<string, string> {
  return {
    'rules.md': rulesPage(rules, stations, cautions),
    'limits.md': limitsPage(limits),
    'sources.md': sourcesPage(sources, limits, rules, figureCards),
    'parts.md': partsPage(parts, stations),
    'figures.md': figuresPage(figureCards),
    ...hearingPages(),
  };
}
