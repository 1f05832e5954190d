// Why: every printed page is one hand: paper, ink, rules, two open typefaces, the same from screen to printer; no script anywhere.
import { escapeHtml } from './escape-html.ts';
import { fontRules } from './page-fonts.ts';
import { grid, ink, numberFont, rule, soft, textFont, verdictColors } from './palette.ts';

const css = `
:root{color-scheme:light}*{box-sizing:border-box}
body{margin:0 auto;max-width:920px;padding:28px 32px 48px;background:#fff;color:${ink};font:16px/1.45 ${textFont}}
h1{font-size:26px;line-height:1.15;margin:0 0 4px;letter-spacing:-.01em}h2{font-size:18px;margin:32px 0 8px;padding-top:10px;border-top:2px solid ${ink}}h3{font-size:15px;margin:20px 0 4px}
p{margin:6px 0}.soft{color:${soft}}.num{font-family:${numberFont};font-size:.88em;overflow-wrap:anywhere}a{color:inherit}
.invented{border:2px solid ${verdictColors.stop};color:${verdictColors.stop};font-weight:700;padding:6px 12px;margin:0 0 16px}
.tally{display:flex;flex-wrap:wrap;gap:4px 22px;margin:14px 0;padding:0;list-style:none}.tally li{display:flex;gap:7px;align-items:center;font-weight:700}.tally b{font:700 22px ${numberFont}}
svg.coach{width:100%;height:auto;display:block;margin:10px 0}
ol.findings{list-style:none;margin:0;padding:0;border-top:1px solid ${rule}}ol.findings>li{display:grid;grid-template-columns:96px minmax(0,1fr) 270px;gap:14px;padding:10px 0;border-bottom:1px solid ${rule};break-inside:avoid}
ol.findings>li.wide{grid-template-columns:96px minmax(0,1fr)}ul.lines.faults{list-style:none;padding:0}ul.faults li{display:grid;grid-template-columns:20px minmax(0,1fr);gap:8px}
.v{display:flex;gap:7px;align-items:center;font-weight:700;align-self:start}.v svg{flex:none}
.stop{color:${verdictColors.stop}}.repair{color:${verdictColors.repair}}.watch{color:${verdictColors.watch}}.sound{color:${verdictColors.sound}}.not-seen{color:${verdictColors['not seen']}}
.what{font-weight:700}.more{font-size:14px;color:${soft};margin:2px 0 0}q{font-style:italic}
.care{border-left:5px solid ${verdictColors.stop};padding:4px 10px;margin:6px 0 0;font-size:14px}
table{border-collapse:collapse;width:100%;font-size:14px;margin:6px 0}th{text-align:left;font-weight:700;border-bottom:1.5px solid ${ink};padding:3px 10px 3px 0}td{vertical-align:top;border-bottom:1px solid ${rule};padding:3px 10px 3px 0}
td.num{white-space:nowrap}ul.lines{margin:4px 0;padding-left:18px}ul.lines li{margin:4px 0}.tag{font-size:12px;color:${soft};border:1px solid ${rule};padding:0 5px;white-space:nowrap}
p.opening{font-weight:700;margin:18px 0 2px}.inline .v{display:inline-flex;vertical-align:-3px}.inline svg,.minute svg{vertical-align:-3px}
.minute{display:grid;grid-template-columns:minmax(0,1.35fr) minmax(0,1fr);gap:0 28px}.minute h2{margin-top:16px}.minute section:only-child{grid-column:1/-1}.minute td:last-child{white-space:nowrap}.minute .faults{font-size:15px}
.photos{display:flex;flex-wrap:wrap;gap:10px;margin:8px 0 2px}.photos figure{margin:0;width:172px}.photos img{display:block;width:100%;height:118px;object-fit:cover;border:1px solid ${rule}}.photos figcaption{font-size:12px;line-height:1.3;color:${soft};margin-top:3px}
a:focus-visible,summary:focus-visible{outline:3px solid ${ink};outline-offset:2px}
footer{margin-top:36px;border-top:1px solid ${rule};padding-top:8px;font-size:13px;color:${soft}}
@media(max-width:700px){body{padding:16px}.minute{display:block}td.num{white-space:normal}table{font-size:13px}td,th{overflow-wrap:anywhere;padding-right:6px}td:first-child{min-width:84px}td:nth-child(3){min-width:52px}.photos figure{width:calc(50% - 5px)}ol.findings>li,ol.findings>li.wide{grid-template-columns:minmax(0,1fr);gap:4px}ol.findings>li>.strip{max-width:100%}}
@media print{@page{size:letter;margin:16mm 15mm}body{padding:0;max-width:none;font-size:10.5pt}h2{break-after:avoid}h3{break-after:avoid}tr{break-inside:avoid}thead{display:table-header-group}}
.grid{background:${grid}}`;

/** The mark on every document of a unit that does not exist. */
export const inventedMark =
  '<p class="invented" role="note">INVENTED UNIT: this vehicle does not exist and is not for sale.</p>';

/** A whole page. `body` is markup made by this room; `title` and `head` texts are escaped here. No script, nothing fetched. */
export const page = (title: string, body: string, head = ''): string =>
  `<!doctype html>\n<html lang="en-US"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width,initial-scale=1">` +
  `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; img-src data: file: 'self'; font-src data:; base-uri 'none'; form-action 'none'">` +
  `<title>${escapeHtml(title)}</title>${head}<style>${fontRules()}${css}</style></head>\n<body>\n${body}\n</body></html>\n`;
