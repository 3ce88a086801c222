/** The first page, then the observations with their reasons. */
export const FRONT = String.raw`
// ---------------------------------------------------------------- first page
#show heading.where(level: 2, outlined: false): it => block(above: 0.8em, below: 0.45em, sticky: true, text(size: 10.5pt, weight: 700, it.body))
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

#block(above: 0.9em, below: 0.9em, width: 100%, stroke: (left: 3.5pt + ink), inset: (left: 9pt, y: 2pt))[
  #grid(columns: (1fr, 1fr), column-gutter: 6mm,
    [#text(size: 8.2pt, fill: quiet, d.first.stated-label) \ #text(size: 16pt, weight: 700, style: if d.first.stated-open { "italic" } else { "normal" }, d.first.stated)],
    [#text(size: 8.2pt, fill: quiet, d.first.derived-label) \ #text(size: 16pt, weight: 700, style: if d.first.derived-open { "italic" } else { "normal" }, d.first.derived)],
  )
  #if d.first.differs != "" { block(above: 0.7em, below: 0.7em, width: 100%, stroke: 1.2pt + copper, inset: 5pt, text(weight: 600, d.first.differs)) }
  #d.first.because
  #if d.first.points-title != "" { block(above: 0.6em, below: 0.4em, [#text(weight: 600, d.first.points-title)#if d.first.points.len() == 1 { [ #d.first.points.first()] }]); if d.first.points.len() > 1 { bullet-list(d.first.points) } }
  #if d.first.below-title != "" { block(above: 0.6em, below: 0.4em, text(weight: 600, d.first.below-title)); bullet-list(d.first.below) }
  #if d.first.dismissed-title != "" { block(above: 0.6em, below: 0.4em, text(weight: 600, d.first.dismissed-title)); bullet-list(d.first.dismissed) }
  #if d.first.investigate-title != "" { block(above: 0.6em, below: 0.4em, text(weight: 600, d.first.investigate-title)); bullet-list(d.first.investigate) }
  #if d.first.summary != "" { block(above: 0.6em, [#text(weight: 600, d.first.summary-label)#d.first.summary]) }
]

#if d.first.alarm != "" { block(above: 0pt, below: 1.1em, width: 100%, stroke: 2pt + copper, inset: 6pt, text(weight: 700, d.first.alarm)) }

#heading(level: 2, outlined: false, d.first.todo-title)
#if d.first.groups.len() == 0 { d.first.nothing } else {
  for g in d.first.groups {
    block(above: 0.65em, below: 0.35em, sticky: true, grid(columns: (9mm, 1fr), align: horizon, mark(g), bare(9.5pt, heading(level: 3, outlined: false, g.heading))))
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
}

#block(above: 0.7em, below: 0pt, text(size: 8.2pt, [#text(weight: 600, [#d.first.law-title: ])#d.first.law.join([ · ]) #text(fill: quiet, d.first.law-note)]))

#heading(level: 2, outlined: false, d.first.unseen-title)
#bullet-list(d.first.unseen)

#heading(level: 2, outlined: false, d.first.next-title)
#d.first.next

#heading(level: 2, outlined: false, d.first.who-title)
#plain-table((auto, 1fr, auto), d.first.who-head, d.first.who)
#block(above: 0.7em, small(d.first.challenge))

// Whole on this page or on the next: half a list of pages is none.
#block(above: 0.6em, breakable: false, {
  set text(size: 7.8pt)
  set par(leading: 0.5em)
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
`;
