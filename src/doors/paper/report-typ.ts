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
#let finding(f) = block(breakable: false, width: 100%, stroke: (bottom: 0.5pt + hair), inset: (y: 5pt), above: 0pt, below: 0pt,
  grid(columns: if f.strip == "" { (58pt, 1fr) } else { (58pt, 1fr, 148pt) }, column-gutter: 10pt, word(f.verdict), {
    strong((if f.number > 0 { str(f.number) + ". " } else { "" }) + f.subject); linebreak(); f.reason
    let near = (f.near, f.limit).filter(t => t != "").join("; ")
    maybe(f.reading, t => block(above: 4pt, faint({ [Read: ]; num(t); if near != none { ", " + near } })))
    if f.quote != "" or f.evidence != "" { block(above: 4pt, faint({ if f.quote != "" { emph("“" + f.quote + "” ") }; f.evidence })) }
    maybe(f.next, t => block(above: 4pt, faint((if f.who == "" { "How to look: " } else { "What to do: " }) + t + (if f.who == "" { "" } else { " (" + f.who + ")" }))))
    maybe(f.caution, care)
  }, ..if f.strip == "" { () } else { (image(bytes(f.strip), format: "svg", width: 148pt, alt: "Limit strip: " + f.reading + ", " + f.near + ", " + f.limit),) }))
#let readings(all) = table(columns: (1.5fr, 1fr, 0.75fr, 1.3fr), table.header[What][Reading][How known][Where from],
  ..all.map(r => (r.what, num(r.says), r.how, faint(r.evidence))).flatten())

#if s.invented { block(stroke: 1.2pt + colors.stop, inset: 6pt, width: 100%, text(fill: colors.stop, weight: 700)[INVENTED UNIT: this vehicle does not exist and is not for sale.]) }
#show title: it => block(above: 10pt, below: 9pt, text(size: 22pt, weight: 700, it.body))
#title(s.name)
#text(fill: soft, "Condition report · " + s.under)
#v(4pt)
#grid(columns: s.tally.len(), column-gutter: 18pt, ..s.tally.map(t => box({ text(size: 15pt, fill: colors.at(t.verdict), num(str(t.count), weight: 700)); [ ]; word(t.verdict) })))
#v(2pt)
#for d in s.drawings { block(above: 6pt, below: 6pt, width: 100%, align(center, image(bytes(d.svg), format: "svg", width: if d.tall { 86% } else { 94% }, alt: d.words))) }
#for t in s.summary { block(above: 5pt, t) }
#if s.short.len() > 0 {
  block(above: 8pt, strong[Stops and repairs])
  grid(columns: (1fr, 1fr), column-gutter: 16pt, row-gutter: 5pt, ..s.short.map(f => [#glyph(f.verdict) #str(f.number). #f.subject #if f.near != "" { faint(f.near) }]))
}
#if s.shortMore > 0 { block(faint("and " + str(s.shortMore) + " more on the next pages")) }
#pagebreak(weak: true)

#if s.first.len() > 0 [= What must be settled first]
#for f in s.first { finding(f) }
#if s.watch.len() > 0 [= What to watch]
#for f in s.watch { finding(f) }
#if s.conflicts.len() > 0 { heading[Not settled: sources disagree]; readings(s.conflicts) }

= Station by station
#for st in s.stations { if st.findings.len() + st.open.len() + st.readings.len() + st.notSeen.len() > 0 {
  heading(level: 2, st.name + (if st.coverage == "" { "" } else { ", " + st.coverage }))
  for v in ("stop", "repair", "watch") { let here = st.findings.filter(f => f.verdict == v); if here.len() > 0 { block({ word(v); [ ]; here.map(f => (if f.number > 0 { str(f.number) + ". " } else { "" }) + f.subject).join("; ") }) } }
  let sound = st.findings.filter(f => f.verdict == "sound")
  if sound.len() > 0 { block({ word("sound"); [ ]; faint(sound.map(f => f.subject + " (" + f.asks.trim("?", at: end) + (if f.near == "" { "" } else { ": " + f.near }) + ")").join("; ")) }) }
  if st.open.len() > 0 { block({ word("not seen"); [ ]; faint(st.open.join("; ") + ".") }) }
  if st.notSeen.len() > 0 { block(faint("Also not seen: " + st.notSeen.join(", ") + ".")) }
  if st.readings.len() > 0 { readings(st.readings) }
} }

#if s.unknowns.len() > 0 { heading[Asked for and not known]; readings(s.unknowns) }
#if s.figures.len() > 0 [= Figures]
#for f in s.figures { block(breakable: false, width: 100%, {
  heading(level: 2, { f.asks; if f.place != "" { ", " + f.place }; [  ]; num(f.answer) })
  if f.inputs.len() > 0 { table(columns: (1.3fr, 1fr, 1.6fr), table.header[From][Value][How known], ..f.inputs.map(i => (i.what, num(i.value), faint(i.from))).flatten()) }
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
