/**
 * The layout of every document. It is text in a module rather than a file of its own, so that the bundled command finds
 * it without knowing where it was installed. All words come from the data; nothing of it is ever taken as markup.
 */
export const TEMPLATE = `
#let d = json("data.json")
#let ink = rgb("#1d2a44")
#let copper = rgb("#a4541f")
#let hairline = rgb("#c9c5bb")
#let quiet = rgb("#565f71")
#let base = d.at("size", default: 9.5) * 1pt

#set document(title: d.title, author: d.authors, date: datetime(year: d.date.at(0), month: d.date.at(1), day: d.date.at(2)), description: d.description)
// No other face may step in: the result would depend on the machine.
#set text(font: "Source Sans 3", fallback: false, size: base, lang: "en", region: "gb", fill: ink, number-type: "lining", number-width: "tabular")
#set par(leading: 0.58em, spacing: 0.8em)
#set page(
  paper: "a4",
  margin: (x: 18mm, top: 18mm, bottom: 18mm),
  // A draft says so across every page and in its head, so that no page of it passes for one that was issued.
  background: if d.running.draft != "" { rotate(-55deg, text(size: 60pt, weight: 700, fill: rgb("#e4e0d6"), d.running.draft)) },
  header: context {
    set text(size: 7.5pt, fill: quiet)
    grid(columns: (1fr, auto, auto), column-gutter: 4mm, d.running.head, if d.running.draft != "" { text(fill: ink, weight: 700, d.running.draft) }, if d.running.invented != "" { text(fill: copper, weight: 600, d.running.invented) })
  },
  footer: context {
    set text(size: 7.5pt, fill: quiet)
    grid(columns: (1fr, auto), d.running.foot, [#d.running.page.at(0)#counter(page).display("1")#d.running.page.at(1)#counter(page).final().first()])
  },
)
#set heading(numbering: none)
#show heading.where(level: 1): it => block(above: 2em, below: 0.8em, sticky: true, width: 100%, stroke: (bottom: 0.9pt + ink), inset: (bottom: 4pt), text(size: 1.47 * base, weight: 700, it.body))
#show heading.where(level: 2): it => block(above: 1.5em, below: 0.6em, sticky: true, text(size: 1.1 * base, weight: 700, it.body))
#show heading.where(level: 3): it => block(above: 1.1em, below: 0.4em, sticky: true, text(size: base, weight: 700, it.body))
#set table(stroke: (x, y) => (bottom: 0.4pt + hairline, top: if y == 0 { 0.8pt + ink } else { none }), inset: (x: 3pt, y: 3pt))
#show table: set par(justify: false, leading: 0.45em)
#show table.cell.where(y: 0): set text(weight: 600)
#set list(marker: box(baseline: -0.22em, rect(width: 3pt, height: 3pt, fill: copper, stroke: none)), indent: 0pt, body-indent: 6pt, spacing: 0.65em)
#set enum(indent: 0pt, body-indent: 6pt, spacing: 0.65em)

#let tag(it) = box(stroke: 0.5pt + quiet, inset: (x: 2pt, y: 0.6pt), outset: (y: 1pt), radius: 1.5pt, text(size: 7pt, it))
#let piece(p) = {
  if "file" in p { box(baseline: 22%, image(p.file, width: p.width * 1mm, alt: p.alt)) }
  else if "pages" in p { context [#p.pages.at(0)#counter(page).final().first()#p.pages.at(1)] }
  else if "end" in p { linebreak() }
  else {
    let kind = p.at("as", default: "")
    if kind == "" { p.text }
    else if kind == "strong" { text(weight: 600, p.text) }
    else if kind == "quiet" { text(fill: quiet, p.text) }
    // A gap is set in italics: it never looks like an answer.
    else if kind == "gap" { text(style: "italic", p.text) }
    else if kind == "alert" { text(fill: copper, weight: 600, p.text) }
    else if kind == "small" { text(size: 0.86em, fill: quiet, p.text) }
    else { tag(p.text) }
  }
}
#let said(w) = if type(w) == str { w } else { for p in w { piece(p) } }
#let are-blocks(c) = type(c) == array and c.len() > 0 and "kind" in c.first()
#let side = (left: left, right: right, centre: center)
#let track(w) = if type(w) == str { float(w.trim("fr")) * 1fr } else { w * 1mm }
// A label in smaller letters on the line of what stands beside it; a list, so that who listens hears how many there are.
#let facts(rows, names) = enum(
  numbering: n => box(width: names, pad(top: 0.09em, text(size: 0.86em, fill: quiet, said(rows.at(n - 1).at(0))))),
  number-align: start + top, body-indent: 2mm, indent: 0pt, spacing: 0.62em,
  ..rows.enumerate().map(((i, r)) => enum.item(i + 1, said(r.at(1)))),
)

#let cell(c, one) = if are-blocks(c) { for b in c { one(b) } } else { said(c) }
// A title so long that it would fill a page is set smaller.
#let title-size(words) = if words.len() <= 90 { 1.7 * base } else if words.len() <= 300 { 1.26 * base } else { base }

#let one(b) = {
  if b.kind == "title" {
    block(below: 0.5em, text(fill: copper, weight: 600, par(b.over)))
    show heading: it => block(above: 0pt, below: 0.7em, text(size: title-size(b.words), weight: 700, it.body))
    heading(level: 1, outlined: false, b.words)
  } else if b.kind == "heading" {
    let beside = b.at("beside", default: "")
    let words = if beside == "" { said(b.words) } else { [#said(b.words)#h(2mm)#text(size: 7.6pt, weight: 400, fill: quiet, beside)] }
    let whole = heading(level: b.level, outlined: b.level == 1 and "unlisted" not in b, words)
    let tight = "unlisted" in b and b.level > 1
    if "mark" in b {
      show heading: it => it.body
      block(above: if tight { 0.7em } else { 1.1em }, below: if tight { 0.35em } else { 0.5em }, sticky: true, grid(columns: (9mm, 1fr), align: horizon, piece(b.mark), text(size: if b.level == 2 { 1.1 * base } else { base }, weight: 700, whole)))
    } else if tight {
      show heading: it => it.body
      block(above: 0.9em, below: 0.45em, sticky: true, text(size: if b.level == 2 { 1.1 * base } else { base }, weight: 700, whole))
    } else { whole }
  } else if b.kind == "paragraph" {
    let kind = b.at("as", default: "")
    if kind == "" { block(above: 0.7em, below: 0.7em, par(said(b.words))) }
    else if kind == "small" { block(above: 0.6em, below: 0.6em, text(size: 0.86em, fill: quiet, par(said(b.words)))) }
    else if kind == "lead" { block(above: 0.7em, below: 0.7em, sticky: true, text(weight: 600, par(said(b.words)))) }
    else { block(above: 0.3em, below: 0.5em, text(size: 1.7 * base, weight: 700, par(said(b.words)))) }
  } else if b.kind == "list" {
    let entries = b.entries.map(e => cell(e, one))
    block(above: 0.6em, below: 0.7em, if "numbers" in b {
      enum(numbering: n => text(weight: 600, b.numbers.at(n - 1)), number-align: start + top, spacing: 0.75em, ..entries.enumerate().map(((i, e)) => enum.item(i + 1, e)))
    } else { list(..entries) })
  } else if b.kind == "facts" {
    let names = b.at("names", default: 36) * 1mm
    if b.at("columns", default: 1) == 2 {
      let half = calc.ceil(b.rows.len() / 2)
      block(above: 0.6em, below: 0.6em, grid(columns: (1fr, 1fr), column-gutter: 6mm, facts(b.rows.slice(0, half), names), facts(b.rows.slice(half), names)))
    } else { block(above: 0.6em, below: 0.6em, facts(b.rows, names)) }
  } else if b.kind == "table" {
    if "caption" in b { block(above: 1em, below: 0.5em, sticky: true, text(weight: 600, size: 0.92em, b.caption)) }
    set text(size: b.at("size", default: 8.2) * 1pt)
    table(
      columns: b.columns.map(c => track(c.width)),
      align: b.columns.map(c => side.at(c.at("align", default: "left"))),
      table.header(..b.columns.map(c => [#said(c.head)])),
      // A row is at least so high, and higher where its words need it: a strut below the first line of its first cell.
      ..b.rows.map(r => r.enumerate().map(((i, c)) => [#if i == 0 and "rowHeight" in b { box(width: 0pt, height: b.rowHeight * 1mm - 6pt, baseline: b.rowHeight * 1mm - 6pt - 0.5em) }#cell(c, one)])).flatten(),
    )
  } else if b.kind == "figure" {
    let width = if "width" in b { b.width * 1mm } else { 100% }
    let shown = {
      image(b.image.file, width: width, alt: b.alt)
      if "caption" in b { block(above: 0.4em, below: 0pt, text(size: 0.84em, fill: quiet, said(b.caption))) }
    }
    if "beside" in b {
      block(above: 0.8em, below: 0.5em, breakable: false, grid(columns: (width, 1fr), column-gutter: 5mm, align: (left + top, left + horizon), shown, for x in b.beside { one(x) }))
    } else { block(above: 0.8em, below: 0.8em, breakable: false, shown) }
  } else if b.kind == "argument" {
    block(above: 0.6em, below: 0.6em, stroke: (left: 0.6pt + hairline), inset: (left: 6pt, y: 1pt), {
      for l in b.lines {
        block(above: 0.4em, below: 0pt, inset: (left: l.depth * 7pt), {
          set text(size: 0.86em)
          set par(leading: 0.45em, hanging-indent: 7pt)
          if l.tag != "" { tag(l.tag); h(1.2mm) }
          said(l.words)
        })
      }
    })
  } else if b.kind == "signature" {
    block(above: 1em, below: 1em, breakable: false, width: 100%, {
      block(above: 0pt, below: 0.5em, text(weight: 600, b.as))
      grid(columns: (1fr, 62mm), column-gutter: 6mm,
        facts(b.rows, 30mm),
        if b.drawn == none { v(6mm); text(size: 1.3 * base, style: "italic", b.at("typed", default: sym.zws)); v(-2mm); line(length: 100%, stroke: 0.6pt + ink) } else { image(b.drawn.file, width: 48mm, alt: b.drawn.alt) },
      )
    })
  } else if b.kind == "frame" {
    let inner = for x in b.blocks { one(x) }
    if b.as == "stated" { block(above: 0.9em, below: 0.9em, width: 100%, stroke: (left: 3.5pt + ink), inset: (left: 9pt, y: 2pt), inner) }
    else if b.as == "alert" { block(above: 0.8em, below: 0.9em, width: 100%, stroke: 2pt + copper, inset: 6pt, text(weight: 600, inner)) }
    else { block(above: 0.5em, below: 0.8em, width: 100%, stroke: (left: 1.6pt + copper), inset: (left: 8pt), inner) }
  } else if b.kind == "columns" {
    let shares = b.at("shares", default: b.columns.map(c => 1))
    block(above: 0.6em, below: 0.6em, grid(columns: shares.map(s => s * 1fr), column-gutter: 6mm, ..b.columns.map(c => { for x in c { one(x) } })))
  } else if b.kind == "group" {
    let inner = for x in b.blocks { one(x) }
    if b.as == "turned" { page(flipped: true, margin: (x: 15mm, top: 17mm, bottom: 16mm), inner) } else { block(breakable: not b.whole, width: 100%, inner) }
  } else if b.kind == "contents" {
    block(above: 0.6em, breakable: false, {
      set text(size: 7.8pt)
      set par(leading: 0.5em)
      text(weight: 600, b.title)
      h(1.5mm)
      context query(heading.where(level: 1, outlined: true)).map(it => link(it.location(), [#it.body~#text(weight: 600, str(counter(page).at(it.location()).first()))])).join([ #h(0.3em)·#h(0.3em) ])
    })
  } else if b.kind == "break" {
    pagebreak(weak: true)
  }
}

#for b in d.blocks { one(b) }
#for a in d.attachments { pdf.attach(a.name, relationship: a.relationship, mime-type: a.kind, description: a.description) }
`;
