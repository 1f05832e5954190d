// Why: paper has one ink and five verdict colors (Okabe-Ito, darkened until they read on paper); everything printed takes them from here.
import type { Verdict } from '../../judged/rule.ts';

export const ink = '#1c1b17';
export const soft = '#5d5a50';
export const rule = '#dcd8ca';
export const grid = '#ece9de';
export const sheet = '#ffffff';

export const verdictColors: Readonly<Record<Verdict, string>> = {
  stop: '#a3122a',
  repair: '#b84a00',
  watch: '#8a5a00',
  sound: '#00795a',
  'not seen': '#5d5a50',
};

/** Names of fonts in the order in which they are tried. */
export const textFont = "'Atkinson Hyperlegible Next','DejaVu Sans',system-ui,sans-serif";
export const numberFont = "'B612 Mono','DejaVu Sans Mono',ui-monospace,monospace";
