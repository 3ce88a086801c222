/** Page, type, tables and the pieces the sections are made of. */
export const BASE = String.raw`
#let d = json("data.json")
#let ink = rgb("#1d2a44")
#let copper = rgb("#a4541f")
#let hairline = rgb("#c9c5bb")
#let quiet = rgb("#565f71")

#set document(title: d.title, author: d.authors, date: datetime(year: d.date.at(0), month: d.date.at(1), day: d.date.at(2)), description: d.description)
// No other face may step in: the result would depend on the machine.
#set text(font: "Source Sans 3", fallback: false, size: 9.5pt, lang: "en", region: "gb", fill: ink, number-type: "lining", number-width: "tabular")
#set par(leading: 0.58em, spacing: 0.8em)
#set page(
  paper: "a4",
  margin: (x: 18mm, top: 18mm, bottom: 18mm),
  // A draft says so across every page and in its head, so that no page of it passes for one that was issued.
  background: if d.draft != "" { rotate(-55deg, text(size: 60pt, weight: 700, fill: rgb("#e4e0d6"), d.draft)) },
  header: context {
    set text(size: 7.5pt, fill: quiet)
    grid(columns: (1fr, auto, auto), column-gutter: 4mm, d.header, if d.draft != "" { text(fill: ink, weight: 700, d.draft) }, if d.invented != "" { text(fill: copper, weight: 600, d.invented) })
  },
  footer: context {
    set text(size: 7.5pt, fill: quiet)
    grid(columns: (1fr, auto), d.footer, [#d.page.at(0)#counter(page).display("1")#d.page.at(1)#counter(page).final().first()])
  },
)
#set heading(numbering: none)
#show heading.where(level: 1): it => block(above: 2em, below: 0.8em, sticky: true, width: 100%, stroke: (bottom: 0.9pt + ink), inset: (bottom: 4pt), text(size: 14pt, weight: 700, it.body))
#show heading.where(level: 2): it => block(above: 1.5em, below: 0.6em, sticky: true, text(size: 10.5pt, weight: 700, it.body))
#show heading.where(level: 3): it => block(above: 1.1em, below: 0.4em, sticky: true, text(size: 9.5pt, weight: 700, it.body))
#set table(stroke: (x, y) => (bottom: 0.4pt + hairline, top: if y == 0 { 0.8pt + ink } else { none }), inset: (x: 3pt, y: 3pt))
#show table: set text(size: 8.2pt)
#show table: set par(justify: false, leading: 0.45em)
#show table.cell.where(y: 0): set text(weight: 600)

// A heading within a line or a grid, without the space a heading keeps around itself.
#let bare(size, it) = { show heading: h => text(size: size, weight: 700, h.body); it }
#let small(it) = text(size: 8.2pt, fill: quiet, it)
// A gap is set in italics: it never looks like an answer.
#let said(c) = if type(c) == dictionary {
  if "parts" in c { for p in c.parts { said(p) } } else if c.open { text(style: "italic", c.words) } else { c.words }
} else { c }
// The head of a column: its name, and below it the unit of its figures.
#let column-head(h) = [#h.at(0)#if h.at(1) != "" { [ \ ]; text(weight: 400, fill: quiet, h.at(1)) }]
#let tag(it) = box(stroke: 0.5pt + quiet, inset: (x: 2pt, y: 0.6pt), outset: (y: 1pt), radius: 1.5pt, text(size: 7pt, it))
#let drawing(file, words, width) = box(baseline: 22%, image(file, width: width, alt: words))
#let mark(o, width: 6.4mm) = if o.mark == "" { box(width: width) } else { box(baseline: 12%, image(o.mark, width: width, alt: o.code)) }

#let plain-table(columns, head, rows, aligns: left) = table(
  columns: columns,
  align: aligns,
  table.header(..head.map(h => [#h])),
  ..rows.flatten().map(c => [#said(c)]),
)
// A label in smaller letters on the line of what stands beside it.
#let beside(it) = pad(top: 0.86pt, small(it))
#let pairs(rows, label: 36mm) = for row in rows { block(above: 0.62em, below: 0pt, grid(columns: (label, 1fr), column-gutter: 2mm, beside(row.at(0)), said(row.at(1)))) }
#let bullet-list(entries) = for e in entries { block(above: 0.5em, below: 0pt, inset: (left: 9pt), {
  place(dx: -9pt, dy: 0.22em, rect(width: 3pt, height: 3pt, fill: copper, stroke: none))
  e
}) }
`;
