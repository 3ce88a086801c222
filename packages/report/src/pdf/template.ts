/**
 * The layout of the report. It is text in a module rather than a file of its own, so that the bundled command finds it
 * without knowing where it was installed. All words come from the data; nothing of it is ever taken as markup.
 */
export const TEMPLATE = String.raw`
#let d = json("data.json")
#let ink = rgb("#1d2a44")
#let copper = rgb("#a4541f")
#let rule-colour = rgb("#c9c5bb")
#let faint = rgb("#5d6678")

#set document(title: d.title, author: d.authors, date: datetime(year: d.date.at(0), month: d.date.at(1), day: d.date.at(2)), description: d.description)
#set text(font: "Source Sans 3", size: 9.5pt, lang: "en", region: "gb", fill: ink, number-type: "lining", number-width: "tabular")
#set par(leading: 0.58em, spacing: 0.8em)
#set page(
  paper: "a4",
  margin: (x: 18mm, top: 17mm, bottom: 19mm),
  header: context {
    set text(size: 7.5pt, fill: faint)
    grid(columns: (1fr, auto), d.header, if d.invented != "" { text(fill: copper, weight: 600, d.invented) })
  },
  footer: context {
    set text(size: 7.5pt, fill: faint)
    grid(columns: (1fr, auto), d.footer, [#counter(page).display("1") / #counter(page).final().first()])
  },
)
#set heading(numbering: none)
#show heading.where(level: 1): it => block(above: 1.5em, below: 0.7em, sticky: true, text(size: 15pt, weight: 700, it.body))
#show heading.where(level: 2): it => block(above: 1.2em, below: 0.5em, sticky: true, text(size: 11pt, weight: 700, it.body))
#show heading.where(level: 3): it => block(above: 0.9em, below: 0.35em, sticky: true, text(size: 9.5pt, weight: 700, it.body))
#set table(stroke: (x, y) => (bottom: 0.4pt + rule-colour, top: if y == 0 { 0.9pt + ink } else { none }), inset: (x: 3pt, y: 3.2pt))
#show table: set text(size: 8.2pt)
#show table: set par(justify: false, leading: 0.45em)
#show table.cell.where(y: 0): set text(weight: 600)

#let small(it) = text(size: 8.2pt, fill: faint, it)
#let tag(it) = box(stroke: 0.5pt + faint, inset: (x: 2pt, y: 0.6pt), outset: (y: 1pt), radius: 1.5pt, text(size: 6.8pt, fill: ink, it))
#let drawing(file, words, width) = box(baseline: 22%, image(file, width: width, alt: words))
#let mark(o) = box(baseline: 12%, image(o.mark, width: 6.4mm, alt: o.code))

#let plain-table(columns, head, rows, aligns: auto) = table(
  columns: columns,
  align: if aligns == auto { left } else { aligns },
  table.header(..head.map(h => [#h])),
  ..rows.flatten().map(c => [#c]),
)

#let bullet-list(entries) = for e in entries { block(spacing: 0.55em, inset: (left: 9pt), {
  place(dx: -9pt, dy: 0.33em, rect(width: 3pt, height: 3pt, fill: copper, stroke: none))
  [#e]
}) }

// ---------------------------------------------------------------- first page
#block(below: 0.6em, text(size: 9pt, fill: copper, weight: 600, tracking: 0.4pt, d.first.kind))
#heading(level: 1, outlined: true, d.first.address)
#small(d.first.facts)

#block(above: 1em, below: 1em, width: 100%, stroke: (left: 3pt + ink), inset: (left: 9pt, y: 4pt))[
  #text(size: 17pt, weight: 700, d.first.outcome) \
  #d.first.because
  #if d.first.differs != "" { block(above: 0.5em, text(weight: 700, d.first.differs)) }
]

#heading(level: 2, d.first.todo-title)
#if d.first.todo.len() == 0 { d.first.nothing } else {
  for o in d.first.todo {
    block(breakable: false, below: 0.75em, grid(columns: (17mm, 1fr), column-gutter: 2mm,
      [#mark(o) #h(1mm) #text(weight: 700, o.code)],
      [#text(weight: 600, o.place). #o.what #if o.remedy != "" { small(o.remedy) } #if o.safe != "" { block(above: 0.4em, text(weight: 600, fill: copper, o.safe)) }],
    ))
  }
}
#small(d.first.key)

#heading(level: 2, d.first.unseen-title)
#if d.first.unseen.len() == 0 { d.first.none-unseen } else { bullet-list(d.first.unseen) }

#heading(level: 2, d.first.next-title)
#d.first.next

#heading(level: 2, d.first.who-title)
#plain-table((auto, 1fr, auto), d.first.who-head, d.first.who)

#block(above: 1em, small(d.first.challenge))

// ---------------------------------------------------------------- observations
#pagebreak()
#heading(level: 1, d.observations.title)
#if d.observations.list.len() == 0 { d.observations.none }
#for o in d.observations.list {
  block(breakable: true, above: 1em, below: 0.9em, width: 100%, {
    heading(level: 2, [#mark(o) #h(1mm) #o.code #h(1.5mm) #o.place])
    [#o.what]
    for (label, words) in o.details {
      block(above: 0.45em, below: 0pt, grid(columns: (36mm, 1fr), small(label), words))
    }
    if o.checks.len() > 0 {
      block(above: 0.5em, small(d.observations.checks-label))
      bullet-list(o.checks)
    }
  })
}

// ---------------------------------------------------------------- supply
#heading(level: 1, d.supply.title)
#plain-table((48mm, 1fr), d.supply.head, d.supply.rows)

// ---------------------------------------------------------------- diagram
#heading(level: 1, d.diagram.title)
#for s in d.diagram.drawings {
  figure(image(s.file, width: 100%, alt: s.words), caption: none, kind: "diagram", supplement: none)
}
#small(d.diagram.note)

// ---------------------------------------------------------------- circuits
#heading(level: 1, d.circuits.title)
#for b in d.circuits.boards {
  heading(level: 2, b.title)
  small(b.detail)
  table(
    columns: (7mm, 1fr, 17mm, 14mm, 17mm, 14mm, 14mm, 26mm, 18mm, 15mm),
    align: (left, left, left, left, left, right, right, left, right, right),
    table.header(..d.circuits.head.map(h => [#h])),
    ..b.rows.map(r => (
      [#r.no], [#r.name], [#r.device], [#r.rcd], [#r.cable], [#r.r1r2], [#r.zs],
      if r.bar == "" { [#r.bar-words] } else { [#drawing(r.bar, r.bar-words, 22mm) #linebreak() #text(size: 6.8pt, fill: faint, r.limit)] },
      [#r.insulation], [#text(weight: if r.heavy { 700 } else { 400 }, r.worst)],
    )).flatten(),
  )
}
#small(d.circuits.note)

// ---------------------------------------------------------------- findings
#heading(level: 1, d.findings.title)
#d.findings.intro
#for p in d.findings.places {
  heading(level: 2, p.heading)
  for f in p.findings {
    block(breakable: true, above: 0.8em, below: 0.6em, {
      heading(level: 3, [#f.title: #f.verdict])
      if f.bar != "" { block(below: 0.3em, [#drawing(f.bar, f.bar-words, 34mm) #h(2mm) #f.words #h(2mm) #small(f.margin)]) } else if f.words != "" { block(below: 0.3em, f.words) }
      for r in f.remarks { block(above: 0.35em, below: 0pt, r) }
      if f.memory != "" { block(above: 0.35em, below: 0pt, text(fill: copper, f.memory)) }
      block(above: 0.55em, stroke: (left: 0.6pt + rule-colour), inset: (left: 6pt), for l in f.argument {
        block(above: 0.32em, below: 0pt, inset: (left: l.depth * 7pt), {
          set text(size: 8pt)
          set par(leading: 0.42em)
          [#tag(l.tag) #l.words #if l.note != "" { text(size: 7.2pt, fill: faint, [ – #l.note]) }]
        })
      })
    })
  }
}

// ---------------------------------------------------------------- curves
#if d.curves.list.len() > 0 {
  heading(level: 1, d.curves.title)
  d.curves.intro
  for pair in d.curves.list.chunks(2) {
    grid(columns: (1fr, 1fr), column-gutter: 4mm, row-gutter: 3mm, ..pair.map(c => block(breakable: false, {
      block(below: 0.2em, text(weight: 600, size: 8.5pt, c.caption))
      image(c.file, width: 100%, alt: c.words)
    })))
  }
}

// ---------------------------------------------------------------- items
#heading(level: 1, d.items.title)
#for g in d.items.groups {
  heading(level: 2, g.title)
  plain-table((1fr, 26mm, 52mm), d.items.head, g.rows)
}

// ---------------------------------------------------------------- extent
#heading(level: 1, d.extent.title)
#for (label, words) in d.extent.rows { block(above: 0.5em, below: 0pt, grid(columns: (34mm, 1fr), small(label), words)) }
#if d.extent.sampling.len() > 0 {
  heading(level: 2, d.extent.sampling-title)
  plain-table((1fr, auto, auto, auto, 1fr), d.extent.sampling-head, d.extent.sampling, aligns: (left, right, right, right, left))
}
#heading(level: 2, d.extent.limitations-title)
#if d.extent.limitations.len() == 0 { d.extent.no-limitations } else { plain-table((20mm, 1fr, 1fr, 32mm), d.extent.limitations-head, d.extent.limitations) }

#heading(level: 1, d.instruments.title)
#plain-table((1fr, auto, auto, 1.4fr), d.instruments.head, d.instruments.rows)

#heading(level: 1, d.sources.title)
#d.sources.intro
#plain-table((1fr, 34mm, 36mm), d.sources.head, d.sources.rows)

#heading(level: 1, d.recipients.title)
#for p in d.recipients.paragraphs { par(p) }
#heading(level: 2, d.recipients.cautions-title)
#bullet-list(d.recipients.cautions)

#if d.attach { pdf.attach("inspection.json", relationship: "source", mime-type: "application/json", description: d.attachment) }
`;
