/** Supply, findings, boards with their circuits, drawings, then and now. */
export const INSTALLATION = `
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
`;
