// Why: the printed report's layout, in Typst. It holds no words of a unit: those come as data and are never read as markup.

/** Reads `sys.inputs.sheet` (JSON: ReportSheet and glyphs by verdict). Letter paper, tagged, with bookmarks. */
export const reportTypst = `
#let s = json(bytes(sys.inputs.sheet))
#let ink = rgb("#1c1b17")
#let soft = rgb("#5d5a50")
#let hair = rgb("#dcd8ca")
#let colors = ("stop": rgb("#a3122a"), "repair": rgb("#b84a00"), "watch": rgb("#8a5a00"), "sound": rgb("#00795a"), "not seen": rgb("#5d5a50"))
#let day = sys.inputs.on.split("-").map(int)
#set document(title: s.title, author: "Walkwright", date: datetime(year: day.at(0), month: day.at(1), day: day.at(2)))
#set text(font: ("Atkinson Hyperlegible Next", "Libertinus Serif"), size: 9.5pt, hyphenate: false, fill: ink, lang: "en", region: "US")
#set par(leading: 0.55em, spacing: 0.7em)
#let num(t, ..more) = text(font: ("B612 Mono", "Libertinus Serif"), size: 0.88em, ..more, t)
#let faint(t) = text(fill: soft, size: 0.92em, t)
#set page(paper: "us-letter", margin: (x: 0.75in, top: 0.8in, bottom: 0.75in),
  header: context if counter(page).get().first() > 1 { faint(grid(columns: (1fr, auto), s.name + ", condition report as of " + s.on, if s.invented [INVENTED UNIT])); v(-4pt); line(length: 100%, stroke: 0.5pt + hair) },
  footer: context faint(grid(columns: (1fr, auto), [What was looked at, by whom and against which limit. Local codes come first.], counter(page).display("1 of 1", both: true))))
#show heading.where(level: 1): it => block(above: 1.5em, below: 0.7em, sticky: true, { line(length: 100%, stroke: 1.4pt + ink); v(-1pt); text(size: 13pt, weight: 700, it.body) })
#show heading.where(level: 2): it => block(above: 1.2em, below: 0.5em, sticky: true, text(size: 10.5pt, weight: 700, it.body))
#set table(stroke: (_, y) => (bottom: if y == 0 { 1pt + ink } else { 0.5pt + hair }), inset: (x: 0pt, y: 3pt), column-gutter: 8pt)
#show table.cell.where(y: 0): set text(weight: 700)
#show table: set text(size: 8.5pt)
#let glyph(v) = box(baseline: 2pt, pdf.artifact(image(bytes(s.glyphs.at(v)), format: "svg", width: 10pt)))
#let word(v) = text(fill: colors.at(v), weight: 700, [#glyph(v) #v])
#let care(t) = block(stroke: (left: 3pt + colors.stop), inset: (left: 6pt, y: 2pt), above: 5pt, text(size: 8.5pt, t))
#let maybe(t, f) = if t != "" { f(t) }
#let numbered(f) = (if f.numbers == "" { "" } else { f.numbers + ". " }) + f.subject
#let pictures(all) = if all.len() == 1 { let p = all.first(); block(above: 6pt, breakable: false, grid(columns: (96pt, 150pt), column-gutter: 8pt, image("/" + p.name, width: 96pt, height: 64pt, fit: "cover", alt: p.says), text(size: 7.5pt, fill: soft, p.says))) } else if all.len() > 0 { block(above: 6pt, breakable: false, grid(columns: (104pt,) * calc.min(4, all.len()), column-gutter: 8pt, row-gutter: 6pt,
  ..all.map(p => { image("/" + p.name, width: 104pt, height: 72pt, fit: "cover", alt: p.says); text(size: 7pt, fill: soft, p.says) }))) }
#let words(r) = faint({ if r.quote != "" { emph("“" + r.quote + "” ") }; r.evidence })
#let rows(f) = if f.rows.len() == 1 {
  let r = f.rows.first()
  let near = (r.near, f.limit).filter(t => t != "").join("; ")
  maybe(r.reading, t => block(above: 4pt, { [Read: ]; strong(t); if near != none { faint("; " + near) } }))
  if r.quote != "" or r.evidence != "" { block(above: 4pt, words(r)) }
} else {
  maybe(f.limit, t => block(above: 4pt, faint("Each " + t)))
  let read = f.rows.any(r => r.reading != "")
  table(columns: if read { (1.1fr, 1fr, 1fr, 1.9fr) } else { (1fr, 3fr) }, table.header(..(if read { ([Where], [Read], [How near], [Said or written]) } else { ([Where], [Said or written]) })),
    ..f.rows.map(r => ((if r.number > 0 { str(r.number) + ". " } else { "" }) + r.place, ..(if read { (r.reading, r.near) } else { () }), words(r))).flatten())
}
#let strip(f) = image(bytes(f.strip), format: "svg", width: 132pt, alt: "Limit strip: " + f.stripSays)
#let finding(f) = block(breakable: f.rows.len() > 4, width: 100%, stroke: (bottom: 0.5pt + hair), inset: (y: 5pt), above: 0pt, below: 0pt,
  grid(columns: if f.strip == "" or f.rows.len() > 1 { (50pt, 1fr) } else { (50pt, 1fr, 132pt) }, column-gutter: 10pt, word(f.verdict), {
    strong(numbered(f)); linebreak(); f.reason
    if f.strip != "" and f.rows.len() > 1 { block(above: 5pt, strip(f)) }
    rows(f)
    let next = (if f.next == "" { "" } else { (if f.who == "" { "How to look: " } else { "What to do: " }) + f.next }, if f.who == "" { "" } else if f.next == "" { "For " + f.who + "." } else { "(" + f.who + ")" }).filter(t => t != "")
    if next.len() > 0 { block(above: 4pt, faint(next.join(" "))) }
    maybe(f.cost, t => block(above: 4pt, faint("Estimate: " + t)))
    maybe(f.asked, t => block(above: 4pt, faint("Asked for on the walk, " + t)))
    maybe(f.caution, care)
    pictures(f.photos)
  }, ..if f.strip == "" or f.rows.len() > 1 { () } else { (strip(f),) }))
#let readings(all) = table(columns: (1.1fr, 2fr, 0.62fr, 1.1fr), table.header[What][Reading][How known][Where from],
  ..all.map(r => (r.what, r.says, r.how, faint(r.evidence))).flatten())
#let short(f) = grid(columns: (13pt, 1fr), glyph(f.verdict), { strong(numbered(f) + ": "); f.short })

#if s.invented { block(stroke: 1.2pt + colors.stop, inset: 6pt, width: 100%, text(fill: colors.stop, weight: 700)[INVENTED UNIT: this vehicle does not exist and is not for sale.]) }
#show title: it => block(above: 10pt, below: 9pt, text(size: 22pt, weight: 700, it.body))
#title(s.name)
#text(fill: soft, "Condition report · " + s.under)
#v(4pt)
#grid(columns: s.tally.len(), column-gutter: 18pt, ..s.tally.map(t => box({ text(size: 15pt, fill: colors.at(t.verdict), num(str(t.count), weight: 700)); [ ]; word(t.verdict) })))
#for t in s.summary { block(above: 7pt, t) }
#v(2pt)
#let stops = { strong[Stops and repairs]; for f in s.short { block(above: 4.5pt, text(size: 8.5pt, short(f))) }; if s.shortMore > 0 { block(above: 4.5pt, faint("and " + str(s.shortMore) + " more on the next pages")) } }
#let costs = { strong[Costliest repairs]; block(above: 4pt, faint[The shop's estimates, labor and parts; in brackets the faults they mend.]); for c in s.costs { block(above: 4.5pt, text(size: 8.5pt, { c.what; if c.numbers != "" { faint(" (" + c.numbers + ")") }; [: ]; strong(c.cost) })) } }
#if s.short.len() > 0 { if s.costs.len() > 0 { grid(columns: (1.45fr, 1fr), column-gutter: 18pt, stops, costs) } else { stops } }
#for d in s.drawings { block(above: 7pt, below: 0pt, width: 100%, align(center, image(bytes(d.svg), format: "svg", width: if s.short.len() > 8 { 65% } else { 82% }, alt: d.words))) }
#pagebreak(weak: true)

#if s.first.len() > 0 [= What must be settled first]
#if s.first.len() > 0 { for t in s.howTo { block(faint(t)) } }
#for f in s.first { finding(f) }
#if s.watch.len() > 0 [= What to watch]
#for f in s.watch { finding(f) }
#if s.conflicts.len() > 0 { heading[Not settled: sources disagree]; readings(s.conflicts) }

= Station by station
#for st in s.stations { if st.faults.len() + st.sound.len() + st.open.len() + st.readings.len() + st.notSeen.len() > 0 {
  heading(level: 2, st.name + (if st.coverage == "" { "" } else { ", " + st.coverage }))
  if st.faults.len() > 0 { block({ for (i, f) in st.faults.enumerate() { if i > 0 { [; ] }; glyph(f.verdict); [ ]; numbered(f) } }) }
  if st.sound.len() > 0 { block({ word("sound"); [ ]; faint(st.sound.join("; ") + ".") }) }
  if st.open.len() > 0 { block({ word("not seen"); [ ]; faint(st.open.join("; ") + ".") }) }
  if st.notSeen.len() > 0 { block(faint("Also not seen: " + st.notSeen.join(", ") + ".")) }
  if st.readings.len() > 0 { readings(st.readings) }
  pictures(st.photos)
} }

#if s.unknowns.len() > 0 { heading[Asked for and not known]; readings(s.unknowns) }
#if s.figures.len() > 0 [= Figures]
#for f in s.figures { block(breakable: false, width: 100%, {
  heading(level: 2, { f.asks; if f.place != "" { ", " + f.place }; [  ]; f.answer })
  if f.places.len() > 0 { table(columns: (0.8fr, 0.6fr, 2.4fr), table.header[Where][Answer][From], ..f.places.map(p => (p.place, strong(p.answer), faint(p.from))).flatten()); block(faint[Worked out for the first of them:]) }
  if f.inputs.len() > 0 { table(columns: (1.3fr, 1fr, 1.6fr), table.header[From][Value][How known], ..f.inputs.map(i => (i.what, i.value, faint(i.from))).flatten()) }
  block(faint({ "Formula: " + f.formula + ". "; if f.working.len() > 0 { "Working: "; num(f.working.join("; ")); "." } }))
  block(faint({ "Left out: " + f.neglects + " " + f.surer + " " + f.note }))
  block(faint("Source: " + f.cites.join(". ") + "."))
}) }
#if s.gaps.len() > 0 { heading[Figures that cannot be worked out yet]; for g in s.gaps { block(above: 5pt, { g.asks; if g.place != "" { " (" + g.place + ")" }; [ ]; faint(g.gap) }) } }

#if s.sources.len() > 0 [= Sources, by how binding they are]
#for g in s.sources { heading(level: 2, g.standing); for so in g.sources { block(above: 7pt, { strong(so.title + ". "); faint({ so.scope; if so.address != "" { [ ]; num(so.address) } }); block(above: 4pt, inset: (left: 10pt), faint(so.says.join("; ") + "." + (if so.read == "" { "" } else { " (" + so.read + ")" }))) }) } }

= How this was made
#for t in s.method { par(t) }
`;
