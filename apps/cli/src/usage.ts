export const USAGE = `goodgrounds – weigh the evidence of an electrical inspection

  goodgrounds weigh FILE... [--all] [--json] [--probability]
                      [--grounds | --grounds-of CHECK]
      Check every circuit by calculation. FILE is an inspection file, a folder of
      them, a .jsonl stream with one inspection a line, or - for standard input.
  goodgrounds weigh FILE --earlier FILE [--earlier FILE]...
      The same, and then and now: beside earlier inspections of the installation.
  goodgrounds report FILE --out PATH [--earlier FILE]... [--photographs FOLDER]
      Write the condition report: as PDF with the inspection file and the workings
      attached, or, where PATH ends in .html, as one page for any browser.
  goodgrounds document letter|works|notice|chart|tenant FILE --out PATH
      Write a paper for one reader, as PDF or page (PATH ends in .pdf or .html):
      the letter to the owner, the list of works (also .csv and .xlsx), the notice
      of danger, the circuit chart for each board, the note for who lives there.
  goodgrounds issue FILE --key KEY --out FOLDER [--register FILE] [--replaces FILE]
                    [--reason "POINT=WORDS"]... [--certificate P12]
                    [--time-authority URL]
      Issue the report: signed, with a statement of what was issued attached.
      Refused while points stand open that nobody gave a reason for.
  goodgrounds issue FILE --draft --out FOLDER
      The same pages with DRAFT on each, signed by nobody.
  goodgrounds verify FILE... [--register FILE] [--root DIGITS] [--json]
      Of each issued document: is it as signed, by whom, when and by whose word,
      is it the latest, do the pages follow from the evidence.
  goodgrounds keys new --person NAME --device NAME --out FILE
  goodgrounds keys root
  goodgrounds keys add --key FILE --register FILE
  goodgrounds keys end DIGITS --as retired|lost|stolen --since MOMENT --register FILE
      Keys of persons and devices, and the register of the firm under a root that
      stands on paper alone.
  goodgrounds calendar FILE --out PATH
      Write what the law asks, with its dates, as a calendar (iCalendar).
  goodgrounds compute NAME [need=value...] [--json]
      Run one check, calculation or table with figures given by hand.
  goodgrounds compute --list
      List everything that can be computed.
  goodgrounds ring r1=... rn=... r2=... [point="NAME; L-N; L-cpc"...] [--json]
      What explains the readings of one ring final circuit.
  goodgrounds reason TOPIC [fact=value...] [--json]
      The line of reasoning from facts to a classification, question by question.
  goodgrounds reason --list [WORDS]
      List the topics.
  goodgrounds topics check|format|changed FOLDER [--check] [--all] [--json]
      A firm's own folder of topics and standing views: hold it to the laws, write
      it in its one spelling, or show what it changes. Other commands load it with
      --topics FOLDER: weigh, report, reason, compare-choices.
  goodgrounds topics show ID [--topics FOLDER]
      The text of a topic.
  goodgrounds compare-choices FOLDER|FILE... [--by person|file] [--json]
      Show where the same facts were classified differently in past inspections,
      and how far the choices agree.
  goodgrounds own-figures FILE [--earlier FILE] [--all] [--json]
      For the inspector alone: readings worth confirming before somebody asks.
  goodgrounds schema
      Print the JSON Schema of the inspection file.

  --help, --version

Exit codes: 0 done, 2 input wrong, 3 file unreadable, 1 our fault; 4 something was
found against a document, 5 something stands open.
`;
