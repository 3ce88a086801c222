import { type Conformity, type ErrorSource, pointer } from "@good-grounds/core";

/** How sure a finding is, as plain data. */
export function conformityJson({ deciding, ...all }: Conformity): object {
  return {
    ...all,
    deciding:
      deciding === null
        ? null
        : {
            about: deciding.matter.id,
            relation: deciding.relation,
            unit: deciding.unit,
            difference: deciding.difference,
            standard: deciding.standard,
            expanded: deciding.expanded,
            budget: deciding.budget.map(sourceJson),
          },
  };
}

function sourceJson({ kind, term, place, values, instrument, contribution, share }: ErrorSource): object {
  return {
    kind,
    term: term.id,
    place: place === null ? null : pointer(place),
    values,
    instrument,
    contribution,
    share,
  };
}
