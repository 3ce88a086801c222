/** What was calculated, inspected, agreed and done for safety, and what the report rests on. */
export const BACK = String.raw`
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

// ---------------------------------------------------------------- duties
#heading(level: 1, d.duties.title)
#for p in d.duties.intro { par(p) }
#for g in d.duties.groups {
  heading(level: 2, g.title)
  plain-table((32mm, 1fr, 62mm), d.duties.head, g.rows)
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
