/**
 * The layout of the report. It is text in a module rather than a file of its own, so that the bundled command finds it
 * without knowing where it was installed. All words come from the data; nothing of it is ever taken as markup.
 */
export const TEMPLATE = String.raw`
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
  header: context {
    set text(size: 7.5pt, fill: quiet)
    grid(columns: (1fr, auto), d.header, if d.invented != "" { text(fill: copper, weight: 600, d.invented) })
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

// ---------------------------------------------------------------- first page
#show heading.where(level: 2, outlined: false): it => block(above: 1.15em, below: 0.55em, sticky: true, text(size: 10.5pt, weight: 700, it.body))
#block(below: 0.5em, text(size: 9.5pt, fill: copper, weight: 600, d.first.kind))
#{
  let size = if d.first.address.len() <= 90 { 16pt } else if d.first.address.len() <= 300 { 12pt } else { 9.5pt }
  show heading: it => block(above: 0pt, below: 0.7em, text(size: size, weight: 700, it.body))
  heading(level: 1, outlined: false, d.first.address)
}
#if d.first.invented != "" { block(above: 0pt, below: 0.7em, text(fill: copper, weight: 600, size: 8.8pt, d.first.invented)) }
#{
  set text(size: 8.8pt)
  let facts = d.first.facts.map(f => (f.at(0), [#f.at(1)]))
  facts.push((d.first.length.at(0), context [#d.first.length.at(1)#counter(page).final().first()#d.first.length.at(2)]))
  grid(columns: (1fr, 1fr), column-gutter: 6mm, row-gutter: 0.55em, ..facts.map(f => grid(columns: (26mm, 1fr), text(fill: quiet, f.at(0)), f.at(1))))
}

#block(above: 1.1em, below: 1.1em, width: 100%, stroke: (left: 3.5pt + ink), inset: (left: 9pt, y: 3pt))[
  #grid(columns: (1fr, 1fr), column-gutter: 6mm,
    [#text(size: 8.2pt, fill: quiet, d.first.stated-label) \ #text(size: 16pt, weight: 700, style: if d.first.stated-open { "italic" } else { "normal" }, d.first.stated)],
    [#text(size: 8.2pt, fill: quiet, d.first.derived-label) \ #text(size: 16pt, weight: 700, style: if d.first.derived-open { "italic" } else { "normal" }, d.first.derived)],
  )
  #if d.first.differs != "" { block(above: 0.7em, below: 0.7em, width: 100%, stroke: 1.2pt + copper, inset: 5pt, text(weight: 600, d.first.differs)) }
  #d.first.because
  #if d.first.points-title != "" { block(above: 0.6em, below: 0.4em, [#text(weight: 600, d.first.points-title)#if d.first.points.len() == 1 { [ #d.first.points.first()] }]); if d.first.points.len() > 1 { bullet-list(d.first.points) } }
  #if d.first.below-title != "" { block(above: 0.6em, below: 0.4em, text(weight: 600, d.first.below-title)); bullet-list(d.first.below) }
  #if d.first.summary != "" { block(above: 0.6em, [#text(weight: 600, d.first.summary-label)#d.first.summary]) }
]

#if d.first.alarm != "" { block(above: 0pt, below: 1.1em, width: 100%, stroke: 2pt + copper, inset: 6pt, text(weight: 700, d.first.alarm)) }

#heading(level: 2, outlined: false, d.first.todo-title)
#if d.first.groups.len() == 0 { d.first.nothing } else {
  for g in d.first.groups {
    block(above: 0.85em, below: 0.4em, sticky: true, grid(columns: (9mm, 1fr), align: horizon, mark(g), bare(9.5pt, heading(level: 3, outlined: false, g.heading))))
    for o in g.members {
      block(breakable: false, above: 0.45em, below: 0.45em, inset: (left: 9mm), grid(columns: (5mm, 1fr), text(weight: 600, str(o.number)), {
        text(weight: 600, o.place)
        [. #o.what ]
        text(weight: 600, o.todo-label)
        if o.todo-open { text(style: "italic", o.todo) } else { o.todo }
        if o.below != "" { block(above: 0.6em, below: 0.6em, text(weight: 600, o.below)) }
        if o.safe != "" { block(above: 0.6em, below: 0.8em, text(weight: 600, fill: copper, o.safe)) }
      }))
    }
  }
  if d.first.no-work != "" { block(above: 0.7em, d.first.no-work) }
  block(above: 0.7em, small(d.first.law))
}

#heading(level: 2, outlined: false, d.first.unseen-title)
#bullet-list(d.first.unseen)

#heading(level: 2, outlined: false, d.first.next-title)
#d.first.next

#heading(level: 2, outlined: false, d.first.who-title)
#plain-table((auto, 1fr, auto), d.first.who-head, d.first.who)
#block(above: 0.7em, small(d.first.challenge))

// Whole on this page or on the next: half a list of pages is none.
#block(above: 0.8em, breakable: false, {
  set text(size: 8.2pt)
  text(weight: 600, d.first.contents-title)
  h(1.5mm)
  context query(heading.where(level: 1, outlined: true)).map(it => link(it.location(), [#it.body~#text(weight: 600, str(counter(page).at(it.location()).first()))])).join([ #h(0.3em)·#h(0.3em) ])
})

// ---------------------------------------------------------------- observations
// What a reader should have on one page stands alone on it; where it takes more, the rest is not left empty.
#context if here().page() == 1 { pagebreak() }
#if d.open.list.len() > 0 {
  heading(level: 1, d.open.title)
  block(sticky: true, small(d.open.intro))
  bullet-list(d.open.list)
}
#heading(level: 1, d.observations.title)
#if d.observations.list.len() == 0 { d.observations.none } else { block(sticky: true, small(d.observations.intro)) }
#for o in d.observations.list {
  block(above: 1.3em, below: 6pt, sticky: true, line(length: 100%, stroke: 0.4pt + hairline))
  block(breakable: not o.whole, above: 0pt, below: 0pt, width: 100%, {
    block(above: 0pt, below: 0.5em, sticky: true, grid(columns: (9mm, 9mm, 1fr, auto), align: (left + horizon, left + horizon, left + horizon, right + horizon),
      mark(o),
      text(weight: 700, o.code),
      bare(10.5pt, heading(level: 2, o.place)),
      small(o.number),
    ))
    block(above: 0pt, below: 0.6em, o.what)
    if o.reasoning.plain != "" { block(above: 0pt, below: 0.7em, inset: (left: 8pt), stroke: (left: 1.6pt + copper), text(size: 10pt, o.reasoning.plain)) }
    pairs(o.details)
    if o.checks.len() > 0 {
      block(above: 0.62em, below: 0pt, grid(columns: (36mm, 1fr), column-gutter: 2mm, beside(o.checks-label), {
        for (i, c) in o.checks.enumerate() { block(above: if i == 0 { 0pt } else { 0.62em }, below: 0pt, c) }
      }))
    }
    if o.reasoning.none != "" { block(above: 0.9em, below: 0pt, text(style: "italic", o.reasoning.none)) }
  })
  if o.reasoning.headline != "" {
    block(above: 0.9em, below: 0pt, sticky: true, text(weight: 600, o.reasoning.headline))
    if o.reasoning.stands != "" {
      if o.reasoning.differs { block(above: 0.6em, below: 0.2em, sticky: true, stroke: 1.2pt + copper, inset: 4pt, text(weight: 600, o.reasoning.stands)) } else { block(above: 0.4em, below: 0pt, sticky: true, o.reasoning.stands) }
    }
    for g in o.reasoning.drawn {
      block(above: 0.8em, below: 0.4em, breakable: false, grid(columns: (g.width * 1pt, 1fr), column-gutter: 5mm, align: (left + top, left + horizon),
        image(g.file, width: 100%, alt: g.alt),
        { if g.words != "" { block(above: 0pt, below: 0.6em, text(size: 8.6pt, g.words)) }; text(size: 7.6pt, fill: quiet, g.caption) },
      ))
    }
    for p in o.reasoning.parts {
      block(breakable: not p.whole, above: 0.8em, below: 0.2em, {
        block(above: 0pt, below: 0.36em, sticky: true, text(size: 8.6pt, weight: 600, fill: quiet, p.heading))
        for l in p.lines {
          block(above: 0.36em, below: 0pt, inset: (left: 6pt + l.depth * 8pt), text(size: 8.6pt, { if l.tag != "" { tag(l.tag); h(1.2mm) }; l.words }))
        }
      })
    }
  }
}

// ---------------------------------------------------------------- supply
#heading(level: 1, d.origin.title)
#let particulars(groups, head: d.origin.head, label: 36mm) = for (i, g) in groups.enumerate() {
  if i > 0 { v(0.9em) }
  block(above: 0pt, below: 0.5em, sticky: true, bare(9.5pt, heading(level: 2, g.title)))
  plain-table((label, 1fr), head, g.rows)
}
#block(breakable: not d.origin.whole, grid(columns: (1fr, 1fr), column-gutter: 6mm, particulars(d.origin.left), particulars(d.origin.right)))
#if d.origin.taken.words != "" { block(above: 0.7em, small(said(d.origin.taken))) }
#if d.origin.note != "" { block(above: 0.7em, d.origin.note) }

// ---------------------------------------------------------------- findings
#heading(level: 1, d.findings.title)
#block(sticky: true, d.findings.intro)
#if d.findings.places.len() == 0 { block(d.findings.none) }
#for p in d.findings.places {
  heading(level: 2, p.heading)
  for f in p.findings {
    block(breakable: not f.whole, above: 0.9em, below: 0.7em, {
      block(above: 0pt, below: 0.35em, sticky: true, { bare(9.5pt, heading(level: 3, [#f.title: #f.verdict])); if f.rule != "" { h(2mm); text(size: 7.4pt, fill: quiet, f.rule) } })
      if f.bar != "" { block(above: 0pt, below: 0.35em, [#drawing(f.bar, f.bar-words, 34mm) #h(2mm) #f.words #h(2mm) #small(f.margin)]) } else if f.words != "" { block(above: 0pt, below: 0.35em, text(size: 8.8pt, f.words)) }
      for r in f.remarks { block(above: 0.35em, below: 0pt, text(size: 8.8pt, r)) }
      if f.memory != "" { block(above: 0.4em, below: 0pt, text(size: 8.8pt, fill: copper, weight: 600, f.memory)) }
      if f.argument.len() > 0 or f.further != "" {
        block(above: 0.6em, stroke: (left: 0.6pt + hairline), inset: (left: 6pt, y: 1pt), {
          for l in f.argument {
            block(above: 0.36em, below: 0pt, inset: (left: l.depth * 7pt), {
              set text(size: 8pt)
              set par(leading: 0.42em, hanging-indent: 7pt)
              tag(l.tag)
              h(1mm)
              l.words
              if l.note != "" { text(size: 7.2pt, fill: quiet, [ – #l.note]) }
            })
          }
          if f.further != "" { block(above: 0.5em, below: 0pt, text(size: 7.4pt, fill: quiet, style: "italic", f.further)) }
        })
      }
    })
  }
}

// ---------------------------------------------------------------- readings shown by choice
#if d.misfits.list.len() > 0 {
  heading(level: 2, d.misfits.title)
  block(below: 0.6em, d.misfits.intro)
  for m in d.misfits.list {
    block(breakable: not m.whole, above: 0.9em, below: 0.7em, {
      block(above: 0pt, below: 0.35em, sticky: true, bare(9.5pt, heading(level: 3, m.title)))
      if m.drawing != "" { block(above: 0.4em, below: 0.4em, image(m.drawing, width: 118mm, alt: m.shows)) }
      for l in m.lines { block(above: 0.35em, below: 0pt, text(size: 8.8pt, l)) }
    })
  }
}

// ---------------------------------------------------------------- boards
#page(flipped: true, margin: (x: 15mm, top: 17mm, bottom: 16mm))[
  #show table: set text(size: 7.8pt)
  #heading(level: 1, d.boards.title)
  #small(d.boards.note)
  #block(above: 0.5em, small(d.boards.readings-note))
  #for b in d.boards.boards {
    heading(level: 2, b.title)
    block(below: 0.6em, sticky: true, { set text(size: 8.2pt); b.particulars.map(p => [#text(fill: quiet, p.at(0)) #said(p.at(1))]).join([ #h(0.35em)·#h(0.35em) ]) })
    if b.protection.len() == 0 { d.boards.no-circuits } else {
      heading(level: 3, d.boards.protection-caption)
      table(
        columns: (11mm, 1fr, 26mm, 26mm, 20mm, 21mm, 38mm, 26mm, 13mm, 43mm, 16mm),
        align: left,
        table.header(..d.boards.protection-head.map(column-head)),
        ..b.protection.map(r => (
          [#said(r.no)], [#said(r.name)], [#said(r.serves)], [#said(r.wiring)], [#said(r.method)], [#said(r.sizes)], [#said(r.device)], [#said(r.rcd)], [#said(r.within)],
          if r.bar == "" { [#said(r.limit)#r.memory] } else { [#drawing(r.bar, r.bar-words, 25mm) #text(size: 7pt)[#said(r.limit)#r.memory]] },
          [#text(weight: if r.heavy { 700 } else { 400 }, said(r.worst))],
        )).flatten(),
      )
      heading(level: 3, d.boards.readings-caption)
      table(
        columns: (11mm, 1fr, ..(15mm,) * 5, 18mm, 19mm, 12mm, 15mm, ..(15mm,) * 3, 15mm, 15mm),
        align: (left, left, ..(right,) * 7, left, left, ..(right,) * 3, left, right),
        table.header(..d.boards.readings-head.map(column-head)),
        ..b.readings.flatten().map(c => [#said(c)]),
      )
      if b.taken.words != "" { block(above: 0.7em, below: 0pt, text(size: 8.2pt, said(b.taken))) }
      if b.methods.len() > 0 { block(above: 0.7em, below: 0pt, sticky: true, text(size: 8.2pt, weight: 600, d.boards.methods-title)); for r in b.methods { block(above: 0.4em, below: 0pt, text(size: 8.2pt, r)) } }
      if b.reasons.len() > 0 { block(above: 0.7em, below: 0pt, text(size: 8.2pt, weight: 600, d.boards.reasons-title)); for r in b.reasons { block(above: 0.4em, below: 0pt, text(size: 8.2pt, r)) } }
      for p in b.ring-points + b.notes { block(above: 0.5em, below: 0pt, text(size: 8.2pt, p)) }
    }
  }
]

// ---------------------------------------------------------------- diagram
#heading(level: 1, d.diagram.title)
#for s in d.diagram.drawings { figure(image(s.file, width: 92%, alt: s.words), caption: none, kind: "diagram", supplement: none) }
#small(d.diagram.note)

// ---------------------------------------------------------------- curves
#if d.curves.list.len() > 0 {
  heading(level: 1, d.curves.title)
  block(sticky: true, below: 0.9em, d.curves.intro)
  for pair in d.curves.list.chunks(2) {
    grid(columns: (1fr, 1fr), column-gutter: 4mm, ..pair.map(c => block(breakable: false, below: 1.3em, {
      block(above: 0.6em, below: 0.3em, text(weight: 600, size: 8.5pt, c.caption))
      image(c.file, width: c.width * 1pt, alt: c.words)
      if c.memory != "" { block(above: 0.2em, text(size: 7.6pt, fill: copper, weight: 600, c.memory)) }
    })))
  }
  if d.curves.more != "" { small(d.curves.more) }
}

// ---------------------------------------------------------------- then and now
#if d.past.earlier.len() > 0 {
  heading(level: 1, d.past.title)
  small(d.past.method)
  for e in d.past.earlier {
    heading(level: 2, e.title)
    for w in e.words { block(above: 0.45em, below: 0pt, w) }
    if e.rows.len() > 0 {
      block(above: 0.8em, table(
        columns: (1fr, 30mm, 19mm, 19mm, 18mm, 1.3fr),
        align: (left, left, right, right, center, left),
        table.header(..d.past.head.map(h => [#h])),
        ..e.rows.map(r => ([#r.where], [#r.label], [#r.past], [#r.now], drawing(r.step, r.alt, 16mm), [#r.words])).flatten(),
      ))
    }
    if e.rest != "" { block(above: 0.6em, below: 0pt, small(e.rest)) }
    for w in e.left { block(above: 0.5em, below: 0pt, w) }
  }
  if d.past.trends.len() > 0 or d.past.more != "" {
    heading(level: 2, d.past.trends-title)
    if d.past.next != "" { block(above: 0.4em, below: 0.4em, d.past.next) }
    if d.past.trends.len() > 0 {
      table(
        columns: (42mm, 42mm, 1fr),
        align: left,
        table.header(..d.past.trend-head.map(h => [#h])),
        ..d.past.trends.map(t => ([#t.where], drawing(t.line, t.alt, 38mm), [#t.words])).flatten(),
      )
    }
    if d.past.more != "" { block(above: 0.5em, small(d.past.more)) }
  }
}

// ---------------------------------------------------------------- calculations
#heading(level: 1, d.calculations.title)
#plain-table((1fr, 40mm, 13mm, 15mm, 17mm, 11mm, 18mm), d.calculations.head, d.calculations.rows, aligns: (left, left, right, right, right, right, right))

// ---------------------------------------------------------------- items
#heading(level: 1, d.items.title)
#for g in d.items.groups {
  heading(level: 2, g.title)
  plain-table((1fr, 30mm, 24mm, 48mm), d.items.head, g.rows)
}

// ---------------------------------------------------------------- extent
#heading(level: 1, d.extent.title)
#pairs(d.extent.rows)
#if d.extent.sampling.len() > 0 {
  heading(level: 2, d.extent.sampling-title)
  plain-table((1fr, auto, auto, auto, 34mm, 1fr), d.extent.sampling-head, d.extent.sampling, aligns: (left, right, right, right, right, left))
}
#heading(level: 2, d.extent.limitations-title)
#if d.extent.limitations.len() == 0 { block(d.extent.no-limitations) } else { plain-table((22mm, 1fr, 1fr, 34mm), d.extent.limitations-head, d.extent.limitations) }
#block(above: 0.7em, small(d.extent.concealed))

// ---------------------------------------------------------------- safety
#heading(level: 1, d.safety.title)
#if d.safety.none.words != "" { block(said(d.safety.none)) }
#if d.safety.intro.words != "" { block(below: 0.9em, sticky: true, said(d.safety.intro)) }
#if d.safety.columns.len() > 0 {
  block(breakable: false, grid(columns: (1fr, 1fr), column-gutter: 6mm, ..d.safety.columns.map(c => particulars(c, head: d.safety.head, label: d.safety.label * 1mm))))
}
#block(above: 0.9em, pairs(d.safety.rows))

// ---------------------------------------------------------------- evidence
#heading(level: 1, d.instruments.title)
#if d.instruments.rows.len() == 0 { d.instruments.none } else { plain-table((1fr, 22mm, 32mm, 36mm, 1.3fr), d.instruments.head, d.instruments.rows) }

#if d.photographs.rows.len() > 0 {
  heading(level: 1, d.photographs.title)
  block(sticky: true, below: 0.8em, d.photographs.intro)
  plain-table((32mm, 1fr, 38mm, 30mm), d.photographs.head, d.photographs.rows)
}

#heading(level: 1, d.sources.title)
#block(sticky: true, below: 0.8em, d.sources.intro)
#if d.sources.rows.len() == 0 { block(d.sources.none) } else {
  table(
    columns: (1fr, 32mm, 40mm),
    table.header(..d.sources.head.map(h => [#h])),
    ..d.sources.rows.map(r => r.cells.enumerate().map(((i, c)) => if r.heavy and i == 2 { text(weight: 600, fill: copper, c) } else { [#c] })).flatten(),
  )
}
#if d.sources.edition.len() > 0 {
  heading(level: 2, d.sources.edition-title)
  bullet-list(d.sources.edition)
}

// ---------------------------------------------------------------- closing
#heading(level: 1, d.recipients.title)
#for p in d.recipients.paragraphs { par(p) }
#heading(level: 2, d.recipients.cautions-title)
#bullet-list(d.recipients.cautions)

#heading(level: 1, d.signatures.title)
#d.signatures.words
#if d.signatures.rows.len() > 0 {
  table(
    columns: (34mm, 1fr, 1fr, 44mm),
    table.header(..d.signatures.head.map(h => [#h])),
    ..d.signatures.rows.map(r => (..r.cells.slice(0, 3).map(c => [#said(c)]), [#said(r.cells.at(3))#if r.drawn != "" { [ \ ]; image(r.drawn, width: 36mm, alt: r.words) }])).flatten(),
  )
}
#if d.signatures.note != "" { small(d.signatures.note) }
#heading(level: 2, d.signatures.attachments-title)
#plain-table((34mm, 1fr), d.signatures.attachments-head, d.signatures.attachments)

#pdf.attach("inspection.json", relationship: "source", mime-type: "application/json", description: d.signatures.attachments.at(0).at(1))
#pdf.attach("workings.txt", relationship: "supplement", mime-type: "text/plain", description: d.signatures.attachments.at(1).at(1))
`;
